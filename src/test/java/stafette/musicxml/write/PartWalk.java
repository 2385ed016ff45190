package stafette.musicxml.write;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import stafette.musicxml.write.ReadPage.Bar;
import stafette.musicxml.write.ReadPage.Metre;
import stafette.musicxml.write.ReadPage.Note;
import stafette.musicxml.write.ReadPage.Run;
import stafette.musicxml.write.ReadPage.Sign;
import stafette.time.Rational;

/** Goes through a part's text once, and keeps what is in force. */
final class PartWalk {
  private static final Set<String> SIGNS = Set.of("wedge", "dynamics", "words", "rehearsal");

  private final Map<String, Integer> fifths = new HashMap<>();
  private Rational divisions = Rational.ONE;
  private Optional<Metre> metre = Optional.empty();
  private int transposition;

  private Rational at = Rational.ZERO;
  private Rational onset = Rational.ZERO;
  private Rational runStart = Rational.ZERO;
  private Set<String> voices = new HashSet<>();
  private List<Note> notes = new ArrayList<>();
  private List<Sign> signs = new ArrayList<>();
  private List<Run> runs = new ArrayList<>();

  ReadPage.Part walk(Tag part) {
    List<Bar> bars = new ArrayList<>();
    for (Tag measure : part.all("measure")) {
      bars.add(bar(bars.size(), measure));
    }
    return new ReadPage.Part(part.attribute("id", ""), bars);
  }

  private Bar bar(int index, Tag measure) {
    at = Rational.ZERO;
    runStart = Rational.ZERO;
    notes = new ArrayList<>();
    signs = new ArrayList<>();
    runs = new ArrayList<>();
    for (Tag tag : measure.children()) {
      switch (tag.name()) {
        case "attributes" -> attributes(tag);
        case "note" -> note(tag);
        case "forward" -> at = at.plus(duration(tag, "duration"));
        case "backup" -> {
          endRun();
          at = at.minus(duration(tag, "duration"));
          runStart = at;
        }
        case "direction" -> direction(tag);
        default -> {}
      }
    }
    endRun();
    boolean implicit = measure.attribute("implicit", "no").equals("yes");
    return new Bar(index, implicit, metre, notes, signs, runs);
  }

  private void endRun() {
    if (!voices.isEmpty()) {
      runs.add(new Run(runStart, at, voices));
      voices = new HashSet<>();
    }
  }

  private Rational duration(Tag tag, String child) {
    return Rational.parse(tag.text(child, "0")).dividedBy(divisions);
  }

  private void attributes(Tag tag) {
    tag.first("divisions").ifPresent(found -> divisions = Rational.parse(found.text()));
    for (Tag key : tag.all("key")) {
      if (key.attribute("number", "").isEmpty()) {
        fifths.clear();
      }
      fifths.put(key.attribute("number", ""), Integer.parseInt(key.text("fifths", "0")));
    }
    tag.first("time").ifPresent(time -> metre = metre(time));
    tag.first("transpose")
        .ifPresent(
            found ->
                transposition =
                    Integer.parseInt(found.text("chromatic", "0"))
                        + 12 * Integer.parseInt(found.text("octave-change", "0")));
  }

  private static Optional<Metre> metre(Tag time) {
    if (time.all("beats").size() != 1) {
      return Optional.empty();
    }
    List<Integer> beats =
        Stream.of(time.text("beats", "").split("\\+"))
            .map(String::strip)
            .map(Integer::valueOf)
            .toList();
    return Optional.of(new Metre(beats, Integer.parseInt(time.text("beat-type", "4"))));
  }

  private void note(Tag tag) {
    Rational length = tag.has("grace") ? Rational.ZERO : duration(tag, "duration");
    if (!tag.has("chord")) {
      onset = at;
      at = at.plus(length);
    }
    String staff = tag.text("staff", "1");
    int key = fifths.getOrDefault(staff, fifths.getOrDefault("", 0));
    Note note = new Note(tag, onset, length, key, transposition);
    notes.add(note);
    voices.add(note.voice());
    note.notations("dynamics")
        .forEach(found -> signs.add(new Sign("dynamics", names(found), "1", staff, onset)));
  }

  private void direction(Tag tag) {
    Rational place = at.plus(duration(tag, "offset"));
    for (Tag type : tag.all("direction-type")) {
      for (Tag sign : type.children()) {
        if (SIGNS.contains(sign.name())) {
          String says =
              switch (sign.name()) {
                case "wedge" -> sign.attribute("type", "");
                case "dynamics" -> names(sign);
                default -> sign.text();
              };
          signs.add(
              new Sign(
                  sign.name(), says, sign.attribute("number", "1"), tag.text("staff", "1"), place));
        }
      }
    }
  }

  private static String names(Tag dynamics) {
    return dynamics.children().stream().map(Tag::name).collect(Collectors.joining(" "));
  }
}

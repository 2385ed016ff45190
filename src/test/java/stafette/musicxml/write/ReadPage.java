package stafette.musicxml.write;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import stafette.time.Rational;

/**
 * A score as its text says, read without the program's own reader. Places and lengths are in
 * quarters.
 */
record ReadPage(List<Part> parts) {
  /** A part, bar by bar. */
  record Part(String id, List<Bar> bars) {}

  /**
   * A bar of a part.
   *
   * @param index from 0
   * @param implicit is not counted, as pickups aren't
   * @param metre nothing in free time
   * @param notes in the order of the text
   * @param runs what stands between backups
   */
  record Bar(
      int index,
      boolean implicit,
      Optional<Metre> metre,
      List<Note> notes,
      List<Sign> signs,
      List<Run> runs) {
    /** Where the longest voice ends. */
    Rational end() {
      return runs.stream().map(Run::end).max(Comparator.naturalOrder()).orElse(Rational.ZERO);
    }

    /** In the order in which they sound, those at one place as they stand in the text. */
    List<Note> inTime() {
      return notes.stream().sorted(Comparator.comparing(Note::onset)).toList();
    }

    /** What follows one another in each voice: no grace notes, and of a chord its first note. */
    Map<String, List<Note>> voices() {
      return inTime().stream()
          .filter(note -> !note.chord() && !note.grace())
          .collect(Collectors.groupingBy(Note::voice, LinkedHashMap::new, Collectors.toList()));
    }
  }

  /** A time signature. */
  record Metre(List<Integer> beats, int beatType) {
    private static final Set<Integer> COMPOUND = Set.of(6, 9, 12);

    int count() {
      return beats.stream().mapToInt(Integer::intValue).sum();
    }

    Rational length() {
      return Rational.of(4L * count(), beatType);
    }

    boolean is(int count, int type) {
      return beats.equals(List.of(count)) && beatType == type;
    }

    boolean compound() {
      return beatType == 8 && beats.size() == 1 && COMPOUND.contains(beats.get(0));
    }

    boolean simple() {
      return beatType <= 4 && beats.size() == 1 && beats.get(0) <= 4;
    }

    /** How long its beats are, where they are all alike. */
    Optional<Rational> beat() {
      return compound()
          ? Optional.of(Rational.of(3, 2))
          : simple() ? Optional.of(Rational.of(4, beatType)) : Optional.empty();
    }
  }

  /** From where to where it goes without a backup, and which voices stand in it. */
  record Run(Rational start, Rational end, Set<String> voices) {}

  /** A step with its alteration in semitones, as written. */
  record Pitch(String step, int alter, int octave) {
    int key() {
      return 12 * (octave + 1) + List.of(0, 2, 4, 5, 7, 9, 11).get("CDEFGAB".indexOf(step)) + alter;
    }

    @Override
    public String toString() {
      return step + (alter < 0 ? "b".repeat(-alter) : "#".repeat(alter)) + octave;
    }
  }

  /**
   * A note or rest.
   *
   * @param fifths the key signature of its staff
   * @param transposition semitones from what is written to what sounds
   */
  record Note(Tag tag, Rational onset, Rational length, int fifths, int transposition) {
    boolean chord() {
      return tag.has("chord");
    }

    boolean grace() {
      return tag.has("grace");
    }

    boolean rest() {
      return tag.has("rest");
    }

    boolean hidden() {
      return tag.attribute("print-object", "yes").equals("no");
    }

    boolean modified() {
      return tag.has("time-modification");
    }

    String voice() {
      return tag.text("voice", "1");
    }

    String staff() {
      return tag.text("staff", "1");
    }

    Rational end() {
      return onset.plus(length);
    }

    Optional<Pitch> pitch() {
      return tag.first("pitch")
          .map(
              pitch ->
                  new Pitch(
                      pitch.text("step", ""),
                      (int) Math.round(Double.parseDouble(pitch.text("alter", "0"))),
                      Integer.parseInt(pitch.text("octave", "4"))));
    }

    /** What it is called in a sentence. */
    String called() {
      return rest() ? "a rest" : pitch().map(Pitch::toString).orElse("a stroke");
    }

    List<Tag> notations(String... path) {
      return tag.all("notations").stream()
          .flatMap(notation -> notation.all(path).stream())
          .toList();
    }

    /** The state of each of its beams, by level. */
    Map<String, String> beams() {
      return tag.all("beam").stream()
          .collect(
              Collectors.toMap(
                  beam -> beam.attribute("number", "1"), Tag::text, (one, other) -> one));
    }
  }

  /**
   * Something that stands at a place of a staff.
   *
   * @param kind the name of its element
   * @param says its type, or its text
   */
  record Sign(String kind, String says, String number, String staff, Rational onset) {}

  static ReadPage of(String text) {
    return new ReadPage(
        Tag.parse(text).all("part").stream().map(part -> new PartWalk().walk(part)).toList());
  }

  Optional<Part> part(String id) {
    return parts.stream().filter(part -> part.id.equals(id)).findFirst();
  }

  /** One bar in all parts that have it. */
  List<Bar> bars(int index) {
    return parts.stream().flatMap(part -> part.bars.stream().skip(index).limit(1)).toList();
  }

  /** How far the longest voice of any part goes in a bar. */
  Rational extent(int bar) {
    return bars(bar).stream().map(Bar::end).max(Comparator.naturalOrder()).orElse(Rational.ZERO);
  }

  /** Whether a bar, of this page or written from it, begins or ends where its metre doesn't. */
  boolean incomplete(Bar bar) {
    Optional<Rational> whole = bar.metre.map(Metre::length);
    return whole.isEmpty()
        || bar.implicit
        || (bar.index == 0 && extent(0).compareTo(whole.orElseThrow()) < 0);
  }

  /** How long each voice of a bar must be. */
  Rational length(Bar bar) {
    return incomplete(bar) ? extent(bar.index) : bar.metre.orElseThrow().length();
  }

  /** Where each bar begins, counted from the beginning of the score. */
  List<Rational> starts() {
    List<Rational> starts = new ArrayList<>();
    Rational at = Rational.ZERO;
    int count = parts.stream().mapToInt(part -> part.bars.size()).max().orElse(0);
    for (int i = 0; i < count; i++) {
      starts.add(at);
      at = at.plus(extent(i));
    }
    return starts;
  }

  /** Every note of a part with the bar in which it stands. */
  static Stream<Map.Entry<Bar, Note>> placed(Part part) {
    return part.bars.stream().flatMap(bar -> bar.inTime().stream().map(n -> Map.entry(bar, n)));
  }
}

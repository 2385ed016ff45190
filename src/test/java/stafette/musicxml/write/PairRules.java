package stafette.musicxml.write;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import stafette.musicxml.write.ReadPage.Bar;
import stafette.musicxml.write.ReadPage.Note;
import stafette.musicxml.write.ReadPage.Part;
import stafette.musicxml.write.ReadPage.Pitch;
import stafette.musicxml.write.WrittenRule.Wrong;
import stafette.time.Rational;

/** What begins must end: slurs, tuplets, ties. */
final class PairRules {
  static final List<WrittenRule> ALL =
      List.of(
          new WrittenRule(
              "a slur has its end",
              (source, page, part, wrong) -> notes("slur", true, part, wrong)),
          new WrittenRule(
              "a tuplet has its end",
              (source, page, part, wrong) -> notes("tuplet", false, part, wrong)),
          new WrittenRule("a tie leads to the same pitch", PairRules::ties),
          new WrittenRule("a tie is seen and heard", PairRules::seenAndHeard));

  private PairRules() {}

  private static void notes(String kind, boolean leaves, Part part, Wrong wrong) {
    Pairs pairs = new Pairs("a " + kind, leaves, wrong);
    ReadPage.placed(part)
        .forEach(
            placed -> {
              Note note = placed.getValue();
              for (String type : List.of("stop", "start")) {
                for (Tag sign : note.notations(kind)) {
                  Pairs.Key key = new Pairs.Key(sign.attribute("number", "1"), note.voice());
                  if (!sign.attribute("type", "").equals(type)) {
                    continue;
                  }
                  if (type.equals("stop")) {
                    pairs.stop(key, placed.getKey(), note.onset());
                  } else {
                    pairs.start(key, placed.getKey(), note.onset());
                  }
                }
              }
            });
    pairs.end();
  }

  /** A note of a part at its place in the score. */
  private record Sounding(Bar bar, Note note, Pitch pitch, Rational start) {
    boolean tied(String type) {
      return Stream.concat(note.tag().all("tie").stream(), note.notations("tied").stream())
          .anyMatch(tie -> tie.attribute("type", "").equals(type));
    }

    boolean leadsTo(Sounding next) {
      return pitch.equals(next.pitch)
          && start.plus(note.length()).equals(next.start)
          && tied("start")
          && next.tied("stop");
    }
  }

  private static void ties(ReadPage source, ReadPage page, Part part, Wrong wrong) {
    List<Rational> starts = page.starts();
    List<Sounding> tied =
        ReadPage.placed(part)
            .flatMap(placed -> sounding(placed, starts).stream())
            .filter(sounding -> sounding.tied("start") || sounding.tied("stop"))
            .toList();
    for (Sounding each : tied) {
      String called = each.pitch + " at " + each.note.onset();
      if (each.tied("start") && tied.stream().noneMatch(each::leadsTo)) {
        wrong.say(each.bar, "the tie from " + called + " leads nowhere");
      }
      if (each.tied("stop") && tied.stream().noneMatch(other -> other.leadsTo(each))) {
        wrong.say(each.bar, "the tie to " + called + " comes from nowhere");
      }
    }
  }

  private static Optional<Sounding> sounding(Map.Entry<Bar, Note> placed, List<Rational> starts) {
    Note note = placed.getValue();
    Rational start = starts.get(placed.getKey().index()).plus(note.onset());
    return note.pitch().map(pitch -> new Sounding(placed.getKey(), note, pitch, start));
  }

  private static void seenAndHeard(ReadPage source, ReadPage page, Part part, Wrong wrong) {
    ReadPage.placed(part)
        .filter(placed -> !placed.getValue().tag().has("cue"))
        .forEach(
            placed -> {
              Note note = placed.getValue();
              Set<String> heard = types(note.tag().all("tie"));
              Set<String> seen = types(note.notations("tied"));
              if (!heard.equals(seen)) {
                wrong.say(
                    placed.getKey(),
                    "the tie of "
                        + note.called()
                        + " at "
                        + note.onset()
                        + " is heard as "
                        + heard
                        + " and seen as "
                        + seen);
              }
            });
  }

  private static Set<String> types(List<Tag> ties) {
    Set<String> types = new TreeSet<>();
    ties.stream()
        .map(tie -> tie.attribute("type", ""))
        .filter(type -> type.equals("start") || type.equals("stop"))
        .forEach(types::add);
    return types;
  }
}

package stafette.musicxml.write;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;
import stafette.musicxml.write.ReadPage.Bar;
import stafette.musicxml.write.ReadPage.Note;
import stafette.musicxml.write.ReadPage.Part;
import stafette.musicxml.write.ReadPage.Sign;
import stafette.musicxml.write.WrittenRule.Wrong;
import stafette.time.Rational;

/** Hairpins end, none is lost, and each goes with the notes that are taken from under it. */
final class HairpinRules {
  private static final Set<String> KINDS = Set.of("crescendo", "diminuendo");

  /** Who has fewer notes of a hairpin hardly shows it. */
  private static final int FEWEST = 3;

  static final List<WrittenRule> ALL =
      List.of(
          new WrittenRule("a hairpin has its end", HairpinRules::ends),
          new WrittenRule("no hairpin of the page is lost", HairpinRules::kept),
          new WrittenRule(WrittenRules.HAIRPIN_GOES_ALONG, HairpinRules::goesAlong));

  private HairpinRules() {}

  private static void ends(ReadPage source, ReadPage page, Part part, Wrong wrong) {
    Pairs pairs = new Pairs("a hairpin", false, wrong);
    for (Bar bar : part.bars()) {
      for (Sign sign : signs(bar)) {
        Pairs.Key key = new Pairs.Key(sign.number(), sign.staff());
        if (sign.says().equals("stop")) {
          pairs.stop(key, bar, sign.onset());
        } else if (KINDS.contains(sign.says())) {
          pairs.start(key, bar, sign.onset());
        }
      }
    }
    pairs.end();
  }

  /** Those of a bar in time, the ends first. */
  private static List<Sign> signs(Bar bar) {
    return bar.signs().stream()
        .filter(sign -> sign.kind().equals("wedge"))
        .sorted(
            Comparator.comparing(Sign::onset).thenComparing(sign -> !sign.says().equals("stop")))
        .toList();
  }

  /** In the part where it stood, or in any other. */
  private static void kept(ReadPage source, ReadPage page, Part part, Wrong wrong) {
    List<Bar> before = source.part(part.id()).map(Part::bars).orElse(List.of());
    for (Bar bar : before) {
      starts(bar)
          .filter(
              start ->
                  page.bars(bar.index()).stream()
                      .flatMap(HairpinRules::starts)
                      .noneMatch(
                          other ->
                              other.says().equals(start.says())
                                  && other.onset().equals(start.onset())))
          .forEach(
              start ->
                  wrong.say(bar, "the " + start.says() + " from " + start.onset() + " is gone"));
    }
  }

  private static Stream<Sign> starts(Bar bar) {
    return bar.signs().stream()
        .filter(sign -> sign.kind().equals("wedge") && KINDS.contains(sign.says()));
  }

  /** A hairpin from its start to its stop, in quarters from the beginning of the score. */
  private record Hairpin(String kind, String staff, Rational from, Rational to) {
    boolean bears(Rational place) {
      return from.compareTo(place) <= 0 && place.compareTo(to) < 0;
    }
  }

  /** What is heard, in quarters from the beginning of the score, and where it stands. */
  private record Heard(Rational at, int key) {}

  private static void goesAlong(ReadPage source, ReadPage page, Part part, Wrong wrong) {
    Set<Heard> had =
        source
            .part(part.id())
            .map(before -> heard(source, before, note -> true).keySet())
            .orElse(Set.of());
    Map<Heard, Bar> has = heard(page, part, note -> true);
    List<Hairpin> own = hairpins(page, part);
    for (Part from : source.parts()) {
      for (Hairpin hairpin : hairpins(source, from)) {
        List<Heard> taken =
            heard(source, from, note -> note.staff().equals(hairpin.staff)).keySet().stream()
                .filter(each -> hairpin.bears(each.at))
                .filter(each -> has.containsKey(each) && !had.contains(each))
                .sorted(Comparator.comparing(Heard::at))
                .toList();
        boolean many = taken.stream().map(Heard::at).distinct().count() >= FEWEST;
        if (many && own.stream().noneMatch(mine -> overlaps(mine, hairpin, taken))) {
          Heard first = taken.get(0);
          Bar bar = Optional.ofNullable(has.get(first)).orElseThrow();
          wrong.say(
              bar,
              taken.size()
                  + " notes stand without the "
                  + hairpin.kind
                  + " that "
                  + from.id()
                  + " has from "
                  + hairpin.from
                  + " to "
                  + hairpin.to);
        }
      }
    }
  }

  private static boolean overlaps(Hairpin mine, Hairpin other, List<Heard> taken) {
    return mine.kind.equals(other.kind)
        && mine.from.compareTo(taken.get(taken.size() - 1).at) <= 0
        && mine.to.compareTo(taken.get(0).at) > 0;
  }

  private static Map<Heard, Bar> heard(ReadPage page, Part part, Predicate<Note> wanted) {
    List<Rational> starts = page.starts();
    Map<Heard, Bar> heard = new HashMap<>();
    ReadPage.placed(part)
        .filter(placed -> wanted.test(placed.getValue()))
        .filter(placed -> !placed.getValue().tag().has("cue") && !placed.getValue().grace())
        .forEach(
            placed -> {
              Note note = placed.getValue();
              Rational at = starts.get(placed.getKey().index()).plus(note.onset());
              note.pitch()
                  .map(pitch -> new Heard(at, pitch.key() + note.transposition()))
                  .ifPresent(each -> heard.putIfAbsent(each, placed.getKey()));
            });
    return heard;
  }

  private static List<Hairpin> hairpins(ReadPage page, Part part) {
    List<Rational> starts = page.starts();
    List<Hairpin> hairpins = new ArrayList<>();
    Map<Pairs.Key, Hairpin> open = new HashMap<>();
    for (Bar bar : part.bars()) {
      for (Sign sign : signs(bar)) {
        Pairs.Key key = new Pairs.Key(sign.number(), sign.staff());
        Rational at = starts.get(bar.index()).plus(sign.onset());
        if (KINDS.contains(sign.says())) {
          open.put(key, new Hairpin(sign.says(), sign.staff(), at, at));
        } else if (sign.says().equals("stop")) {
          Optional.ofNullable(open.remove(key))
              .ifPresent(h -> hairpins.add(new Hairpin(h.kind, h.staff, h.from, at)));
        }
      }
    }
    return hairpins;
  }
}

package stafette.notation;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import stafette.notation.BarItem.SoundingItem;
import stafette.score.Tuplet;
import stafette.time.Bar;
import stafette.time.Length;
import stafette.time.Position;
import stafette.time.Rational;
import stafette.time.Span;

/**
 * Beams notes as they were beamed where they come from; else those of each beat, of each quarter
 * where beats are halves or longer. A tuplet over their border stands alone. Inner beams are broken
 * between beats, rests part beams, and a note alone keeps its flags.
 */
public final class Beams {
  private static final int MOST = 8;

  private Beams() {}

  static List<BarItem> on(Bar bar, List<BarItem> items, List<Span> former) {
    List<BarItem> result = new ArrayList<>();
    int from = 0;
    while (from < items.size()) {
      int to = from + 1;
      while (to < items.size() && together(bar, items.get(to - 1), items.get(to), former)) {
        to++;
      }
      result.addAll(beamed(bar, items.subList(from, to)));
      from = to;
    }
    return result;
  }

  private static boolean together(Bar bar, BarItem one, BarItem next, List<Span> former) {
    Optional<Tuplet> tuplet = overBorder(bar, one);
    Optional<Tuplet> nextTuplet = overBorder(bar, next);
    if (tuplet.isPresent() || nextTuplet.isPresent()) {
      return hasFlags(one) && hasFlags(next) && tuplet.equals(nextTuplet);
    }
    Optional<Span> beam = beamAt(one.span().start(), former);
    boolean asBefore = beam.isPresent() || beamAt(next.span().start(), former).isPresent();
    return hasFlags(one)
        && hasFlags(next)
        && (asBefore
            ? beam.equals(beamAt(next.span().start(), former))
            : inOneGroup(bar, one, next));
  }

  /**
   * The tuplet of a note, if it lies over the border of a group: its notes have a beam of their
   * own.
   */
  private static Optional<Tuplet> overBorder(Bar bar, BarItem item) {
    return item.sound()
        .flatMap(SoundingItem::tuplet)
        .filter(tuplet -> !bar.counted().leavesGroupsOpen())
        .filter(
            tuplet ->
                IntStream.range(1, tuplet.actual())
                    .mapToObj(i -> Rational.of(i, tuplet.actual()))
                    .map(share -> tuplet.span().length().quarters().times(share))
                    .map(into -> tuplet.span().start().plus(new Length(into)))
                    .anyMatch(at -> !group(bar, at).equals(group(bar, tuplet.span().start()))));
  }

  private static Optional<Span> beamAt(Position at, List<Span> former) {
    return former.stream().filter(span -> span.contains(at)).findFirst();
  }

  private static boolean inOneGroup(Bar bar, BarItem one, BarItem next) {
    return group(bar, one.span().start()).equals(group(bar, next.span().start()));
  }

  private static boolean hasFlags(BarItem item) {
    return !item.isRest() && flags(item) > 0;
  }

  private static int flags(BarItem item) {
    return item.shape().map(NoteShape::flags).orElse(0);
  }

  private static Position group(Bar bar, Position at) {
    Position beat = bar.beatStart(at);
    Length length = bar.beatLengthAt(at);
    boolean ofHalves = length.quarters().modulo(Rational.of(2)).signum() == 0;
    if (!ofHalves) {
      return beat;
    }
    Rational into = at.quarters().minus(beat.quarters());
    return beat.plus(new Length(into.minus(into.modulo(Rational.ONE))));
  }

  private static List<BarItem> beamed(Bar bar, List<BarItem> group) {
    Set<Integer> breaks = new HashSet<>();
    for (int i = 1; i < group.size(); i++) {
      if (!inOneGroup(bar, group.get(i - 1), group.get(i))) {
        breaks.add(i);
      }
    }
    List<List<String>> beams = over(group.stream().map(Beams::flags).toList(), breaks);
    List<BarItem> result = new ArrayList<>();
    for (int i = 0; i < group.size(); i++) {
      result.add(group.get(i).withBeams(beams.get(i)));
    }
    return result;
  }

  /**
   * The beams that join notes, for each from the first; none for a note alone.
   *
   * @param flags how many each note would have by itself
   */
  public static List<List<String>> over(List<Integer> flags) {
    return over(flags, Set.of());
  }

  /** The same, with inner beams broken before some notes. */
  private static List<List<String>> over(List<Integer> flags, Set<Integer> breaks) {
    List<List<String>> result = new ArrayList<>();
    for (int i = 0; i < flags.size(); i++) {
      List<String> beams = new ArrayList<>();
      for (int level = 1; flags.size() > 1 && level <= Math.min(MOST, flags.get(i)); level++) {
        boolean isInner = level > 1;
        boolean before = i > 0 && flags.get(i - 1) >= level && !(isInner && breaks.contains(i));
        boolean after =
            i + 1 < flags.size()
                && flags.get(i + 1) >= level
                && !(isInner && breaks.contains(i + 1));
        beams.add(beam(before, after, i > 0));
      }
      result.add(List.copyOf(beams));
    }
    return result;
  }

  private static String beam(boolean before, boolean after, boolean hasLeft) {
    if (before) {
      return after ? "continue" : "end";
    }
    if (after) {
      return "begin";
    }
    return hasLeft ? "backward hook" : "forward hook";
  }
}

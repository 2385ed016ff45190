package stafette.check;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntFunction;
import java.util.stream.IntStream;
import stafette.limits.Demand;
import stafette.limits.Instrument;
import stafette.limits.Skill;
import stafette.limits.Technique;
import stafette.limits.Way;
import stafette.plan.Plan;
import stafette.plan.Played;
import stafette.plan.Segment;
import stafette.score.Line;
import stafette.words.Sentence;

/**
 * What a player is told to use in a stretch: the first technique in the table's order whose limits
 * hold there, whatever was reckoned with, unless another takes precedence; stretches shorter than a
 * beat are joined to the longer neighbour. So a flautist is told "single tonguing" until double is
 * needed.
 *
 * @param technique which
 * @param first the first stroke, numbered in the line
 * @param last the last one, included
 */
public record ShownTechnique(Technique technique, int first, int last) {

  /** The techniques of a segment of a plan, one after the other; strokes are the whole line's. */
  public static List<ShownTechnique> of(Plan plan, Segment segment) {
    Played played = plan.played(segment);
    Line whole = plan.line(segment);
    return of(
            plan.player(segment).instrument(),
            plan.way(segment),
            played.line(),
            played.first(),
            played.last())
        .stream()
        .map(
            shown ->
                new ShownTechnique(
                    shown.technique,
                    sameIn(whole, played.line(), shown.first),
                    sameIn(whole, played.line(), shown.last)))
        .toList();
  }

  /** The techniques of a stretch of a line, one after the other. */
  public static List<ShownTechnique> of(
      Instrument instrument, Way way, Line line, int first, int last) {
    int from = Math.max(0, first - 1);
    int to = Math.min(line.count() - 1, last + 1);
    Line near =
        to - from + 1 == line.count()
            ? line
            : line.only(IntStream.rangeClosed(from, to).boxed().toList(), true);
    return within(instrument, way, near, first - from, last - from).stream()
        .map(each -> new ShownTechnique(each.technique, each.first + from, each.last + from))
        .toList();
  }

  /** Of a stretch with the strokes before and after it, as far as there are any. */
  private static List<ShownTechnique> within(
      Instrument instrument, Way way, Line line, int first, int last) {
    int[] shown = new int[last - first + 1];
    Demand chosen = Demand.of(instrument, way, line);
    for (int j = first; j <= last; j++) {
      shown[j - first] = chosen.skill(j);
    }
    for (int index = way.skills().size() - 1; index >= 0; index--) {
      mark(index, way.skills().get(index), instrument, line, first, shown);
    }
    for (int j = first; j <= last; j++) {
      if (way.skills().get(chosen.skill(j)).technique().takesPrecedence()) {
        shown[j - first] = chosen.skill(j);
      }
    }
    return joined(stretches(shown, first, index -> way.skills().get(index).technique()), line);
  }

  /** The names of a segment's techniques, each once. */
  public static Sentence inWords(Plan plan, Segment segment) {
    return inWords(of(plan, segment));
  }

  /** Their names, each once, in order. */
  public static Sentence inWords(List<ShownTechnique> shown) {
    return Sentence.list(
        shown.stream().map(each -> each.technique.name()).distinct().map(Sentence::name).toList());
  }

  /** The names of a segment's techniques in the tables' language. */
  public static String names(Plan plan, Segment segment) {
    return inWords(plan, segment).toString();
  }

  private static void mark(
      int index, Skill skill, Instrument instrument, Line line, int first, int[] shown) {
    Way alone = new Way(skill.technique().twinStrings(), List.of(skill));
    Demand demand = Demand.of(instrument, alone, line);
    int from = first;
    for (int j = first; j <= first + shown.length; j++) {
      boolean goesOn = j < first + shown.length && holds(demand, line, first, j);
      if (!goesOn) {
        if (from < j && Tolerance.within(highest(demand, line, from, j - 1), 1)) {
          IntStream.range(from - first, j - first).forEach(k -> shown[k] = index);
        }
        from = j + 1;
      }
    }
  }

  private static boolean holds(Demand demand, Line line, int first, int j) {
    return demand.covered(j) && Tolerance.within(Strain.use(demand, line, first, j), 1);
  }

  private static double highest(Demand demand, Line line, int first, int last) {
    double tiredness = 0;
    double highest = 0;
    int previous = first;
    for (int j = first + 1; j <= last; j++) {
      if (demand.loads(first, j)) {
        long gap = line.onsetMicros(j) - line.onsetMicros(previous);
        int graces = Tiredness.graces(line, j);
        tiredness =
            Tiredness.after(tiredness, gap, demand.sustainedMilli(j), graces, demand.capability(j));
        highest = Math.max(highest, tiredness);
        previous = j;
      }
    }
    return highest;
  }

  private static List<ShownTechnique> stretches(
      int[] shown, int first, IntFunction<Technique> technique) {
    List<ShownTechnique> result = new ArrayList<>();
    int from = 0;
    for (int k = 1; k <= shown.length; k++) {
      if (k == shown.length || shown[k] != shown[from]) {
        result.add(new ShownTechnique(technique.apply(shown[from]), first + from, first + k - 1));
        from = k;
      }
    }
    return result;
  }

  private static List<ShownTechnique> joined(List<ShownTechnique> stretches, Line line) {
    List<ShownTechnique> all = stretches;
    int at = firstShort(all, line);
    while (all.size() > 1 && at < all.size()) {
      int other = neighbour(all, at);
      List<ShownTechnique> next = new ArrayList<>(all);
      ShownTechnique given = all.get(at);
      next.set(at, new ShownTechnique(all.get(other).technique, given.first, given.last));
      all = alikeAsOne(next);
      at = firstShort(all, line);
    }
    return all;
  }

  private static int firstShort(List<ShownTechnique> all, Line line) {
    int i = 0;
    while (i < all.size() && !all.get(i).isShort(line)) {
      i++;
    }
    return i;
  }

  private static int neighbour(List<ShownTechnique> all, int i) {
    if (i == 0 || i == all.size() - 1) {
      return i == 0 ? 1 : i - 1;
    }
    return all.get(i + 1).strokes() > all.get(i - 1).strokes() ? i + 1 : i - 1;
  }

  private int strokes() {
    return last - first + 1;
  }

  private boolean isShort(Line line) {
    long end = last + 1 < line.count() ? line.onsetMicros(last + 1) : line.endMicros(last);
    return end - line.onsetMicros(first) < line.beatMicros(first);
  }

  private static List<ShownTechnique> alikeAsOne(List<ShownTechnique> all) {
    List<ShownTechnique> result = new ArrayList<>();
    for (ShownTechnique each : all) {
      int before = result.size() - 1;
      if (before >= 0 && result.get(before).technique.equals(each.technique)) {
        result.set(before, new ShownTechnique(each.technique, result.get(before).first, each.last));
      } else {
        result.add(each);
      }
    }
    return result;
  }

  private static int sameIn(Line whole, Line part, int stroke) {
    if (whole.equals(part)) {
      return stroke;
    }
    int low = 0;
    int high = whole.count() - 1;
    while (low < high) {
      int middle = (low + high) >>> 1;
      if (whole.onsetMicros(middle) < part.onsetMicros(stroke)) {
        low = middle + 1;
      } else {
        high = middle;
      }
    }
    return low;
  }
}

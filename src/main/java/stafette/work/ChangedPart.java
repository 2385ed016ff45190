package stafette.work;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stafette.limits.Catalogue;
import stafette.limits.Instrument;
import stafette.plan.Plan;
import stafette.plan.Player;
import stafette.score.Line;
import stafette.score.Part;
import stafette.score.Score;
import stafette.score.Stroke;
import stafette.score.ToneChoice;
import stafette.score.Voice;
import stafette.time.Bar;
import stafette.time.Span;

/**
 * The bars of one part that writing a plan would change, as they are and as they would be. What
 * would be is read back from the very text that would be written. Cue notes don't count.
 *
 * @param name as printed
 * @param instrument if the plan or the limits know it
 * @param isNew whether the score has no such part yet
 * @param bars in order, at least one
 * @param before a line for each voice that has notes from the first to the last of these bars
 * @param after the same of what would be written
 */
public record ChangedPart(
    String name,
    Optional<Instrument> instrument,
    boolean isNew,
    List<Bar> bars,
    List<Line> before,
    List<Line> after) {
  public ChangedPart {
    bars = List.copyOf(bars);
    before = List.copyOf(before);
    after = List.copyOf(after);
  }

  /** All parts that change from one score to the one that was written, from top to bottom. */
  static List<ChangedPart> all(Score now, Score then, Plan plan, Catalogue catalogue) {
    List<ChangedPart> changed = new ArrayList<>();
    for (Part part : then.parts()) {
      Optional<Part> old = now.parts().stream().filter(p -> p.id().equals(part.id())).findFirst();
      List<Bar> bars = barsThatDiffer(then, old, part);
      if (!bars.isEmpty()) {
        changed.add(
            new ChangedPart(
                part.name(),
                instrument(part, plan, catalogue),
                old.isEmpty(),
                bars,
                old.map(before -> lines(now, before, bars)).orElse(List.of()),
                lines(then, part, bars)));
      }
    }
    return changed;
  }

  private static Optional<Instrument> instrument(Part part, Plan plan, Catalogue catalogue) {
    return plan.brief().players().stream()
        .filter(player -> player.part().map(part.id()::equals).orElse(isNamed(player, part)))
        .map(Player::instrument)
        .findFirst()
        .or(() -> catalogue.of(part));
  }

  private static boolean isNamed(Player player, Part part) {
    return player.name().equalsIgnoreCase(part.name());
  }

  private static List<Bar> barsThatDiffer(Score then, Optional<Part> old, Part part) {
    List<Bar> bars = new ArrayList<>();
    for (Bar bar : then.bars()) {
      List<List<Stroke>> before = old.map(p -> strokes(p, bar.span())).orElse(List.of());
      if (!before.equals(strokes(part, bar.span()))) {
        bars.add(bar);
      }
    }
    return bars;
  }

  /** Of each voice that has some. */
  private static List<List<Stroke>> strokes(Part part, Span span) {
    return part.voices().stream()
        .map(voice -> voice.within(span))
        .filter(strokes -> !strokes.isEmpty())
        .toList();
  }

  private static List<Line> lines(Score score, Part part, List<Bar> bars) {
    Span span = new Span(bars.get(0).span().start(), bars.get(bars.size() - 1).span().end());
    List<Line> lines = new ArrayList<>();
    for (Voice voice : part.voices()) {
      List<Stroke> strokes = voice.within(span);
      if (!strokes.isEmpty()) {
        lines.add(score.line(part, voice, strokes, new ToneChoice.All()));
      }
    }
    return lines;
  }

  /** How many strokes begin in these bars now. */
  public int strokesBefore() {
    return bars.stream().mapToInt(this::strokesBefore).sum();
  }

  /** How many would. */
  public int strokesAfter() {
    return bars.stream().mapToInt(this::strokesAfter).sum();
  }

  /** How many strokes begin in a bar now. */
  public int strokesBefore(Bar bar) {
    return strokes(before, bar);
  }

  /** How many would. */
  public int strokesAfter(Bar bar) {
    return strokes(after, bar);
  }

  private static int strokes(List<Line> lines, Bar bar) {
    return (int)
        lines.stream()
            .flatMap(line -> line.strokes().stream())
            .filter(stroke -> bar.span().contains(stroke.onset()))
            .count();
  }
}

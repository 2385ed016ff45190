package stafette.cli;

import java.util.ArrayList;
import java.util.List;
import stafette.check.SegmentReport;
import stafette.check.Verdict;
import stafette.plan.GivenStretch;
import stafette.plan.Plan;
import stafette.plan.Player;
import stafette.plan.Segment;
import stafette.score.Line;
import stafette.time.Bar;
import stafette.time.Span;

/**
 * A plan as a timeline of characters: bars and beats across, a lane for each player, wrapped into
 * systems. The darker a cell, the nearer its player is to the limit; where two players overlap,
 * both lanes are solid.
 */
final class TimelineText {
  private static final int MOST_COLUMNS_PER_BEAT = 4;

  private final Plan plan;
  private final Verdict verdict;
  private final int width;
  private final Shade ink;
  private final int nameWidth;
  private final int perBeat;

  /** How cells look. */
  enum Shade {
    BLOCKS("░▒▓█", '╱', '·'),
    ASCII(".:=#", '/', ' ');

    private final String strain;
    private final char busy;
    private final char beat;

    Shade(String strain, char busy, char beat) {
      this.strain = strain;
      this.busy = busy;
      this.beat = beat;
    }

    /** Light up to 70 % of the limit, middle to 90 %, dark to 100 %. */
    private char of(double share) {
      return strain.charAt(share <= 0.7 ? 0 : share <= 0.9 ? 1 : 2);
    }

    private char overlap() {
      return strain.charAt(3);
    }
  }

  /**
   * A timeline to be printed.
   *
   * @param width how many characters a row may have
   */
  TimelineText(Plan plan, Verdict verdict, int width, Shade ink) {
    this.plan = plan;
    this.verdict = verdict;
    this.width = width;
    this.ink = ink;
    nameWidth =
        plan.brief().players().stream().mapToInt(player -> player.name().length()).max().orElse(0)
            + 2;
    perBeat = columnsPerBeat();
  }

  String text() {
    StringBuilder out = new StringBuilder();
    for (List<Bar> system : systems()) {
      print(system, out);
      out.append('\n');
    }
    return out.append(legend()).toString();
  }

  private String legend() {
    return "%s up to 70 %% of the limit  %s to 90 %%  %s to 100 %%  %s two players together  %s plays something else%n"
        .formatted(ink.of(0), ink.of(0.8), ink.of(1), ink.overlap(), ink.busy);
  }

  private List<List<Bar>> systems() {
    List<List<Bar>> systems = new ArrayList<>();
    List<Bar> current = new ArrayList<>();
    int room = width - nameWidth;
    int used = 0;
    for (Bar bar : bars()) {
      int columns = columnsOf(bar).size() + 1;
      if (!current.isEmpty() && used + columns > room) {
        systems.add(current);
        current = new ArrayList<>();
        used = 0;
      }
      current.add(bar);
      used += columns;
    }
    systems.add(current);
    return systems;
  }

  private List<Bar> bars() {
    Line line = plan.line();
    int first = line.bars().at(line.span().start()).index();
    int last = line.bars().at(line.stroke(line.count() - 1).onset()).index();
    List<Bar> bars = new ArrayList<>();
    for (int i = first; i <= last; i++) {
      bars.add(line.bars().get(i));
    }
    return bars;
  }

  private int columnsPerBeat() {
    int mostBeats = bars().stream().mapToInt(bar -> bar.beats().size()).max().orElse(1);
    int fitting = (width - nameWidth - 1) / mostBeats;
    return Math.max(1, Math.min(MOST_COLUMNS_PER_BEAT, fitting));
  }

  private List<Span> columnsOf(Bar bar) {
    List<Span> columns = new ArrayList<>();
    for (Span beat : bar.beats()) {
      for (int i = 0; i < perBeat; i++) {
        columns.add(
            new Span(
                beat.start().plus(beat.length().times(part(i, perBeat))),
                beat.start().plus(beat.length().times(part(i + 1, perBeat)))));
      }
    }
    return columns;
  }

  private static stafette.time.Rational part(int index, int of) {
    return stafette.time.Rational.of(index, of);
  }

  private void print(List<Bar> system, StringBuilder out) {
    StringBuilder numbers = new StringBuilder(" ".repeat(nameWidth));
    StringBuilder beats = new StringBuilder(" ".repeat(nameWidth));
    for (Bar bar : system) {
      int columns = columnsOf(bar).size();
      numbers.append(fitted(bar.number(), columns + 1));
      beats.append('|');
      for (int i = 0; i < columns; i++) {
        beats.append(i > 0 && i % perBeat == 0 ? '\'' : ' ');
      }
    }
    out.append(numbers.toString().stripTrailing()).append('\n');
    out.append(beats.append("|\n"));
    for (int player = 0; player < plan.brief().players().size(); player++) {
      out.append(fitted(plan.brief().players().get(player).name(), nameWidth));
      for (Bar bar : system) {
        out.append('|');
        for (Span column : columnsOf(bar)) {
          out.append(cell(player, column));
        }
      }
      out.append("|\n");
    }
  }

  private static String fitted(String text, int columns) {
    return text.length() >= columns
        ? text.substring(0, Math.max(1, columns - 1)) + " "
        : text + " ".repeat(columns - text.length());
  }

  private char cell(int player, Span column) {
    for (SegmentReport report : verdict.segments()) {
      Segment segment = report.segment();
      if (segment.player() == player && spanOf(segment).overlaps(column)) {
        return isOverlap(segment, column) ? ink.overlap() : ink.of(report.strain());
      }
    }
    return isBusy(plan.brief().players().get(player), column) ? ink.busy : ink.beat;
  }

  /** Whether the turn before or after is played there as well. */
  private boolean isOverlap(Segment segment, Span column) {
    return plan.segments().stream()
        .filter(other -> other.relay() == segment.relay() && other.first() != segment.first())
        .anyMatch(other -> spanOf(other).overlaps(column));
  }

  private Span spanOf(Segment segment) {
    Line line = plan.line(segment);
    return new Span(line.stroke(segment.first()).onset(), line.stroke(segment.last()).span().end());
  }

  private boolean isBusy(Player player, Span column) {
    long from = plan.line().micros(column.start());
    long to = plan.line().micros(column.end());
    for (GivenStretch busy : player.busy()) {
      if (busy.fromMicros() < to && from < busy.toMicros()) {
        return true;
      }
    }
    return false;
  }
}

package stafette.picture.ribbon;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import stafette.Invented;
import stafette.check.Judge;
import stafette.check.TempoWindow;
import stafette.limits.Instrument;
import stafette.picture.ink.Drawing;
import stafette.picture.ink.Paper;
import stafette.plan.Brief;
import stafette.plan.GivenStretch;
import stafette.plan.Hocket;
import stafette.plan.Pattern;
import stafette.plan.Plan;
import stafette.plan.Player;
import stafette.plan.Segment;
import stafette.score.Dynamic;
import stafette.score.Line;
import stafette.score.Manner;
import stafette.score.Pitch;
import stafette.score.Step;
import stafette.score.Stroke;
import stafette.score.Tuplet;
import stafette.score.Value;
import stafette.time.Length;
import stafette.time.Position;
import stafette.time.Span;

/** Relays made up for pictures. */
public final class InventedRelays {
  private InventedRelays() {}

  /** One player who plays a whole line. */
  static Plan alone(Line line) {
    return new Plan(
        new Brief(line, players(1, line), Invented.rules()),
        List.of(new Segment(0, 0, 0, line.count() - 1)));
  }

  /** Players in turn, so many bars each, handing over on the first note of a bar. */
  public static Plan rotation(int bars, int players, int barsEach) {
    Line line = sextuplets(bars);
    List<Segment> segments = new ArrayList<>();
    int each = barsEach * 24;
    for (int i = 0; i * each < line.count(); i++) {
      int last = Math.min(line.count() - 1, (i + 1) * each);
      if (i * each < last) {
        segments.add(new Segment(i % players, 0, i * each, last));
      }
    }
    return new Plan(new Brief(line, players(players, line), Invented.rules()), segments);
  }

  /** Player 1 alone, then 2 and 3 in a hocket, then player 1 again; sharing one note each time. */
  public static Plan hocket(Hocket unit) {
    Line line = Invented.line(8 * 16, 4, 110, InventedRelays::pitch);
    List<Segment> segments =
        List.of(
            new Segment(0, 0, 0, 48),
            new Segment(0, 1, 0, 48, 96, Pattern.ODD),
            new Segment(0, 2, 0, 48, 96, Pattern.EVEN),
            new Segment(0, 0, 96, line.count() - 1));
    return new Plan(
        new Brief(List.of(line), players(3, line), Invented.rules().with(unit)), segments);
  }

  /** Two relays of one line, four players. */
  public static Plan doubled() {
    Line line = Invented.line(8 * 16, 4, 110, InventedRelays::pitch);
    List<Segment> segments =
        List.of(
            new Segment(0, 0, 0, 0, 48, Pattern.ALL),
            new Segment(0, 1, 0, 48, line.count() - 1, Pattern.ALL),
            new Segment(1, 2, 0, 0, 80, Pattern.ALL),
            new Segment(1, 3, 0, 80, line.count() - 1, Pattern.ALL));
    return new Plan(new Brief(List.of(line, line), players(4, line), Invented.rules()), segments);
  }

  public static List<Drawing> drawn(Plan plan, Paper paper, boolean notes) {
    return Timeline.of(
        RelayContent.of(plan, Judge.judge(plan), TempoWindow.of(plan)), paper, notes);
  }

  private static Line sextuplets(int bars) {
    List<Stroke> strokes = new ArrayList<>();
    for (int i = 0; i < bars * 24; i++) {
      Span beat = Span.of(Position.ofQuarters(i / 6, 1), Length.QUARTER);
      Tuplet six = new Tuplet(6, 4, beat);
      strokes.add(
          new Stroke(
              Position.ofQuarters(i, 6),
              List.of(pitch(i)),
              List.of(new Value(Length.ofQuarters(1, 6), Optional.of(six))),
              List.of(),
              false,
              false,
              true,
              Set.of(),
              Dynamic.MF,
              Manner.PLAIN));
    }
    return Invented.lineOf(strokes, 92);
  }

  private static Pitch pitch(int i) {
    return new Pitch(Step.values()[(i / 5) % 7], i % 11 == 3 ? 1 : 0, 5);
  }

  /** The second player has a passage of its own in the middle. */
  private static List<Player> players(int count, Line line) {
    Instrument pipe = Invented.instrument("pipe");
    long end = line.endMicros(line.count() - 1);
    return IntStream.range(0, count)
        .mapToObj(
            i -> {
              Player free =
                  Invented.player("Player " + (i + 1), pipe, 9.5 + i % 4, 7.5 + i % 3, 40, 8);
              GivenStretch own = new GivenStretch(end / 2, end / 2 + end / 10, List.of(end / 2));
              return i == 1
                  ? new Player(free.name(), pipe, Optional.of("P2"), free.skills(), List.of(own))
                  : free;
            })
        .toList();
  }
}

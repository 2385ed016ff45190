package stafette.sound;

import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import stafette.Invented;
import stafette.limits.Instrument;
import stafette.plan.Brief;
import stafette.plan.Plan;
import stafette.plan.Player;
import stafette.plan.Segment;
import stafette.score.Line;
import stafette.score.Stroke;
import stafette.time.Length;
import stafette.time.Position;

/** Invented plans to listen to. */
final class Heard {
  static final Manner MACHINE = new Manner(false, 1, Map.of());
  static final Manner HUMAN = new Manner(true, 1, Map.of());

  private Heard() {}

  /** Two equal flutes: the first up to a stroke, the second from another one on. */
  static Plan two(Line line, int last, int first) {
    return new Plan(
        brief(line, 2),
        List.of(new Segment(0, 0, 0, last), new Segment(1, 0, first, line.count() - 1)));
  }

  static Brief brief(Line line, int players) {
    Instrument flute = Invented.instrument("flute");
    return Invented.brief(
        line,
        IntStream.rangeClosed(1, players)
            .mapToObj(i -> Invented.player("Flute " + i, flute, 13, 8, 20, 8))
            .toArray(Player[]::new));
  }

  /**
   * Eight eighths, four beats of rest, eight eighths; at quarter = 120, so 4 s, of them 2 of rest.
   */
  static Line restingLine() {
    List<Stroke> strokes =
        IntStream.range(0, 16)
            .mapToObj(i -> Position.ofQuarters(i < 8 ? i : i + 8, 2))
            .map(onset -> Invented.stroke(onset, Length.ofQuarters(1, 2), Invented.A4))
            .toList();
    return Invented.lineOf(strokes, 120);
  }
}

package stafette.split;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.Random;
import java.util.stream.IntStream;
import stafette.Invented;
import stafette.limits.Instrument;
import stafette.plan.Brief;
import stafette.plan.Favour;
import stafette.plan.GivenStretch;
import stafette.plan.Hocket;
import stafette.plan.OverlapRule;
import stafette.plan.Player;
import stafette.plan.Rules;
import stafette.score.Line;
import stafette.score.Stroke;
import stafette.time.Length;
import stafette.time.Position;

/**
 * Random briefs of several relays, small enough to try every plan: lines with silences, of which
 * one begins or ends before another, and players who are seldom spent, so that most have plans.
 */
final class RelayBriefs {
  private static final Instrument FLUTE = Invented.instrument("flute");

  private final Random random;

  private RelayBriefs(long seed) {
    this.random = new Random(seed);
  }

  /** Relays of different lines, without hockets. */
  static Brief unlike(long seed, int strokes, int relays) {
    RelayBriefs briefs = new RelayBriefs(seed);
    Line line = briefs.line(strokes);
    List<Line> lines = IntStream.range(0, relays).mapToObj(relay -> briefs.partOf(line)).toList();
    return briefs.brief(lines);
  }

  /** Relays of one line, without hockets. */
  static Brief alike(long seed, int strokes, int relays) {
    RelayBriefs briefs = new RelayBriefs(seed);
    Line line = briefs.line(strokes);
    return briefs.brief(IntStream.range(0, relays).mapToObj(relay -> line).toList());
  }

  /** The same brief where hockets are allowed. */
  static Brief hocketed(Brief brief, long seed) {
    Hocket hocket = Hocket.values()[1 + Math.floorMod(seed, 3)];
    return brief.with(brief.rules().with(hocket));
  }

  private Line line(int count) {
    List<Stroke> strokes = new ArrayList<>();
    int sixteenth = 0;
    for (int i = 0; i < count; i++) {
      strokes.add(
          Invented.stroke(Position.ofQuarters(sixteenth, 4), Length.ofQuarters(1, 4), Invented.A4));
      sixteenth += 1 + (random.nextInt(4) == 0 ? random.nextInt(8) : 0);
    }
    return Invented.lineOf(strokes, 60 + random.nextInt(60));
  }

  private Line partOf(Line line) {
    int from = random.nextInt(line.count());
    int to = from + 1 + random.nextInt(line.count() - from);
    List<Integer> kept =
        IntStream.range(0, line.count())
            .filter(i -> i == from || (i > from && i < to && random.nextInt(4) > 0))
            .boxed()
            .toList();
    return line.only(kept, false);
  }

  private Brief brief(List<Line> lines) {
    List<Player> players = new ArrayList<>();
    for (int i = 0; i <= lines.size(); i++) {
      boolean twin = i > 0 && random.nextBoolean();
      Player one = twin ? players.get(i - 1) : player();
      players.add(new Player("Flute " + i, FLUTE, one.part(), one.skills(), one.busy()));
    }
    OptionalInt most =
        random.nextBoolean() ? OptionalInt.empty() : OptionalInt.of(1 + random.nextInt(3));
    Rules usual = Invented.rules();
    return new Brief(
        lines,
        players,
        new Rules(
            usual.assurance(),
            new OverlapRule(1, most),
            random.nextInt(3) == 0 ? 0.3 : 0,
            Favour.BALANCE,
            Invented.WEIGHTS));
  }

  private Player player() {
    Player free =
        Invented.player(
            "Flute",
            FLUTE,
            13,
            2 + random.nextInt(6),
            2 + random.nextInt(6),
            1 + random.nextInt(4));
    long from = random.nextInt(3_000_000);
    List<GivenStretch> busy =
        random.nextInt(3) == 0
            ? List.of(new GivenStretch(from, from + 300_000, List.of(from)))
            : List.of();
    return new Player(free.name(), FLUTE, free.part(), free.skills(), busy);
  }
}

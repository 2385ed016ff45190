package stafette.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Stream;
import stafette.Invented;
import stafette.limits.Assurance;
import stafette.limits.Breath;
import stafette.limits.Instrument;
import stafette.limits.Range;
import stafette.plan.Brief;
import stafette.plan.Favour;
import stafette.plan.GivenStretch;
import stafette.plan.OverlapRule;
import stafette.plan.Plan;
import stafette.plan.Player;
import stafette.plan.Rules;
import stafette.plan.Segment;
import stafette.score.Line;
import stafette.score.Pitch;
import stafette.score.Step;
import stafette.score.Stroke;
import stafette.time.Length;
import stafette.time.Position;

/** Plans made up at random: lines with rests and staccato, winds and others, given passages. */
public final class RandomPlans {
  private final Random random;

  private RandomPlans(long seed) {
    random = new Random(seed);
  }

  /** Any plan whose segments follow one another in shape; rates, rest and breath are left open. */
  public static Plan any(long seed) {
    return new RandomPlans(seed).plan();
  }

  /** A plan that the judge accepts. */
  public static Plan holding(long seed) {
    RandomPlans plans = new RandomPlans(seed);
    return Stream.generate(plans::plan)
        .filter(plan -> Judge.judge(plan).holds())
        .findFirst()
        .orElseThrow();
  }

  private Plan plan() {
    Line line = line();
    int count = 2 + random.nextInt(3);
    List<Player> players = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      players.add(player("Player " + (i + 1), line));
    }
    Rules rules =
        new Rules(
            Assurance.DEFAULT,
            OverlapRule.DEFAULT,
            random.nextInt(3) * 0.2,
            Favour.BALANCE,
            Invented.WEIGHTS);
    return new Plan(new Brief(line, players, rules), segments(line, count));
  }

  private Line line() {
    List<Stroke> strokes = new ArrayList<>();
    int beats = 6 + random.nextInt(20);
    for (int beat = 0; beat < beats; beat++) {
      int perBeat = List.of(2, 3, 4, 4, 6).get(random.nextInt(5));
      boolean silent = beat > 0 && random.nextInt(5) == 0;
      boolean shortly = random.nextInt(3) == 0;
      for (int i = 0; !silent && i < perBeat; i++) {
        strokes.add(
            Invented.stroke(
                Position.ofQuarters((long) beat * perBeat + i, perBeat),
                Length.ofQuarters(1, shortly ? 2L * perBeat : perBeat),
                new Pitch(Step.values()[random.nextInt(3)], 0, 5)));
      }
    }
    return Invented.lineOf(strokes, 50 + random.nextInt(80));
  }

  private Player player(String name, Line line) {
    Optional<Breath> breath =
        random.nextBoolean()
            ? Optional.of(
                new Breath(1 + 6 * random.nextDouble(), 0.3, 1 + random.nextDouble(), Map.of()))
            : Optional.empty();
    Instrument pipe = Invented.instrument("pipe", new Range(60, 96), breath);
    double peak = random.nextInt(3) == 0 ? 60 : 6 + 14 * random.nextDouble();
    Player free =
        Invented.player(
            name,
            pipe,
            peak,
            peak * (0.4 + 0.5 * random.nextDouble()),
            2 + 10 * random.nextDouble(),
            2 + 6 * random.nextDouble());
    return random.nextInt(3) > 0
        ? free
        : new Player(name, pipe, Optional.of("P9"), free.skills(), List.of(early(), late(line)));
  }

  private GivenStretch early() {
    return busy(-(long) (random.nextDouble() * 3e6) - 2_000_000, 2_000_000);
  }

  private GivenStretch late(Line line) {
    long end = line.endMicros(line.count() - 1);
    return busy((long) (end * (0.3 + random.nextDouble())), 500_000L + random.nextInt(4_000_000));
  }

  private GivenStretch busy(long from, long lasts) {
    List<Long> strokes = new ArrayList<>();
    long gap = 60_000L + random.nextInt(200_000);
    for (long at = from; at < from + lasts; at += gap) {
      strokes.add(at);
    }
    return new GivenStretch(from, from + lasts, strokes);
  }

  private List<Segment> segments(Line line, int players) {
    List<Segment> result = new ArrayList<>();
    int first = 0;
    int player = random.nextInt(players);
    while (first < line.count() - 1) {
      int last = Math.min(line.count() - 1, first + 3 + random.nextInt(20));
      result.add(new Segment(player, 0, first, last));
      player = (player + 1 + random.nextInt(players - 1)) % players;
      boolean over = last + 1 < line.count() && line.restsBefore(last + 1);
      first = over ? last + 1 : last;
    }
    if (first < line.count() && result.get(result.size() - 1).last() < line.count() - 1) {
      result.add(new Segment(player, 0, first, line.count() - 1));
    }
    return result;
  }
}

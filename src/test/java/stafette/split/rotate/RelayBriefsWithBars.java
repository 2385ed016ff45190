package stafette.split.rotate;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Random;
import stafette.Invented;
import stafette.limits.Breath;
import stafette.limits.Instrument;
import stafette.limits.Range;
import stafette.plan.Brief;
import stafette.plan.GivenStretch;
import stafette.plan.Margin;
import stafette.plan.OverlapRule;
import stafette.plan.Player;
import stafette.plan.Rules;
import stafette.score.Line;
import stafette.score.LineSource;
import stafette.score.Stroke;
import stafette.score.ToneChoice;
import stafette.time.Bars;
import stafette.time.BeatUnit;
import stafette.time.Length;
import stafette.time.Meter;
import stafette.time.Position;
import stafette.time.Rational;
import stafette.time.TempoMap;
import stafette.time.TempoMark;

/**
 * Random briefs of some bars that invite to take turns: players who tire or run out of breath after
 * a bar or a few, many of them alike; pickups, rests, and bars that no unit divides.
 */
final class RelayBriefsWithBars {
  private final Random random;

  private RelayBriefsWithBars(long seed) {
    random = new Random(seed);
  }

  static Brief of(long seed) {
    return new RelayBriefsWithBars(seed).brief();
  }

  private Brief brief() {
    int perBeat = 2 + random.nextInt(2);
    int tempo = 100 + random.nextInt(100);
    Line line = line(perBeat, tempo);
    double rate = perBeat * tempo / 60.0;
    List<Player> players = new ArrayList<>();
    int count = 2 + random.nextInt(3);
    Player kind = player("player 0", rate);
    for (int i = 0; i < count; i++) {
      kind = random.nextInt(5) == 0 ? player("player " + i, rate) : kind;
      List<GivenStretch> busy = random.nextInt(8) == 0 ? busy(line) : List.of();
      Player own =
          new Player("player " + i, kind.instrument(), Optional.empty(), kind.skills(), busy);
      players.add(random.nextInt(5) == 0 ? own.proposed() : own);
    }
    int min = random.nextInt(5) == 0 ? 2 : 1;
    Rules rules =
        new Rules(
            Invented.rules().assurance(),
            new OverlapRule(min, OptionalInt.empty()),
            random.nextInt(3) * 0.2,
            Invented.rules().favour(),
            Invented.WEIGHTS);
    return new Brief(line, players, rules.with(new Margin(random.nextInt(5))));
  }

  private Line line(int perBeat, int tempo) {
    boolean compound = random.nextInt(4) == 0;
    Meter meter = compound ? Meter.of(List.of(6), 8) : Meter.COMMON;
    Length step = Length.ofQuarters(1, perBeat);
    int inBar = (compound ? 3 : 4) * perBeat;
    int from = random.nextInt(3) == 0 ? random.nextInt(inBar) : 0;
    int strokes = inBar * (2 + random.nextInt(9)) + random.nextInt(4);
    List<Stroke> list = new ArrayList<>();
    for (int i = 0; i < strokes; i++) {
      boolean silent = i > 0 && i < strokes - 1 && random.nextInt(40) == 0;
      if (silent) {
        i += perBeat;
      }
      list.add(Invented.stroke(Position.ofQuarters(from + i, perBeat), step, Invented.A4));
    }
    int bars = 2 + (from + strokes + perBeat) / inBar;
    return new Line(
        new LineSource("P1", "Piano", 1, "1", new ToneChoice.All(), 0, bars - 1),
        list,
        Collections.nCopies(list.size(), 0),
        Bars.regular(meter, bars),
        TempoMap.constant(new TempoMark(BeatUnit.QUARTER, Rational.of(tempo))));
  }

  private Player player(String name, double rate) {
    Optional<Breath> breath =
        random.nextInt(3) == 0
            ? Optional.of(new Breath(3 + 6 * random.nextDouble(), 0.3, 1, Map.of()))
            : Optional.empty();
    Instrument pipe = Invented.instrument("pipe " + random.nextInt(2), new Range(60, 96), breath);
    double sustained = rate * (0.5 + 0.45 * random.nextDouble());
    double seconds = 1.5 + 8 * random.nextDouble();
    return Invented.player(
        name,
        pipe,
        rate * (1.07 + 0.4 * random.nextDouble()),
        sustained,
        (rate - sustained) * seconds,
        0.5 + 3 * random.nextDouble());
  }

  private List<GivenStretch> busy(Line line) {
    long from = (long) (line.endMicros(line.count() - 1) * (random.nextDouble() * 1.5 - 0.3));
    return List.of(new GivenStretch(from, from + 700_000, List.of(from, from + 200_000)));
  }
}

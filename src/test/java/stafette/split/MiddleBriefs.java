package stafette.split;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Random;
import java.util.Set;
import java.util.stream.IntStream;
import stafette.Invented;
import stafette.limits.Act;
import stafette.limits.Assurance;
import stafette.limits.Breath;
import stafette.limits.Capability;
import stafette.limits.Condition;
import stafette.limits.Demand;
import stafette.limits.Groups;
import stafette.limits.Instrument;
import stafette.limits.Limit;
import stafette.limits.Range;
import stafette.limits.Skill;
import stafette.limits.Source;
import stafette.limits.Technique;
import stafette.plan.Brief;
import stafette.plan.Favour;
import stafette.plan.GivenStretch;
import stafette.plan.Margin;
import stafette.plan.OverlapRule;
import stafette.plan.Player;
import stafette.plan.Rules;
import stafette.score.Dynamic;
import stafette.score.Grace;
import stafette.score.Line;
import stafette.score.LineSource;
import stafette.score.Manner;
import stafette.score.Pitch;
import stafette.score.Step;
import stafette.score.Stroke;
import stafette.score.ToneChoice;
import stafette.score.Transposition;
import stafette.score.Value;
import stafette.time.Bars;
import stafette.time.BeatUnit;
import stafette.time.Length;
import stafette.time.Meter;
import stafette.time.Position;
import stafette.time.Rational;
import stafette.time.TempoMap;
import stafette.time.TempoMark;

/**
 * Random briefs of 12 to 24 strokes and 2 to 4 players, too many plans to try them all: winds that
 * breathe, strings, harps with twin strings and mallets, soon tired, some of them busy, on a line
 * that may rest. No sound goes on beyond the next onset.
 */
public final class MiddleBriefs {
  private static final Step[] NATURALS = {Step.E, Step.F, Step.G, Step.A, Step.B};

  private final Random random;

  private MiddleBriefs(long seed) {
    this.random = new Random(seed);
  }

  /** The same seed gives the same brief. */
  public static Brief of(long seed) {
    return new MiddleBriefs(seed).brief();
  }

  private Brief brief() {
    Line line = line();
    List<Player> players = new ArrayList<>();
    int count = List.of(2, 3, 3, 4, 4).get(random.nextInt(5));
    for (int i = 0; i < count; i++) {
      String name = "player " + i;
      players.add(
          i > 0 && oneIn(3) ? named(players.get(i - 1), name) : player(name, instrument(i), line));
    }
    int min = oneIn(3) ? 2 + random.nextInt(2) : 1;
    OptionalInt max = oneIn(2) ? OptionalInt.of(min + random.nextInt(3)) : OptionalInt.empty();
    Rules rules =
        new Rules(
            Assurance.DEFAULT,
            new OverlapRule(min, max),
            oneIn(3) ? 0 : between(20, 300) / 1000.0,
            Favour.BALANCE,
            Invented.WEIGHTS.favouring(Favour.values()[random.nextInt(Favour.values().length)]));
    Margin margin = oneIn(2) ? Margin.NONE : new Margin(between(1, 10));
    return new Brief(line, SmallBriefs.someProposed(players, random), rules.with(margin));
  }

  private Line line() {
    int strokes = between(12, 24);
    boolean threes = oneIn(3);
    boolean slurs = oneIn(4);
    List<Stroke> list = new ArrayList<>();
    Position at = Position.ofQuarters(random.nextInt(3), 1);
    boolean slurred = false;
    int step = 2;
    for (int i = 0; i < strokes; i++) {
      Length gap = Length.ofQuarters(1, threes ? 3 : 4);
      boolean rests = oneIn(12);
      Length sound = rests || oneIn(5) ? gap.times(Rational.of(2, 3)) : gap;
      Length next = rests ? gap.times(Rational.of(between(2, 8))) : gap;
      step = oneIn(3) ? random.nextInt(NATURALS.length) : step;
      boolean slurGoesOn = slurs && !rests && i < strokes - 1 && oneIn(2);
      list.add(stroke(at, sound, new Pitch(NATURALS[step], 0, 4), slurred, slurGoesOn));
      slurred = slurGoesOn;
      at = at.plus(next);
    }
    return lineOf(list, at);
  }

  private Stroke stroke(Position at, Length sound, Pitch pitch, boolean slurred, boolean goesOn) {
    return new Stroke(
        at,
        List.of(pitch),
        List.of(new Value(sound, Optional.empty())),
        oneIn(15) ? List.of(new Grace(List.of(Invented.A4), true)) : List.of(),
        slurred,
        goesOn,
        !oneIn(30),
        Set.of(),
        oneIn(5) ? Dynamic.FF : Dynamic.MF,
        Manner.PLAIN);
  }

  private Line lineOf(List<Stroke> strokes, Position end) {
    int bars = 2 + end.quarters().dividedBy(3).floor().intValue();
    Map<Position, TempoMark> tempi =
        oneIn(3)
            ? Map.of(Position.START, mark(), Position.ofQuarters(3, 1), mark())
            : Map.of(Position.START, mark());
    return new Line(
        new LineSource("P1", "Piano", 1, "1", new ToneChoice.All(), 0, bars - 1),
        strokes,
        strokes.stream().map(s -> 2 * random.nextInt(5)).toList(),
        Bars.regular(oneIn(2) ? Meter.COMMON : Meter.of(List.of(6), 8), bars),
        TempoMap.of(tempi));
  }

  private TempoMark mark() {
    return new TempoMark(BeatUnit.QUARTER, Rational.of(between(90, 170)));
  }

  private Instrument instrument(int number) {
    Act act =
        List.of(Act.TONGUE, Act.TONGUE, Act.BOW, Act.STRING, Act.MALLET).get(random.nextInt(5));
    String family =
        switch (act) {
          case TONGUE -> oneIn(2) ? "woodwind" : "brass";
          case BOW, WOOD, PLUCK -> "strings";
          case STRING -> "harp";
          case KEY, MALLET -> "percussion";
        };
    Optional<Breath> breath = act == Act.TONGUE ? Optional.of(breath()) : Optional.empty();
    Range range = new Range(oneIn(6) ? 65 : 60, oneIn(6) ? 72 : 80);
    List<Technique> techniques = new ArrayList<>();
    techniques.add(technique("first technique", act, Groups.ANY, false));
    if (oneIn(2)) {
      techniques.add(
          technique(
              "second technique", act, oneIn(2) ? Groups.THREES : Groups.ANY, act == Act.STRING));
    }
    return new Instrument(
        "instrument " + number,
        List.of(),
        family,
        Optional.of(range),
        Optional.of(new Range(range.low() + 2, range.high() - 4)),
        Transposition.NONE,
        "G2",
        between(86, 96),
        breath,
        74,
        techniques,
        Source.COMMON_PRACTICE);
  }

  private Breath breath() {
    return new Breath(
        between(607, 2207) / 1000.0,
        between(53, 297) / 1000.0,
        between(703, 3503) / 1000.0,
        oneIn(2) ? Map.of() : Map.of(Condition.LOUD, 1.37));
  }

  private Technique technique(String name, Act act, Groups groups, boolean twins) {
    return new Technique(
        name,
        act,
        Technique.Pitches.ANY,
        Technique.SlurUse.ANY,
        groups,
        twins,
        between(1, 2),
        true,
        new Limit(
            between(11, 12), 1, between(9, 10), OptionalDouble.empty(), 8, OptionalDouble.empty()),
        0,
        oneIn(2) ? Map.of() : Map.of(Condition.HIGH_REGISTER, 0.93, Condition.LEAP, 0.91),
        Source.COMMON_PRACTICE,
        "");
  }

  private static Player named(Player player, String name) {
    return new Player(name, player.instrument(), player.part(), player.skills(), player.busy());
  }

  private Player player(String name, Instrument instrument, Line line) {
    int recoveryMillis = between(307, 2203);
    List<Skill> skills =
        instrument.techniques().stream()
            .map(technique -> new Skill(technique, capability(line, recoveryMillis)))
            .toList();
    return new Player(
        name, instrument, Optional.empty(), skills, oneIn(4) ? busy(line) : List.of());
  }

  /** Fast enough for a moment as a rule, never for the whole line. */
  private Capability capability(Line line, int recoveryMillis) {
    double rate = Demand.usualRatePerSecond(line);
    int peakMilli = (int) (rate * between(oneIn(8) ? 800 : 1070, 1800));
    int sustainedMilli = oneIn(12) ? 0 : (int) (rate * between(251, 853));
    int movingMilli = oneIn(4) ? (int) (rate * between(1010, 1900)) : Capability.UNLIMITED;
    return new Capability(
        peakMilli, sustainedMilli, between(1_203, 4_507), recoveryMillis, movingMilli);
  }

  private List<GivenStretch> busy(Line line) {
    List<GivenStretch> result = new ArrayList<>();
    long end = line.endMicros(line.count() - 1);
    long at = -between(1, 900_000);
    while (at < end + 500_000) {
      long to = at + between(50_003, 450_000);
      long start = at;
      List<Long> strokes =
          IntStream.range(0, between(1, 5))
              .mapToObj(i -> start + i * 70_003L)
              .filter(onset -> onset < to)
              .toList();
      result.add(new GivenStretch(at, to, strokes, oneIn(3) ? between(100_003, 900_007) : 0));
      at = to + between(450_007, 3_000_000);
    }
    return Collections.unmodifiableList(result);
  }

  private boolean oneIn(int count) {
    return random.nextInt(count) == 0;
  }

  /** Both ends included. */
  private int between(int least, int most) {
    return least + random.nextInt(most - least + 1);
  }
}

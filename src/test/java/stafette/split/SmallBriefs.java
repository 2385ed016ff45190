package stafette.split;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Random;
import java.util.Set;
import stafette.Invented;
import stafette.limits.Act;
import stafette.limits.Assurance;
import stafette.limits.Breath;
import stafette.limits.Capability;
import stafette.limits.Condition;
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
import stafette.plan.Lock;
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
 * Random briefs small enough to try every plan: everything that the model knows, near its limits.
 */
public final class SmallBriefs {
  private final Random random;

  private SmallBriefs(long seed) {
    this.random = new Random(seed);
  }

  public static Brief of(long seed, int mostStrokes, int mostPlayers) {
    return new SmallBriefs(seed).brief(mostStrokes, mostPlayers);
  }

  /** One or two locks of any kind. */
  static List<Lock> locks(Brief brief, Random random) {
    List<Lock> locks = new ArrayList<>();
    for (int i = 0; i < 1 + random.nextInt(2); i++) {
      int relay = random.nextInt(brief.lines().size());
      int first = random.nextInt(brief.line(relay).count());
      int last = first + random.nextInt(brief.line(relay).count() - first);
      int player = random.nextInt(brief.players().size());
      locks.add(
          switch (random.nextInt(4)) {
            case 0 -> new Lock.At(relay, first, random.nextInt(6) == 0 ? first - 1 : last);
            case 1 -> new Lock.Exactly(relay, player, skill(random), first, last);
            case 2 -> new Lock.In(relay, player, first, last);
            default -> new Lock.Out(relay, player, first, last);
          });
    }
    return locks;
  }

  private static OptionalInt skill(Random random) {
    return random.nextBoolean() ? OptionalInt.empty() : OptionalInt.of(0);
  }

  private Brief brief(int mostStrokes, int mostPlayers) {
    Line line = line(4 + random.nextInt(mostStrokes - 3));
    List<Instrument> instruments = new ArrayList<>();
    for (int i = 0; i < 1 + random.nextInt(2); i++) {
      instruments.add(instrument("instrument " + i));
    }
    List<Player> players = new ArrayList<>();
    for (int i = 0; i < 2 + random.nextInt(mostPlayers - 1); i++) {
      boolean twin = i > 0 && random.nextInt(3) == 0;
      players.add(
          twin
              ? named(players.get(i - 1), "player " + i)
              : player("player " + i, instruments.get(random.nextInt(instruments.size())), line));
    }
    int min = 1 + (random.nextInt(3) == 0 ? random.nextInt(3) : 0);
    OptionalInt max =
        random.nextBoolean() ? OptionalInt.empty() : OptionalInt.of(min + random.nextInt(2));
    double ready = random.nextInt(2) == 0 ? 0 : random.nextInt(300) / 1000.0;
    Rules rules =
        new Rules(
            Assurance.DEFAULT,
            new OverlapRule(min, max),
            ready,
            Favour.BALANCE,
            Invented.WEIGHTS.favouring(Favour.values()[random.nextInt(Favour.values().length)]));
    Margin margin = random.nextBoolean() ? Margin.NONE : new Margin(1 + random.nextInt(12));
    return new Brief(line, someProposed(players, random), rules.with(margin));
  }

  /** Some of the players as if the program had proposed them. */
  static List<Player> someProposed(List<Player> players, Random random) {
    boolean all = random.nextInt(3) == 0;
    return players.stream()
        .map(player -> all || random.nextInt(4) == 0 ? player.proposed() : player)
        .toList();
  }

  private static Player named(Player player, String name) {
    return new Player(name, player.instrument(), player.part(), player.skills(), player.busy());
  }

  private Line line(int strokes) {
    List<Stroke> list = new ArrayList<>();
    List<Integer> cover = new ArrayList<>();
    Position at = Position.ofQuarters(random.nextInt(5), 2);
    boolean threes = random.nextInt(4) == 0;
    boolean slurring = random.nextInt(3) == 0;
    boolean slurOpen = false;
    int midi = 64;
    for (int i = 0; i < strokes; i++) {
      Length gap =
          threes
              ? Length.ofQuarters(1, 3)
              : Length.ofQuarters(
                  1 + (random.nextInt(6) == 0 ? random.nextInt(14) : random.nextInt(2)), 4);
      Length sound =
          random.nextInt(4) == 0 ? gap.times(Rational.of(1 + random.nextInt(4), 4)) : gap;
      midi = random.nextInt(3) == 0 ? 60 + random.nextInt(14) : midi;
      boolean slurred = slurOpen;
      slurOpen = slurring && i < strokes - 1 && random.nextInt(2) == 0;
      list.add(
          new Stroke(
              at,
              List.of(pitch(midi)),
              List.of(new Value(sound, Optional.empty())),
              random.nextInt(8) == 0
                  ? List.of(new Grace(List.of(pitch(midi + 2)), true))
                  : List.of(),
              slurred,
              slurOpen,
              random.nextInt(15) > 0,
              Set.of(),
              Dynamic.values()[random.nextInt(Dynamic.values().length)],
              Manner.PLAIN));
      cover.add(2 * random.nextInt(5));
      at = at.plus(gap);
    }
    int bars = 2 + at.quarters().dividedBy(3).floor().intValue();
    Meter meter = random.nextBoolean() ? Meter.COMMON : Meter.of(List.of(6), 8);
    Map<Position, TempoMark> tempi =
        random.nextInt(3) == 0
            ? Map.of(Position.START, mark(), Position.ofQuarters(2, 1), mark())
            : Map.of(Position.START, mark());
    return new Line(
        new LineSource("P1", "Piano", 1, "1", new ToneChoice.All(), 0, bars - 1),
        list,
        cover,
        Bars.regular(meter, bars),
        TempoMap.of(tempi));
  }

  private TempoMark mark() {
    return new TempoMark(BeatUnit.QUARTER, Rational.of(70 + random.nextInt(80)));
  }

  private static Pitch pitch(int midi) {
    Step[] steps = {
      Step.C, Step.C, Step.D, Step.D, Step.E, Step.F, Step.F, Step.G, Step.G, Step.A, Step.A, Step.B
    };
    Step step = steps[midi % 12];
    return new Pitch(step, midi % 12 - step.semitones(), midi / 12 - 1);
  }

  private Instrument instrument(String name) {
    Optional<Breath> breath =
        random.nextInt(3) == 0
            ? Optional.of(
                new Breath(
                    0.8 + random.nextInt(2000) / 1000.0,
                    0.1 + random.nextInt(300) / 1000.0,
                    0.5 + random.nextInt(1000) / 1000.0,
                    random.nextBoolean() ? Map.of() : Map.of(Condition.LOUD, 1.37)))
            : Optional.empty();
    List<Technique> techniques = new ArrayList<>();
    Act act = Act.values()[random.nextInt(Act.values().length)];
    for (int i = 0; i < 1 + random.nextInt(3); i++) {
      techniques.add(technique("technique " + i, act, i == 0));
    }
    Range range = new Range(57 + random.nextInt(4), 73 + random.nextInt(8));
    return new Instrument(
        name,
        List.of(),
        random.nextBoolean() ? "woodwind" : "brass",
        Optional.of(range),
        Optional.of(new Range(range.low() + 2, range.high() - 2)),
        Transposition.NONE,
        "G2",
        86 + random.nextInt(10),
        breath,
        74,
        techniques,
        Source.COMMON_PRACTICE);
  }

  /** The first one of an instrument goes on nearly all notes. */
  private Technique technique(String name, Act act, boolean first) {
    boolean anywhere = first && random.nextInt(6) > 0;
    return new Technique(
        name,
        act,
        anywhere ? Technique.Pitches.ANY : anyOf(Technique.Pitches.values()),
        anywhere ? Technique.SlurUse.ANY : anyOf(Technique.SlurUse.values()),
        !anywhere && random.nextInt(3) == 0 ? Groups.THREES : Groups.ANY,
        !first && act == Act.STRING && random.nextBoolean(),
        1 + random.nextInt(2),
        true,
        new Limit(
            10 + random.nextInt(3),
            1,
            8 + random.nextInt(3),
            OptionalDouble.empty(),
            0.05,
            OptionalDouble.empty()),
        random.nextInt(4) == 0 ? 2 + random.nextInt(60) / 10.0 : 0,
        random.nextBoolean()
            ? Map.of()
            : Map.of(Condition.HIGH_REGISTER, 0.93, Condition.LEAP, 0.91),
        Source.COMMON_PRACTICE,
        "");
  }

  private <E> E anyOf(E[] values) {
    return values[random.nextInt(values.length)];
  }

  private Player player(String name, Instrument instrument, Line line) {
    List<Skill> skills = new ArrayList<>();
    int recoveryMillis =
        random.nextInt(5) > 0 ? 51 + random.nextInt(600) : 301 + random.nextInt(4_000);
    for (Technique technique : instrument.techniques()) {
      if (random.nextInt(12) > 0) {
        skills.add(new Skill(technique, capability(recoveryMillis)));
      }
    }
    return new Player(name, instrument, Optional.empty(), skills, busy(line));
  }

  private Capability capability(int recoveryMillis) {
    boolean fast = random.nextInt(8) > 0;
    int peak = (fast ? 11_000 : 6_000) + random.nextInt(9_000);
    boolean never = random.nextInt(12) == 0;
    boolean soonSpent = random.nextInt(5) > 0;
    return new Capability(
        peak,
        never ? 0 : 1_501 + random.nextInt(soonSpent ? 4_000 : peak - 1_500),
        soonSpent ? 701 + random.nextInt(1_500) : 800 + random.nextInt(5_000),
        recoveryMillis,
        random.nextInt(6) > 0 ? Capability.UNLIMITED : 5_003 + random.nextInt(9_000));
  }

  private List<GivenStretch> busy(Line line) {
    List<GivenStretch> result = new ArrayList<>();
    if (random.nextInt(3) > 0) {
      return result;
    }
    long end = line.endMicros(line.count() - 1);
    long at = -random.nextInt(1_500_000) - 1L;
    while (at < end + 500_000) {
      long length = 50_003L + random.nextInt(400_000);
      List<Long> strokes = new ArrayList<>();
      for (long t = at; t < at + length; t += 70_001 + random.nextInt(200_000)) {
        strokes.add(t);
      }
      if (random.nextInt(2) == 0) {
        long change = random.nextInt(3) == 0 ? 100_000L + random.nextInt(2_000_000) : 0;
        result.add(new GivenStretch(at, at + length, strokes, change));
      }
      at += length + 150_007 + random.nextInt(2_500_000);
    }
    return result;
  }
}

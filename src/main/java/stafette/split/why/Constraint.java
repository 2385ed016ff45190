package stafette.split.why;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.ToIntFunction;
import java.util.function.UnaryOperator;
import stafette.limits.Act;
import stafette.limits.Breath;
import stafette.limits.Capability;
import stafette.limits.Condition;
import stafette.limits.Groups;
import stafette.limits.Instrument;
import stafette.limits.Range;
import stafette.limits.Skill;
import stafette.limits.Technique;
import stafette.plan.Brief;
import stafette.plan.GivenStretch;
import stafette.plan.Lock;
import stafette.plan.OverlapRule;
import stafette.plan.Player;
import stafette.score.Line;
import stafette.score.Pitch;
import stafette.words.Sayable;
import stafette.words.Sentence;

/**
 * What can stand in the way of a plan, and be thought away by itself. With all of them thought away
 * anybody plays everything alone. The order is that in which they are tried as superfluous: what a
 * musician would name first is kept longest.
 */
enum Constraint implements Sayable {
  LOCKS,
  /** What each technique is good for, and that not everybody has it. */
  TECHNIQUES,
  OVERLAP,
  /** Rest before entries, the time to catch breath among it. */
  READY,
  BUSY,
  BREATH,
  RANGE,
  TIREDNESS,
  /** Peak and moving rates. */
  RATES;

  /** Far above any line, far below what overflows where rates and times are multiplied. */
  private static final int RATE_WITHOUT_END_MILLI = 100_000_000;

  private static final int STAMINA_WITHOUT_END_MILLI = Integer.MAX_VALUE;
  private static final double BREATH_WITHOUT_END_SECONDS = 1e9;
  private static final double NO_TIME_SECONDS = 1e-6;
  private static final Range EVERYTHING = new Range(0, 127);

  @Override
  public Sentence inWords() {
    return switch (this) {
      case LOCKS -> Sentence.of("locks");
      case TECHNIQUES -> Sentence.of("techniques");
      case OVERLAP -> Sentence.of("overlap");
      case READY -> Sentence.of("ready");
      case BUSY -> Sentence.of("busy");
      case BREATH -> Sentence.of("breath");
      case RANGE -> Sentence.of("range");
      case TIREDNESS -> Sentence.of("tiredness");
      case RATES -> Sentence.of("rates");
    };
  }

  /** The brief without this constraint. */
  Brief thoughtAwayIn(Brief brief) {
    return switch (this) {
      case LOCKS -> brief.with(brief.rules().with(List.of()));
      case OVERLAP -> brief.with(brief.rules().with(anyOverlap(brief)));
      case READY ->
          players(
              instruments(brief.with(brief.rules().withReady(0)), Constraint::catchingAtOnce),
              Constraint::changingAtOnce);
      case BREATH -> instruments(brief, Constraint::neverOutOfBreath);
      case RANGE -> instruments(brief, instrument -> boundless(instrument, brief));
      case TECHNIQUES ->
          players(
              brief.with(brief.rules().with(inAnyWay(brief.rules().locks()))),
              p -> p.with(oneForAll(p, brief)));
      case TIREDNESS -> capabilities(brief, Constraint::untiring);
      case RATES -> capabilities(brief, Constraint::unlimited);
      case BUSY -> players(brief, player -> player.busyWith(List.of()));
    };
  }

  private static List<Lock> inAnyWay(List<Lock> locks) {
    return locks.stream()
        .map(
            lock ->
                lock.<Lock>match(
                    at -> at,
                    exactly ->
                        new Lock.Exactly(
                            exactly.relay(),
                            exactly.player(),
                            OptionalInt.empty(),
                            exactly.first(),
                            exactly.last()),
                    in -> in,
                    out -> out))
        .toList();
  }

  private static OverlapRule anyOverlap(Brief brief) {
    int most = brief.lines().stream().mapToInt(Line::count).max().orElseThrow();
    return new OverlapRule(1, OptionalInt.of(most));
  }

  private static Player changingAtOnce(Player player) {
    return player.busyWith(
        player.busy().stream()
            .map(b -> new GivenStretch(b.fromMicros(), b.toMicros(), b.strokeMicros()))
            .toList());
  }

  private static Instrument catchingAtOnce(Instrument instrument) {
    return instrument
        .breath()
        .map(b -> new Breath(b.capacitySeconds(), NO_TIME_SECONDS, b.fullSeconds(), b.use()))
        .map(breath -> with(instrument, instrument.range(), Optional.of(breath)))
        .orElse(instrument);
  }

  private static Instrument neverOutOfBreath(Instrument instrument) {
    return instrument
        .breath()
        .map(
            b -> new Breath(BREATH_WITHOUT_END_SECONDS, b.catchSeconds(), b.fullSeconds(), b.use()))
        .map(breath -> with(instrument, instrument.range(), Optional.of(breath)))
        .orElse(instrument);
  }

  /** Every pitch for pitched lines; every drum for others. */
  private static Instrument boundless(Instrument instrument, Brief brief) {
    boolean reached =
        brief.lines().stream()
            .flatMap(line -> line.strokes().stream())
            .flatMap(stroke -> stroke.tones().stream())
            .allMatch(instrument::reaches);
    if (reached) {
      return instrument;
    }
    boolean pitched =
        brief.line().strokes().stream()
            .flatMap(stroke -> stroke.tones().stream())
            .anyMatch(tone -> tone instanceof Pitch);
    Optional<Range> range = pitched ? Optional.of(EVERYTHING) : Optional.empty();
    return with(instrument, range, instrument.breath());
  }

  private static Instrument with(
      Instrument instrument, Optional<Range> range, Optional<Breath> breath) {
    return new Instrument(
        instrument.name(),
        instrument.aliases(),
        instrument.family(),
        range,
        instrument.comfortable(),
        instrument.transposition(),
        instrument.clef(),
        instrument.levelDecibel(),
        breath,
        instrument.midiProgram(),
        instrument.techniques(),
        instrument.source());
  }

  /** One technique for all notes that is as good in everything as the best that there is. */
  private static List<Skill> oneForAll(Player player, Brief brief) {
    List<Skill> all = new ArrayList<>(player.skills());
    player.instrument().techniques().stream()
        .filter(t -> player.skills().stream().noneMatch(s -> s.technique().equals(t)))
        .map(t -> new Skill(t, t.limit().at(brief.rules().assurance())))
        .forEach(all::add);
    return all.isEmpty() ? List.of() : List.of(best(all));
  }

  private static Skill best(List<Skill> all) {
    Technique first = all.get(0).technique();
    int peak = most(all, s -> s.capability().peakMilli());
    int moving = most(all, s -> s.capability().movingMilli());
    double perMoving = (double) peak / moving;
    int sustained =
        (int)
            Math.ceil(
                all.stream()
                    .map(Skill::capability)
                    .mapToDouble(c -> c.sustainedMilli() * Math.max(1, changing(c) * perMoving))
                    .max()
                    .orElseThrow());
    Map<Condition, Double> factors = new EnumMap<>(Condition.class);
    for (Condition condition : Condition.values()) {
      all.stream()
          .mapToDouble(skill -> skill.technique().factors().getOrDefault(condition, 1.0))
          .max()
          .ifPresent(factor -> factors.put(condition, factor));
    }
    Technique technique =
        new Technique(
            first.name(),
            forAnyStroke(first.act()),
            Technique.Pitches.ANY,
            Technique.SlurUse.ANY,
            Groups.ANY,
            false,
            most(all, skill -> skill.technique().takers()),
            true,
            first.limit(),
            0,
            factors,
            first.source(),
            first.note());
    return new Skill(
        technique,
        new Capability(
            peak,
            sustained,
            most(all, s -> s.capability().staminaMilli()),
            -most(all, s -> -s.capability().recoveryMillis()),
            moving));
  }

  /** The act itself, or what goes like it where pedals or the score would limit it. */
  private static Act forAnyStroke(Act act) {
    return switch (act) {
      case STRING -> Act.KEY;
      case WOOD -> Act.BOW;
      default -> act;
    };
  }

  private static int most(List<Skill> all, ToIntFunction<Skill> figure) {
    return all.stream().mapToInt(figure).max().orElseThrow();
  }

  /** How much faster changing notes go than repeated ones, where the technique limits them. */
  private static double changing(Capability capability) {
    return capability.movingMilli() == Capability.UNLIMITED
        ? 1
        : (double) capability.movingMilli() / capability.peakMilli();
  }

  private static Capability untiring(Capability capability) {
    return new Capability(
        capability.peakMilli(),
        capability.sustainedMilli(),
        STAMINA_WITHOUT_END_MILLI,
        capability.recoveryMillis(),
        capability.movingMilli());
  }

  /** Peak and moving rate keep their ratio: how soon moving tires goes by it. */
  private static Capability unlimited(Capability capability) {
    boolean limitsMoving = capability.movingMilli() != Capability.UNLIMITED;
    int fastest = Math.max(capability.peakMilli(), limitsMoving ? capability.movingMilli() : 0);
    int times = Math.max(1, RATE_WITHOUT_END_MILLI / fastest);
    return new Capability(
        capability.peakMilli() * times,
        capability.sustainedMilli(),
        capability.staminaMilli(),
        capability.recoveryMillis(),
        limitsMoving ? capability.movingMilli() * times : Capability.UNLIMITED);
  }

  private static Brief capabilities(Brief brief, UnaryOperator<Capability> change) {
    return players(
        brief,
        player ->
            with(
                player,
                player.instrument(),
                player.skills().stream()
                    .map(s -> new Skill(s.technique(), change.apply(s.capability())))
                    .toList()));
  }

  private static Brief instruments(Brief brief, UnaryOperator<Instrument> change) {
    return players(brief, p -> with(p, change.apply(p.instrument()), p.skills()));
  }

  private static Brief players(Brief brief, UnaryOperator<Player> change) {
    return brief.with(brief.players().stream().map(change).toList());
  }

  private static Player with(Player player, Instrument instrument, List<Skill> skills) {
    return player.with(instrument, skills);
  }
}

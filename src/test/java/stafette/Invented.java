package stafette;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.IntFunction;
import stafette.limits.Act;
import stafette.limits.Assurance;
import stafette.limits.Breath;
import stafette.limits.Capability;
import stafette.limits.Groups;
import stafette.limits.Instrument;
import stafette.limits.Limit;
import stafette.limits.Range;
import stafette.limits.Skill;
import stafette.limits.Source;
import stafette.limits.Technique;
import stafette.plan.Brief;
import stafette.plan.Favour;
import stafette.plan.OverlapRule;
import stafette.plan.Player;
import stafette.plan.Rules;
import stafette.plan.Weights;
import stafette.score.Dynamic;
import stafette.score.Line;
import stafette.score.LineSource;
import stafette.score.Manner;
import stafette.score.Pitch;
import stafette.score.Step;
import stafette.score.Stroke;
import stafette.score.Tone;
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
 * Lines and players made up for tests. All figures here are inventions, not claims about people.
 */
public final class Invented {
  public static final Pitch A4 = new Pitch(Step.A, 0, 4);

  /** The weights of the planning model. */
  public static final Weights WEIGHTS =
      new Weights(
          12,
          8,
          List.of(0, 5, 40, 100),
          List.of(0, 0, 30, 80),
          5,
          Map.of(),
          6,
          0.7,
          120,
          0.4,
          0.5,
          List.of(0, 6, 12, 100),
          24,
          5,
          3,
          2,
          30,
          25,
          0,
          30,
          18,
          6,
          Map.of("woodwind|woodwind", 10, "brass|woodwind", 20),
          30);

  private Invented() {}

  /**
   * A line in 4/4 on one note: strokes evenly {@code perBeat} to a quarter, so many bars, at so
   * many quarters a minute.
   */
  public static Line line(int bars, int perBeat, long quartersPerMinute) {
    return line(bars * 4 * perBeat, perBeat, quartersPerMinute, i -> A4);
  }

  /** The same by number of strokes, with a pitch for each. */
  public static Line line(
      int strokes, int perBeat, long quartersPerMinute, IntFunction<Pitch> pitch) {
    List<Stroke> list = new ArrayList<>();
    for (int i = 0; i < strokes; i++) {
      list.add(
          stroke(Position.ofQuarters(i, perBeat), Length.ofQuarters(1, perBeat), pitch.apply(i)));
    }
    return lineOf(list, quartersPerMinute);
  }

  /** A line in 4/4 of the given strokes, without cover. */
  public static Line lineOf(List<Stroke> strokes, long quartersPerMinute) {
    Position last = strokes.get(strokes.size() - 1).span().end();
    int bars = 1 + last.quarters().dividedBy(4).floor().intValue();
    return new Line(
        new LineSource("P1", "Piano", 1, "1", new ToneChoice.All(), 0, bars - 1),
        strokes,
        Collections.nCopies(strokes.size(), 0),
        Bars.regular(Meter.COMMON, bars),
        TempoMap.constant(new TempoMark(BeatUnit.QUARTER, Rational.of(quartersPerMinute))));
  }

  /** A plain stroke, mezzo forte, without tuplet, slur, grace note or mark. */
  public static Stroke stroke(Position onset, Length length, Tone tone) {
    return new Stroke(
        onset,
        List.of(tone),
        List.of(new Value(length, Optional.empty())),
        List.of(),
        false,
        false,
        true,
        Set.of(),
        Dynamic.MF,
        Manner.PLAIN);
  }

  /** A technique of the tongue without factors, that everybody is expected to have. */
  public static Technique tonguing(String name) {
    return new Technique(
        name,
        Act.TONGUE,
        Technique.Pitches.ANY,
        Technique.SlurUse.ANY,
        Groups.ANY,
        false,
        1,
        true,
        new Limit(12, 1.5, 10, OptionalDouble.empty(), 8, OptionalDouble.empty()),
        0,
        Map.of(),
        new Source("invented for a test", stafette.limits.Grade.D),
        "");
  }

  /** An instrument of the woodwind family that reaches from C4 to C7 and never breathes. */
  public static Instrument instrument(String name) {
    return instrument(name, new Range(60, 96), Optional.empty());
  }

  /** An instrument of the woodwind family with one technique, "tonguing". */
  public static Instrument instrument(String name, Range range, Optional<Breath> breath) {
    return new Instrument(
        name,
        List.of(),
        "woodwind",
        Optional.of(range),
        Optional.of(range),
        Transposition.NONE,
        "G2",
        90,
        breath,
        74,
        List.of(tonguing("tonguing")),
        Source.COMMON_PRACTICE);
  }

  /** A free player with one skill, in strokes a second, strokes and seconds. */
  public static Player player(
      String name,
      Instrument instrument,
      double peak,
      double sustained,
      double stamina,
      double recovery) {
    Capability capability =
        new Capability(
            (int) Math.floor(peak * 1000),
            (int) Math.floor(sustained * 1000),
            (int) Math.floor(stamina * 1000),
            (int) Math.ceil(recovery * 1000),
            Capability.UNLIMITED);
    return new Player(
        name,
        instrument,
        Optional.empty(),
        List.of(new Skill(instrument.techniques().get(0), capability)),
        List.of());
  }

  /** The default rules of the planning model. */
  public static Rules rules() {
    return new Rules(
        Assurance.DEFAULT,
        OverlapRule.DEFAULT,
        Rules.DEFAULT_READY_SECONDS,
        Favour.BALANCE,
        WEIGHTS);
  }

  public static Brief brief(Line line, Player... players) {
    return new Brief(line, List.of(players), rules());
  }
}

package stafette.split.thin;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.function.IntUnaryOperator;
import stafette.Invented;
import stafette.limits.Act;
import stafette.limits.Breath;
import stafette.limits.Capability;
import stafette.limits.Condition;
import stafette.limits.Instrument;
import stafette.limits.Range;
import stafette.limits.Skill;
import stafette.limits.Technique;
import stafette.plan.GivenStretch;
import stafette.plan.Player;
import stafette.score.Line;
import stafette.score.Manner;
import stafette.score.Pitch;
import stafette.score.Step;
import stafette.score.Stroke;
import stafette.time.Length;
import stafette.time.Position;

/** Lines and players who colour them, drawn by lot. */
final class ThinCases {
  private static final List<Integer> PARTS_OF_A_BEAT = List.of(1, 2, 3, 3, 4, 6);
  private static final int BARS = 3;

  private ThinCases() {}

  /** A line and a player. */
  record ThinCase(Line line, Player player) {}

  /** Anything on three bars, with rests, slurs, and passages of the player's own. */
  static ThinCase random(Random random) {
    Line line = line(random);
    Technique technique = technique(random.nextBoolean() ? Act.KEY : Act.TONGUE);
    Optional<Breath> lungs =
        random.nextBoolean()
            ? Optional.of(
                new Breath(
                    1 + 4 * random.nextDouble(), 0.1 + 0.4 * random.nextDouble(), 1, Map.of()))
            : Optional.empty();
    Range range = new Range(random.nextInt(5) == 0 ? 70 : 60, 96);
    Instrument plain = Invented.instrument("reed", range, lungs);
    double peak = 3 + 9 * random.nextDouble();
    Capability able =
        new Capability(
            (int) (peak * 1000),
            (int) (peak * (500 + random.nextInt(400))),
            1000 + random.nextInt(6000),
            1000 + random.nextInt(7000),
            random.nextBoolean() ? Capability.UNLIMITED : (int) (peak * 800));
    return new ThinCase(
        line,
        new Player(
            "Colour", plain, Optional.empty(), List.of(new Skill(technique, able)), busy(random)));
  }

  private static Technique technique(Act act) {
    Technique plain = Invented.tonguing("strokes");
    return new Technique(
        plain.name(),
        act,
        plain.pitches(),
        plain.slurs(),
        plain.groups(),
        plain.twinStrings(),
        1,
        plain.expected(),
        plain.limit(),
        plain.lowestPerSecond(),
        Map.of(Condition.LEAP, 0.8),
        plain.source(),
        plain.note());
  }

  /** Bars of one division each, with rests, slurs and two pitches that mostly repeat. */
  private static Line line(Random random) {
    List<Stroke> strokes = new ArrayList<>();
    boolean moving = random.nextInt(3) == 0;
    boolean high = false;
    boolean slurring = false;
    for (int beat = 0; beat < BARS * 4; beat++) {
      int parts =
          beat % 4 == 0 || strokes.isEmpty()
              ? PARTS_OF_A_BEAT.get(random.nextInt(PARTS_OF_A_BEAT.size()))
              : 1 + random.nextInt(4);
      for (int i = 0; i < parts; i++) {
        high ^= random.nextInt(moving ? 2 : 8) == 0;
        if (random.nextInt(12) > 0 || (beat == BARS * 4 - 1 && strokes.isEmpty())) {
          boolean on = random.nextInt(6) == 0;
          Stroke plain =
              Invented.stroke(
                  Position.ofQuarters((long) beat * parts + i, parts),
                  Length.ofQuarters(1, parts),
                  new Pitch(high ? Step.E : Step.A, 0, high ? 5 : 4));
          strokes.add(slurred(plain, slurring && random.nextInt(4) > 0, on));
          slurring = on;
        } else {
          slurring = false;
        }
      }
    }
    return Invented.lineOf(strokes, 60 + random.nextInt(120));
  }

  private static Stroke slurred(Stroke plain, boolean from, boolean on) {
    return new Stroke(
        plain.onset(),
        plain.tones(),
        plain.values(),
        plain.graces(),
        from,
        on,
        true,
        plain.articulations(),
        plain.dynamic(),
        Manner.PLAIN);
  }

  private static List<GivenStretch> busy(Random random) {
    List<GivenStretch> busy = new ArrayList<>();
    long at = -2_000_000;
    while (random.nextInt(3) == 0) {
      at += random.nextInt(4_000_000);
      long to = at + 100_000 + random.nextInt(1_000_000);
      busy.add(new GivenStretch(at, to, List.of(at, at + (to - at) / 2)));
      at = to + 1;
    }
    return busy;
  }

  /**
   * Players who can play each bar, but not all of them: what was played before decides, and it pays
   * to spare oneself for the bars with more notes.
   *
   * @param bars how many, three of five with two notes to a beat, the others with four
   */
  static ThinCase tiring(Random random, int bars) {
    Line line = bars(random, bars, bar -> bar % 5 < 3 ? 2 : 4);
    double rate = 1e6 / line.onsetMicros(1);
    Optional<Breath> lungs =
        random.nextInt(3) > 0
            ? Optional.of(
                new Breath(
                    1.5 + 3 * random.nextDouble(),
                    0.1 + random.nextDouble(),
                    0.5 + 3 * random.nextDouble(),
                    Map.of()))
            : Optional.empty();
    Player player =
        Invented.player(
            "Colour",
            Invented.instrument("reed", new Range(60, 96), lungs),
            rate * 2.2,
            rate * (0.3 + 0.9 * random.nextDouble()),
            1 + 12 * random.nextDouble(),
            1 + 7 * random.nextDouble());
    return new ThinCase(line, player);
  }

  /** Six bars of eighths for somebody with air for two to four of them. */
  static ThinCase breathless(Random random) {
    Line line = bars(random, 6, bar -> 2);
    double bar = line.barMicros(0) / 1e6;
    Breath lungs =
        new Breath(
            bar * (2 + 2 * random.nextDouble()), 0.3 + 0.7 * random.nextDouble(), 1, Map.of());
    Instrument reed = Invented.instrument("reed", new Range(60, 96), Optional.of(lungs));
    return new ThinCase(line, Invented.player("Colour", reed, 12, 10, 20, 8));
  }

  /** Bars of repeated notes, now and then of another pitch than the bar before. */
  private static Line bars(Random random, int bars, IntUnaryOperator perBeatOfBar) {
    List<Stroke> strokes = new ArrayList<>();
    Pitch pitch = Invented.A4;
    int barsOfPitch = 1 + random.nextInt(3);
    for (int bar = 0; bar < bars; bar++) {
      int perBeat = perBeatOfBar.applyAsInt(bar);
      if (random.nextInt(barsOfPitch) == 0) {
        pitch = pitch.equals(Invented.A4) ? new Pitch(Step.B, 0, 4) : Invented.A4;
      }
      for (int i = 0; i < 4 * perBeat; i++) {
        strokes.add(
            Invented.stroke(
                Position.ofQuarters(4L * bar * perBeat + i, perBeat),
                Length.ofQuarters(1, perBeat),
                pitch));
      }
    }
    return Invented.lineOf(strokes, 60 + random.nextInt(60));
  }
}

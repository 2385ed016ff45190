package stafette.desktop;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import stafette.Invented;
import stafette.limits.Breath;
import stafette.limits.Instrument;
import stafette.limits.Range;
import stafette.plan.Brief;
import stafette.plan.GivenStretch;
import stafette.plan.Plan;
import stafette.plan.Player;
import stafette.plan.Segment;
import stafette.score.Keys;
import stafette.score.Line;
import stafette.score.Pitch;
import stafette.score.Step;
import stafette.score.Transposition;
import stafette.time.Position;

/** Relays to show in windows. */
public final class ShownRelays {
  private static final Step[] STEPS = Step.values();

  private ShownRelays() {}

  /** Four segments of two bars each over three players, of whom the second plays something else. */
  public static Plan plan() {
    return plan(8);
  }

  /** The same over so many bars of sixteenth notes, two bars to a segment. */
  public static Plan plan(int bars) {
    Line line =
        Invented.line(
            bars * 16, 4, 132, i -> new Pitch(STEPS[Math.abs(i % 12 - 6)], i % 5 == 0 ? 1 : 0, 5));
    Instrument flute =
        Invented.instrument(
            "flute", new Range(60, 96), Optional.of(new Breath(9, 0.4, 1.2, Map.of())));
    Player first = Invented.player("Flute 1", flute, 10.5, 8.2, 20, 8);
    Player second = Invented.player("Flute 2", flute, 9.6, 7.5, 30, 8);
    Player third = Invented.player("Oboe 1", Invented.instrument("oboe"), 9, 8.5, 14, 8);
    Player busy =
        new Player(
            second.name(),
            second.instrument(),
            second.part(),
            second.skills(),
            List.of(new GivenStretch(0, 2_500_000, List.of(0L, 500_000L, 1_000_000L))));
    List<Segment> segments = new ArrayList<>();
    int[] order = {0, 1, 2, 0, 1, 2};
    for (int i = 0; i < bars / 2; i++) {
      int last = i == bars / 2 - 1 ? line.count() - 1 : (i + 1) * 32 + (i == 1 ? 4 : 0);
      segments.add(new Segment(order[i % 6], 0, i * 32, last));
    }
    return new Plan(new Brief(line, List.of(first, busy, third), Invented.rules()), segments);
  }

  /**
   * Eight bars that sweep over three octaves, in three flats and from the fifth bar on in two
   * sharps, over players who write at another pitch or in another clef.
   */
  public static Plan wide() {
    Line plain = Invented.line(128, 4, 120, ShownRelays::swept);
    TreeMap<Position, Integer> keys = new TreeMap<>(Map.of(Position.START, -3));
    keys.put(Position.ofQuarters(16, 1), 2);
    Line line =
        new Line(
            plain.source(),
            plain.strokes(),
            Collections.nCopies(plain.count(), 0),
            plain.bars(),
            plain.tempo(),
            new Keys(keys));
    List<Player> players =
        List.of(
            Invented.player("Flute 1", Invented.instrument("flute"), 12, 10, 20, 8),
            Invented.player(
                "Clarinet 1", written("clarinet", new Transposition(-1, -2), "G2"), 12, 10, 20, 8),
            Invented.player("Viola 1", written("viola", Transposition.NONE, "C3"), 12, 10, 20, 8));
    List<Segment> segments = new ArrayList<>();
    for (int i = 0; i < 6; i++) {
      segments.add(new Segment(i % 3, 0, i * 21, i == 5 ? 127 : (i + 1) * 21 + 2));
    }
    return new Plan(new Brief(line, players, Invented.rules()), segments);
  }

  private static Instrument written(String name, Transposition transposition, String clef) {
    Instrument usual = Invented.instrument(name);
    return new Instrument(
        name,
        List.of(),
        usual.family(),
        usual.range(),
        usual.comfortable(),
        transposition,
        clef,
        usual.levelDecibel(),
        usual.breath(),
        usual.midiProgram(),
        usual.techniques(),
        usual.source());
  }

  private static Pitch swept(int stroke) {
    int degree = Math.abs(stroke * 2 % 42 - 21);
    Step step = STEPS[degree % 7];
    int alter = stroke % 9 == 4 ? 1 : step == Step.B || step == Step.E ? -1 : 0;
    return new Pitch(step, alter, 4 + degree / 7);
  }
}

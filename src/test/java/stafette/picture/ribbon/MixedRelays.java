package stafette.picture.ribbon;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.IntStream;
import stafette.Invented;
import stafette.limits.Instrument;
import stafette.plan.Brief;
import stafette.plan.Plan;
import stafette.plan.Player;
import stafette.plan.Segment;
import stafette.score.Articulation;
import stafette.score.Dynamic;
import stafette.score.Grace;
import stafette.score.Keys;
import stafette.score.Line;
import stafette.score.LineSource;
import stafette.score.Manner;
import stafette.score.Pitch;
import stafette.score.Step;
import stafette.score.Stroke;
import stafette.score.ToneChoice;
import stafette.score.Transposition;
import stafette.score.Tuplet;
import stafette.score.Value;
import stafette.time.Bar;
import stafette.time.Bars;
import stafette.time.BeatUnit;
import stafette.time.Length;
import stafette.time.Meter;
import stafette.time.Position;
import stafette.time.Rational;
import stafette.time.Span;
import stafette.time.TempoMap;
import stafette.time.TempoMark;

/**
 * Relays made up at random for pictures with music: metres and keys that change, high and low,
 * transposing instruments, accidentals, grace notes, slurs, marks, triplets.
 */
public final class MixedRelays {
  private static final List<Meter> METERS =
      List.of(
          Meter.COMMON,
          Meter.of(List.of(3), 4),
          Meter.of(List.of(5), 8),
          Meter.of(List.of(3, 2), 8),
          Meter.of(List.of(2, 2, 3), 8),
          Meter.of(List.of(12), 8),
          Meter.of(List.of(6), 16));

  private final Random random;
  private int letter;

  private MixedRelays(long seed) {
    random = new Random(seed);
    letter = 24 + random.nextInt(30);
  }

  public static Plan any(long seed) {
    return new MixedRelays(seed).plan();
  }

  private Plan plan() {
    Bars bars = bars(1 + random.nextInt(9));
    Line line = line(bars);
    int count = 1 + random.nextInt(5);
    List<Player> players = IntStream.range(0, count).mapToObj(this::player).toList();
    List<Segment> segments = new ArrayList<>();
    int first = 0;
    int player = 0;
    while (first < line.count() - 1) {
      int last = Math.min(line.count() - 1, first + 3 + random.nextInt(60));
      last = count == 1 ? line.count() - 1 : last;
      segments.add(new Segment(player, 0, first, last));
      first = last;
      player = (player + 1 + random.nextInt(Math.max(1, count - 1))) % count;
    }
    return new Plan(new Brief(line, players, Invented.rules()), segments);
  }

  private Bars bars(int count) {
    List<Bar> bars = new ArrayList<>();
    Position start = Position.START;
    Meter meter = METERS.get(random.nextInt(METERS.size()));
    for (int i = 0; i < count; i++) {
      meter = random.nextInt(3) == 0 ? METERS.get(random.nextInt(METERS.size())) : meter;
      Span span = Span.of(start, meter.length());
      bars.add(new Bar(i, Integer.toString(i + 97), span, meter, Length.ZERO));
      start = span.end();
    }
    return new Bars(bars);
  }

  private Line line(Bars bars) {
    NavigableMap<Position, Integer> keys = new TreeMap<>();
    List<Stroke> strokes = new ArrayList<>();
    for (Bar bar : bars) {
      if (random.nextInt(3) == 0) {
        keys.put(bar.span().start(), random.nextInt(15) - 7);
      }
      bar.beats().forEach(beat -> addBeat(beat, strokes));
    }
    return new Line(
        new LineSource("P1", "Piano", 1, "1", new ToneChoice.All(), 0, bars.count() - 1),
        strokes,
        Collections.nCopies(strokes.size(), 0),
        bars,
        TempoMap.constant(new TempoMark(BeatUnit.QUARTER, Rational.of(80))),
        new Keys(keys));
  }

  private void addBeat(Span beat, List<Stroke> strokes) {
    boolean triplet = random.nextInt(4) == 0;
    Rational sixteenths = beat.length().quarters().times(4);
    int count = triplet ? 3 : sixteenths.numerator().intValue();
    Length each = new Length(beat.length().quarters().dividedBy(count));
    Optional<Tuplet> tuplet =
        triplet && count != sixteenths.numerator().intValue()
            ? Optional.of(new Tuplet(3, 2, beat))
            : Optional.empty();
    for (int i = 0; i < count; i++) {
      Position onset = beat.start().plus(new Length(each.quarters().times(i)));
      strokes.add(stroke(onset, new Value(each, tuplet)));
    }
  }

  private Stroke stroke(Position onset, Value value) {
    letter = Math.min(58, Math.max(20, letter + random.nextInt(7) - 3));
    List<Grace> graces =
        random.nextInt(12) == 0 ? List.of(new Grace(List.of(pitch(letter + 1)), true)) : List.of();
    boolean slurred = random.nextInt(4) == 0;
    Set<Articulation> marks =
        random.nextInt(5) == 0
            ? Set.of(Articulation.values()[random.nextInt(Articulation.values().length)])
            : Set.of();
    return new Stroke(
        onset,
        List.of(pitch(letter)),
        List.of(value),
        graces,
        slurred,
        random.nextInt(4) == 0,
        true,
        marks,
        Dynamic.MF,
        Manner.PLAIN);
  }

  private Pitch pitch(int diatonic) {
    int alter = random.nextInt(4) == 0 ? random.nextInt(3) - 1 : 0;
    return new Pitch(Step.values()[diatonic % 7], alter, diatonic / 7);
  }

  private Player player(int index) {
    List<String> clefs = List.of("G2", "F4", "C3");
    List<Transposition> transpositions =
        List.of(Transposition.NONE, new Transposition(-1, -2), new Transposition(-4, -7));
    Instrument plain = Invented.instrument("pipe");
    Instrument own =
        new Instrument(
            "pipe",
            List.of(),
            List.of("woodwind", "strings", "keyboard").get(random.nextInt(3)),
            plain.range(),
            plain.comfortable(),
            transpositions.get(random.nextInt(3)),
            clefs.get(random.nextInt(3)),
            90,
            Optional.empty(),
            74,
            plain.techniques(),
            plain.source());
    return Invented.player("Player " + (index + 1), own, 12, 9, 40, 8);
  }
}

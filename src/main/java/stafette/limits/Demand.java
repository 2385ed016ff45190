package stafette.limits;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import stafette.score.Dynamic;
import stafette.score.Line;
import stafette.score.Pitch;
import stafette.score.Stroke;
import stafette.score.Tone;

/**
 * What each stroke of a line asks of one player: the technique that it is made with, from which
 * earlier stroke its gap counts, and which rates hold there, factors for register, dynamic and
 * motion reckoned in. Rates are in thousandths of a stroke a second, rounded down; needs are the
 * least times from stroke to stroke in nanoseconds, rounded up.
 *
 * <p>Two gaps matter at a stroke {@code j}: that from the last stroke of the tongue, bow, finger or
 * on that same key, which needs {@link #peakNeedNanos}; and that from the note just before, which
 * needs {@link #movingNeedNanos} if the pitch changes; how many gaps count together says {@link
 * Burst}. The first note that a player takes is always a stroke, even under a slur.
 *
 * <p>Tiredness follows the strokes of tongue, bow or finger. Where repeated notes count by key, it
 * follows every stroke: at the sustained rate of repeated notes if the stroke repeats the one just
 * before, else at that of changing notes.
 */
public final class Demand {
  private static final int NONE = -1;

  private final Shape shape;
  private final List<Skill> skills;
  private final int[] peak;
  private final int[] sustained;
  private final int[] moving;
  private final long[] peakNeed;
  private final long[] movingNeed;

  /**
   * What of a demand no figure changes.
   *
   * <p>{@code technique} is for each stroke the index of its technique, that of the first where
   * none applies; {@code covered} whether one applies.
   */
  private static final class Shape {
    private final int[] technique;
    private final boolean[] covered;
    private final boolean byKey;
    private final boolean[] articulated;
    private final boolean[] moves;
    private final int[] previousStroke;
    private final int[] previousSameKey;
    private final double[] factor;

    Shape(Instrument instrument, Way way, Line line, int[] choice) {
      List<Technique> techniques = way.skills().stream().map(Skill::technique).toList();
      int count = line.count();
      technique = new int[count];
      covered = new boolean[count];
      byKey = techniques.get(0).act().repeatsByKey();
      articulated = new boolean[count];
      moves = new boolean[count];
      previousStroke = new int[count];
      previousSameKey = new int[count];
      factor = new double[count];
      Map<Set<Integer>, Integer> lastOnKeys = new HashMap<>();
      int lastStroke = NONE;
      Set<Integer> keysBefore = Set.of();
      for (int j = 0; j < count; j++) {
        Stroke stroke = line.stroke(j);
        Set<Integer> keys = stroke.keys();
        covered[j] = choice[j] != TechniqueByStroke.NONE;
        technique[j] = Math.max(0, choice[j]);
        Technique used = techniques.get(technique[j]);
        moves[j] = j > 0 && !keys.equals(keysBefore);
        keysBefore = keys;
        articulated[j] = stroke.measured() && !(used.act().slurs() && stroke.slurred() && moves[j]);
        previousStroke[j] = lastStroke;
        previousSameKey[j] = lastOnKeys.getOrDefault(keys, NONE);
        factor[j] = factorAt(instrument, used, line, j);
        if (articulated[j]) {
          lastStroke = j;
        }
        lastOnKeys.put(keys, j);
      }
    }
  }

  private Demand(Shape shape, List<Skill> skills) {
    this.shape = shape;
    this.skills = skills;
    int count = shape.technique.length;
    peak = new int[count];
    sustained = new int[count];
    moving = new int[count];
    peakNeed = new long[count];
    movingNeed = new long[count];
    for (int j = 0; j < count; j++) {
      reckon(j);
    }
  }

  private void reckon(int j) {
    Capability capability = capability(j);
    double factor = shape.factor[j];
    peak[j] = scaled(capability.peakMilli(), factor);
    moving[j] =
        capability.movingMilli() == Capability.UNLIMITED
            ? Capability.UNLIMITED
            : scaled(capability.movingMilli(), factor);
    double sustainedRate = capability.sustainedMilli();
    if (shape.byKey && shape.moves[j] && moving[j] != Capability.UNLIMITED) {
      sustainedRate *= (double) capability.movingMilli() / capability.peakMilli();
    }
    sustained[j] = scaled(sustainedRate, factor);
    peakNeed[j] = needNanos(peak[j]);
    movingNeed[j] = moves(j) ? needNanos(moving[j]) : 0;
  }

  private static long needNanos(int milli) {
    return (1_000_000_000_000L + milli - 1) / Math.max(1, milli);
  }

  /** What a line asks of a player, each stroke being made with the best technique at its tempo. */
  public static Demand of(Instrument instrument, Way way, Line line) {
    return of(instrument, way, line, line);
  }

  /**
   * What a line asks of a player who has settled the techniques on it at another tempo.
   *
   * @param settled the same strokes at the tempo at which the techniques are chosen
   */
  public static Demand of(Instrument instrument, Way way, Line line, Line settled) {
    List<Technique> techniques = way.skills().stream().map(Skill::technique).toList();
    int[] choice = TechniqueByStroke.of(techniques, settled);
    return new Demand(new Shape(instrument, way, line, choice), way.skills());
  }

  /** What the same strokes, made in the same way, ask of somebody with other figures. */
  public Demand with(Way way) {
    return new Demand(shape, way.skills());
  }

  /** Whether a stroke of a line can be made with a technique at all, at the line's tempo. */
  public static boolean applies(Technique technique, Line line, int j) {
    return TechniqueByStroke.applies(technique, line, j);
  }

  /** Whether the player has a technique for a stroke. */
  public boolean covered(int j) {
    return shape.covered[j];
  }

  /** Which of the way's skills a stroke is made with; the first where none applies. */
  public int skill(int j) {
    return shape.technique[j];
  }

  /** What the player can do with the technique of a stroke. */
  public Capability capability(int j) {
    return skills.get(shape.technique[j]).capability();
  }

  /** How many hands, fingers or syllables alternate at a stroke: one or two. */
  public int takers(int j) {
    return skills.get(shape.technique[j]).technique().takers();
  }

  /**
   * Whether a player who is already playing makes a stroke of tongue, bow, finger, key or mallet
   * here, not a finger change.
   */
  public boolean articulated(int j) {
    return shape.articulated[j];
  }

  /**
   * Whether stroke {@code j} tires a player who began with {@code first}: a stroke of tongue, bow
   * or finger, the first note whatever it is, and every note where repeats count by key.
   */
  public boolean loads(int first, int j) {
    return j == first || shape.articulated[j] || shape.byKey;
  }

  /**
   * The stroke from which the gap at {@code j} is held against {@link #peakMilli} when the player
   * began with stroke {@code first}; -1 if there is none to hold.
   */
  public int peakFrom(int first, int j) {
    if (j <= first || !shape.articulated[j]) {
      return NONE;
    }
    if (shape.byKey) {
      return shape.previousSameKey[j] >= first ? shape.previousSameKey[j] : NONE;
    }
    return Math.max(shape.previousStroke[j], first);
  }

  /**
   * Whether the gap from the note just before is held against {@link #movingMilli} when the player
   * began before {@code j}.
   */
  public boolean moves(int j) {
    return shape.moves[j] && moving[j] != Capability.UNLIMITED;
  }

  public int peakMilli(int j) {
    return peak[j];
  }

  public int movingMilli(int j) {
    return moving[j];
  }

  public int sustainedMilli(int j) {
    return sustained[j];
  }

  /** The least time since the last stroke of its chain that a stroke needs when it goes on. */
  public long peakNeedNanos(int j) {
    return peakNeed[j];
  }

  /** The least time since the note before that a stroke needs when it goes on; 0 if none. */
  public long movingNeedNanos(int j) {
    return movingNeed[j];
  }

  /** What multiplies the technique's rates at a stroke. */
  public double factor(int j) {
    return shape.factor[j];
  }

  public int count() {
    return peak.length;
  }

  /**
   * The median of the line's rates from stroke to stroke, rests of a beat or more left out; 0 for a
   * single stroke.
   */
  public static double usualRatePerSecond(Line line) {
    List<Long> gaps =
        java.util.stream.IntStream.range(1, line.count())
            .filter(j -> !line.restsBefore(j))
            .mapToObj(j -> line.onsetMicros(j) - line.onsetMicros(j - 1))
            .sorted()
            .toList();
    return gaps.isEmpty() ? 0 : 1e6 / Math.max(1, gaps.get((gaps.size() - 1) / 2));
  }

  private static double factorAt(Instrument instrument, Technique technique, Line line, int j) {
    if (technique.factors().isEmpty()) {
      return 1;
    }
    return conditionsAt(instrument, line, j).stream()
        .mapToDouble(condition -> technique.factors().getOrDefault(condition, 1.0))
        .reduce(1, (a, b) -> a * b);
  }

  /**
   * Which conditions hold at a stroke for an instrument; motion counts from the note before in the
   * line.
   */
  public static Set<Condition> conditionsAt(Instrument instrument, Line line, int j) {
    Set<Condition> result = new HashSet<>();
    Stroke stroke = line.stroke(j);
    for (Tone tone : stroke.tones()) {
      if (tone instanceof Pitch pitch && instrument.comfortable().isPresent()) {
        if (pitch.midi() < instrument.comfortable().get().low()) {
          result.add(Condition.LOW_REGISTER);
        } else if (pitch.midi() > instrument.comfortable().get().high()) {
          result.add(Condition.HIGH_REGISTER);
        }
      }
    }
    if (stroke.dynamic().compareTo(Dynamic.PP) <= 0) {
      result.add(Condition.SOFT);
    } else if (stroke.dynamic().compareTo(Dynamic.FF) >= 0) {
      result.add(Condition.LOUD);
    }
    if (j > 0
        && stroke.top() instanceof Pitch here
        && line.stroke(j - 1).top() instanceof Pitch before
        && here.midi() != before.midi()) {
      result.add(stroke.leapsTo(line.stroke(j - 1)) ? Condition.LEAP : Condition.STEP);
    }
    return result;
  }

  private static int scaled(double milli, double factor) {
    return (int) Math.floor(milli * factor + 1e-6);
  }

  /** The metronome mark at which sixteenths go so fast: "16ths at quarter = 156". */
  public static String asSixteenths(double perSecond) {
    return "16ths at quarter = " + Math.round(perSecond * 15);
  }
}

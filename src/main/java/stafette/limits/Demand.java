package stafette.limits;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import stafette.score.Dynamic;
import stafette.score.Line;
import stafette.score.Pitch;
import stafette.score.Stroke;
import stafette.score.Tone;

/**
 * What each stroke of a line asks of one player with one technique: from which earlier stroke its
 * gap counts, and which rates hold there, factors for register, dynamic and motion reckoned in.
 * Rates are in thousandths of a stroke a second, rounded down.
 *
 * <p>Two gaps matter at a stroke {@code j}: that from the last stroke of the tongue, bow, finger or
 * on that same key, held against {@link #peakMilli}; and that from the note just before, held
 * against {@link #movingMilli} if the pitch changes. The first note that a player takes is always a
 * stroke, even under a slur.
 *
 * <p>Tiredness follows the strokes of tongue, bow or finger. Where repeated notes count by key, it
 * follows every stroke: at the sustained rate of repeated notes if the stroke repeats the one just
 * before, else at that of changing notes.
 */
public final class Demand {
  private static final int NONE = -1;

  private final boolean byKey;
  private final boolean[] articulated;
  private final boolean[] moves;
  private final int[] previousStroke;
  private final int[] previousSameKey;
  private final int[] peak;
  private final int[] sustained;
  private final int[] moving;
  private final double[] factor;

  private Demand(Instrument instrument, Technique technique, Capability capability, Line line) {
    int count = line.count();
    byKey = technique.act().repeatsByKey();
    articulated = new boolean[count];
    moves = new boolean[count];
    previousStroke = new int[count];
    previousSameKey = new int[count];
    peak = new int[count];
    sustained = new int[count];
    moving = new int[count];
    factor = new double[count];
    Map<Set<Integer>, Integer> lastOnKeys = new HashMap<>();
    int lastStroke = NONE;
    Set<Integer> keysBefore = Set.of();
    for (int j = 0; j < count; j++) {
      Stroke stroke = line.stroke(j);
      Set<Integer> keys = keys(stroke);
      moves[j] = j > 0 && !keys.equals(keysBefore);
      keysBefore = keys;
      articulated[j] =
          stroke.measured() && !(technique.act().slurs() && stroke.slurred() && moves[j]);
      previousStroke[j] = lastStroke;
      previousSameKey[j] = lastOnKeys.getOrDefault(keys, NONE);
      factor[j] = factorAt(instrument, technique, line, j);
      peak[j] = scaled(capability.peakMilli(), factor[j]);
      moving[j] =
          capability.movingMilli() == Capability.UNLIMITED
              ? Capability.UNLIMITED
              : scaled(capability.movingMilli(), factor[j]);
      double sustainedRate = capability.sustainedMilli();
      if (byKey && moves[j] && moving[j] != Capability.UNLIMITED) {
        sustainedRate *= (double) capability.movingMilli() / capability.peakMilli();
      }
      sustained[j] = scaled(sustainedRate, factor[j]);
      if (articulated[j]) {
        lastStroke = j;
      }
      lastOnKeys.put(keys, j);
    }
  }

  public static Demand of(
      Instrument instrument, Technique technique, Capability capability, Line line) {
    return new Demand(instrument, technique, capability, line);
  }

  /**
   * Whether a player who is already playing makes a stroke of tongue, bow, finger, key or mallet
   * here, not a finger change.
   */
  public boolean articulated(int j) {
    return articulated[j];
  }

  /**
   * The stroke from which the gap at {@code j} is held against {@link #peakMilli} when the player
   * began with stroke {@code first}; -1 if there is none to hold.
   */
  public int peakFrom(int first, int j) {
    if (j <= first || !articulated[j]) {
      return NONE;
    }
    if (byKey) {
      return previousSameKey[j] >= first ? previousSameKey[j] : NONE;
    }
    return Math.max(previousStroke[j], first);
  }

  /**
   * Whether the gap from the note just before is held against {@link #movingMilli} when the player
   * began before {@code j}.
   */
  public boolean moves(int j) {
    return moves[j] && moving[j] != Capability.UNLIMITED;
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

  /** What multiplies the technique's rates at a stroke. */
  public double factor(int j) {
    return factor[j];
  }

  public int count() {
    return peak.length;
  }

  /**
   * Whether the technique is used at all on such a line: its pitches, slurs, groups and lowest
   * rate. Harp twins are a matter of each segment and not asked here.
   */
  public static boolean applies(Technique technique, Line line) {
    return fits(technique, line) && usualRatePerSecond(line) >= technique.lowestPerSecond();
  }

  /** What of the demand no tempo changes: its pitches, slurs, groups and manner. */
  public static boolean fits(Technique technique, Line line) {
    return mannerFits(technique.act(), line)
        && pitchesFit(technique.pitches(), line)
        && slursFit(technique.slurs(), line)
        && (technique.groups() != Groups.THREES || allInThrees(line));
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

  /** What is plucked is not bowed. */
  private static boolean mannerFits(Act act, Line line) {
    return act != Act.BOW
        || line.strokes().stream().noneMatch(stroke -> stroke.manner().isPlucked());
  }

  private static boolean pitchesFit(Technique.Pitches pitches, Line line) {
    if (pitches == Technique.Pitches.ANY) {
      return true;
    }
    boolean repeated = pitches == Technique.Pitches.REPEATED;
    for (int j = 1; j < line.count(); j++) {
      if (keys(line.stroke(j)).equals(keys(line.stroke(j - 1))) != repeated) {
        return false;
      }
    }
    return true;
  }

  private static boolean slursFit(Technique.SlurUse slurs, Line line) {
    return switch (slurs) {
      case ANY -> true;
      case NONE -> line.strokes().stream().noneMatch(Stroke::slurred);
      case ALL ->
          line.strokes().stream().anyMatch(Stroke::slurred)
              && line.strokes().stream().allMatch(s -> s.slurred() || s.slurContinues());
    };
  }

  private static boolean allInThrees(Line line) {
    for (int j = 0; j < line.count(); j++) {
      if (line.placeInThree(j) < 0) {
        return false;
      }
    }
    return true;
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
        && top(stroke) instanceof Pitch here
        && top(line.stroke(j - 1)) instanceof Pitch before
        && here.midi() != before.midi()) {
      result.add(Math.abs(here.midi() - before.midi()) <= 2 ? Condition.STEP : Condition.LEAP);
    }
    return result;
  }

  private static Tone top(Stroke stroke) {
    return stroke.tones().get(stroke.tones().size() - 1);
  }

  private static Set<Integer> keys(Stroke stroke) {
    return stroke.tones().size() == 1
        ? Set.of(stroke.tones().get(0).key())
        : stroke.tones().stream().map(Tone::key).collect(Collectors.toSet());
  }

  private static int scaled(double milli, double factor) {
    return (int) Math.floor(milli * factor + 1e-6);
  }

  /** The metronome mark at which sixteenths go so fast: "16ths at quarter = 156". */
  public static String asSixteenths(double perSecond) {
    return "16ths at quarter = " + Math.round(perSecond * 15);
  }
}

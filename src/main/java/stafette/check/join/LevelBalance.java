package stafette.check.join;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import stafette.limits.Instrument;
import stafette.plan.LevelSteps;
import stafette.plan.Plan;
import stafette.plan.Segment;
import stafette.score.Dynamic;
import stafette.words.Sayable;
import stafette.words.Sentence;

/**
 * How a difference in loudness between who leaves and who enters is balanced in the dynamics: the
 * louder one plays so many steps softer than written, never below <i>ppp</i>; where that is not
 * enough, the softer one plays louder, never above <i>fff</i>.
 *
 * @param louder the instrument that is louder at the same dynamic
 * @param softer the other one
 * @param decibel how much louder
 * @param written the dynamic of the source at the join
 * @param louderPlays the dynamic proposed for the louder one
 * @param softerPlays the dynamic proposed for the other one, mostly as written
 */
public record LevelBalance(
    Instrument louder,
    Instrument softer,
    double decibel,
    Dynamic written,
    Dynamic louderPlays,
    Dynamic softerPlays)
    implements Sayable {
  /** Empty where they differ by less than a step; else rounded to whole steps. */
  static Optional<LevelBalance> of(Instrument leaving, Instrument entering, Dynamic written) {
    double above = entering.levelDecibel() - leaving.levelDecibel();
    if (Math.abs(above) < LevelSteps.STEP_DECIBEL) {
      return Optional.empty();
    }
    int steps = (int) Math.round(Math.abs(above) / LevelSteps.STEP_DECIBEL);
    int down = Math.min(steps, written.ordinal());
    return Optional.of(
        new LevelBalance(
            above > 0 ? entering : leaving,
            above > 0 ? leaving : entering,
            Math.abs(above),
            written,
            moved(written, -down),
            moved(written, steps - down)));
  }

  /**
   * What a plan is balanced by where louder instruments are marked softer ({@link LevelSteps}): one
   * for each of them, against the softest, at its first entry.
   */
  public static List<LevelBalance> written(Plan plan) {
    Optional<Instrument> softest =
        plan.segments().stream()
            .map(segment -> plan.player(segment).instrument())
            .min(Comparator.comparingDouble(Instrument::levelDecibel));
    Map<Instrument, LevelBalance> balances = new LinkedHashMap<>();
    for (Segment segment : plan.segments()) {
      Instrument louder = plan.player(segment).instrument();
      int steps = LevelSteps.steps(plan, segment.player());
      if (steps > 0) {
        double above = louder.levelDecibel() - softest.orElseThrow().levelDecibel();
        Dynamic written = plan.played(segment).all().get(0).dynamic();
        balances.putIfAbsent(
            louder,
            new LevelBalance(
                louder,
                softest.orElseThrow(),
                above,
                written,
                LevelSteps.softer(written, steps),
                written));
      }
    }
    return List.copyOf(balances.values());
  }

  private static Dynamic moved(Dynamic from, int steps) {
    Dynamic[] all = Dynamic.values();
    return all[Math.min(all.length - 1, from.ordinal() + steps)];
  }

  /** "trumpet p against flute mf". */
  @Override
  public Sentence inWords() {
    return Sentence.of(
        "{0} {1} against {2} {3}", louder, sign(louderPlays), softer, sign(softerPlays));
  }

  private static String sign(Dynamic dynamic) {
    return dynamic.name().toLowerCase(Locale.ROOT);
  }
}

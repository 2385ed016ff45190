package stafette.split;

import java.util.Optional;
import stafette.check.Tiredness;
import stafette.check.Tolerance;
import stafette.limits.Breath;
import stafette.limits.Capability;

/**
 * How spent a player is after what was played so far: the judge's own formulas, taken step by step.
 * Less spent is never worse later on.
 *
 * @param tiredness after the last stroke that loads
 * @param loadedMicros the onset of that stroke, if there was one
 * @param spent the share of air spent before the last sound
 * @param sound the last sound, if there was one; not reckoned in yet, as its end depends on what
 *     follows
 * @param holds whether nothing went beyond what the player has
 */
public record Spent(
    double tiredness,
    Optional<Long> loadedMicros,
    double spent,
    Optional<SpentSound> sound,
    boolean holds) {
  public static final Spent FRESH = new Spent(0, Optional.empty(), 0, Optional.empty(), true);

  /**
   * A sound.
   *
   * @param use what multiplies the use of air
   * @param role who asks for it
   */
  public record SpentSound(long onsetMicros, long endMicros, double use, Role role) {}

  /** Whether the player may be spent. */
  public enum Role {
    /** Of the line: no. */
    OWN,
    /** Given by the score: no, and nothing beyond that is carried on. */
    GIVEN,
    /** Given by the score, which alone asks too much there. */
    EXCUSED
  }

  /** After a stroke that loads. */
  public Spent load(long micros, int sustainedMilli, int graces, Capability capability, Role role) {
    double after =
        loadedMicros
            .map(
                last ->
                    Tiredness.after(
                        tiredness, Math.max(0, micros - last), sustainedMilli, graces, capability))
            .orElseGet(() -> Tiredness.atFirst(graces, capability));
    return new Spent(
        carried(after, role), Optional.of(micros), spent, sound, holds && allowed(after, role));
  }

  /** After a sound has begun; players without lungs spend nothing. */
  public Spent sound(SpentSound next, Optional<Breath> lungs) {
    Spent before = lungs.map(breath -> breathed(next.onsetMicros, breath)).orElse(this);
    return new Spent(tiredness, loadedMicros, before.spent, Optional.of(next), before.holds);
  }

  /** When nothing follows. */
  public Spent ended(Optional<Breath> lungs) {
    return lungs.map(breath -> breathed(Long.MAX_VALUE, breath)).orElse(this);
  }

  /** What is spent once more was asked than the player has. */
  public Spent broken() {
    return new Spent(tiredness, loadedMicros, spent, sound, false);
  }

  private Spent breathed(long nextMicros, Breath lungs) {
    if (sound.isEmpty()) {
      return this;
    }
    SpentSound last = sound.get();
    long end = Math.min(last.endMicros, Math.max(last.onsetMicros, nextMicros));
    double atEnd = spent + (end - last.onsetMicros) / 1e6 * last.use / lungs.capacitySeconds();
    double silence = nextMicros == Long.MAX_VALUE ? 0 : (nextMicros - end) / 1e6;
    double from = carried(atEnd, last.role);
    double after =
        Tolerance.reaches(Math.max(0, silence), lungs.catchSeconds())
            ? Math.max(0, from - silence / lungs.fullSeconds())
            : from + Math.max(0, silence) * last.use / lungs.capacitySeconds();
    return new Spent(
        tiredness, loadedMicros, after, Optional.empty(), holds && allowed(atEnd, last.role));
  }

  private static double carried(double value, Role role) {
    return role == Role.OWN ? value : Math.min(1, value);
  }

  private static boolean allowed(double value, Role role) {
    return role == Role.EXCUSED || Tolerance.within(value, 1);
  }
}

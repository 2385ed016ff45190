package stafette.score;

/**
 * How a stroke is made, as far as the score says so.
 *
 * @param attack what makes it sound
 * @param contact where the bow meets the string
 * @param muted whether a mute is on the instrument
 */
public record Manner(Attack attack, Contact contact, boolean muted) {
  /** As the instrument is usually played. */
  public static final Manner PLAIN = new Manner(Attack.PLAIN, Contact.PLAIN, false);

  public boolean isPlucked() {
    return attack == Attack.PLUCKED;
  }

  public Manner with(Attack other) {
    return new Manner(other, contact, muted);
  }

  public Manner with(Contact other) {
    return new Manner(attack, other, muted);
  }

  public Manner withMute(boolean on) {
    return new Manner(attack, contact, on);
  }
}

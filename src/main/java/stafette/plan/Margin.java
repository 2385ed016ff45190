package stafette.plan;

/**
 * How far the tempo may drift either way while a plan still holds: no orchestra is a metronome.
 * Each span of time is taken by itself, as it is hardest: gaps, rests and silences shorter, sounds
 * longer.
 *
 * @param percent of the tempo
 * @param isReckoned whether players and rests are already those for whom the written tempo is as
 *     hard as any within it, as {@link Brief#withinMargin} makes them
 */
public record Margin(double percent, boolean isReckoned) {
  /** The written tempo and no other. */
  public static final Margin NONE = new Margin(0);

  /** What is kept unless something else is asked: a judgement, no published figure. */
  public static final Margin DEFAULT = new Margin(3);

  /** More than this is another tempo. */
  public static final double MOST_PERCENT = 25;

  /** A margin that is to be kept. */
  public Margin(double percent) {
    this(percent, false);
  }

  /**
   * @throws IllegalArgumentException if the share is negative or above {@link #MOST_PERCENT}
   */
  public Margin {
    if (!(percent >= 0 && percent <= MOST_PERCENT)) {
      throw new IllegalArgumentException("a margin lies between 0 and 25 per cent: " + percent);
    }
  }

  /** The same margin, reckoned in. */
  Margin reckoned() {
    return new Margin(percent, true);
  }

  /** By what times must be shortened that players and rests say nothing of. */
  public double stretch() {
    return isReckoned ? shortened() : 1;
  }

  public boolean isNone() {
    return percent == 0;
  }

  /** What a gap, a rest or a silence is multiplied with. */
  public double shortened() {
    return 1 - percent / 100;
  }

  /** What a sound is multiplied with. */
  public double lengthened() {
    return 1 + percent / 100;
  }
}

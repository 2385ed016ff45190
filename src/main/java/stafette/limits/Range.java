package stafette.limits;

/**
 * Sounding pitches as MIDI numbers, both ends included.
 *
 * @param low the lowest
 * @param high the highest
 */
public record Range(int low, int high) {
  /**
   * @throws IllegalArgumentException if the highest is below the lowest
   */
  public Range {
    if (low > high) {
      throw new IllegalArgumentException("a range from " + low + " to " + high + " is upside down");
    }
  }

  public boolean contains(int midi) {
    return low <= midi && midi <= high;
  }
}

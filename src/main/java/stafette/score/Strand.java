package stafette.score;

import java.util.Comparator;

/**
 * One voice of one staff, from which a line takes notes.
 *
 * @param staff counted from 1
 * @param voice its name
 */
public record Strand(int staff, String voice) implements Comparable<Strand> {
  private static final Comparator<Strand> FROM_ABOVE =
      Comparator.comparingInt(Strand::staff).thenComparing(Strand::voice);

  static Strand of(Voice voice) {
    return new Strand(voice.staff(), voice.name());
  }

  @Override
  public int compareTo(Strand other) {
    return FROM_ABOVE.compare(this, other);
  }
}

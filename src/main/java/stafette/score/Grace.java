package stafette.score;

import java.util.List;

/**
 * A grace note before a stroke.
 *
 * @param tones what sounds
 * @param slashed whether it is crossed out
 */
public record Grace(List<Tone> tones, boolean slashed) {
  public Grace {
    tones = List.copyOf(tones);
  }
}

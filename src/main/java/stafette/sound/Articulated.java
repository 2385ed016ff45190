package stafette.sound;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import stafette.score.Articulation;
import stafette.score.Grace;
import stafette.score.Stroke;
import stafette.score.Tone;

/**
 * How one stroke sounds: its grace notes before it, its length by what stands on it. The shares of
 * a note's value are common practice, no source.
 */
final class Articulated {
  private static final double PLAIN = 0.9;
  private static final double STACCATO = 0.5;
  private static final double STACCATISSIMO = 0.3;
  private static final long GRACE_MICROS = 60_000;
  private static final Set<Articulation> SHORT =
      Set.of(Articulation.STACCATO, Articulation.SPICCATO);

  private Articulated() {}

  /**
   * The sounds of a stroke.
   *
   * @param fromMicros its onset
   * @param valueMicros how long it is written to last
   * @param gapMicros how long it is since the onset of the stroke before; grace notes share half of
   *     it at the most
   */
  static List<Note> notes(
      int chair, Stroke stroke, long fromMicros, long valueMicros, long gapMicros, int velocity) {
    List<Note> notes = new ArrayList<>();
    int graces = stroke.graces().size();
    long each = graces == 0 ? 0 : Math.min(GRACE_MICROS, gapMicros / (2L * graces));
    for (int i = 0; i < graces; i++) {
      Grace grace = stroke.graces().get(i);
      long start = fromMicros - (graces - i) * each;
      for (Tone tone : grace.tones()) {
        notes.add(new Note(chair, start, start + each, tone.key(), velocity));
      }
    }
    long length = Math.max(1, Math.round(valueMicros * share(stroke)));
    for (Tone tone : stroke.tones()) {
      notes.add(new Note(chair, fromMicros, fromMicros + length, tone.key(), velocity));
    }
    return notes;
  }

  /** How much of its value a stroke sounds. */
  static double share(Stroke stroke) {
    if (stroke.slurContinues() || stroke.articulations().contains(Articulation.TENUTO)) {
      return 1;
    }
    if (stroke.articulations().contains(Articulation.STACCATISSIMO)) {
      return STACCATISSIMO;
    }
    return stroke.articulations().stream().anyMatch(SHORT::contains) ? STACCATO : PLAIN;
  }
}

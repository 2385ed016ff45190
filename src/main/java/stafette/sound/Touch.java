package stafette.sound;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Set;
import stafette.score.Articulation;
import stafette.score.Dynamic;
import stafette.score.Grace;
import stafette.score.Stroke;
import stafette.score.Tone;

/**
 * How a stroke is played: how strongly, and for how much of its written length.
 *
 * <p>Velocities for dynamics are those usual in notation programs, 16 from step to step (from
 * memory; General MIDI fixes none); shares of the length are common practice, no source.
 *
 * @param velocity MIDI velocity
 * @param share of the written length that sounds
 */
record Touch(int velocity, double share) {
  private static final Map<Dynamic, Integer> VELOCITIES =
      Map.of(
          Dynamic.PPP, 16,
          Dynamic.PP, 33,
          Dynamic.P, 49,
          Dynamic.MP, 64,
          Dynamic.MF, 80,
          Dynamic.F, 96,
          Dynamic.FF, 112,
          Dynamic.FFF, 120);

  private static final int ACCENT = 14;
  private static final int STRONG_ACCENT = 22;
  private static final int STRESS = 7;
  private static final int UNDER_SLUR = -6;
  private static final double PLAIN = 0.88;
  private static final double FULL = 1;

  private static final long LONGEST_GRACE_MICROS = 70_000;

  /** What lies at least between two strokes on the same key. */
  static final long GAP_MICROS = 1_000;

  /** An unmeasured tremolo: so long each of its strokes. */
  private static final long TREMOLO_MICROS = 80_000;

  static Touch of(Stroke stroke) {
    Set<Articulation> marks = stroke.articulations();
    int more = stroke.slurred() ? UNDER_SLUR : 0;
    if (marks.contains(Articulation.STRONG_ACCENT)) {
      more += STRONG_ACCENT;
    } else if (marks.contains(Articulation.ACCENT)) {
      more += ACCENT;
    } else if (marks.contains(Articulation.STRESS)) {
      more += STRESS;
    }
    int velocity = VELOCITIES.getOrDefault(stroke.dynamic(), 80) + more;
    return new Touch(Math.max(1, Math.min(127, velocity)), share(stroke, marks));
  }

  private static double share(Stroke stroke, Set<Articulation> marks) {
    double share = PLAIN;
    if (stroke.slurContinues()) {
      share = FULL;
    } else if (marks.contains(Articulation.STACCATISSIMO)) {
      share = 0.3;
    } else if (marks.contains(Articulation.STACCATO) && marks.contains(Articulation.TENUTO)) {
      share = 0.7;
    } else if (marks.contains(Articulation.STACCATO) || marks.contains(Articulation.SPICCATO)) {
      share = 0.5;
    } else if (marks.contains(Articulation.DETACHED_LEGATO)) {
      share = 0.75;
    } else if (marks.contains(Articulation.TENUTO)) {
      share = FULL;
    }
    return share;
  }

  /**
   * What sounds for one stroke. Grace notes take time from it, as the line has it; an unmeasured
   * tremolo is struck again and again.
   *
   * @param number of the voice
   * @param from its onset
   * @param writtenEnd the end of its written length
   * @param next the voice's next onset; it ends before that, or with it under a slur
   */
  static List<Note> notes(
      Stroke stroke, SoundingVoice voice, int number, long from, long writtenEnd, long next) {
    Touch touch = of(stroke);
    List<Note> notes = new ArrayList<>();
    long each = graceMicros(stroke, writtenEnd - from);
    long at = from;
    for (Grace grace : stroke.graces()) {
      add(notes, grace.tones(), voice, new Note(number, 0, touch.velocity, at, at + each));
      at += each;
    }
    long end = Math.max(at + GAP_MICROS, touch.end(stroke, from, writtenEnd, next));
    long pulses = stroke.isTremolo() ? Math.max(1, (end - at) / TREMOLO_MICROS) : 1;
    for (long i = 0; i < pulses; i++) {
      Note pulse =
          new Note(
              number,
              0,
              touch.velocity,
              at + (end - at) * i / pulses,
              at + (end - at) * (i + 1) / pulses);
      add(notes, stroke.tones(), voice, pulse);
    }
    return notes;
  }

  private long end(Stroke stroke, long from, long writtenEnd, long next) {
    if (stroke.slurContinues()) {
      return Math.min(next, Math.max(writtenEnd, from));
    }
    return Math.min(from + Math.round(share * (writtenEnd - from)), next - GAP_MICROS);
  }

  private static long graceMicros(Stroke stroke, long written) {
    int count = stroke.graces().size();
    return count == 0
        ? 0
        : Math.max(GAP_MICROS, Math.min(LONGEST_GRACE_MICROS, written / (2L * count)));
  }

  private static void add(List<Note> notes, List<Tone> tones, SoundingVoice voice, Note like) {
    for (Tone tone : tones) {
      OptionalInt key = voice.key(tone);
      if (key.isPresent()) {
        notes.add(
            new Note(
                like.voice(), key.getAsInt(), like.velocity(), like.fromMicros(), like.toMicros()));
      }
    }
  }
}

package stafette.sound;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.BooleanSupplier;
import javax.sound.midi.Sequence;
import javax.sound.midi.Soundbank;
import stafette.plan.Brief;
import stafette.plan.Plan;
import stafette.score.Line;
import stafette.time.Rational;
import stafette.time.Span;

/**
 * A plan as it is heard: who sounds, and every note.
 *
 * @param voices the players in the brief's order, then the parts of the background
 * @param notes of all voices, in no particular order
 * @param takes what is heard one after the other, at least one
 * @param lengthMicros from the start of the first take to the end of the last as the tempo map has
 *     it; what rings on after it is not counted
 */
public record Performance(
    List<SoundingVoice> voices, List<Note> notes, List<Take> takes, long lengthMicros) {
  private static final double MICROS_A_SECOND = 1e6;

  public Performance {
    voices = List.copyOf(voices);
    notes = List.copyOf(notes);
    takes = List.copyOf(takes);
  }

  /**
   * One playing of a plan.
   *
   * @param plan at the tempo that is heard
   * @param excerpt which stretch of it
   * @param hearing how
   * @param fromMicros when it begins
   */
  public record Take(Plan plan, Span excerpt, Hearing hearing, long fromMicros) {
    long lengthMicros() {
      return plan.line().micros(excerpt.end()) - plan.line().micros(excerpt.start());
    }

    long toMicros() {
      return fromMicros + lengthMicros();
    }
  }

  /**
   * A plan, or an excerpt of it.
   *
   * @param plan at its own tempo
   */
  public static Performance of(Plan plan, Span excerpt, Hearing hearing) {
    return of(plan, excerpt, hearing, Stage.of(plan, hearing.seats()));
  }

  static Performance of(Plan plan, Span excerpt, Hearing hearing, Stage stage) {
    Plan heard = at(plan, hearing.speed());
    Take take = new Take(heard, excerpt, hearing, 0);
    List<SoundingVoice> voices = new ArrayList<>(stage.voices());
    List<Note> notes = new ArrayList<>(new Performer(heard, excerpt, hearing, stage).notes());
    hearing
        .rest()
        .ifPresent(
            rest -> {
              notes.addAll(rest.notes(heard, excerpt, voices.size()));
              voices.addAll(rest.voices());
            });
    return new Performance(voices, notes, List.of(take), take.lengthMicros());
  }

  private static Plan at(Plan plan, Rational speed) {
    Brief brief = plan.brief();
    List<Line> lines = brief.linesAt(plan.line().tempo().times(speed));
    return new Plan(new Brief(lines, brief.players(), brief.rules()), plan.segments());
  }

  /** This, and after a pause another performance by the same voices. */
  Performance then(Performance other, long pauseMicros) {
    long later = lengthMicros + pauseMicros;
    List<Note> both = new ArrayList<>(notes);
    other.notes.forEach(note -> both.add(note.later(later)));
    List<Take> all = new ArrayList<>(takes);
    other.takes.forEach(
        take -> all.add(new Take(take.plan, take.excerpt, take.hearing, take.fromMicros + later)));
    return new Performance(voices, both, all, later + other.lengthMicros);
  }

  /**
   * To be played by a sequencer: one tick is one microsecond, so that a sequencer's tick position
   * is what {@link #lineSeconds} asks for. Its first track has the tempo; then comes one for each
   * voice, in order, to be muted or heard alone.
   */
  public Sequence sequence() {
    return MidiWriter.of(this, TickClock.EVEN);
  }

  /** A Standard MIDI File in the score's bars, beats and tempo marks. */
  public byte[] midi() {
    return MidiWriter.file(MidiWriter.of(this, new ScoreClock(takes)));
  }

  /**
   * Rendered by the JDK's synthesiser, which needs no sound card.
   *
   * @param bank sounds of the user's own
   * @throws NoSound if this Java has no such synthesiser, or can't use the bank
   */
  public Audio audio(Optional<Soundbank> bank) throws NoSound {
    return audio(bank, () -> false).orElseThrow();
  }

  /**
   * Renders the performance, unless it is ended.
   *
   * @param stop asked several times a second of what is rendered; nothing comes of it once it says
   *     yes
   * @throws NoSound if this Java has no such synthesiser, or can't use the bank
   */
  public Optional<Audio> audio(Optional<Soundbank> bank, BooleanSupplier stop) throws NoSound {
    return Synthesiser.render(sequence(), lengthMicros, bank, stop);
  }

  /**
   * Where a moment is on the plan's own clock, in seconds at the tempo of the plan; empty in the
   * pauses between takes and after the end.
   */
  public OptionalDouble lineSeconds(long micros) {
    return takes.stream()
        .filter(take -> micros >= take.fromMicros && micros < take.toMicros())
        .mapToDouble(
            take ->
                (take.plan.line().micros(take.excerpt.start()) + micros - take.fromMicros)
                    * take.hearing.speed().toDouble()
                    / MICROS_A_SECOND)
        .findFirst();
  }

  /** When a moment of the plan's own clock is heard in the first take; may lie outside of it. */
  public long micros(double lineSeconds) {
    Take take = takes.get(0);
    return Math.round(lineSeconds * MICROS_A_SECOND / take.hearing.speed().toDouble())
        - take.plan.line().micros(take.excerpt.start())
        + take.fromMicros;
  }
}

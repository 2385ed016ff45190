package stafette.desktop.playing;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import java.util.function.Predicate;
import javax.sound.midi.InvalidMidiDataException;
import javax.sound.midi.MidiSystem;
import javax.sound.midi.MidiUnavailableException;
import javax.sound.midi.Sequencer;
import javax.sound.midi.Synthesizer;
import stafette.work.Playback;

/**
 * Plays what is listened to, from anywhere, once or again and again. Without a sound card time goes
 * on and nothing is heard.
 */
public final class Playing implements AutoCloseable {
  /** How late the JDK's synthesiser sounds. */
  private static final long LATENCY_MICROS = 120_000;

  private static final double MICROS = 1e6;

  private final Sequencer sequencer;
  private final Optional<Synthesizer> synthesizer;
  private Optional<Playback> present = Optional.empty();

  private Playing(Sequencer sequencer, Optional<Synthesizer> synthesizer) {
    this.sequencer = sequencer;
    this.synthesizer = synthesizer;
  }

  /** Ready to play; empty if this Java has no sequencer at all. */
  public static Optional<Playing> open() {
    try {
      Sequencer sequencer = MidiSystem.getSequencer(false);
      sequencer.open();
      Optional<Synthesizer> synthesizer = synthesizer();
      if (synthesizer.isPresent()) {
        sequencer.getTransmitter().setReceiver(synthesizer.get().getReceiver());
      }
      return Optional.of(new Playing(sequencer, synthesizer));
    } catch (MidiUnavailableException | IllegalArgumentException e) {
      return Optional.empty();
    }
  }

  /** Empty without a sound card: then opening it fails in one of several ways. */
  private static Optional<Synthesizer> synthesizer() {
    try {
      Synthesizer synthesizer = MidiSystem.getSynthesizer();
      synthesizer.open();
      return Optional.of(synthesizer);
    } catch (MidiUnavailableException | IllegalArgumentException e) {
      return Optional.empty();
    }
  }

  /** Whether anything can be heard. */
  public boolean isHeard() {
    return synthesizer.isPresent();
  }

  public boolean isPlaying() {
    return sequencer.isRunning();
  }

  /** Plays from a moment on the line's clock to the end. */
  public void play(Playback playback, long fromLineMicros) {
    load(playback);
    sequencer.setLoopCount(0);
    sequencer.setMicrosecondPosition(Math.max(0, heard(playback, fromLineMicros)));
    sequencer.start();
  }

  /** Plays a stretch again and again. */
  public void loop(Playback playback, long fromLineMicros, long toLineMicros) {
    load(playback);
    sequencer.setMicrosecondPosition(Math.max(0, heard(playback, fromLineMicros)));
    long from = sequencer.getTickPosition();
    sequencer.setMicrosecondPosition(
        Math.min(sequencer.getMicrosecondLength(), heard(playback, toLineMicros)));
    long to = sequencer.getTickPosition();
    sequencer.setTickPosition(from);
    sequencer.setLoopStartPoint(from);
    sequencer.setLoopEndPoint(Math.max(from + 1, to));
    sequencer.setLoopCount(Sequencer.LOOP_CONTINUOUSLY);
    sequencer.start();
  }

  private void load(Playback playback) {
    try {
      sequencer.stop();
      sequencer.setLoopStartPoint(0);
      sequencer.setLoopEndPoint(-1);
      sequencer.setSequence(playback.sequence());
      present = Optional.of(playback);
    } catch (InvalidMidiDataException e) {
      throw new IllegalStateException("a sequence of our own can't be played", e);
    }
  }

  public void stop() {
    sequencer.stop();
  }

  private static long heard(Playback playback, long lineMicros) {
    return playback.micros(lineMicros / MICROS);
  }

  /** Hears only some of the voices from now on. */
  public void hear(Predicate<String> voice) {
    present.ifPresent(
        playback -> {
          for (int i = 0; i < playback.voices().size(); i++) {
            sequencer.setTrackMute(i + 1, !voice.test(playback.voices().get(i)));
          }
        });
  }

  /** Where on the line's clock is what is heard now; nowhere if nothing plays. */
  public OptionalLong lineMicros() {
    if (!sequencer.isRunning() || present.isEmpty()) {
      return OptionalLong.empty();
    }
    long late = isHeard() ? LATENCY_MICROS : 0;
    long now = Math.max(0, sequencer.getMicrosecondPosition() - late);
    OptionalDouble seconds = present.get().lineSeconds(now);
    return seconds.isPresent()
        ? OptionalLong.of(Math.round(seconds.getAsDouble() * MICROS))
        : OptionalLong.empty();
  }

  @Override
  public void close() {
    sequencer.close();
    synthesizer.ifPresent(Synthesizer::close);
  }
}

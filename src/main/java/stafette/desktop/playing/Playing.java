package stafette.desktop.playing;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import javax.sound.midi.InvalidMidiDataException;
import javax.sound.midi.MidiDeviceReceiver;
import javax.sound.midi.MidiSystem;
import javax.sound.midi.MidiUnavailableException;
import javax.sound.midi.Receiver;
import javax.sound.midi.Sequencer;
import javax.sound.midi.Synthesizer;
import stafette.work.Playback;

/**
 * Plays what is listened to, from anywhere, once or again and again; what is asked of it holds at
 * once and for all that is loaded later. Without a sound card time goes on and nothing is heard.
 *
 * <p>A playback has one tick for each microsecond, so ticks are its clock.
 */
public final class Playing implements AutoCloseable {
  /** How late the JDK's synthesiser sounds. */
  private static final long LATENCY_MICROS = 120_000;

  private static final double MICROS = 1e6;

  private final Sequencer sequencer;
  private final Optional<Receiver> ear;
  private Optional<Playback> present = Optional.empty();
  private Optional<LoopStretch> stretch = Optional.empty();
  private Balance balance = Balance.EVERYBODY;
  private int percent = 100;

  private Playing(Sequencer sequencer, Optional<Receiver> ear) throws MidiUnavailableException {
    this.sequencer = sequencer;
    this.ear = ear;
    sequencer.open();
    if (ear.isPresent()) {
      sequencer.getTransmitter().setReceiver(ear.get());
    }
  }

  /** Ready to play, which may take a second; empty if this Java has no sequencer at all. */
  public static Optional<Playing> open() {
    return into(synthesizer());
  }

  /** Plays into another ear than the sound card's, or none. */
  public static Optional<Playing> into(Optional<Receiver> ear) {
    try {
      return Optional.of(new Playing(MidiSystem.getSequencer(false), ear));
    } catch (MidiUnavailableException | IllegalArgumentException e) {
      return Optional.empty();
    }
  }

  /** Empty without a sound card: then opening it fails in one of several ways. */
  private static Optional<Receiver> synthesizer() {
    try {
      Synthesizer synthesizer = MidiSystem.getSynthesizer();
      synthesizer.open();
      return Optional.of(synthesizer.getReceiver());
    } catch (MidiUnavailableException | IllegalArgumentException e) {
      return Optional.empty();
    }
  }

  /** Whether anything can be heard. */
  public boolean isHeard() {
    return ear.isPresent();
  }

  public boolean isPlaying() {
    return sequencer.isRunning();
  }

  /** Takes something to play and stands at a moment of its line; plays on if something plays. */
  public void load(Playback playback, long lineMicros) {
    boolean plays = isPlaying();
    sequencer.stop();
    try {
      sequencer.setSequence(playback.sequence());
    } catch (InvalidMidiDataException e) {
      throw new IllegalStateException("a sequence of our own can't be played", e);
    }
    present = Optional.of(playback);
    speed(percent);
    hear(balance);
    again(stretch);
    to(lineMicros);
    if (plays) {
      play();
    }
  }

  /** Plays from where it stands. */
  public void play() {
    if (present.isPresent()) {
      sequencer.start();
    }
  }

  /** Stands still, so that {@link #play} goes on from there. */
  public void pause() {
    sequencer.stop();
  }

  /** Stands elsewhere; plays on from there if it plays. */
  public void to(long lineMicros) {
    present.ifPresent(playback -> sequencer.setTickPosition(tick(playback, lineMicros)));
  }

  /** Hears a stretch again and again, beginning with it unless it is there; no more if empty. */
  public void again(Optional<LoopStretch> other) {
    stretch = other;
    present.ifPresent(this::turnBack);
  }

  private void turnBack(Playback playback) {
    sequencer.setLoopCount(0);
    sequencer.setLoopStartPoint(0);
    sequencer.setLoopEndPoint(-1);
    if (stretch.isPresent()) {
      long from = tick(playback, stretch.get().fromMicros());
      sequencer.setLoopStartPoint(from);
      sequencer.setLoopEndPoint(Math.max(from + 1, tick(playback, stretch.get().toMicros())));
      sequencer.setLoopCount(Sequencer.LOOP_CONTINUOUSLY);
      if (lineMicros().stream().noneMatch(stretch.get()::contains)) {
        sequencer.setTickPosition(from);
      }
    }
  }

  /** Plays at so many per cent of the plan's own tempo. */
  public void speed(int newPercent) {
    percent = newPercent;
    present.ifPresent(
        playback ->
            sequencer.setTempoFactor(
                (float) (percent / 100.0 / playback.manner().speed().toDouble())));
  }

  /** Hears only some of the players; the rest of the score sounds behind whoever is heard. */
  public void hear(Balance other) {
    balance = other;
    present.ifPresent(this::mute);
  }

  private void mute(Playback playback) {
    for (int i = 0; i < playback.voices().size(); i++) {
      boolean heard =
          playback.isBehind(i)
              || playback.manner().byOne()
              || balance.hears(playback.voices().get(i));
      sequencer.setTrackMute(i + 1, !heard);
    }
  }

  /**
   * Where on the line's clock is what is heard now; nowhere if nothing is loaded, or at its end.
   */
  public OptionalLong lineMicros() {
    if (present.isEmpty()) {
      return OptionalLong.empty();
    }
    double late = isHeard() && isPlaying() ? LATENCY_MICROS * sequencer.getTempoFactor() : 0;
    long now = Math.max(0, sequencer.getTickPosition() - Math.round(late));
    OptionalDouble seconds = present.get().lineSeconds(now);
    return seconds.isPresent()
        ? OptionalLong.of(Math.round(seconds.getAsDouble() * MICROS))
        : OptionalLong.empty();
  }

  private long tick(Playback playback, long lineMicros) {
    long tick = playback.micros(lineMicros / MICROS);
    return Math.max(0, Math.min(sequencer.getTickLength(), tick));
  }

  @Override
  public void close() {
    sequencer.close();
    ear.ifPresent(Playing::close);
  }

  private static void close(Receiver ear) {
    ear.close();
    if (ear instanceof MidiDeviceReceiver device) {
      device.getMidiDevice().close();
    }
  }
}

package stafette.sound;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.logging.Level;
import java.util.logging.Logger;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javax.sound.midi.MidiEvent;
import javax.sound.midi.MidiSystem;
import javax.sound.midi.MidiUnavailableException;
import javax.sound.midi.Receiver;
import javax.sound.midi.Sequence;
import javax.sound.midi.ShortMessage;
import javax.sound.midi.Soundbank;
import javax.sound.midi.Synthesizer;
import javax.sound.sampled.AudioFormat;
import javax.sound.sampled.AudioInputStream;
import javax.sound.sampled.AudioSystem;
import javax.sound.sampled.UnsupportedAudioFileException;
import stafette.words.Sentence;

/**
 * The JDK's software synthesiser, faster than time and without a sound card. With its own sounds it
 * is reached by reading a MIDI file as audio, which is public API; a bank of the user's own can
 * only be given to it through a package of java.desktop that Java has to be told to open.
 */
final class Synthesiser {
  /** How long the last notes may ring on. */
  static final long TAIL_MICROS = 1_000_000;

  /**
   * How late its output is: two of its buffers, 147 of which make a second (seen in JDK 17; a test
   * holds it).
   */
  static final int LATE_FRAMES = 2 * (Audio.FRAMES_A_SECOND / 147);

  private static final int CHUNK_BYTES = Audio.bytes(Audio.FRAMES_A_SECOND / 4);

  /** It asks for the user's preferences, and complains where there are none. */
  private static final Logger PREFERENCES = Logger.getLogger("java.util.prefs");

  static {
    PREFERENCES.setLevel(Level.SEVERE);
  }

  private static final String INTERNAL = "com.sun.media.sound.AudioSynthesizer";

  private Synthesiser() {}

  /**
   * @param even a sequence of which each tick is a microsecond
   * @param stop asked several times for each second of sound
   * @return empty if it was stopped
   */
  static Optional<Audio> render(
      Sequence even, long lengthMicros, Optional<Soundbank> bank, BooleanSupplier stop)
      throws NoSound {
    int bytes = Audio.bytes(Audio.frame(lengthMicros + TAIL_MICROS));
    byte[] samples = new byte[bytes];
    try (AudioInputStream stream = bank.isPresent() ? stream(even, bank.get()) : stream(even)) {
      stream.skipNBytes(Audio.bytes(LATE_FRAMES));
      for (int at = 0; at < bytes; at += CHUNK_BYTES) {
        if (stop.getAsBoolean()) {
          return Optional.empty();
        }
        stream.readNBytes(samples, at, Math.min(CHUNK_BYTES, bytes - at));
      }
    } catch (IOException e) {
      throw new NoSound(
          Sentence.of("the synthesiser of this Java stopped: {0}", String.valueOf(e.getMessage())),
          e);
    }
    return Optional.of(new Audio(samples));
  }

  private static AudioInputStream stream(Sequence even) throws NoSound, IOException {
    try {
      return AudioSystem.getAudioInputStream(new ByteArrayInputStream(MidiWriter.file(even)));
    } catch (UnsupportedAudioFileException e) {
      throw new NoSound(
          Sentence.of(
              "this Java has no software synthesiser; use a JDK that has the module java.desktop"),
          e);
    }
  }

  private static AudioInputStream stream(Sequence even, Soundbank bank) throws NoSound {
    try {
      Synthesizer synthesizer = MidiSystem.getSynthesizer();
      Class<?> type = Class.forName(INTERNAL);
      Method open = type.getMethod("openStream", AudioFormat.class, Map.class);
      Object stream =
          open.invoke(synthesizer, Audio.FORMAT, Map.of("load default soundbank", false));
      if (!synthesizer.loadAllInstruments(bank)) {
        synthesizer.close();
        throw new NoSound(
            Sentence.of("holds no instrument that can be used; is it an SF2 or DLS soundbank?"));
      }
      send(even, synthesizer.getReceiver());
      return (AudioInputStream) Objects.requireNonNull(stream);
    } catch (IllegalAccessException e) {
      throw new NoSound(
          Sentence.of(
              "a soundbank needs the package com.sun.media.sound of the module java.desktop, which"
                  + " this Java does not export; java -jar stafette.jar has it built in"),
          e);
    } catch (MidiUnavailableException | ReflectiveOperationException | IllegalArgumentException e) {
      throw new NoSound(
          Sentence.of("this Java's synthesiser takes no soundbank: {0}", reason(e)), e);
    }
  }

  private static String reason(Exception e) {
    return e instanceof InvocationTargetException inner
        ? String.valueOf(inner.getCause())
        : String.valueOf(e.getMessage());
  }

  /** In order of time; at the same time notes end before others begin. */
  private static void send(Sequence even, Receiver receiver) {
    List<MidiEvent> events =
        Stream.of(even.getTracks())
            .flatMap(track -> IntStream.range(0, track.size()).mapToObj(track::get))
            .filter(event -> event.getMessage() instanceof ShortMessage)
            .sorted(
                Comparator.comparingLong(MidiEvent::getTick)
                    .thenComparing(Synthesiser::beginsANote))
            .toList();
    events.forEach(event -> receiver.send(event.getMessage(), event.getTick()));
  }

  private static boolean beginsANote(MidiEvent event) {
    return event.getMessage() instanceof ShortMessage message
        && message.getCommand() == ShortMessage.NOTE_ON;
  }
}

package stafette.sound;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.lang.reflect.InvocationTargetException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.logging.Level;
import java.util.logging.Logger;
import javax.sound.midi.InvalidMidiDataException;
import javax.sound.midi.MetaMessage;
import javax.sound.midi.MidiEvent;
import javax.sound.midi.MidiSystem;
import javax.sound.midi.MidiUnavailableException;
import javax.sound.midi.Receiver;
import javax.sound.midi.Sequence;
import javax.sound.midi.Soundbank;
import javax.sound.midi.Synthesizer;
import javax.sound.midi.Track;
import javax.sound.sampled.AudioFormat;
import javax.sound.sampled.AudioInputStream;
import javax.sound.sampled.AudioSystem;
import javax.sound.sampled.UnsupportedAudioFileException;

/** Makes performances sound with the JDK's software synthesiser, offline. */
public final class Synthesis {
  /** The JDK's synthesiser asks for the user's preferences, which says so where there are none. */
  private static final Logger PREFERENCES = Logger.getLogger("java.util.prefs");

  static {
    PREFERENCES.setLevel(Level.SEVERE);
  }

  private final Optional<Soundbank> bank;

  private Synthesis(Optional<Soundbank> bank) {
    this.bank = bank;
  }

  /** With the bank that the JDK finds on the machine, or its own. */
  public static Synthesis plain() {
    return new Synthesis(Optional.empty());
  }

  /**
   * With a bank of the user's own, in memory (SF2 or DLS).
   *
   * @throws UnusableBank if it is no such bank
   */
  public static Synthesis with(byte[] bank) throws UnusableBank {
    return new Synthesis(Optional.of(read(bank)));
  }

  /**
   * What a performance sounds like.
   *
   * @throws UnusableBank if there is a bank and this Java does not give access to its synthesiser
   */
  public Audio render(Performance performance) throws UnusableBank {
    return bank.isPresent() ? render(performance, bank.get()) : renderPlain(performance);
  }

  private static Audio renderPlain(Performance performance) {
    InputStream midi = new ByteArrayInputStream(Midi.file(performance));
    try (AudioInputStream stream =
        AudioSystem.getAudioInputStream(Audio.FORMAT, AudioSystem.getAudioInputStream(midi))) {
      return Audio.read(stream, performance.lengthMicros());
    } catch (IOException | UnsupportedAudioFileException e) {
      throw new IllegalStateException("the JDK's synthesiser does not read our MIDI", e);
    }
  }

  private static Audio render(Performance performance, Soundbank sounds) throws UnusableBank {
    try {
      Synthesizer synthesizer = MidiSystem.getSynthesizer();
      try (AudioInputStream stream = open(synthesizer)) {
        synthesizer.unloadAllInstruments(synthesizer.getDefaultSoundbank());
        synthesizer.loadAllInstruments(sounds);
        send(Midi.sequence(performance), performance.tempi(), synthesizer.getReceiver());
        return Audio.read(stream, performance.lengthMicros());
      } finally {
        synthesizer.close();
      }
    } catch (MidiUnavailableException | IOException e) {
      throw new UnusableBank("the synthesiser can't be opened: " + e.getMessage(), e);
    }
  }

  private static Soundbank read(byte[] bank) throws UnusableBank {
    try {
      return MidiSystem.getSoundbank(new ByteArrayInputStream(bank));
    } catch (InvalidMidiDataException | IOException e) {
      throw new UnusableBank("is no sound bank that Java can read; name an .sf2 or .dls file", e);
    }
  }

  /**
   * The stream of what the synthesiser plays. That it has one is known only to the JDK's own
   * interface, which the start of the program must have opened to us.
   */
  private static AudioInputStream open(Synthesizer synthesizer) throws UnusableBank {
    try {
      return (AudioInputStream)
          Class.forName("com.sun.media.sound.AudioSynthesizer")
              .getMethod("openStream", AudioFormat.class, Map.class)
              .invoke(synthesizer, Audio.FORMAT, Map.of());
    } catch (ReflectiveOperationException e) {
      Throwable cause = e instanceof InvocationTargetException ? e.getCause() : e;
      throw new UnusableBank(
          "this Java keeps its synthesiser to itself; start it with --add-exports java.desktop/com.sun.media.sound=ALL-UNNAMED",
          cause == null ? e : cause);
    }
  }

  private static void send(Sequence sequence, List<Performance.Tempo> tempi, Receiver receiver) {
    Ticks ticks = new Ticks(tempi, sequence.getResolution());
    List<MidiEvent> events = new ArrayList<>();
    for (Track track : sequence.getTracks()) {
      for (int i = 0; i < track.size(); i++) {
        if (!(track.get(i).getMessage() instanceof MetaMessage)) {
          events.add(track.get(i));
        }
      }
    }
    events.sort(Comparator.comparingLong(MidiEvent::getTick));
    events.forEach(event -> receiver.send(event.getMessage(), ticks.micros(event.getTick())));
  }
}

package stafette.desktop.playing;

import java.util.Queue;
import java.util.Set;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.stream.Collectors;
import javax.sound.midi.MidiMessage;
import javax.sound.midi.Receiver;
import javax.sound.midi.ShortMessage;

/** Notes each tone that is played, in place of a sound card. */
public final class Ear implements Receiver {
  private final Queue<ShortMessage> struck = new ConcurrentLinkedQueue<>();

  @Override
  public void send(MidiMessage message, long time) {
    if (message instanceof ShortMessage heard
        && heard.getCommand() == ShortMessage.NOTE_ON
        && heard.getData2() > 0) {
      struck.add(heard);
    }
  }

  /** The channels on which something was heard. */
  public Set<Integer> channels() {
    return struck.stream().map(ShortMessage::getChannel).collect(Collectors.toSet());
  }

  public void forget() {
    struck.clear();
  }

  @Override
  public void close() {}
}

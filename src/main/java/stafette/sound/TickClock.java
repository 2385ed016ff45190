package stafette.sound;

import java.util.List;
import javax.sound.midi.MidiEvent;

/** How the time of a performance is counted in a MIDI sequence. */
interface TickClock {
  /** Ticks to a quarter note. */
  int resolution();

  long tick(long micros);

  /** Tempo marks and metres. */
  List<MidiEvent> marks();

  /** Every tick is a microsecond. */
  TickClock EVEN =
      new TickClock() {
        private static final int TICKS = 25_000;

        @Override
        public int resolution() {
          return TICKS;
        }

        @Override
        public long tick(long micros) {
          return micros;
        }

        @Override
        public List<MidiEvent> marks() {
          return List.of(Messages.tempo(TICKS, 0));
        }
      };
}

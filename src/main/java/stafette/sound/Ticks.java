package stafette.sound;

import java.util.List;

/** From time to the ticks of a sequence whose tempo changes. */
final class Ticks {
  private final long[] fromTick;
  private final double[] fromMicros;
  private final double[] microsPerTick;

  Ticks(List<Performance.Tempo> tempi, int ticksPerQuarter) {
    fromTick = new long[tempi.size()];
    fromMicros = new double[tempi.size()];
    microsPerTick = new double[tempi.size()];
    for (int i = 0; i < tempi.size(); i++) {
      fromTick[i] = i == 0 ? 0 : at(tempi.get(i).fromMicros(), i - 1);
      fromMicros[i] =
          i == 0 ? 0 : fromMicros[i - 1] + (fromTick[i] - fromTick[i - 1]) * microsPerTick[i - 1];
      microsPerTick[i] = tempi.get(i).quarterMicros() / (double) ticksPerQuarter;
    }
  }

  /** When a tick comes. */
  long micros(long tick) {
    int tempo = fromTick.length - 1;
    while (tempo > 0 && fromTick[tempo] > tick) {
      tempo--;
    }
    return Math.round(fromMicros[tempo] + (tick - fromTick[tempo]) * microsPerTick[tempo]);
  }

  /** The nearest tick. */
  long at(long micros) {
    int tempo = fromTick.length - 1;
    while (tempo > 0 && fromMicros[tempo] > micros) {
      tempo--;
    }
    return at(micros, tempo);
  }

  private long at(long micros, int tempo) {
    return Math.max(
        fromTick[tempo],
        fromTick[tempo] + Math.round((micros - fromMicros[tempo]) / microsPerTick[tempo]));
  }
}

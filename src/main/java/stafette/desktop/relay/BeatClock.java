package stafette.desktop.relay;

import java.util.Arrays;
import java.util.List;
import stafette.score.Line;
import stafette.time.Bar;
import stafette.time.Span;

/** From a line's clock to musical time: worked out at each beat once, evenly between. */
final class BeatClock {
  private final long[] micros;
  private final double[] quarters;

  BeatClock(Line line, List<Bar> bars) {
    List<Span> beats = bars.stream().flatMap(bar -> bar.beats().stream()).toList();
    micros = new long[beats.size() + 1];
    quarters = new double[beats.size() + 1];
    for (int i = 0; i < beats.size(); i++) {
      micros[i] = line.micros(beats.get(i).start());
      quarters[i] = beats.get(i).start().quarters().toDouble();
    }
    Span last = beats.get(beats.size() - 1);
    micros[beats.size()] = line.micros(last.end());
    quarters[beats.size()] = last.end().quarters().toDouble();
  }

  /** Quarters from the beginning of the score; the nearer end for times outside the bars. */
  double quarters(long at) {
    int found = Arrays.binarySearch(micros, at);
    int next = found >= 0 ? found : -found - 1;
    if (next == 0) {
      return quarters[0];
    }
    if (next == micros.length) {
      return quarters[next - 1];
    }
    double share = (at - micros[next - 1]) / (double) (micros[next] - micros[next - 1]);
    return quarters[next - 1] + share * (quarters[next] - quarters[next - 1]);
  }
}

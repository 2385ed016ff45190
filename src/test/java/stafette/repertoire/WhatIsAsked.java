package stafette.repertoire;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import stafette.keep.LimitsInForce;
import stafette.limits.Act;
import stafette.limits.Demand;
import stafette.limits.Instrument;
import stafette.limits.Stroking;
import stafette.score.Line;
import stafette.words.Refusal;

/**
 * Condenses what open scores ask of each instrument: for its fast passages of one stroking the
 * rates, lengths and numbers of notes that so many of a hundred do not exceed. The figures become
 * {@code limits/repertoire.csv}; the scores stay where they are.
 */
public final class WhatIsAsked {
  private static final List<Integer> SHARES = List.of(50, 75, 90, 95, 97, 99, 100);
  private static final int LEAST_PASSAGES = 5;

  private WhatIsAsked() {}

  /** A passage in figures. */
  private record Measured(
      String instrument, Stroking stroking, double ratePerSecond, double seconds, int strokes) {
    static Measured of(Passages.Found found) {
      Line line = found.line();
      return new Measured(
          found.instrument().name(),
          Stroking.of(line),
          Demand.usualRatePerSecond(line),
          line.endMicros(line.count() - 1) / 1e6,
          line.count());
    }
  }

  /**
   * Writes the table.
   *
   * @param args a folder of scores, and where the table goes
   */
  public static void main(String[] args) throws IOException, Refusal {
    LimitsInForce limits = LimitsInForce.load(Optional.empty());
    Passages<Measured> passages = Passages.in(Path.of(args[0]), limits, Measured::of);
    List<String> rows = new ArrayList<>();
    rows.add("instrument,stroking,scores,passages,of 100,rate,seconds,strokes");
    for (Instrument instrument : limits.catalogue().instruments()) {
      for (Stroking stroking : Stroking.values()) {
        List<Measured> alike =
            passages.found().stream()
                .filter(each -> each.instrument.equals(instrument.name()))
                .filter(each -> each.stroking == stroking)
                .toList();
        if (alike.size() >= LEAST_PASSAGES && canBe(stroking, instrument)) {
          rows.addAll(condensed(scores(passages, instrument), alike));
        }
      }
    }
    Files.write(Path.of(args[1]), rows);
  }

  /** On others the word pizzicato stands in a reduction, for what it was made from. */
  private static boolean canBe(Stroking stroking, Instrument instrument) {
    return stroking != Stroking.PLUCKED
        || instrument.techniques().stream().anyMatch(each -> each.act() == Act.PLUCK);
  }

  private static long scores(Passages<?> passages, Instrument instrument) {
    return passages.heard().stream()
        .filter(heard -> heard.instrument().equals(instrument.name()))
        .map(heard -> heard.file().path())
        .distinct()
        .count();
  }

  private static List<String> condensed(long scores, List<Measured> alike) {
    return SHARES.stream()
        .map(
            share ->
                String.format(
                    Locale.ROOT,
                    "%s,%s,%d,%d,%d,%.2f,%.1f,%.0f",
                    alike.get(0).instrument,
                    alike.get(0).stroking.name().toLowerCase(Locale.ROOT),
                    scores,
                    alike.size(),
                    share,
                    notExceeded(share, alike, Measured::ratePerSecond),
                    notExceeded(share, alike, Measured::seconds),
                    notExceeded(share, alike, Measured::strokes)))
        .toList();
  }

  /** The smallest figure that so many of a hundred do not exceed. */
  private static double notExceeded(
      int share, List<Measured> alike, ToDoubleFunction<Measured> figure) {
    double[] sorted = alike.stream().mapToDouble(figure).sorted().toArray();
    return sorted[(int) Math.ceil(share / 100.0 * sorted.length) - 1];
  }
}

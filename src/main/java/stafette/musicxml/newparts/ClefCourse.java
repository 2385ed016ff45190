package stafette.musicxml.newparts;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.audiveris.proxymusic.Clef;
import org.audiveris.proxymusic.ClefSign;
import stafette.limits.Instrument;
import stafette.score.Pitch;
import stafette.score.Step;

/**
 * The clefs of a new part: the instrument's own, unless its players read another one that takes far
 * fewer ledger lines. It changes at barlines only, and for more than two bars, or where it could
 * not be read otherwise (common practice, no source).
 */
final class ClefCourse {
  /** Ledger lines a note that players put up with, and for a bar or two. */
  private static final double BEARABLE = 2;

  private static final double READABLE = 3;
  private static final int SHORT_BARS = 2;
  private static final int LINES = 5;

  private final SortedMap<Integer, String> changes = new TreeMap<>();

  /** Bars that follow one another, but for rests, and are best read in one clef. */
  private record ClefRun(int from, String clef, int bars, List<Pitch> pitches) {
    ClefRun with(ClefRun next) {
      return new ClefRun(
          from,
          clef,
          bars + next.bars,
          Stream.concat(pitches.stream(), next.pitches.stream()).toList());
    }
  }

  /**
   * The clefs for what an instrument plays.
   *
   * @param written the pitches as the part writes them, by index of the bar
   */
  ClefCourse(Instrument instrument, SortedMap<Integer, List<Pitch>> written) {
    List<ClefRun> runs = runs(instrument, written);
    String now =
        runs.stream()
            .filter(run -> run.bars() > SHORT_BARS)
            .findFirst()
            .or(() -> runs.stream().max(Comparator.comparingInt(ClefRun::bars)))
            .map(ClefRun::clef)
            .orElse(instrument.clef());
    changes.put(0, now);
    for (ClefRun run : runs) {
      boolean lasts = run.bars() > SHORT_BARS || ledgerLines(now, run.pitches()) > READABLE;
      if (lasts && !run.clef().equals(now)) {
        now = run.clef();
        changes.put(run.from(), now);
      }
    }
  }

  private static List<ClefRun> runs(
      Instrument instrument, SortedMap<Integer, List<Pitch>> written) {
    List<ClefRun> runs = new ArrayList<>();
    for (Map.Entry<Integer, List<Pitch>> bar : written.entrySet()) {
      ClefRun next = new ClefRun(bar.getKey(), best(instrument, bar.getValue()), 1, bar.getValue());
      int last = runs.size() - 1;
      if (last >= 0 && runs.get(last).clef().equals(next.clef())) {
        runs.set(last, runs.get(last).with(next));
      } else {
        runs.add(next);
      }
    }
    return runs;
  }

  /** The likeliest that is easily read, else that with the fewest ledger lines. */
  private static String best(Instrument instrument, List<Pitch> pitches) {
    List<String> clefs =
        Stream.concat(Stream.of(instrument.clef()), instrument.furtherClefs().stream()).toList();
    return clefs.stream()
        .filter(clef -> ledgerLines(clef, pitches) <= BEARABLE)
        .findFirst()
        .or(
            () ->
                clefs.stream().min(Comparator.comparingDouble(clef -> ledgerLines(clef, pitches))))
        .orElseThrow();
  }

  /** Ledger lines a note. */
  private static double ledgerLines(String clef, List<Pitch> pitches) {
    int bottom = onItsLine(clef).diatonic() - 2 * (line(clef) - 1);
    return pitches.stream()
        .mapToInt(pitch -> pitch.diatonic() - bottom)
        .map(step -> Math.max(0, Math.max(-step, step - 2 * (LINES - 1)) / 2))
        .average()
        .orElse(0);
  }

  private static Pitch onItsLine(String clef) {
    return switch (Character.toUpperCase(clef.charAt(0))) {
      case 'F' -> new Pitch(Step.F, 0, 3);
      case 'C' -> new Pitch(Step.C, 0, 4);
      default -> new Pitch(Step.G, 0, 4);
    };
  }

  private static int line(String clef) {
    return clef.charAt(1) - '0';
  }

  /** The clef that begins with a bar, if one does. */
  Optional<Clef> from(int bar) {
    return Optional.ofNullable(changes.get(bar)).map(ClefCourse::element);
  }

  /** A clef by its sign and line, "G2", or "percussion". */
  static Clef element(String name) {
    Clef clef = new Clef();
    if (name.equals("percussion")) {
      clef.setSign(ClefSign.PERCUSSION);
    } else {
      clef.setSign(ClefSign.fromValue(name.substring(0, 1).toUpperCase(Locale.ROOT)));
      clef.setLine(BigInteger.valueOf(line(name)));
    }
    return clef;
  }
}

package stafette.repertoire;

import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import stafette.check.alone.LineTrial;
import stafette.check.alone.LineVerdict;
import stafette.limits.Act;
import stafette.limits.Assurance;
import stafette.limits.Catalogue;
import stafette.limits.Instrument;
import stafette.limits.Range;
import stafette.limits.Technique;
import stafette.score.Attack;
import stafette.score.Drum;
import stafette.score.Dynamic;
import stafette.score.Line;
import stafette.score.LineSource;
import stafette.score.Manner;
import stafette.score.Pitch;
import stafette.score.Step;
import stafette.score.Stroke;
import stafette.score.Tone;
import stafette.score.ToneChoice;
import stafette.score.Value;
import stafette.time.Bars;
import stafette.time.BeatUnit;
import stafette.time.Length;
import stafette.time.Meter;
import stafette.time.Position;
import stafette.time.Rational;
import stafette.time.TempoMap;
import stafette.time.TempoMark;

/**
 * What the orchestral repertoire has asked for, as {@code shared/repertoire-demands.csv} has it: a
 * bare line of so many strokes a second for so many seconds, built anew in the middle of the
 * instrument's comfortable range.
 *
 * @param passage which passage
 * @param instrument for what it is written
 * @param techniques how it is played, as people say it
 * @param figure "repeated", "steps", "chromatic", "pairs" or "repeated, two sixteenths and an
 *     eighth"
 * @param dynamic as written; mezzo forte if empty
 * @param ratePerSecond strokes a second
 * @param seconds how long
 */
record Asked(
    String passage,
    String instrument,
    String techniques,
    String figure,
    String dynamic,
    double ratePerSecond,
    double seconds) {
  private static final Path TABLE = Path.of("shared", "repertoire-demands.csv");
  private static final int BEATS_A_BAR = 4;
  private static final int STROKES_A_BEAT = 4;
  private static final int LETTERS_OF_AN_OCTAVE = 7;

  static List<Asked> all() {
    try (Reader reader = Files.newBufferedReader(TABLE)) {
      return CSVFormat.RFC4180
          .builder()
          .setHeader()
          .setSkipHeaderRecord(true)
          .get()
          .parse(reader)
          .stream()
          .map(Asked::of)
          .toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Asked of(CSVRecord row) {
    return new Asked(
        row.get("passage"),
        row.get("instrument"),
        row.get("technique"),
        row.get("figure"),
        row.get("dynamic"),
        Double.parseDouble(row.get("rate")),
        Double.parseDouble(row.get("seconds")));
  }

  /** What the judge says of it, on its own instrument. */
  LineVerdict verdict(Catalogue catalogue) {
    Instrument own = catalogue.find(instrument).orElseThrow();
    List<Technique> usable =
        own.techniques().stream()
            .filter(
                each ->
                    isPlucked()
                        ? each.act() == Act.PLUCK
                        : each.expected() || techniques.contains(each.name()))
            .toList();
    return LineTrial.of(line(own), own, Assurance.DEFAULT, usable);
  }

  private boolean isPlucked() {
    return techniques.contains("pizzicato");
  }

  /** The line on an instrument. */
  Line line(Instrument own) {
    int count = (int) Math.round(ratePerSecond * seconds);
    List<Stroke> strokes = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      boolean silent = figure.contains("an eighth") && i % STROKES_A_BEAT == STROKES_A_BEAT - 1;
      if (!silent) {
        strokes.add(stroke(i, tone(own, i)));
      }
    }
    int bars = 1 + count / (BEATS_A_BAR * STROKES_A_BEAT);
    Rational quarters =
        Rational.of(BigDecimal.valueOf(ratePerSecond).multiply(BigDecimal.valueOf(15)));
    return new Line(
        new LineSource("P1", own.name(), 1, "1", new ToneChoice.All(), 0, bars - 1),
        strokes,
        Collections.nCopies(strokes.size(), 0),
        Bars.regular(Meter.COMMON, bars),
        TempoMap.constant(new TempoMark(BeatUnit.QUARTER, quarters)));
  }

  private Stroke stroke(int i, Tone tone) {
    return new Stroke(
        Position.ofQuarters(i, STROKES_A_BEAT),
        List.of(tone),
        List.of(new Value(Length.ofQuarters(1, STROKES_A_BEAT), Optional.empty())),
        List.of(),
        false,
        false,
        true,
        Set.of(),
        dynamic.isEmpty() ? Dynamic.MF : Dynamic.valueOf(dynamic.toUpperCase(Locale.ROOT)),
        Manner.PLAIN.with(isPlucked() ? Attack.PLUCKED : Attack.PLAIN));
  }

  private Tone tone(Instrument own, int i) {
    Optional<Range> comfortable = own.comfortable();
    if (comfortable.isEmpty()) {
      return new Drum(Step.C, 5, "");
    }
    int middle = (comfortable.get().low() + comfortable.get().high()) / 2;
    int lowest = letterAt(middle) - LETTERS_OF_AN_OCTAVE / 2;
    if (figure.equals("chromatic")) {
      int semitone = upAndDown(i);
      boolean black = List.of(1, 3, 6).contains(semitone % 12);
      Step step =
          List.of(Step.C, Step.C, Step.D, Step.D, Step.E, Step.F, Step.F, Step.G).get(semitone);
      return new Pitch(step, black ? 1 : 0, middle / 12 - 1);
    }
    int moved = figure.startsWith("steps") ? i : figure.startsWith("pairs") ? i / 2 : 0;
    int letter = lowest + upAndDown(moved);
    return new Pitch(Step.values()[Math.floorMod(letter, 7)], 0, Math.floorDiv(letter, 7));
  }

  /** The letter of the white key there or just below, counted from C0. */
  private static int letterAt(int midi) {
    int letter = 7 * (midi / 12 - 1);
    for (Step step : Step.values()) {
      letter += step.semitones() > 0 && step.semitones() <= midi % 12 ? 1 : 0;
    }
    return letter;
  }

  private static int upAndDown(int i) {
    int within = i % (2 * LETTERS_OF_AN_OCTAVE);
    return Math.min(within, 2 * LETTERS_OF_AN_OCTAVE - within);
  }
}

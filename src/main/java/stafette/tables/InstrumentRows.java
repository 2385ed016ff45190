package stafette.tables;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import stafette.limits.Breath;
import stafette.limits.Condition;
import stafette.limits.Instrument;
import stafette.limits.Range;
import stafette.limits.Technique;
import stafette.score.Pitch;
import stafette.score.Step;
import stafette.score.Transposition;

/** Reads the rows of instruments.csv. */
final class InstrumentRows {
  static final List<String> FAMILIES =
      List.of("woodwind", "brass", "strings", "harp", "plucked", "keyboard", "percussion");

  private static final Pattern NOTE = Pattern.compile("([A-Ga-g])([#b♯♭]{0,2})(-?[0-9])");
  private static final Pattern CLEF = Pattern.compile("[GFC][1-5]|percussion");
  private static final int HIGHEST_MIDI = 127;

  private InstrumentRows() {}

  /** An instrument as its row has it, without techniques yet. */
  static Instrument read(TableRow row) {
    String family = row.required("family");
    if (!family.isEmpty() && !FAMILIES.contains(family)) {
      row.refuse("family", "one of " + String.join(", ", FAMILIES));
    }
    String clef = row.required("clef");
    if (!clef.isEmpty() && !CLEF.matcher(clef).matches()) {
      row.refuse("clef", "a sign and a line such as G2, or percussion");
    }
    Optional<Range> range = range(row, "low", "high");
    Optional<Range> comfortable = range(row, "comfortable low", "comfortable high").or(() -> range);
    if (comfortable.isPresent() && range.isPresent() && !within(comfortable.get(), range.get())) {
      row.problem("the comfortable range must lie within low and high");
    }
    return new Instrument(
        row.required("instrument"),
        aliases(row),
        family,
        range,
        comfortable,
        new Transposition(row.whole("diatonic", -28, 28), row.whole("chromatic", -48, 48)),
        clef,
        row.demanded("level", row.number("level")),
        breath(row),
        row.whole("program", 1, 128),
        List.of(),
        row.source());
  }

  /** The same instrument with its techniques, and what multiplies its use of air. */
  static Instrument complete(
      Instrument bare, List<Technique> techniques, Map<Condition, Double> useOfAir) {
    Optional<Breath> breath =
        bare.breath()
            .map(b -> new Breath(b.capacitySeconds(), b.catchSeconds(), b.fullSeconds(), useOfAir));
    return bare.with(bare.levelDecibel(), breath, techniques);
  }

  private static List<String> aliases(TableRow row) {
    return Arrays.stream(row.text("aliases").split(";"))
        .map(String::trim)
        .filter(alias -> !alias.isEmpty())
        .toList();
  }

  private static boolean within(Range inner, Range outer) {
    return outer.contains(inner.low()) && outer.contains(inner.high());
  }

  /** Empty where both cells are: an instrument without pitch. */
  static Optional<Range> range(TableRow row, String low, String high) {
    if (!row.has(low) && !row.has(high)) {
      return Optional.empty();
    }
    Optional<Integer> lowest = midi(row, low);
    Optional<Integer> highest = midi(row, high);
    if (lowest.isEmpty() || highest.isEmpty()) {
      return Optional.empty();
    }
    if (lowest.get() > highest.get()) {
      row.problem(
          low
              + " ("
              + row.text(low)
              + ") is above "
              + high
              + " ("
              + row.text(high)
              + "): swap them");
      return Optional.empty();
    }
    return Optional.of(new Range(lowest.get(), highest.get()));
  }

  private static Optional<Integer> midi(TableRow row, String column) {
    String text = row.required(column);
    Optional<Integer> midi =
        text.matches("[0-9]{1,3}") ? Optional.of(Integer.parseInt(text)) : note(text);
    if (!text.isEmpty() && (midi.isEmpty() || midi.get() < 0 || midi.get() > HIGHEST_MIDI)) {
      row.refuse(column, "a note such as Bb3 or a MIDI number from 0 to 127");
      return Optional.empty();
    }
    return midi;
  }

  private static Optional<Integer> note(String text) {
    Matcher matcher = NOTE.matcher(text);
    if (!matcher.matches()) {
      return Optional.empty();
    }
    Step step = Step.valueOf(matcher.group(1).toUpperCase(Locale.ROOT));
    int alter = matcher.group(2).chars().map(sign -> sign == '#' || sign == '♯' ? 1 : -1).sum();
    return Optional.of(new Pitch(step, alter, Integer.parseInt(matcher.group(3))).midi());
  }

  private static Optional<Breath> breath(TableRow row) {
    List<String> columns = List.of("breath", "catch", "full");
    if (columns.stream().noneMatch(row::has)) {
      return Optional.empty();
    }
    double[] seconds =
        columns.stream()
            .mapToDouble(column -> row.demanded(column, row.positive(column)))
            .toArray();
    return Optional.of(new Breath(seconds[0], seconds[1], seconds[2], Map.of()));
  }

  /** All names of an instrument: its own and its aliases. */
  static Stream<String> names(Instrument instrument) {
    return Stream.concat(Stream.of(instrument.name()), instrument.aliases().stream());
  }
}

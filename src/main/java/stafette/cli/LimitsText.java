package stafette.cli;

import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import stafette.limits.Instrument;
import stafette.limits.Limit;
import stafette.limits.Technique;

/** The limits in force, as text. */
final class LimitsText {
  private LimitsText() {}

  /** One row for each instrument. */
  static String overview(List<Instrument> instruments) {
    TextTable table =
        new TextTable().row("instrument", "family", "techniques (peak, strokes a second)");
    for (Instrument instrument : instruments) {
      table.row(
          instrument.name(),
          instrument.family(),
          instrument.techniques().stream()
              .map(t -> t.name() + " " + NumberText.oneDecimal(t.limit().peakPerSecond()))
              .collect(Collectors.joining(", ")));
    }
    return table.text(0);
  }

  /** All figures of one instrument with their sources. */
  static String of(Instrument instrument) {
    StringBuilder out = new StringBuilder();
    out.append(instrument.name()).append(" (").append(instrument.family()).append(")\n");
    instrument
        .range()
        .ifPresent(
            range ->
                out.append("  sounds MIDI ")
                    .append(range.low())
                    .append(" to ")
                    .append(range.high())
                    .append(
                        instrument
                            .comfortable()
                            .map(c -> ", with ease " + c.low() + " to " + c.high())
                            .orElse(""))
                    .append('\n'));
    instrument
        .breath()
        .ifPresent(
            breath ->
                out.append(
                    String.format(
                        Locale.ROOT,
                        "  breath lasts %.1f s, a catch breath takes %.1f s, a full one %.1f s%n",
                        breath.capacitySeconds(),
                        breath.catchSeconds(),
                        breath.fullSeconds())));
    out.append("  ")
        .append(instrument.source().text())
        .append(" (grade ")
        .append(instrument.source().grade())
        .append(")\n\n");
    TextTable table =
        new TextTable()
            .row(
                "technique",
                "peak",
                "± between players",
                "sustained",
                "stamina",
                "recovery",
                "who",
                "grade",
                "source");
    instrument.techniques().forEach(technique -> row(technique, table));
    return out.append(table.text(2)).toString();
  }

  private static void row(Technique technique, TextTable table) {
    Limit limit = technique.limit();
    table.row(
        technique.name(),
        NumberText.oneDecimal(limit.peakPerSecond()),
        NumberText.oneDecimal(limit.deviationPerSecond()),
        NumberText.oneDecimal(limit.sustainedPerSecond()),
        stamina(limit.staminaStrokes()),
        NumberText.oneDecimal(limit.recoverySeconds()) + " s",
        technique.expected() ? "expected of all" : "where allowed",
        technique.source().grade().toString(),
        technique.source().text() + (technique.note().isEmpty() ? "" : "; " + technique.note()));
  }

  private static String stamina(OptionalDouble strokes) {
    return strokes.isPresent()
        ? NumberText.oneDecimal(strokes.getAsDouble()) + " strokes"
        : "8 s at peak";
  }
}

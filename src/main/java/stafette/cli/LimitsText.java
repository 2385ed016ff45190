package stafette.cli;

import static java.util.stream.Collectors.toList;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import stafette.limits.Evidence;
import stafette.limits.Instrument;
import stafette.limits.Limit;
import stafette.limits.Source;
import stafette.limits.Stance;
import stafette.limits.Statement;
import stafette.limits.StatementKind;
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
  static String of(Instrument instrument, Evidence evidence) {
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
    out.append(EarText.wrapped(graded(instrument.source()))).append('\n');
    TextTable table =
        new TextTable()
            .row(
                "technique",
                "peak",
                "spread",
                "sustained",
                "moving",
                "stamina",
                "recovery",
                "who",
                "grade");
    instrument.techniques().forEach(technique -> row(technique, table));
    out.append(table.text(2)).append('\n');
    instrument.techniques().forEach(technique -> out.append(source(technique)));
    return out.append(known(instrument, evidence)).toString();
  }

  private static String source(Technique technique) {
    String note = technique.note().isEmpty() ? "" : "; " + technique.note();
    return EarText.wrapped(technique.name() + ": " + technique.source().text() + note, 2);
  }

  /** What sources say of an instrument, technique by technique; empty if nothing is known. */
  private static String known(Instrument instrument, Evidence evidence) {
    Map<String, List<Stance>> byTechnique =
        evidence.about(instrument).stream()
            .collect(Collectors.groupingBy(LimitsText::about, LinkedHashMap::new, toList()));
    if (byTechnique.isEmpty()) {
      return "";
    }
    StringBuilder out =
        new StringBuilder("\nWhat is known (in brackets: sixteenths at quarter =)\n");
    byTechnique.forEach(
        (technique, stances) -> {
          out.append("\n  ").append(technique).append('\n');
          stances.forEach(stance -> out.append(said(stance)));
        });
    List<Evidence.Dispute> disputes = evidence.disputes(instrument);
    if (!disputes.isEmpty()) {
      out.append("\n  Where sources contradict each other\n");
    }
    disputes.forEach(
        dispute ->
            out.append(EarText.wrapped(dispute.technique().name() + ": " + dispute.words(), 4)));
    return out.toString();
  }

  private static String about(Stance stance) {
    boolean border = stance.statement().kind() == StatementKind.BORDER;
    return String.join(border ? " to " : " or ", stance.statement().techniques());
  }

  private static String said(Stance stance) {
    Statement said = stance.statement();
    String conditions = said.conditions().isEmpty() ? "" : EarText.wrapped(said.conditions(), 6);
    return EarText.wrapped(said.words(), 4)
        + conditions
        + EarText.wrapped(graded(said.source()), 6)
        + EarText.wrapped("in the tables " + judged(stance), 6);
  }

  private static String graded(Source source) {
    return source.text() + " (grade " + source.grade() + ")";
  }

  private static String judged(Stance stance) {
    boolean several = stance.statement().techniques().size() > 1;
    boolean border = stance.statement().kind() == StatementKind.BORDER;
    String with = several && !border ? " with " + stance.technique().name() : "";
    String judged = stance.judged() + with;
    String contradiction = stance.contradicts() ? ", a contradiction" : "";
    Optional<String> reason = stance.statement().setAside().map(why -> ", set aside: " + why);
    return judged + contradiction + reason.or(() -> stance.remedy().map(r -> ": " + r)).orElse("");
  }

  private static void row(Technique technique, TextTable table) {
    Limit limit = technique.limit();
    table.row(
        technique.name(),
        NumberText.oneDecimal(limit.peakPerSecond()),
        NumberText.oneDecimal(limit.deviationPerSecond()),
        NumberText.oneDecimal(limit.sustainedPerSecond()),
        limit.movingPerSecond().isPresent()
            ? NumberText.oneDecimal(limit.movingPerSecond().getAsDouble())
            : "-",
        stamina(limit.staminaStrokes()),
        NumberText.oneDecimal(limit.recoverySeconds()) + " s",
        technique.expected() ? "everybody" : "if allowed",
        technique.source().grade().toString());
  }

  private static String stamina(OptionalDouble strokes) {
    return strokes.isPresent()
        ? NumberText.oneDecimal(strokes.getAsDouble()) + " strokes"
        : "8 s at peak";
  }
}

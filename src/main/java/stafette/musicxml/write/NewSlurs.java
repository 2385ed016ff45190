package stafette.musicxml.write;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import stafette.musicxml.make.NoteRewrite;
import stafette.musicxml.share.Assigned;
import stafette.musicxml.text.Origin.ElementText;
import stafette.musicxml.text.Origin.MeasureText;
import stafette.musicxml.text.Origin.NoteText;
import stafette.notation.NoteSpans;
import stafette.score.LineSource;
import stafette.score.Part;
import stafette.score.Slurring;
import stafette.score.Stroke;
import stafette.time.Position;

/**
 * Slurs that a line was given, on those of its notes that stay where they are written. Dots and
 * dashes under them go.
 */
final class NewSlurs {
  private static final Pattern SEPARATING =
      Pattern.compile(
          "\\s*<(staccato|staccatissimo|spiccato|tenuto|detached-legato)(?:\\s[^>]*)?(?:/>|>\\s*</\\1>)");
  private static final Pattern EMPTY =
      Pattern.compile("\\s*<articulations(?:\\s[^>]*)?>\\s*</articulations>");

  private final EditedPart part;
  private final LineNotes notes;
  private final Map<Position, NoteSpans.Reach> slurs;

  /**
   * The slurs of a share.
   *
   * @param voices the part as it was read
   * @param own what the part's own player keeps of the line
   */
  NewSlurs(EditedPart part, Part voices, LineSource source, LineNotes notes, Assigned own) {
    this.part = part;
    this.notes = notes;
    this.slurs =
        source.slurring() == Slurring.AS_WRITTEN
            ? Map.of()
            : own.slursBut(slurredAlready(voices, source));
  }

  private static Set<Position> slurredAlready(Part voices, LineSource source) {
    return voices.voices().stream()
        .filter(voice -> source.strands().has(voice.staff(), voice.name()))
        .flatMap(voice -> voice.strokes().stream())
        .filter(Stroke::slurred)
        .map(Stroke::onset)
        .collect(Collectors.toSet());
  }

  void addTo(List<MeasureText> measures) {
    if (!slurs.isEmpty()) {
      measures.forEach(measure -> measure.elements().forEach(this::addTo));
    }
  }

  private void addTo(ElementText element) {
    NoteSpans.Reach slur = slurs.get(element.onset());
    if (slur != null && isFirstOfChord(element)) {
      part.edit(element.span(), text -> slurred(text, slur));
    }
  }

  private boolean isFirstOfChord(ElementText element) {
    return element.note().filter(note -> !note.rest() && !note.chord()).isPresent()
        && element.note().filter(NoteText::grace).isEmpty()
        && !notes.in(element).isEmpty()
        && part.stays(element.span());
  }

  private static String slurred(String note, NoteSpans.Reach slur) {
    String plain = EMPTY.matcher(SEPARATING.matcher(note).replaceAll("")).replaceAll("");
    String stopped = slur.stops() ? NoteRewrite.withNotation(plain, tag("stop")) : plain;
    return NoteRewrite.tidy(
        slur.starts() ? NoteRewrite.withNotation(stopped, tag("start")) : stopped);
  }

  private static String tag(String type) {
    return "<slur type=\"" + type + "\" number=\"1\"/>";
  }
}

package stafette.musicxml.write;

import java.util.List;
import java.util.regex.Pattern;
import stafette.musicxml.text.Origin;
import stafette.musicxml.text.Origin.ElementText;
import stafette.musicxml.text.Origin.MeasureText;
import stafette.musicxml.text.Origin.NoteText;
import stafette.score.Hairpin;
import stafette.time.Span;

/** Wedges of a part under which nothing sounds any more: they go with the notes. */
final class IdleHairpins {
  private static final Pattern BEGINS =
      Pattern.compile("<wedge\\s[^>]*type\\s*=\\s*[\"'](?:crescendo|diminuendo)");
  private static final Pattern ENDS = Pattern.compile("<wedge\\s[^>]*type\\s*=\\s*[\"']stop");
  private static final Pattern KIND = Pattern.compile("<direction-type[\\s>]");

  private final Origin origin;
  private final EditedPart edited;
  private final List<ElementText> elements;

  /**
   * @param touched the measures in which notes have gone
   */
  IdleHairpins(Origin origin, EditedPart edited, List<MeasureText> touched) {
    this.origin = origin;
    this.edited = edited;
    this.elements = touched.stream().flatMap(measure -> measure.elements().stream()).toList();
  }

  /** Takes out those of the part's hairpins of which both ends stand in these measures. */
  void remove(List<Hairpin> hairpins) {
    for (Hairpin hairpin : hairpins) {
      List<ElementText> first =
          elements.stream()
              .filter(each -> each.onset().equals(hairpin.span().start()) && says(each, BEGINS))
              .toList();
      List<ElementText> last =
          elements.stream()
              .filter(each -> each.onset().equals(hairpin.span().end()) && says(each, ENDS))
              .toList();
      if (first.size() == 1 && last.size() == 1 && isIdle(hairpin.span())) {
        edited.delete(first.get(0).span());
        edited.delete(last.get(0).span());
      }
    }
  }

  /** Whether an element says this and nothing else. */
  private boolean says(ElementText element, Pattern what) {
    String text = element.span().in(origin.text());
    return element.name().equals("direction")
        && what.matcher(text).find()
        && KIND.matcher(text).results().count() == 1;
  }

  private boolean isIdle(Span span) {
    return elements.stream()
        .filter(each -> each.note().filter(NoteText::rest).isEmpty())
        .filter(each -> each.note().filter(NoteText::cue).isEmpty())
        .filter(each -> each.note().isPresent() && !edited.isSilenced(each.span()))
        .noneMatch(
            each -> Span.of(each.onset(), each.note().orElseThrow().length()).overlaps(span));
  }
}

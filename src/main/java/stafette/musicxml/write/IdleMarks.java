package stafette.musicxml.write;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import stafette.musicxml.text.Origin;
import stafette.musicxml.text.Origin.ElementText;
import stafette.musicxml.text.Origin.MeasureText;
import stafette.musicxml.text.Origin.PartText;
import stafette.musicxml.text.TextStyle;
import stafette.score.Hairpin;
import stafette.score.PartMarks;
import stafette.time.Length;
import stafette.time.Position;
import stafette.time.Span;

/**
 * Signs of a part that no note has any more: they go with the notes, so that a bar of rest says
 * nothing. Words with a capital may be the score's tempo, and stay.
 */
final class IdleMarks {
  private static final Pattern ONE_SIGN = Pattern.compile("<direction-type[\\s>]");
  private static final Pattern DYNAMICS = Pattern.compile("<dynamics[\\s/>]");
  private static final Pattern WORDS = Pattern.compile("<words[^>]*>\\s*([^<]*?)\\s*</words>");

  private final Origin origin;
  private final EditedPart edited;
  private final PartText part;
  private final PartMarks marks;
  private final List<MeasureText> touched;

  /**
   * Looks for signs.
   *
   * @param marks what stands in the part
   * @param touched the measures in which notes have gone
   */
  IdleMarks(
      Origin origin, EditedPart edited, PartText part, PartMarks marks, List<MeasureText> touched) {
    this.origin = origin;
    this.edited = edited;
    this.part = part;
    this.marks = marks;
    this.touched = touched;
  }

  /**
   * Takes out hairpins, their words, pedals and signs for octaves that stand in these measures
   * whole.
   */
  void removeLines() {
    for (Hairpin hairpin : marks.hairpins()) {
      Span span = hairpin.span();
      if (hairpin.words().isPresent()) {
        removeWords(span, hairpin.words().get());
      } else {
        Pattern begins = SwellSigns.wedge("(?:crescendo|diminuendo)");
        removePair(saying(begins, span.start()), saying(SwellSigns.wedge("stop"), span.end()));
      }
    }
    removeLines("octave-shift", "(?:up|down)");
    removeLines("pedal", "(?:start|sostenuto|resume)");
  }

  private void removeLines(String name, String begins) {
    for (ElementText begin : saying(SwellSigns.sign(name, begins), any -> true)) {
      saying(
              SwellSigns.sign(name, "(?:stop|discontinue|change)"),
              each -> each.onset().isAfter(begin.onset()))
          .stream()
          .findFirst()
          .filter(end -> !SwellSigns.sign(name, "change").matcher(text(end)).find())
          .ifPresent(end -> removePair(List.of(begin), List.of(end)));
    }
  }

  /** Where there is one of each. */
  private void removePair(List<ElementText> first, List<ElementText> last) {
    if (first.size() == 1
        && last.size() == 1
        && isSilent(new Span(first.get(0).onset(), last.get(0).onset()))) {
      edited.delete(first.get(0).span());
      edited.delete(last.get(0).span());
    }
  }

  private void removeWords(Span span, String words) {
    if (isSilent(span)) {
      elements(touched)
          .filter(each -> isDirection(each) && each.onset().equals(span.start()))
          .filter(each -> words(each).equals(Optional.of(words)) && !isDynamic(each))
          .forEach(each -> edited.delete(each.span()));
      saying(SwellSigns.sign("dashes", "stop"), span.end())
          .forEach(each -> edited.delete(each.span()));
    }
  }

  private List<ElementText> saying(Pattern sign, Position at) {
    return saying(sign, each -> each.onset().equals(at));
  }

  private List<ElementText> saying(Pattern sign, Predicate<ElementText> where) {
    return elements(touched)
        .filter(each -> isDirection(each) && where.test(each))
        .filter(each -> sign.matcher(text(each)).find() && saysNothingElse(each))
        .toList();
  }

  /**
   * Takes out dynamics and words of character that are followed by others before any note. Those
   * whose first note stands in a later bar go there.
   */
  void removeDynamicsAndCharacter() {
    removeIdle(this::isDynamic);
    removeIdle(this::isCharacter);
  }

  private void removeIdle(Predicate<ElementText> kind) {
    for (MeasureText measure : touched) {
      for (ElementText mark : measure.elements()) {
        if (kind.test(mark) && saysNothingElse(mark)) {
          Optional<ElementText> first = sounding(reign(mark, kind));
          if (first.isEmpty()) {
            edited.delete(mark.span());
          } else if (first.get().onset().isAfter(mark.onset())
              && !measure.elements().contains(first.get())) {
            move(mark, first.get());
          }
        }
      }
    }
  }

  private void move(ElementText mark, ElementText note) {
    MeasureText measure =
        part.measures().stream()
            .filter(each -> each.elements().contains(note))
            .findFirst()
            .orElseThrow();
    String lineBreak = TextStyle.of(origin).breakWithin(origin.text(), measure);
    edited.edit(note.span(), text -> text(mark) + lineBreak + text);
    edited.delete(mark.span());
  }

  /** The first that sounds in a span. */
  private Optional<ElementText> sounding(Span span) {
    return all()
        .filter(this::sounds)
        .filter(each -> new Span(each.onset(), end(each)).overlaps(span))
        .min(Comparator.comparing(ElementText::onset));
  }

  /** From a sign to the next of its kind, or to the end of the part. */
  private Span reign(ElementText mark, Predicate<ElementText> kind) {
    Optional<Position> next =
        all()
            .filter(each -> each.onset().isAfter(mark.onset()) && kind.test(each))
            .map(ElementText::onset)
            .min(Position::compareTo);
    return new Span(
        mark.onset(),
        next.orElseGet(() -> all().map(IdleMarks::end).max(Position::compareTo).orElseThrow()));
  }

  private Stream<ElementText> all() {
    return elements(part.measures());
  }

  private static Stream<ElementText> elements(List<MeasureText> measures) {
    return measures.stream().flatMap(measure -> measure.elements().stream());
  }

  private boolean isSilent(Span span) {
    return all()
        .filter(this::sounds)
        .noneMatch(each -> new Span(each.onset(), end(each)).overlaps(span));
  }

  private boolean sounds(ElementText element) {
    return element.note().filter(note -> !note.rest() && !note.cue()).isPresent()
        && !edited.isSilenced(element.span())
        && !edited.isGone(element.span());
  }

  private static Position end(ElementText element) {
    return element.onset().plus(element.note().map(Origin.NoteText::length).orElse(Length.ZERO));
  }

  private static boolean isDirection(ElementText element) {
    return element.name().equals("direction");
  }

  private boolean isDynamic(ElementText element) {
    return isDirection(element) && DYNAMICS.matcher(text(element)).find();
  }

  private boolean isCharacter(ElementText element) {
    return isDirection(element)
        && words(element)
            .filter(words -> Character.isLowerCase(words.codePointAt(0)))
            .filter(
                words ->
                    marks.words().stream()
                        .filter(each -> each.at().equals(element.onset()))
                        .anyMatch(each -> each.areForCharacter() && each.text().equals(words)))
            .isPresent();
  }

  private Optional<String> words(ElementText element) {
    Matcher said = WORDS.matcher(text(element));
    return said.find()
        ? Optional.of(said.group(1)).filter(text -> !text.isEmpty())
        : Optional.empty();
  }

  private boolean saysNothingElse(ElementText direction) {
    String text = text(direction);
    return ONE_SIGN.matcher(text).results().count() == 1 && !text.contains("tempo=");
  }

  private String text(ElementText element) {
    return element.span().in(origin.text());
  }
}

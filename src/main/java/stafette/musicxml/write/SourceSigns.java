package stafette.musicxml.write;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.audiveris.proxymusic.Direction;
import stafette.musicxml.text.Origin;
import stafette.musicxml.text.Origin.ElementText;
import stafette.musicxml.text.Origin.MeasureText;
import stafette.musicxml.text.Origin.NoteText;
import stafette.musicxml.text.Origin.PartText;
import stafette.musicxml.text.Replacement;
import stafette.musicxml.text.TextSpan;
import stafette.musicxml.text.TextStyle;
import stafette.musicxml.write.Assigned.Sign;
import stafette.score.Line;
import stafette.time.Position;
import stafette.time.Span;

/**
 * Adds to the part that the line was taken from, where its own player keeps some of it, who takes
 * over from whom.
 */
final class SourceSigns {
  private final Origin origin;
  private final PartText part;
  private final Line line;
  private final Assigned assigned;
  private final Fragments fragments;
  private final TextStyle style;

  SourceSigns(Origin origin, PartText part, Line line, Assigned assigned, Fragments fragments) {
    this.origin = origin;
    this.part = part;
    this.line = line;
    this.assigned = assigned;
    this.fragments = fragments;
    this.style = TextStyle.of(origin);
  }

  /**
   * The signs that are not there yet.
   *
   * @param elsewhere where signs are written otherwise
   */
  List<Replacement> replacements(Predicate<Position> elsewhere) {
    List<Replacement> replacements = new ArrayList<>();
    for (int bar : assigned.bars()) {
      MeasureText measure = part.measures().get(bar);
      for (Sign sign : assigned.signs(bar)) {
        if (sign.words().isPresent() && !elsewhere.test(sign.at())) {
          added(measure, sign).ifPresent(replacements::add);
        }
      }
    }
    return replacements;
  }

  private Optional<Replacement> added(MeasureText measure, Sign sign) {
    Optional<ElementText> note =
        measure.elements().stream()
            .filter(
                element ->
                    element
                        .note()
                        .filter(n -> holds(element, n, sign.at()))
                        .filter(n -> line.source().strands().has(n.staff(), n.voice()))
                        .isPresent())
            .findFirst();
    if (note.isEmpty()) {
      return Optional.empty();
    }
    Optional<Integer> staff =
        note.get().attributes().staves() > 1
            ? note.get().note().map(NoteText::staff)
            : Optional.empty();
    String fragment =
        fragments.text("direction", Direction.class, SignMaker.direction(sign, staff));
    String bare = TextStyle.bare(style.set(fragment, ""));
    boolean there =
        measure.elements().stream()
            .anyMatch(
                element ->
                    element.onset().equals(note.get().onset())
                        && TextStyle.bare(element.span().in(origin.text())).equals(bare));
    int at = note.get().span().start();
    String lineBreak = style.breakWithin(origin.text(), measure);
    return there
        ? Optional.empty()
        : Optional.of(
            new Replacement(new TextSpan(at, at), style.set(fragment, lineBreak) + lineBreak));
  }

  /** A note with slashes holds several strokes; the words then stand where it begins. */
  private static boolean holds(ElementText element, NoteText note, Position at) {
    return element.onset().equals(at) || Span.of(element.onset(), note.length()).contains(at);
  }
}

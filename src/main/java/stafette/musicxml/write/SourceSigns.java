package stafette.musicxml.write;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.audiveris.proxymusic.Direction;
import stafette.chairs.ChairMark;
import stafette.musicxml.make.Fragments;
import stafette.musicxml.make.SignMaker;
import stafette.musicxml.share.Assigned;
import stafette.musicxml.share.Sign;
import stafette.musicxml.text.Origin;
import stafette.musicxml.text.Origin.ElementText;
import stafette.musicxml.text.Origin.MeasureText;
import stafette.musicxml.text.Origin.NoteText;
import stafette.musicxml.text.Origin.PartText;
import stafette.musicxml.text.Replacement;
import stafette.musicxml.text.TextSpan;
import stafette.musicxml.text.TextStyle;
import stafette.score.Line;
import stafette.time.Position;
import stafette.time.Span;

/**
 * Adds to the part that the line was taken from, where its own player keeps some of it, who takes
 * over from whom, and how a harp sets its pedals.
 */
final class SourceSigns {
  private static final Pattern WORDS =
      Pattern.compile(
          "<direction[^>]*>\\s*<direction-type>\\s*<words[^>]*>([^<]*)</words>\\s*</direction-type>"
              + "\\s*(?:<staff>[0-9]+</staff>\\s*)?</direction>");

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
        boolean isTold = sign.words().isPresent() || sign.kind().setsPedals();
        if (isTold && !elsewhere.test(sign.at())) {
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
                        .filter(n -> !n.rest() && holds(element, n, sign.at()))
                        .filter(n -> line.source().strands().has(n.staff(), n.voice()))
                        .isPresent())
            .min(Comparator.comparing(element -> !element.onset().equals(sign.at())));
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
    Optional<ElementText> superseded =
        measure.elements().stream()
            .filter(element -> element.onset().equals(note.get().onset()))
            .filter(element -> assigned.isLabel(sign) && isLabelAlone(element))
            .findFirst();
    int at = note.get().span().start();
    String lineBreak = style.breakWithin(origin.text(), measure);
    if (superseded.isPresent() && !there) {
      return Optional.of(new Replacement(superseded.get().span(), style.set(fragment, lineBreak)));
    }
    return there
        ? Optional.empty()
        : Optional.of(
            new Replacement(new TextSpan(at, at), style.set(fragment, lineBreak) + lineBreak));
  }

  /** Whether an element says who plays, and nothing else. */
  private boolean isLabelAlone(ElementText element) {
    Matcher words = WORDS.matcher(element.span().in(origin.text()));
    return element.name().equals("direction")
        && words.matches()
        && ChairMark.in(words.group(1)).isPresent();
  }

  /** A note with slashes holds several strokes; the words then stand where it begins. */
  private static boolean holds(ElementText element, NoteText note, Position at) {
    return element.onset().equals(at) || Span.of(element.onset(), note.length()).contains(at);
  }
}

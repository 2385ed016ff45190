package stafette.musicxml.make;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import stafette.musicxml.share.EntryCue;
import stafette.musicxml.text.Origin;
import stafette.notation.Accidentals;
import stafette.score.Pitch;
import stafette.time.Bar;
import stafette.time.Length;
import stafette.time.Rational;
import stafette.time.Span;

/**
 * The text of a cue before an entry in one bar: small notes in a voice of their own, after all else
 * that stands there.
 */
public final class CueText {
  private final BarText text;
  private final Length back;

  private CueText(BarText text, Length back) {
    this.text = text;
    this.back = back;
  }

  /**
   * What a cue has in a bar; empty if it has nothing there.
   *
   * @param spelling how the part writes a sounding pitch
   * @param fifths its key signature there
   * @param voice in which it is written
   * @param back from where the bar's text ends to where the bar begins
   */
  public static Optional<CueText> in(
      Bar bar,
      EntryCue cue,
      Fragments fragments,
      UnaryOperator<Pitch> spelling,
      int fifths,
      String voice,
      Optional<Integer> staff,
      Length back) {
    if (cue.notes().sounds(bar.index()).isEmpty()) {
      return Optional.empty();
    }
    boolean ends = cue.span().end().isBefore(bar.span().end());
    Span region = new Span(bar.span().start(), ends ? cue.span().end() : bar.span().end());
    NoteMaker maker = new NoteMaker(spelling, new Accidentals(fifths), voice, staff);
    return Optional.of(
        new CueText(
            new BarText(fragments, cue.notes(), bar, region, maker, staff, List.of()), back));
  }

  /**
   * The least divisions of a quarter, and multiple of {@code now}, in which it can be written.
   *
   * @throws UnwritablePlan if they are more than can be read again
   */
  public int divisions(Rational now) throws UnwritablePlan {
    return text.divisions(now);
  }

  /** Its elements, the way back before them. */
  public List<String> elements(int divisions) {
    List<String> elements = new ArrayList<>();
    elements.add(text.back(back, divisions));
    for (BarText.BarPiece piece : text.pieces(divisions)) {
      elements.add(piece.text().startsWith("<note") ? small(piece.text()) : piece.text());
    }
    return elements;
  }

  private static String small(String note) {
    return CueNote.of(note, false).replaceFirst("<type>", "<type size=\"cue\">");
  }

  /** Whether a bar holds cue notes already. */
  public static boolean standsIn(Origin.MeasureText measure) {
    return measure.elements().stream()
        .anyMatch(element -> element.note().filter(Origin.NoteText::cue).isPresent());
  }
}

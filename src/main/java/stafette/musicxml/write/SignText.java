package stafette.musicxml.write;

import java.util.Optional;
import org.audiveris.proxymusic.Direction;
import stafette.musicxml.make.Fragments;
import stafette.musicxml.make.SignMaker;
import stafette.musicxml.share.Sign;
import stafette.musicxml.text.Origin;
import stafette.musicxml.text.Origin.ElementText;
import stafette.musicxml.text.Origin.MeasureText;
import stafette.musicxml.text.Replacement;
import stafette.musicxml.text.TextSpan;
import stafette.musicxml.text.TextStyle;

/** Puts signs before notes that stand in a score. */
record SignText(Origin origin, Fragments fragments) {
  /** The staff that a sign for a note has to name; none if the part has but one. */
  static Optional<Integer> staffOf(ElementText note) {
    return note.attributes().staves() > 1
        ? Optional.of(note.note().orElseThrow().staff())
        : Optional.empty();
  }

  Replacement before(ElementText note, MeasureText measure, Sign sign) {
    String text =
        fragments.text("direction", Direction.class, SignMaker.direction(sign, staffOf(note)));
    TextStyle style = TextStyle.of(origin);
    String lineBreak = style.breakWithin(origin.text(), measure);
    int at = note.span().start();
    return new Replacement(new TextSpan(at, at), style.set(text, lineBreak) + lineBreak);
  }
}

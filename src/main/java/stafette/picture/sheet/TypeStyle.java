package stafette.picture.sheet;

import java.util.ArrayList;
import java.util.List;
import stafette.picture.ink.Face;
import stafette.picture.ink.Ink;
import stafette.picture.ink.Mark;
import stafette.picture.ink.Piece;

/**
 * How words are set.
 *
 * @param size in points
 */
record TypeStyle(Face face, double size, Ink ink) {
  static final TypeStyle TITLE = new TypeStyle(Face.BOLD, 19, Ink.FULL);
  static final TypeStyle SECTION = new TypeStyle(Face.BOLD, 9.5, Ink.FULL);
  static final TypeStyle TEXT = new TypeStyle(Face.PLAIN, 8.6, Ink.FULL);
  static final TypeStyle STRONG = new TypeStyle(Face.BOLD, 8.6, Ink.FULL);
  static final TypeStyle SOFT = new TypeStyle(Face.PLAIN, 8.6, Ink.SOFT);
  static final TypeStyle NOTE = new TypeStyle(Face.PLAIN, 7.2, Ink.FULL);
  static final TypeStyle LABEL = new TypeStyle(Face.PLAIN, 7.2, Ink.SOFT);

  /** From base line to base line, as a share of the size. */
  private static final double LEADING = 1.34;

  /** From the top of a line to its base line, as a share of the size. */
  private static final double ASCENT = 1.02;

  double lineHeight() {
    return size * LEADING;
  }

  double width(String text) {
    return face.width(text, size);
  }

  /** One line whose top is there. */
  Mark.Lettering line(String text, double left, double top) {
    return words(text, left, top + size * ASCENT);
  }

  Mark.Lettering words(String text, double x, double baseline) {
    return new Mark.Lettering(text, x, baseline, size, face, ink);
  }

  /** The same words further down. */
  static Mark.Lettering lowered(Mark.Lettering words, double by) {
    return new Mark.Lettering(
        words.text(), words.x(), words.y() + by, words.size(), words.face(), words.ink());
  }

  /** As many lines as a text takes within a width. */
  Piece paragraph(String text, double left, double width) {
    List<String> lines = wrapped(text, width);
    return new Piece(
        lines.size() * lineHeight(),
        top -> {
          List<Mark> marks = new ArrayList<>();
          for (int i = 0; i < lines.size(); i++) {
            marks.add(line(lines.get(i), left, top + i * lineHeight()));
          }
          return marks;
        });
  }

  /** Broken at spaces; a word too long for the width is cut. No words are no line. */
  List<String> wrapped(String text, double width) {
    if (text.isEmpty()) {
      return List.of();
    }
    List<String> lines = new ArrayList<>();
    String line = "";
    for (String word : text.split(" ", -1)) {
      String longer = line.isEmpty() ? word : line + " " + word;
      if (line.isEmpty() || width(longer) <= width) {
        line = longer;
      } else {
        lines.add(face.fitted(line, size, width));
        line = word;
      }
    }
    lines.add(face.fitted(line, size, width));
    return lines;
  }
}

package stafette.desktop.written;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stafette.picture.Box;
import stafette.picture.Clef;
import stafette.picture.Engraver;
import stafette.picture.Face;
import stafette.picture.Ink;
import stafette.picture.Mark;
import stafette.picture.Row;
import stafette.picture.Staff;
import stafette.plan.Played;
import stafette.score.Line;
import stafette.score.Transposition;
import stafette.time.Bar;
import stafette.time.Meter;
import stafette.work.ChangedPart;

/**
 * One row of bars: how they are over how they would be.
 *
 * @param row the bars
 * @param before its marks, drawn softly
 * @param after its marks
 * @param height of all
 */
record SystemPicture(Row row, List<Mark> before, List<Mark> after, double height) {
  static final double SPACE = 5;

  private static final double MARGIN = 12;
  private static final double WORDS = 11;
  private static final double GAP = 9;
  private static final double NUMBERS = 20;

  SystemPicture {
    before = List.copyOf(before);
    after = List.copyOf(after);
  }

  /** The two headings of each row. */
  record Headings(String before, String after, String isNew) {}

  /** All rows of a part, as wide as there is room. */
  static List<SystemPicture> all(ChangedPart part, double width, Headings headings) {
    Layout layout = new Layout(part, headings);
    return layout.systems(width).of(part.bars()).stream().map(layout::picture).toList();
  }

  private record Layout(ChangedPart part, Headings headings) {
    Systems systems(double width) {
      Meter meter = part.bars().get(0).meter();
      double header =
          Engraver.headerWidth(
              new Engraver.Music(List.of(), List.of(), 0, Optional.of(meter)), staff(1, 0));
      double least =
          java.util.stream.Stream.concat(part.before().stream(), part.after().stream())
              .mapToDouble(line -> Engraver.leastPointsPerQuarter(line, SPACE))
              .max()
              .orElse(1);
      return new Systems(
          MARGIN + header,
          width - MARGIN,
          Engraver.LEAD_SPACES * SPACE,
          Math.min(least, 30 * SPACE));
    }

    SystemPicture picture(Row row) {
      List<Mark> before = new ArrayList<>();
      List<Mark> after = new ArrayList<>();
      numbers(row, after);
      double y = NUMBERS;
      if (part.isNew()) {
        before.add(words(headings.isNew(), y + WORDS));
        y += WORDS + GAP;
      } else {
        y = side(headings.before(), part.before(), row, y, before);
      }
      y = side(headings.after(), part.after(), row, y, after);
      return new SystemPicture(row, before, after, y + GAP);
    }

    private static void numbers(Row row, List<Mark> marks) {
      for (Bar bar : row.bars()) {
        marks.add(
            new Mark.Words(
                bar.number(), row.left(bar) + 2, WORDS + 2, WORDS, Face.PLAIN, Ink.FULL));
      }
    }

    private static Mark words(String words, double y) {
      return new Mark.Words(words, MARGIN, y, WORDS, Face.PLAIN, Ink.SOFT);
    }

    /** A staff for each voice that sounds in the row, at least one. */
    private double side(String heading, List<Line> lines, Row row, double top, List<Mark> marks) {
      marks.add(words(heading, top + WORDS));
      double y = top + WORDS + GAP / 2;
      List<Line> sounding = lines.stream().filter(line -> sounds(line, row)).toList();
      if (sounding.isEmpty()) {
        return staff(List.of(), 1, row, y, marks);
      }
      for (Line line : sounding) {
        Played all = new Played(line, 0, line.count() - 1);
        y = staff(List.of(all), line.source().staff(), row, y, marks);
      }
      return y;
    }

    private static boolean sounds(Line line, Row row) {
      return line.strokes().stream().anyMatch(stroke -> stroke.span().overlaps(row.span()));
    }

    private double staff(List<Played> plays, int number, Row row, double top, List<Mark> marks) {
      Engraver.Music music =
          new Engraver.Music(plays, List.of(), 0, Optional.of(row.bars().get(0).meter()));
      Box ink = extent(Engraver.marks(music, staff(number, 0), row));
      double down = top - Math.min(ink.top(), -2 * SPACE);
      marks.addAll(Engraver.marks(music, staff(number, down), row));
      return down + Math.max(ink.bottom(), 5 * SPACE) + GAP;
    }

    private static Box extent(List<Mark> marks) {
      return marks.stream().map(Mark::bounds).reduce(Box::with).orElseThrow();
    }

    /** The second staff of a part that has one is read in the bass clef. */
    private Staff staff(int number, double top) {
      Clef own = part.instrument().map(known -> Clef.of(known.clef())).orElse(Clef.TREBLE);
      Transposition transposition =
          part.instrument().map(known -> known.transposition()).orElse(Transposition.NONE);
      return new Staff(top, SPACE, number > 1 ? Clef.BASS : own, transposition);
    }
  }
}

package stafette.desktop.written;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import stafette.limits.Instrument;
import stafette.picture.ink.Box;
import stafette.picture.ink.Face;
import stafette.picture.ink.Ink;
import stafette.picture.ink.Mark;
import stafette.picture.notes.BarLines;
import stafette.picture.notes.BarRow;
import stafette.picture.notes.Clef;
import stafette.picture.notes.Engraver;
import stafette.picture.notes.ExpressionSigns;
import stafette.picture.notes.NoteRoom;
import stafette.picture.notes.PartSpelling;
import stafette.picture.notes.Staff;
import stafette.plan.written.Landings;
import stafette.plan.written.PassageMarks;
import stafette.plan.written.WrittenPassage;
import stafette.score.Keys;
import stafette.score.Line;
import stafette.score.Transposition;
import stafette.time.Bar;
import stafette.work.ChangedPart;

/**
 * One row of bars: how they are over how they would be.
 *
 * @param row the bars
 * @param before its marks, drawn softly
 * @param after its marks
 * @param height of all
 * @param strokesBefore how many begin in these bars now
 * @param strokesAfter how many would
 */
record SystemPicture(
    BarRow row,
    List<Mark> before,
    List<Mark> after,
    double height,
    int strokesBefore,
    int strokesAfter) {
  static final double SPACE = 5;

  private static final double MARGIN = 12;
  private static final double WORDS = 11;
  private static final double GAP = 9;
  private static final double NUMBERS = 20;
  private static final double MOST_SPACES_PER_QUARTER = 30;

  SystemPicture {
    before = List.copyOf(before);
    after = List.copyOf(after);
  }

  /** What stands over the staves of each row. */
  record Headings(String before, String after) {}

  /** All rows of a part, as wide as there is room. */
  static List<SystemPicture> all(ChangedPart part, double width, Headings headings) {
    Layout layout = new Layout(part, headings);
    return layout.systems(width).of(part.bars()).stream().map(layout::picture).toList();
  }

  private record Layout(ChangedPart part, Headings headings) {
    Systems systems(double width) {
      double least =
          Stream.concat(part.before().stream(), part.after().stream())
              .mapToDouble(line -> SPACE * new NoteRoom(line, spelling()).perQuarter())
              .max()
              .orElse(1);
      return new Systems(
          bar ->
              MARGIN + Engraver.headerWidth(music(List.of(), bar), staff(1, 0), bar.span().start()),
          width - MARGIN,
          Engraver.LEAD_SPACES * SPACE,
          this::signs,
          Math.min(least, MOST_SPACES_PER_QUARTER * SPACE));
    }

    private double signs(Bar bar, boolean opensRow) {
      int place = part.bars().indexOf(bar);
      return opensRow || place == 0
          ? BarLines.widthAfter(bar.landmarks().before()) * SPACE
          : Engraver.signsWidth(
              music(List.of(), bar), staff(1, 0), part.bars().get(place - 1), bar);
    }

    SystemPicture picture(BarRow row) {
      List<Mark> before = new ArrayList<>();
      List<Mark> after = new ArrayList<>();
      numbers(row, after);
      double y = NUMBERS;
      if (part.isNew()) {
        y = staves(part.after(), row, y, after);
      } else {
        before.add(words(headings.before(), y + WORDS));
        y = staves(part.before(), row, y + WORDS + GAP / 2, before);
        after.add(words(headings.after(), y + WORDS));
        y = staves(part.after(), row, y + WORDS + GAP / 2, after);
      }
      return new SystemPicture(
          row,
          before,
          after,
          Math.ceil(y + GAP),
          strokes(part.before(), row),
          strokes(part.after(), row));
    }

    private static void numbers(BarRow row, List<Mark> marks) {
      for (Bar bar : row.bars()) {
        double x = row.left(bar) + 2;
        marks.add(new Mark.Lettering(bar.number(), x, WORDS + 2, WORDS, Face.PLAIN, Ink.FULL));
      }
    }

    private static Mark words(String words, double y) {
      return new Mark.Lettering(words, MARGIN, y, WORDS, Face.PLAIN, Ink.SOFT);
    }

    /** One for each voice that sounds in the row, and one of rests where a staff has none. */
    private double staves(List<Line> lines, BarRow row, double top, List<Mark> marks) {
      double y = top;
      for (int number : numbers()) {
        List<Line> sounding =
            lines.stream()
                .filter(line -> line.source().strands().isOn(number) && sounds(line, row))
                .toList();
        for (Line line : sounding) {
          y = staff(List.of(WrittenPassage.whole(line)), number, row, y, marks);
        }
        if (sounding.isEmpty()) {
          y = staff(List.of(), number, row, y, marks);
        }
      }
      return y;
    }

    /** Of all staves that have notes, before or after. */
    private SortedSet<Integer> numbers() {
      return Stream.concat(part.before().stream(), part.after().stream())
          .map(line -> line.source().strands().staff())
          .collect(Collectors.toCollection(TreeSet::new));
    }

    private static int strokes(List<Line> lines, BarRow row) {
      return (int)
          lines.stream()
              .flatMap(line -> line.strokes().stream())
              .filter(stroke -> row.span().contains(stroke.onset()))
              .count();
    }

    private static boolean sounds(Line line, BarRow row) {
      return line.strokes().stream().anyMatch(stroke -> stroke.span().overlaps(row.span()));
    }

    private double staff(
        List<WrittenPassage> plays, int number, BarRow row, double top, List<Mark> marks) {
      Engraver.EngravedMusic music = music(plays, row.bars().get(0));
      Box ink = extent(engraved(music, staff(number, 0), row));
      double down = top - Math.min(ink.top(), -SPACE);
      marks.addAll(engraved(music, staff(number, down), row));
      return down + Math.max(ink.bottom(), 5 * SPACE) + GAP;
    }

    private static List<Mark> engraved(Engraver.EngravedMusic music, Staff staff, BarRow row) {
      List<Mark> marks = new ArrayList<>(Engraver.marks(music, staff, row));
      marks.addAll(
          ExpressionSigns.of(PassageMarks.all(music.plays(), Landings.NONE), staff, row, marks));
      return marks;
    }

    /** The metre shows where it begins. */
    private Engraver.EngravedMusic music(List<WrittenPassage> plays, Bar first) {
      int place = part.bars().indexOf(first);
      boolean same = place > 0 && part.bars().get(place - 1).meter().equals(first.meter());
      return new Engraver.EngravedMusic(
          plays, List.of(), keys(), same ? Optional.empty() : Optional.of(first.meter()), isHarp());
    }

    private PartSpelling spelling() {
      return new PartSpelling(transposition(), keys(), isHarp());
    }

    private boolean isHarp() {
      return part.instrument().filter(Instrument::isHarp).isPresent();
    }

    /** As the part has them; instruments without pitch have none. */
    private Keys keys() {
      boolean pitched = part.instrument().map(known -> known.range().isPresent()).orElse(true);
      return Stream.concat(part.after().stream(), part.before().stream())
          .filter(line -> pitched)
          .findFirst()
          .map(line -> line.keys().writtenBy(transposition()))
          .orElse(Keys.NONE);
    }

    private static Box extent(List<Mark> marks) {
      return marks.stream().map(Mark::bounds).reduce(Box::with).orElseThrow();
    }

    /** The second staff of a part that has one is read in the bass clef. */
    private Staff staff(int number, double top) {
      Clef own = part.instrument().map(known -> Clef.of(known.clef())).orElse(Clef.TREBLE);
      return new Staff(top, SPACE, number > 1 ? Clef.BASS : own, transposition());
    }

    private Transposition transposition() {
      return part.instrument().map(Instrument::transposition).orElse(Transposition.NONE);
    }
  }
}

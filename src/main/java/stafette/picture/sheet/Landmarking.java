package stafette.picture.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import stafette.picture.ink.Box;
import stafette.picture.ink.Face;
import stafette.picture.ink.Ink;
import stafette.picture.ink.Mark;
import stafette.picture.ink.Path;
import stafette.picture.notes.BarRow;
import stafette.score.Line;
import stafette.time.Bar;
import stafette.time.Landmarks.TempoWords;
import stafette.time.Position;
import stafette.time.Span;
import stafette.time.TempoMark;

/**
 * What stands over a staff in every part: rehearsal marks in boxes, words for the tempo, and
 * metronome marks, each where it begins to hold. What finds no room gives way to what comes before.
 *
 * @param words as if the top were at zero
 * @param boxes around those that are rehearsal marks
 */
record Landmarking(List<Mark.Lettering> words, List<Box> boxes) {
  private static final TypeStyle TEMPO = new TypeStyle(Face.BOLD, 8, Ink.FULL);
  private static final TypeStyle REHEARSAL = new TypeStyle(Face.BOLD, 9, Ink.FULL);
  private static final double HEIGHT = 15;
  private static final double FRAME = 2;
  private static final double APART = 5;
  private static final double LINE = 0.7;

  /**
   * Those of a row.
   *
   * @param opens whether it is the player's first, so that the tempo in force is told
   * @param right where words end
   */
  static Landmarking of(SheetContent content, BarRow row, boolean opens, double right) {
    Landmarking all = new Landmarking(new ArrayList<>(), new ArrayList<>());
    for (Bar bar : row.bars()) {
      bar.landmarks().rehearsal().ifPresent(mark -> all.addRehearsal(mark, row.left(bar)));
    }
    tempi(content, row, opens).forEach((at, text) -> all.add(text, row.x(at), right));
    return all;
  }

  /** What is said of the tempo, by place: "Allegro, quarter = 120". */
  private static Map<Position, String> tempi(SheetContent content, BarRow row, boolean opens) {
    Map<Position, String> tempi = new TreeMap<>();
    Line line = content.plan().line();
    for (Bar bar : row.bars()) {
      bar.landmarks()
          .tempo()
          .forEach(
              words -> tempi.merge(words.at(), words.text(), (one, other) -> one + " " + other));
    }
    Position start = row.span().start();
    if (opens && !tempi.containsKey(start)) {
      Position set = inForce(line, start);
      List<TempoWords> words = line.bars().at(set).landmarks().tempo();
      words.stream()
          .filter(each -> each.at().equals(set))
          .forEach(each -> tempi.merge(start, each.text(), (one, other) -> one + " " + other));
    }
    for (Map.Entry<Position, TempoMark> change : line.tempo().within(row.span()).entrySet()) {
      Position at = change.getKey();
      if ((opens && at.equals(row.span().start())) || isNew(line, at)) {
        String mark = content.say(change.getValue());
        tempi.merge(at, mark, (words, metronome) -> words + "   " + metronome);
      }
    }
    return tempi;
  }

  /** Where the tempo was set that is in force at a place. */
  private static Position inForce(Line line, Position place) {
    return Position.START.isBefore(place)
        ? line.tempo().within(new Span(Position.START, place)).lastKey()
        : place;
  }

  private static boolean isNew(Line line, Position at) {
    Span before = new Span(Position.START, at);
    return Position.START.isBefore(at)
        && !line.tempo().within(before).lastEntry().getValue().equals(line.tempo().at(at));
  }

  private void addRehearsal(String mark, double x) {
    Mark.Lettering word = REHEARSAL.line(mark, x + FRAME, FRAME);
    Box frame =
        new Box(x, 0, x + REHEARSAL.width(mark) + 2 * FRAME, REHEARSAL.lineHeight() + FRAME / 2);
    if (isFree(frame)) {
      words.add(word);
      boxes.add(frame);
    }
  }

  private void add(String text, double x, double right) {
    double left =
        boxes.stream()
            .filter(box -> box.left() <= x && x < box.right() + APART)
            .map(box -> box.right() + APART)
            .max(Comparator.naturalOrder())
            .orElse(x);
    Mark.Lettering word = TEMPO.line(text, left, FRAME);
    Box box = word.bounds();
    if (isFree(box) && box.right() <= right) {
      words.add(word);
    }
  }

  private boolean isFree(Box box) {
    Box wide = new Box(box.left() - APART, box.top(), box.right() + APART, box.bottom());
    return words.stream().noneMatch(other -> other.bounds().overlaps(wide));
  }

  /** In points; none if nothing stands there. */
  double height() {
    return words.isEmpty() ? 0 : HEIGHT;
  }

  List<Mark> at(double top) {
    List<Mark> marks = new ArrayList<>();
    words.forEach(word -> marks.add(TypeStyle.lowered(word, top)));
    boxes.forEach(box -> marks.add(new Mark.Outline(frame(box, top), LINE, Ink.FULL)));
    return marks;
  }

  private static Path frame(Box box, double top) {
    return Path.box(new Box(box.left(), box.top() + top, box.right(), box.bottom() + top));
  }
}

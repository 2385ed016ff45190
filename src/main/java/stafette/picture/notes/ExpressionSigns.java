package stafette.picture.notes;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.function.DoubleFunction;
import java.util.stream.Stream;
import stafette.picture.ink.Box;
import stafette.picture.ink.Face;
import stafette.picture.ink.Ink;
import stafette.picture.ink.Mark;
import stafette.picture.ink.Path;
import stafette.plan.written.PassageMarks;
import stafette.plan.written.PassageMarks.MarkedDynamic;
import stafette.plan.written.PassageMarks.MarkedWords;
import stafette.plan.written.PassageMarks.Swell;
import stafette.score.Dynamic;
import stafette.time.Bar;
import stafette.time.Position;

/**
 * Dynamics and hairpins below a staff, words for the character of its notes above it. What stands
 * close together below has one base line. Distances are in staff spaces.
 */
public final class ExpressionSigns {
  private static final double FROM_STAFF = 2.6;
  private static final double FROM_INK = 0.5;
  private static final double ABOVE_STAFF = 0.8;
  private static final double APART = 0.4;
  private static final double ONE_GROUP = 2;
  private static final double DYNAMIC = 0.9;
  private static final double WORDS = 1.7;
  private static final double WEDGE = 1.1;
  private static final double SHORTEST_WEDGE = 1.5;
  private static final double AXIS = 0.5;
  private static final double DASH = 0.8;
  private static final double LINE = 0.13;
  private static final int MEZZO = 0x1D190;

  private final Staff staff;
  private final BarRow row;
  private final List<Box> ink;
  private final double space;

  /**
   * Something below the staff.
   *
   * @param box if its base line were at zero
   * @param at its marks on a base line
   */
  private record SignBelow(Box box, DoubleFunction<List<Mark>> at) {}

  private ExpressionSigns(Staff staff, BarRow row, List<Mark> marks) {
    this.staff = staff;
    this.row = row;
    ink = marks.stream().map(Mark::bounds).toList();
    space = staff.space();
  }

  /**
   * Those of a row.
   *
   * @param marks what they stand clear of
   */
  public static List<Mark> of(
      List<PassageMarks> passages, Staff staff, BarRow row, List<Mark> marks) {
    ExpressionSigns signs = new ExpressionSigns(staff, row, marks);
    List<Mark> all = new ArrayList<>(signs.characters(passages));
    all.addAll(signs.onBaseLines(signs.below(passages)));
    return all;
  }

  private List<Mark> characters(List<PassageMarks> passages) {
    List<Mark> words = new ArrayList<>();
    double free = row.left();
    for (PassageMarks passage : passages) {
      for (MarkedWords mark : passage.characters()) {
        if (row.span().contains(mark.at())) {
          Mark.Lettering set = words(mark.text(), Math.max(free, row.x(mark.at())), 0);
          Box box = set.bounds();
          double highest =
              across(box).mapToDouble(Box::top).reduce(staff.top(), Math::min)
                  - ABOVE_STAFF * space
                  - box.bottom();
          words.add(words(mark.text(), set.x(), highest));
          free = box.right() + space;
        }
      }
    }
    return words;
  }

  private Mark.Lettering words(String text, double x, double y) {
    return new Mark.Lettering(text, x, y, WORDS * space, Face.PLAIN, Ink.FULL);
  }

  private Stream<Box> across(Box box) {
    return ink.stream().filter(each -> each.left() < box.right() && box.left() < each.right());
  }

  private List<SignBelow> below(List<PassageMarks> passages) {
    List<SignBelow> below = new ArrayList<>();
    double free = Double.NEGATIVE_INFINITY;
    for (PassageMarks passage : passages) {
      for (MarkedDynamic mark : passage.dynamics()) {
        if (row.span().contains(mark.at())) {
          SignBelow sign = dynamic(mark.dynamic(), Math.max(free, row.x(mark.at())));
          below.add(sign);
          free = sign.box().right() + 2 * APART * space;
        }
      }
    }
    List<Box> dynamics = below.stream().map(SignBelow::box).toList();
    for (PassageMarks passage : passages) {
      passage.swells().stream()
          .filter(swell -> swell.span().overlaps(row.span()))
          .map(swell -> swell(swell, dynamics))
          .forEach(below::add);
    }
    below.sort(Comparator.comparingDouble(each -> each.box().left()));
    return below;
  }

  private SignBelow dynamic(Dynamic dynamic, double x) {
    String letters = letters(dynamic);
    return new SignBelow(
        staff.sign(letters, x, 0, DYNAMIC).bounds(),
        baseline -> List.of(staff.sign(letters, x, baseline, DYNAMIC)));
  }

  private static String letters(Dynamic dynamic) {
    StringBuilder letters = new StringBuilder();
    for (char letter : dynamic.name().toLowerCase(Locale.ROOT).toCharArray()) {
      letters.appendCodePoint(letter == 'p' ? MEZZO - 1 : letter == 'm' ? MEZZO : MEZZO + 1);
    }
    return letters.toString();
  }

  /** Between the dynamics at both of its ends, as far as it is in the row. */
  private SignBelow swell(Swell swell, List<Box> dynamics) {
    double begin = row.xWithin(swell.span().start());
    double end = end(swell);
    double middle = (begin + end) / 2;
    double left =
        dynamics.stream()
            .filter(box -> box.left() <= middle && begin < box.right())
            .mapToDouble(box -> box.right() + APART * space)
            .reduce(begin, Math::max);
    double right =
        dynamics.stream()
            .filter(box -> box.left() > middle && box.left() < end + APART * space)
            .mapToDouble(box -> box.left() - APART * space)
            .reduce(end, Math::min);
    return swell.words().isPresent() || swell.dashed()
        ? inWords(swell, left, right)
        : wedge(swell, left, Math.max(right, left + SHORTEST_WEDGE * space));
  }

  /** Where the last note of a swell ends, before a bar line if one comes then. */
  private double end(Swell swell) {
    if (!swell.span().end().isBefore(row.span().end())) {
      return row.right() - APART * space;
    }
    Bar bar =
        row.bars().stream()
            .filter(each -> each.span().contains(swell.last()))
            .findFirst()
            .orElseThrow();
    boolean withBar = !swell.span().end().isBefore(bar.span().end());
    return (withBar ? row.right(bar) : row.x(swell.span().end())) - APART * space;
  }

  private SignBelow wedge(Swell swell, double left, double right) {
    double from = opening(swell, row.span().start());
    double to = opening(swell, row.span().end());
    double half = WEDGE * space / 2;
    double axis = -AXIS * space;
    return new SignBelow(
        new Box(left, axis - half, right, axis + half),
        baseline -> {
          double y = baseline + axis;
          Path.Pen pen =
              new Path.Pen()
                  .move(left, y - from * half)
                  .line(right, y - to * half)
                  .move(left, y + from * half)
                  .line(right, y + to * half);
          return List.of(new Mark.Outline(pen.path(), LINE * space, Ink.FULL));
        });
  }

  /** How wide it stands open at the end of a row or at its own, as a share of the whole. */
  private static double opening(Swell swell, Position at) {
    double from = swell.span().start().quarters().toDouble();
    double share = (at.quarters().toDouble() - from) / swell.span().length().quarters().toDouble();
    double within = Math.max(0, Math.min(1, share));
    return swell.louder() ? within : 1 - within;
  }

  private SignBelow inWords(Swell swell, double left, double right) {
    boolean begins = row.span().contains(swell.span().start());
    String text = begins ? swell.words().orElse("") : "";
    double reach = left + (text.isEmpty() ? 0 : words(text, left, 0).width() + APART * space);
    double end = swell.dashed() ? Math.max(reach, right) : reach;
    return new SignBelow(
        new Box(left, -WORDS * space, end, 0),
        baseline -> {
          List<Mark> marks = new ArrayList<>();
          if (!text.isEmpty()) {
            marks.add(words(text, left, baseline));
          }
          if (swell.dashed()) {
            Path.Pen pen = new Path.Pen();
            double y = baseline - AXIS * space;
            for (double x = reach; x + DASH * space <= end; x += 2.5 * DASH * space) {
              pen.move(x, y).line(x + DASH * space, y);
            }
            marks.add(new Mark.Outline(pen.path(), LINE * space, Ink.FULL));
          }
          return marks;
        });
  }

  private List<Mark> onBaseLines(List<SignBelow> below) {
    List<Mark> marks = new ArrayList<>();
    int first = 0;
    while (first < below.size()) {
      double right = below.get(first).box().right();
      int end = first + 1;
      while (end < below.size() && below.get(end).box().left() < right + ONE_GROUP * space) {
        right = Math.max(right, below.get(end).box().right());
        end++;
      }
      List<SignBelow> group = below.subList(first, end);
      double baseline =
          group.stream()
              .mapToDouble(this::baseline)
              .reduce(staff.bottom() + FROM_STAFF * space, Math::max);
      group.forEach(each -> marks.addAll(each.at().apply(baseline)));
      first = end;
    }
    return marks;
  }

  /** The highest base line on which it stands clear. */
  private double baseline(SignBelow each) {
    double lowest = across(each.box()).mapToDouble(Box::bottom).reduce(staff.bottom(), Math::max);
    return lowest + FROM_INK * space - each.box().top();
  }
}

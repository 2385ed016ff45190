package stafette.picture.ink;

import java.util.List;

/**
 * One sheet, drawn on no device yet.
 *
 * @param width in points, 72 to an inch
 * @param height in points
 * @param title what it shows, in a line
 * @param marks from the lowest layer to the highest
 */
public record Drawing(double width, double height, String title, List<Mark> marks) {
  public Drawing {
    marks = List.copyOf(marks);
  }
}

package stafette.picture.ink;

import java.util.List;
import java.util.function.DoubleFunction;

/**
 * Something to be set on a page wherever there is room for its height.
 *
 * @param height in points
 * @param marks what it shows when its top is there
 */
public record Piece(double height, DoubleFunction<List<Mark>> marks) {
  public List<Mark> at(double top) {
    return marks.apply(top);
  }
}

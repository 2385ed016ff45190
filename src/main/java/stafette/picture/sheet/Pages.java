package stafette.picture.sheet;

import java.util.ArrayList;
import java.util.List;
import stafette.picture.ink.Mark;

/**
 * Blocks one below the other, on as many pages as they take. Pages are turned where there is time
 * to, if that takes no more than a page for each turn that it saves, and none is left with one
 * block alone if others can join it. Breaks are found by dynamic programming over all of them.
 *
 * @param pages the marks of each
 * @param cost what is wrong with them; less is better
 */
record Pages(List<List<Mark>> pages, double cost) {
  private static final double PAGE = 10;
  private static final double TURN_WHILE_PLAYING = 12;
  private static final double ONE_BLOCK = 9;

  /**
   * Where pages begin and end, in points.
   *
   * @param firstBottom where the first one ends, which keeps room for its foot
   */
  record PageRoom(double top, double bottom, double firstBottom) {}

  /** Breaks the blocks, at least one, as well as can be. */
  static Pages of(List<Block> blocks, PageRoom room) {
    int count = blocks.size();
    double[] costs = new double[count + 1];
    int[] ends = new int[count];
    for (int first = count - 1; first >= 0; first--) {
      costs[first] = Double.POSITIVE_INFINITY;
      for (int end = lastFitting(blocks, first, room); end > first; end--) {
        double cost = costs[end] + cost(blocks, first, end);
        if (cost < costs[first]) {
          costs[first] = cost;
          ends[first] = end;
        }
      }
    }
    List<List<Mark>> pages = new ArrayList<>();
    for (int first = 0; first < count; first = ends[first]) {
      pages.add(page(blocks.subList(first, ends[first]), first == 0, room.top()));
    }
    return new Pages(List.copyOf(pages), costs[0]);
  }

  private static double cost(List<Block> blocks, int first, int end) {
    boolean turned = end < blocks.size() && !blocks.get(end).turns();
    boolean lonely = first > 0 && end == first + 1;
    return PAGE + (turned ? TURN_WHILE_PLAYING : 0) + (lonely ? ONE_BLOCK : 0);
  }

  /** Where a page ends at the latest; it takes at least one block. */
  private static int lastFitting(List<Block> blocks, int first, PageRoom room) {
    double bottom = first == 0 ? room.firstBottom() : room.bottom();
    double at = top(blocks.get(first), first == 0, room.top()) + blocks.get(first).piece().height();
    int end = first + 1;
    while (end < blocks.size()) {
      at += blocks.get(end).air() + blocks.get(end).piece().height();
      if (at > bottom) {
        return end;
      }
      end++;
    }
    return end;
  }

  /** Where the first block of a page begins. */
  private static double top(Block block, boolean firstPage, double top) {
    return firstPage ? top : top + block.again().map(head -> head.height()).orElse(0.0);
  }

  private static List<Mark> page(List<Block> blocks, boolean firstPage, double top) {
    List<Mark> marks = new ArrayList<>();
    Block first = blocks.get(0);
    if (!firstPage) {
      first.again().ifPresent(head -> marks.addAll(head.at(top)));
    }
    double at = top(first, firstPage, top) - first.air();
    for (Block block : blocks) {
      at += block.air();
      marks.addAll(block.piece().at(at));
      at += block.piece().height();
    }
    return List.copyOf(marks);
  }
}

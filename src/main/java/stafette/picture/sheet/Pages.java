package stafette.picture.sheet;

import java.util.ArrayList;
import java.util.List;
import stafette.picture.ink.Mark;

/** Sets blocks one below the other, on as many pages as they take. */
final class Pages {
  private final double top;
  private final double bottom;
  private final double firstBottom;
  private final List<List<Mark>> pages = new ArrayList<>();
  private List<Mark> page = new ArrayList<>();
  private double at;
  private boolean fresh = true;

  /**
   * Pages to be filled.
   *
   * @param firstBottom where the first one ends, which keeps room for its foot
   */
  private Pages(double top, double bottom, double firstBottom) {
    this.top = top;
    this.bottom = bottom;
    this.firstBottom = firstBottom;
    at = top;
  }

  /** The marks of each page. */
  static List<List<Mark>> of(List<Block> blocks, double top, double bottom, double firstBottom) {
    Pages pages = new Pages(top, bottom, firstBottom);
    blocks.forEach(pages::add);
    pages.turn();
    return pages.pages;
  }

  private void add(Block block) {
    double end = at + (fresh ? 0 : block.air()) + block.piece().height();
    if (!fresh && end > (pages.isEmpty() ? firstBottom : bottom)) {
      turn();
    }
    if (fresh && !pages.isEmpty()) {
      block
          .again()
          .ifPresent(
              head -> {
                page.addAll(head.at(at));
                at += head.height();
              });
    }
    at += fresh ? 0 : block.air();
    page.addAll(block.piece().at(at));
    at += block.piece().height();
    fresh = false;
  }

  private void turn() {
    pages.add(page);
    page = new ArrayList<>();
    at = top;
    fresh = true;
  }
}

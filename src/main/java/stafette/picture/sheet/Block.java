package stafette.picture.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stafette.picture.ink.Mark;
import stafette.picture.ink.Piece;

/**
 * What a page break never divides.
 *
 * @param piece what it shows
 * @param air white above it, unless it begins a page
 * @param again what stands above it where it begins a page: the head of its table
 * @param turns whether there is time to turn a page before it
 */
record Block(Piece piece, double air, Optional<Piece> again, boolean turns) {
  Block(Piece piece, double air) {
    this(piece, air, Optional.empty(), true);
  }

  /** A block that may have to stay on the page of the one before. */
  Block turning(boolean inTime) {
    return new Block(piece, air, again, inTime);
  }

  /** A block with more white above. */
  Block after(double more) {
    return new Block(piece, air + more, again, turns);
  }

  /** This block and another below it, not to be parted. */
  Block with(Block below) {
    double down = piece.height() + below.air();
    return new Block(
        new Piece(
            down + below.piece().height(),
            top -> {
              List<Mark> marks = new ArrayList<>(piece.at(top));
              marks.addAll(below.piece().at(top + down));
              return marks;
            }),
        air,
        again,
        turns);
  }

  /** Some blocks with another that stays with the first of them. */
  static List<Block> headed(Block head, List<Block> blocks) {
    List<Block> result = new ArrayList<>();
    result.add(head.with(blocks.get(0)));
    result.addAll(blocks.subList(1, blocks.size()));
    return result;
  }
}

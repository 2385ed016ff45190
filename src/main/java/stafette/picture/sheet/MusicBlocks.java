package stafette.picture.sheet;

import java.util.ArrayList;
import java.util.List;
import stafette.picture.ink.Box;
import stafette.picture.ink.Face;
import stafette.picture.ink.Ink;
import stafette.picture.ink.Mark;
import stafette.picture.ink.Piece;
import stafette.picture.notes.BarRow;
import stafette.time.Bar;

/** What a player plays, staff by staff, with bar numbers, tempi and flags above. */
final class MusicBlocks {
  private static final TypeStyle NUMBER = new TypeStyle(Face.PLAIN, 7.4, Ink.SOFT);
  private static final double RULER = 11;
  private static final double AIR = 10;
  private static final double APART = 5;

  /** What it takes to turn a page (common practice, no source). */
  private static final long TURN_MICROS = 3_000_000;

  private final SheetContent content;
  private final List<TurnWords> turns;
  private final double left;
  private final double right;
  private final PlayerMusic music;

  /**
   * The music of a player.
   *
   * @param turns the player's turns in order
   */
  MusicBlocks(
      SheetContent content, PlayerMusic music, List<TurnWords> turns, double left, double right) {
    this.content = content;
    this.music = music;
    this.turns = List.copyOf(turns);
    this.left = left;
    this.right = right;
  }

  List<Block> blocks() {
    List<PlayerMusic.Staffed> staffs = music.staffed();
    return staffs.stream().map(staffed -> staff(staffed, staffed.equals(staffs.get(0)))).toList();
  }

  private Block staff(PlayerMusic.Staffed staffed, boolean opens) {
    HandoffMarks flags = new HandoffMarks(staffed.row(), content.language(), left, right);
    for (int i = 0; i < turns.size(); i++) {
      flags.add(i + 1, turns.get(i));
    }
    Landmarking landmarks = Landmarking.of(content, staffed.row(), opens, right);
    double numbered = landmarks.height();
    List<Mark.Lettering> numbers = numbers(staffed.row());
    Box extent = staffed.extent();
    double ink = numbered + RULER + flags.height();
    return new Block(
            new Piece(
                ink + extent.height(),
                top -> {
                  List<Mark> marks = new ArrayList<>(landmarks.at(top));
                  numbers.forEach(word -> marks.add(TypeStyle.lowered(word, top + numbered)));
                  marks.addAll(flags.above(top + ink - 1));
                  marks.addAll(staffed.piece().at(top + ink - extent.top()));
                  return marks;
                }),
            AIR)
        .turning(opens || music.restMicros(staffed.row().span().start()) >= TURN_MICROS);
  }

  /** Each bar's number where there is room. */
  private List<Mark.Lettering> numbers(BarRow row) {
    List<Mark.Lettering> words = new ArrayList<>();
    Bar first = row.bars().get(0);
    words.add(NUMBER.line(first.number(), left, 0));
    for (Bar bar : row.bars()) {
      if (!bar.equals(first) && row.left(bar) < row.right(bar)) {
        add(NUMBER.line(bar.number(), row.left(bar), 0), words);
      }
    }
    return words;
  }

  private void add(Mark.Lettering word, List<Mark.Lettering> words) {
    Box box = word.bounds();
    Box wide = new Box(box.left() - APART, box.top(), box.right() + APART, box.bottom());
    boolean free = words.stream().noneMatch(other -> other.bounds().overlaps(wide));
    if (free && box.right() <= right) {
      words.add(word);
    }
  }
}

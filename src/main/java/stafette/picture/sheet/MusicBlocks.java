package stafette.picture.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import stafette.picture.ink.Box;
import stafette.picture.ink.Face;
import stafette.picture.ink.Ink;
import stafette.picture.ink.Mark;
import stafette.picture.ink.Piece;
import stafette.picture.notes.BarRow;
import stafette.score.Line;
import stafette.time.Bar;
import stafette.time.Position;
import stafette.time.Span;
import stafette.time.TempoMark;

/** What a player plays, staff by staff, with bar numbers, tempi and flags above. */
final class MusicBlocks {
  private static final TypeStyle NUMBER = new TypeStyle(Face.PLAIN, 7.4, Ink.SOFT);
  private static final TypeStyle TEMPO = new TypeStyle(Face.BOLD, 8, Ink.FULL);
  private static final double RULER = 11;
  private static final double AIR = 10;
  private static final double APART = 5;

  private final Line line;
  private final List<TurnWords> turns;
  private final double left;
  private final double right;
  private final PlayerMusic music;

  /**
   * The music of a player.
   *
   * @param turns the player's turns in order
   */
  MusicBlocks(Line line, PlayerMusic music, List<TurnWords> turns, double left, double right) {
    this.line = line;
    this.music = music;
    this.turns = List.copyOf(turns);
    this.left = left;
    this.right = right;
  }

  List<Block> blocks() {
    List<Block> blocks = new ArrayList<>();
    int before = -1;
    for (List<Bar> stretch : music.stretches()) {
      List<Block> staffs = music.staffed(stretch).stream().map(this::staff).toList();
      int first = stretch.get(0).index();
      blocks.addAll(before < 0 ? staffs : Block.headed(rest(before + 1, first - 1), staffs));
      before = stretch.get(stretch.size() - 1).index();
    }
    return blocks;
  }

  private Block rest(int first, int last) {
    String from = line.bars().get(first).number();
    String to = line.bars().get(last).number();
    String bars = first == last ? "bar " + from : "bars " + from + " to " + to;
    return new Block(
        TypeStyle.SOFT.paragraph("Nothing of the line in " + bars + ".", left, right - left), AIR);
  }

  private Block staff(PlayerMusic.Staffed staffed) {
    HandoffMarks flags = new HandoffMarks(staffed.row(), left, right);
    for (int i = 0; i < turns.size(); i++) {
      flags.add(i + 1, turns.get(i));
    }
    List<Mark.Lettering> ruler = ruler(staffed.row());
    Box extent = staffed.extent();
    double ink = RULER + flags.height();
    return new Block(
        new Piece(
            ink + extent.height(),
            top -> {
              List<Mark> marks = new ArrayList<>();
              ruler.forEach(word -> marks.add(TypeStyle.lowered(word, top)));
              marks.addAll(flags.above(top + ink - 1));
              marks.addAll(staffed.piece().at(top + ink - extent.top()));
              return marks;
            }),
        AIR);
  }

  /** Tempi where they change, and each bar's number where there is room. */
  private List<Mark.Lettering> ruler(BarRow row) {
    List<Mark.Lettering> words = new ArrayList<>();
    Bar first = row.bars().get(0);
    words.add(NUMBER.line(first.number(), left, 0));
    boolean opens = first.equals(music.stretches().get(0).get(0));
    for (Map.Entry<Position, TempoMark> change : line.tempo().within(row.span()).entrySet()) {
      Position at = change.getKey();
      if ((opens && at.equals(row.span().start())) || isNew(at)) {
        add(TEMPO.line(change.getValue().toString(), row.x(at), 0), words);
      }
    }
    for (Bar bar : row.bars()) {
      if (!bar.equals(first)) {
        add(NUMBER.line(bar.number(), row.left(bar), 0), words);
      }
    }
    return words;
  }

  private boolean isNew(Position at) {
    Span before = new Span(Position.START, at);
    return Position.START.isBefore(at)
        && !line.tempo().within(before).lastEntry().getValue().equals(line.tempo().at(at));
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

package stafette.picture.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import stafette.picture.ink.Face;
import stafette.picture.ink.Ink;
import stafette.picture.ink.Mark;
import stafette.picture.ink.Piece;

/** Where pages are turned. */
class PagesTest {
  private static final Pages.PageRoom ROOM = new Pages.PageRoom(0, 100, 100);

  @Test
  void a_page_is_turned_in_a_rest_though_more_would_fit_on_it() {
    assertEquals(List.of(5, 10), pages(15, 5));
    assertEquals(List.of(9, 3), pages(12, 9));
  }

  @Test
  void an_extra_page_saves_a_turn_while_playing() {
    assertEquals(List.of(4, 9, 7), pages(20, 4, 13));
  }

  @Test
  void without_a_rest_pages_are_filled_but_none_is_left_with_one_staff() {
    assertEquals(List.of(10, 10, 5), pages(25));
    assertEquals(List.of(9, 2), pages(11));
  }

  /** How many of so many staffs of a tenth of a page stand on each; some follow rests. */
  private static List<Integer> pages(int staffs, Integer... afterRests) {
    List<Block> blocks = new ArrayList<>();
    for (int i = 0; i < staffs; i++) {
      blocks.add(
          new Block(new Piece(10, top -> List.of(mark(top))), 0)
              .turning(List.of(afterRests).contains(i)));
    }
    return Pages.of(blocks, ROOM).pages().stream().map(List::size).toList();
  }

  private static Mark mark(double top) {
    return new Mark.Lettering("x", 0, top, 5, Face.PLAIN, Ink.FULL);
  }
}

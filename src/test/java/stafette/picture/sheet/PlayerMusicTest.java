package stafette.picture.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import stafette.check.Judge;
import stafette.picture.ink.Face;
import stafette.picture.ink.Mark;
import stafette.picture.notes.BarRow;
import stafette.picture.ribbon.InventedRelays;
import stafette.picture.ribbon.MixedRelays;
import stafette.picture.ribbon.RelayContent;
import stafette.picture.ribbon.TimelineTest;
import stafette.plan.Hocket;
import stafette.plan.Plan;
import stafette.time.Bar;

/** A player's notes across the page. */
class PlayerMusicTest {
  private static final double LEFT = 36;
  private static final double RIGHT = 559;
  private static final double SPACE = 5;

  private static PlayerMusic music(Plan plan, int player) {
    return PlayerMusic.of(
        RelayContent.of(plan, Judge.judge(plan), Optional.empty()), player, SPACE, LEFT, RIGHT);
  }

  @Example
  void staffs_fill_the_width_of_the_page() {
    for (Plan plan :
        List.of(InventedRelays.rotation(24, 3, 2), InventedRelays.rotation(40, 8, 1))) {
      for (PlayerMusic.Staffed staff : music(plan, 0).staffed()) {
        assertEquals(RIGHT, staff.row().right(), 0.01);
      }
    }
  }

  @Property(tries = 40)
  void bars_stand_in_order_once_each_and_their_places_go_from_left_to_right(@ForAll long seed) {
    Plan plan = MixedRelays.any(seed);
    for (int player = 0; player < plan.brief().players().size(); player++) {
      if (plan.segmentsOf(player).isEmpty()) {
        continue;
      }
      int next = plan.brief().bars().get(0).index();
      for (PlayerMusic.Staffed staff : music(plan, player).staffed()) {
        BarRow row = staff.row();
        double at = row.left();
        for (Bar bar : row.bars()) {
          assertEquals(next, bar.index());
          assertEquals(at, row.left(bar), 1e-6);
          assertTrue(row.right(bar) >= row.left(bar));
          at = row.right(bar);
          next++;
        }
        assertTrue(row.right() <= RIGHT + 0.01, "up to " + row.right());
      }
    }
  }

  @Property(tries = 25)
  void no_head_and_no_rest_touches_another(@ForAll long seed) {
    assertAllApart(MixedRelays.any(seed));
  }

  @Example
  void grace_notes_that_open_an_entry_within_a_bar_stand_clear_of_its_cue() {
    assertAllApart(MixedRelays.any(1265));
  }

  private static void assertAllApart(Plan plan) {
    for (int player = 0; player < plan.brief().players().size(); player++) {
      if (!plan.segmentsOf(player).isEmpty()) {
        music(plan, player).staffed().forEach(PlayerMusicTest::assertApart);
      }
    }
  }

  @Example
  void the_notes_of_a_hocket_and_the_rests_between_them_stand_apart() {
    music(InventedRelays.hocket(Hocket.STROKE), 1).staffed().forEach(PlayerMusicTest::assertApart);
  }

  @Example
  void bars_of_rest_are_counted_together_with_how_many_they_are_and_the_cue_is_written() {
    Plan plan = InventedRelays.rotation(24, 3, 4);
    BarRow first = music(plan, 2).staffed().get(0).row();
    assertTrue(first.isCounted(first.bars().get(0)));
    assertTrue(first.isCounted(first.bars().get(6)));
    assertFalse(first.isCounted(first.bars().get(7)), "the bar of the cue");
    assertFalse(first.isCounted(first.bars().get(8)), "the bar of the entry");
    assertTrue(
        words(music(plan, 2).staffed().get(0)).stream()
            .anyMatch(word -> word.face() == Face.FIGURES && word.text().equals("7")));
  }

  private static void assertApart(PlayerMusic.Staffed staff) {
    List<Mark.Lettering> signs =
        words(staff).stream()
            .filter(word -> word.face() == Face.MUSIC && word.text().codePointAt(0) >= 0x1D13B)
            .filter(word -> word.text().codePointAt(0) < 0x1D160)
            .toList();
    for (int i = 0; i < signs.size(); i++) {
      for (int j = 0; j < i; j++) {
        Mark.Lettering one = signs.get(i);
        Mark.Lettering other = signs.get(j);
        assertFalse(
            one.bounds().grownBy(-0.3).overlaps(other.bounds().grownBy(-0.3)),
            () -> one + " and " + other);
      }
    }
  }

  private static List<Mark.Lettering> words(PlayerMusic.Staffed staff) {
    return TimelineTest.leaves(staff.piece().at(0)).stream()
        .filter(Mark.Lettering.class::isInstance)
        .map(Mark.Lettering.class::cast)
        .toList();
  }
}

package stafette.picture.ribbon;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.IntStream;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import stafette.Invented;
import stafette.check.RandomPlans;
import stafette.picture.ink.Box;
import stafette.picture.ink.Drawing;
import stafette.picture.ink.Face;
import stafette.picture.ink.Mark;
import stafette.picture.ink.Paper;
import stafette.plan.Hocket;
import stafette.plan.Plan;
import stafette.score.Stroke;
import stafette.time.Length;
import stafette.time.Position;

/** Pictures with music: nothing runs into anything else. */
class NotesLayoutTest {
  /** Letters, figures and names; signs of music are another matter. */
  @Property(tries = 15)
  void no_words_touch_other_words_beside_music(@ForAll long seed, @ForAll Paper paper) {
    assertWordsApart(InventedRelays.drawn(MixedRelays.any(seed), paper, true));
  }

  @Property(tries = 10)
  void no_words_touch_other_words_in_music_that_rests(@ForAll long seed, @ForAll Paper paper) {
    assertWordsApart(InventedRelays.drawn(RandomPlans.any(seed), paper, true));
  }

  @Property(tries = 10)
  void no_words_touch_other_words_in_plain_pictures(@ForAll long seed, @ForAll Paper paper) {
    assertWordsApart(InventedRelays.drawn(MixedRelays.any(seed), paper, false));
  }

  @Property(tries = 12)
  void nothing_reaches_beyond_the_margins(
      @ForAll long seed, @ForAll Paper paper, @ForAll boolean notes) {
    double edge = Paper.MARGIN - 3;
    for (Drawing page : InventedRelays.drawn(MixedRelays.any(seed), paper, notes)) {
      Box inside = new Box(edge, edge, page.width() - edge, page.height() - edge);
      for (Mark mark : TimelineTest.leaves(page.marks())) {
        assertTrue(inside.holds(mark.bounds()), () -> mark + " " + mark.bounds());
      }
    }
  }

  /** A staff that needs a line for high notes at its end, and one for low notes at its start. */
  @Example
  void high_notes_after_low_ones_get_lines_of_their_own() {
    assertFalse(InventedRelays.drawn(MixedRelays.any(1_782_736), Paper.SHEET, true).isEmpty());
  }

  /** Heads, clefs, rests and figures of one staff; accidentals may reach round one another. */
  @Property(tries = 15)
  void no_sign_of_a_staff_touches_another(@ForAll long seed) {
    for (Drawing page : InventedRelays.drawn(MixedRelays.any(seed), Paper.SHEET, true)) {
      for (Mark.MarkGroup music : music(page)) {
        List<Mark.Lettering> signs = words(music.marks());
        for (int i = 0; i < signs.size(); i++) {
          for (int j = 0; j < i; j++) {
            if (!isAccidental(signs.get(i)) || !isAccidental(signs.get(j))) {
              assertApart(signs.get(i), signs.get(j), 0.25);
            }
          }
        }
      }
    }
  }

  /** Sixteenths on each eighth: seven bars would go on a line if only notes needed room. */
  @Example
  void repeated_notes_with_rests_between_them_have_room_for_both() {
    List<Stroke> strokes =
        IntStream.range(0, 56)
            .mapToObj(
                i ->
                    Invented.stroke(
                        Position.ofQuarters(i, 2), Length.ofQuarters(1, 4), Invented.A4))
            .toList();
    Plan plan = InventedRelays.alone(Invented.lineOf(strokes, 100));
    for (Paper paper : Paper.values()) {
      for (Drawing page : InventedRelays.drawn(plan, paper, true)) {
        for (Mark.MarkGroup music : music(page)) {
          List<Mark> ink =
              music.marks().stream()
                  .filter(mark -> !(mark instanceof Mark.Outline))
                  .filter(mark -> mark.bounds().right() > mark.bounds().left())
                  .toList();
          List<Mark.Lettering> rests =
              words(music.marks()).stream().filter(NotesLayoutTest::isRest).toList();
          assertFalse(rests.isEmpty());
          for (Mark.Lettering rest : rests) {
            for (Mark other : ink) {
              assertTrue(
                  rest.equals(other) || !rest.bounds().overlaps(other.bounds().grownBy(-0.1)),
                  () -> rest + " and " + other);
            }
          }
        }
      }
    }
  }

  private static boolean isRest(Mark.Lettering sign) {
    int letter = sign.text().codePointAt(0);
    return letter >= 0x1D13B && letter <= 0x1D142;
  }

  /** The music of one lane stays clear of the next lane's ribbon. */
  @Property(tries = 12)
  void music_keeps_to_its_own_lane(@ForAll long seed) {
    for (Drawing page : InventedRelays.drawn(MixedRelays.any(seed), Paper.SHEET, true)) {
      List<Mark.MarkGroup> music = music(page);
      for (Mark.MarkGroup one : music) {
        for (Mark.MarkGroup other : music) {
          assertTrue(one.equals(other) || !one.bounds().overlaps(other.bounds()));
        }
      }
      for (Mark.MarkGroup group : groups(page)) {
        if (group.id().orElse("").startsWith("segment")) {
          Box ribbon = group.marks().get(0).bounds();
          assertTrue(music.stream().noneMatch(m -> m.bounds().overlaps(ribbon)));
        }
      }
    }
  }

  @Test
  void words_are_apart_in_hockets_doubled_lines_and_long_relays() {
    List<Plan> plans =
        List.of(
            InventedRelays.hocket(Hocket.BEAT),
            InventedRelays.hocket(Hocket.STROKE),
            InventedRelays.doubled(),
            InventedRelays.rotation(30, 8, 1));
    for (Plan plan : plans) {
      for (Paper paper : List.of(Paper.LETTER, Paper.SHEET)) {
        assertWordsApart(InventedRelays.drawn(plan, paper, true));
        assertWordsApart(InventedRelays.drawn(plan, paper, false));
      }
    }
  }

  @Test
  void each_bar_of_a_new_metre_shows_it_on_each_staff_or_beside_its_number() {
    for (long seed = 1; seed <= 8; seed++) {
      Plan plan = MixedRelays.any(seed);
      int changes = 1;
      for (int i = 1; i < plan.line().bars().count(); i++) {
        boolean same =
            plan.line().bars().get(i).meter().equals(plan.line().bars().get(i - 1).meter());
        changes += same ? 0 : 1;
      }
      Drawing page = InventedRelays.drawn(plan, Paper.WIDE, true).get(0);
      for (Mark.MarkGroup music : music(page)) {
        long figures =
            words(music.marks()).stream()
                .filter(w -> w.face() == Face.FIGURES && w.size() > 2 * StaffLines.SPACE)
                .count();
        assertEquals(2L * changes, figures, "seed " + seed);
      }
    }
  }

  @Test
  void a_line_of_one_note_has_room() {
    Plan plan = InventedRelays.alone(Invented.line(1, 1, 120, i -> Invented.A4));
    for (Paper paper : Paper.values()) {
      assertEquals(1, music(InventedRelays.drawn(plan, paper, true).get(0)).size());
    }
  }

  private static void assertWordsApart(List<Drawing> pages) {
    for (Drawing page : pages) {
      List<Mark.Lettering> words =
          words(page.marks()).stream().filter(w -> w.face() != Face.MUSIC).toList();
      for (int i = 0; i < words.size(); i++) {
        for (int j = 0; j < i; j++) {
          assertApart(words.get(i), words.get(j), 0);
        }
      }
    }
  }

  private static void assertApart(Mark.Lettering one, Mark.Lettering other, double hair) {
    assertTrue(
        !one.bounds().grownBy(-hair).overlaps(other.bounds().grownBy(-hair)),
        () -> one + " " + one.bounds() + " and " + other + " " + other.bounds());
  }

  private static boolean isAccidental(Mark.Lettering sign) {
    return "\u266D\u266E\u266F".contains(sign.text());
  }

  private static List<Mark.Lettering> words(List<Mark> marks) {
    return TimelineTest.leaves(marks).stream()
        .filter(mark -> mark instanceof Mark.Lettering)
        .map(mark -> (Mark.Lettering) mark)
        .toList();
  }

  private static List<Mark.MarkGroup> music(Drawing page) {
    return groups(page).stream()
        .filter(group -> group.id().orElse("").startsWith("music"))
        .toList();
  }

  private static List<Mark.MarkGroup> groups(Drawing page) {
    return page.marks().stream()
        .filter(mark -> mark instanceof Mark.MarkGroup)
        .map(mark -> (Mark.MarkGroup) mark)
        .toList();
  }
}

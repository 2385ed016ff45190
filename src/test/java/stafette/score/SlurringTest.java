package stafette.score;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;
import stafette.Invented;
import stafette.limits.Demand;
import stafette.plan.Brief;
import stafette.plan.Player;
import stafette.split.Splitter;
import stafette.time.Length;
import stafette.time.Position;

/** New slurs where the pitch changes. */
class SlurringTest {
  private static Pitch scale(int i) {
    return new Pitch(Step.values()[Math.floorMod(i, 7)], 0, 5);
  }

  @Test
  void pairs_fours_and_two_and_two_are_counted_from_the_beat() {
    Line line = Invented.line(8, 4, 120, SlurringTest::scale);
    assertEquals("(.)(.)(.)(.)", drawn(Slurring.PAIRS.of(line)));
    assertEquals("(--.)(--.)", drawn(Slurring.FOURS.of(line)));
    assertEquals("(.)  (.)  ", drawn(Slurring.TWO_AND_TWO.of(line)));
    assertSame(line, Slurring.AS_WRITTEN.of(line));
  }

  @Test
  void three_in_a_beat_are_slurred_two_and_one_or_all_three() {
    Line line = Invented.line(6, 3, 120, SlurringTest::scale);
    assertEquals(List.of(1, 4), slurred(Slurring.PAIRS.of(line)));
    assertEquals(List.of(1, 2, 4, 5), slurred(Slurring.FOURS.of(line)));
  }

  @Test
  void no_slur_leads_to_a_repeated_note_nor_over_a_silence_nor_where_one_is_already() {
    Line repeated = Invented.line(8, 4, 120, i -> scale(i < 4 ? i / 2 : i));
    assertEquals(List.of(5, 7), slurred(Slurring.PAIRS.of(repeated)));
    assertSame(
        Slurring.PAIRS.of(Invented.line(8, 4, 120, i -> Invented.A4)).source().slurring(),
        Slurring.AS_WRITTEN);
    List<Stroke> strokes = new ArrayList<>(Invented.line(8, 4, 120, SlurringTest::scale).strokes());
    strokes.remove(4);
    strokes.set(1, under(strokes.get(1)));
    assertEquals(List.of(1, 3, 6), slurred(Slurring.PAIRS.of(Invented.lineOf(strokes, 120))));
  }

  @Test
  void notes_of_other_lengths_begin_anew() {
    List<Stroke> strokes = new ArrayList<>();
    strokes.add(Invented.stroke(Position.ofQuarters(0, 1), Length.ofQuarters(1, 2), scale(0)));
    strokes.add(Invented.stroke(Position.ofQuarters(1, 2), Length.ofQuarters(1, 4), scale(1)));
    strokes.add(Invented.stroke(Position.ofQuarters(3, 4), Length.ofQuarters(1, 4), scale(2)));
    assertEquals(List.of(2), slurred(Slurring.PAIRS.of(Invented.lineOf(strokes, 120))));
  }

  @Test
  void dots_go_under_a_new_slur_and_an_accent_keeps_its_tongue() {
    List<Stroke> strokes = new ArrayList<>(Invented.line(4, 4, 120, SlurringTest::scale).strokes());
    strokes.set(0, marked(strokes.get(0), Articulation.STACCATO));
    strokes.set(1, marked(strokes.get(1), Articulation.STACCATO, Articulation.UP_BOW));
    strokes.set(2, marked(strokes.get(2), Articulation.STACCATO));
    strokes.set(3, marked(strokes.get(3), Articulation.ACCENT));
    Line line = Slurring.PAIRS.of(Invented.lineOf(strokes, 120));
    assertEquals(List.of(1), slurred(line));
    assertEquals(Set.of(), line.stroke(0).articulations());
    assertEquals(Set.of(), line.stroke(1).articulations());
    assertEquals(Set.of(Articulation.STACCATO), line.stroke(2).articulations());
  }

  /** Ends that fit, nothing slurred across beats, and as many strokes as before. */
  @Property
  void every_new_slur_leads_from_a_note_to_the_next_of_its_beat(
      @ForAll @Size(min = 2, max = 40) List<@IntRange(min = 0, max = 4) Integer> pitches,
      @ForAll @IntRange(min = 2, max = 6) int perBeat) {
    Line line = Invented.line(pitches.size(), perBeat, 120, i -> scale(pitches.get(i)));
    for (Slurring slurring : Slurring.changes()) {
      Line slurred = slurring.of(line);
      assertEquals(line.count(), slurred.count());
      for (int j = 0; j < line.count(); j++) {
        boolean before = j > 0 && slurred.stroke(j - 1).slurContinues();
        assertEquals(before, slurred.stroke(j).slurred());
        assertTrue(!before || (line.sameBeat(j) && !line.stroke(j).isLike(line.stroke(j - 1))));
      }
      assertEquals(slurred.strokes(), slurring.of(slurred).strokes());
    }
  }

  @Test
  void a_moving_line_too_fast_for_tongues_has_a_plan_in_pairs() {
    Line line = Invented.line(64, 4, 180, SlurringTest::scale);
    Player one = Invented.player("Flute 1", Invented.instrument("flute"), 10, 8, 40, 2);
    Player two = Invented.player("Flute 2", Invented.instrument("flute"), 10, 8, 40, 2);
    assertTrue(Splitter.split(brief(line, one, two), () -> false).isNone());
    Line pairs = Slurring.PAIRS.of(line);
    assertTrue(Splitter.split(brief(pairs, one, two), () -> false).isBest());
    Demand demand = Demand.of(one.instrument(), one.ways().get(0), pairs);
    assertFalse(demand.articulated(1));
    assertTrue(demand.articulated(2));
    assertTrue(pairs.where("-").endsWith(", changed: slurred in pairs"), pairs.where("-"));
  }

  private static Brief brief(Line line, Player... players) {
    return Invented.brief(line, players);
  }

  private static List<Integer> slurred(Line line) {
    return IntStream.range(0, line.count()).filter(j -> line.stroke(j).slurred()).boxed().toList();
  }

  private static String drawn(Line line) {
    return line.strokes().stream()
        .map(s -> s.slurred() ? (s.slurContinues() ? "-" : ".)") : s.slurContinues() ? "(" : " ")
        .collect(Collectors.joining());
  }

  private static Stroke under(Stroke stroke) {
    return changed(stroke, true, stroke.articulations());
  }

  private static Stroke marked(Stroke stroke, Articulation... marks) {
    return changed(stroke, false, Set.of(marks));
  }

  private static Stroke changed(Stroke stroke, boolean slurred, Set<Articulation> marks) {
    return new Stroke(
        stroke.onset(),
        stroke.tones(),
        stroke.values(),
        stroke.graces(),
        slurred,
        stroke.slurContinues(),
        stroke.measured(),
        marks,
        stroke.dynamic(),
        stroke.manner());
  }
}

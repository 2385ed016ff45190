package stafette.check.join;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.IntFunction;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import stafette.Invented;
import stafette.limits.Instrument;
import stafette.plan.Brief;
import stafette.plan.Hocket;
import stafette.plan.Pattern;
import stafette.plan.Plan;
import stafette.plan.Player;
import stafette.plan.Segment;
import stafette.score.Articulation;
import stafette.score.Dynamic;
import stafette.score.Line;
import stafette.score.Manner;
import stafette.score.Pitch;
import stafette.score.Step;
import stafette.score.Stroke;
import stafette.score.Tuplet;
import stafette.score.Value;
import stafette.time.Length;
import stafette.time.Position;
import stafette.time.Span;

/** What a master would see to where two players meet. */
class JoinReportTest {
  private static final Player FLUTE = player("Flute 1", "flute", 91);
  private static final Player OTHER_FLUTE = player("Flute 2", "flute", 91);
  private static final Player TRUMPET = player("Trumpet 1", "trumpet", 101);

  /** The marks of a stroke that is as plain as it can be but for one thing. */
  private record Marks(
      Set<Articulation> articulations, Dynamic dynamic, boolean slurred, boolean goesOn) {
    private static final Marks NONE = new Marks(Set.of(), Dynamic.MF, false, false);
    private static final Marks ACCENT =
        new Marks(Set.of(Articulation.ACCENT), Dynamic.MF, false, false);
    private static final Marks INSIDE_SLUR = new Marks(Set.of(), Dynamic.MF, true, true);

    static Marks of(Dynamic dynamic) {
      return new Marks(Set.of(), dynamic, false, false);
    }
  }

  @Test
  void who_leaves_keeps_the_accent_of_the_landing_note_and_nothing_is_to_be_done() {
    JoinReport join = join(line(JoinReportTest::moving, accentsAt(16)), FLUTE, OTHER_FLUTE, 16, 16);
    assertEquals(EntryAccent.KEPT_BY_LEAVING, join.accent());
    assertEquals(List.of(), join.toDo());
    assertTrue(join.inWords().toString().contains("stays with who leaves"));
  }

  @Test
  void an_accent_on_the_entry_that_is_not_on_the_landing_note_exposes_it() {
    JoinReport join = join(line(JoinReportTest::moving, accentsAt(12)), FLUTE, OTHER_FLUTE, 12, 16);
    assertEquals(EntryAccent.EXPOSED, join.accent());
    assertEquals(
        List.of("an accent on the entry alone exposes it: enter without the accent"), toDo(join));
  }

  @Test
  void accents_elsewhere_in_the_overlap_are_no_matter_of_the_entry() {
    JoinReport join =
        join(line(JoinReportTest::moving, accentsAt(13, 16)), FLUTE, OTHER_FLUTE, 12, 16);
    assertEquals(EntryAccent.NONE, join.accent());
  }

  @Test
  void after_a_rest_of_the_line_an_accent_belongs_to_who_enters() {
    List<Stroke> strokes = new ArrayList<>(line(JoinReportTest::moving, accentsAt(16)).strokes());
    strokes.subList(12, 16).clear();
    Plan plan = plan(Invented.lineOf(strokes, 120), FLUTE, OTHER_FLUTE, 12, 11);
    JoinReport join = JoinReport.of(plan).get(0);
    assertEquals(EntryAccent.NONE, join.accent());
    assertEquals(List.of(), join.toDo());
  }

  /** The trumpet stands 10 decibels above the flute, two steps. */
  @Test
  void a_trumpet_plays_piano_against_a_flute_in_mezzo_forte_whoever_enters() {
    Line line = line(JoinReportTest::moving, i -> Marks.NONE);
    for (JoinReport join :
        List.of(join(line, FLUTE, TRUMPET, 16, 16), join(line, TRUMPET, FLUTE, 16, 16))) {
      assertEquals(List.of("trumpet p against flute mf"), toDo(join));
      assertEquals(10, join.balance().orElseThrow().decibel());
    }
  }

  @Test
  void the_dynamic_in_force_at_the_landing_note_counts() {
    IntFunction<Marks> louder = i -> Marks.of(i < 16 ? Dynamic.P : Dynamic.FF);
    JoinReport join = join(line(JoinReportTest::moving, louder), FLUTE, TRUMPET, 16, 16);
    assertEquals(List.of("trumpet mf against flute ff"), toDo(join));
  }

  @Test
  void where_the_louder_one_cant_go_down_enough_the_softer_one_plays_louder() {
    JoinReport join =
        join(line(JoinReportTest::moving, i -> Marks.of(Dynamic.PP)), TRUMPET, FLUTE, 16, 16);
    assertEquals(List.of("trumpet ppp against flute p"), toDo(join));
  }

  @Test
  void less_than_a_step_between_them_is_left_alone() {
    Player oboe = player("Oboe 1", "oboe", 95.9);
    Player loud = player("Oboe 2", "loud oboe", 96);
    Line line = line(JoinReportTest::moving, i -> Marks.NONE);
    assertEquals(Optional.empty(), join(line, FLUTE, oboe, 16, 16).balance());
    assertEquals(List.of("loud oboe mp against flute mf"), toDo(join(line, FLUTE, loud, 16, 16)));
  }

  @Test
  void of_a_hocket_pair_the_one_who_plays_the_landing_note_is_balanced() {
    Brief brief =
        new Brief(
            line(JoinReportTest::moving, i -> Marks.NONE),
            List.of(FLUTE, TRUMPET, OTHER_FLUTE),
            Invented.rules().with(Hocket.STROKE));
    assertEquals(List.of(), afterPair(brief, 16).toDo(), "stroke 16 is the flute's");
    assertTrue(afterPair(brief, 17).balance().isPresent(), "stroke 17 is the trumpet's");
  }

  private static JoinReport afterPair(Brief brief, int landing) {
    Plan plan =
        new Plan(
            brief,
            List.of(
                new Segment(0, 0, 0, 0, landing, Pattern.ODD),
                new Segment(0, 1, 0, 0, landing, Pattern.EVEN),
                new Segment(2, 0, landing, 31)));
    return JoinReport.of(plan).get(0);
  }

  /** As {@code Score} gives cover: 2 points for each other part, 4 with an accent, at most 8. */
  @Test
  void attacks_of_other_parts_are_counted_and_four_hide_the_join() {
    assertEquals("nothing covers it", covered(0).inWords().toString());
    assertEquals("another part attacks there", covered(2).inWords().toString());
    assertEquals(
        "3 other parts attack there (an accent counted twice)", covered(6).inWords().toString());
    assertFalse(covered(6).hides());
    assertTrue(covered(8).hides());
  }

  private static JoinCover covered(int points) {
    return join(
            covered(line(JoinReportTest::moving, i -> Marks.NONE), points),
            FLUTE,
            OTHER_FLUTE,
            16,
            16)
        .cover();
  }

  private static Line covered(Line line, int points) {
    return line.of(line.strokes(), Collections.nCopies(line.count(), points));
  }

  @Test
  void under_the_attack_of_all_neither_accent_nor_flam_is_to_be_mended() {
    Line line = line(i -> Invented.A4, accentsAt(12));
    assertEquals(2, join(covered(line, 6), FLUTE, OTHER_FLUTE, 12, 16).toDo().size());
    JoinReport hidden = join(covered(line, 8), FLUTE, OTHER_FLUTE, 12, 16);
    assertEquals(List.of(), hidden.toDo());
    assertTrue(hidden.inWords().toString().endsWith("disappears under the attack of other parts"));
  }

  /** R. A. Rasch, Acustica 43 (1979), 121-131: 27 to 37 ms between two woodwinds. */
  @Test
  void repeated_notes_together_flam_and_one_does_not() {
    Line line = line(i -> Invented.A4, i -> Marks.NONE);
    assertEquals(Optional.empty(), join(line, FLUTE, OTHER_FLUTE, 16, 16).flam());
    assertEquals(
        List.of("5 repeated notes together flam, 27 to 37 ms apart: share the landing note alone"),
        toDo(join(line, FLUTE, OTHER_FLUTE, 12, 16)));
    Line moves = line(JoinReportTest::moving, i -> Marks.NONE);
    assertEquals(Optional.empty(), join(moves, FLUTE, OTHER_FLUTE, 12, 16).flam());
  }

  @Test
  void only_the_longest_row_of_one_pitch_counts() {
    Line pairs = line(i -> new Pitch(Step.values()[i / 2 % 2], 0, 5), i -> Marks.NONE);
    assertEquals(2, join(pairs, FLUTE, OTHER_FLUTE, 12, 16).flam().orElseThrow().notes());
  }

  @Test
  void a_slur_that_goes_on_over_the_landing_note_is_cut() {
    IntFunction<Marks> slur = i -> i == 16 ? Marks.INSIDE_SLUR : Marks.NONE;
    JoinReport join = join(line(JoinReportTest::moving, slur), FLUTE, OTHER_FLUTE, 16, 16);
    assertEquals(List.of(JoinCut.SLUR), join.cuts());
    assertEquals(List.of("cuts a slur: land on its last note"), toDo(join));
  }

  @Test
  void a_landing_inside_a_group_cuts_it_and_one_on_a_beat_or_half_of_it_does_not() {
    Line line = line(JoinReportTest::moving, i -> Marks.NONE);
    assertEquals(List.of(JoinCut.GROUP), join(line, FLUTE, OTHER_FLUTE, 17, 17).cuts());
    for (int j : List.of(16, 18, 20)) {
      assertEquals(List.of(), join(line, FLUTE, OTHER_FLUTE, j, j).cuts(), "stroke " + j);
    }
  }

  @Test
  void half_a_beat_inside_a_tuplet_cuts_it() {
    Line sextuplets =
        Invented.lineOf(IntStream.range(0, 24).mapToObj(JoinReportTest::inSextuplets).toList(), 80);
    assertEquals(List.of(), join(sextuplets, FLUTE, OTHER_FLUTE, 12, 12).cuts());
    assertEquals(List.of(JoinCut.GROUP), join(sextuplets, FLUTE, OTHER_FLUTE, 15, 15).cuts());
  }

  private static Stroke inSextuplets(int i) {
    Length each = Length.ofQuarters(1, 6);
    Span beat = Span.of(Position.ofQuarters(i / 6, 1), Length.ofQuarters(1, 1));
    Value value = new Value(each, Optional.of(new Tuplet(6, 4, beat)));
    return stroke(Position.ofQuarters(i, 6), value, moving(i), Marks.NONE);
  }

  @Test
  void the_same_thing_to_do_is_said_once_with_all_its_places() {
    Plan plan =
        new Plan(
            Invented.brief(line(JoinReportTest::moving, i -> Marks.NONE), FLUTE, TRUMPET),
            List.of(new Segment(0, 0, 0, 8), new Segment(1, 0, 8, 16), new Segment(0, 0, 16, 31)));
    List<JoinAdvice> advice = JoinAdvice.of(plan);
    assertEquals(1, advice.size());
    assertEquals("trumpet p against flute mf", advice.get(0).what().toString());
    assertEquals("1.3, 2.1", advice.get(0).places());
  }

  private static List<String> toDo(JoinReport join) {
    return join.toDo().stream().map(Object::toString).toList();
  }

  private static JoinReport join(Line line, Player leaves, Player enters, int entry, int landing) {
    return JoinReport.of(plan(line, leaves, enters, entry, landing)).get(0);
  }

  private static Plan plan(Line line, Player leaves, Player enters, int entry, int landing) {
    return new Plan(
        Invented.brief(line, leaves, enters),
        List.of(new Segment(0, 0, 0, landing), new Segment(1, 0, entry, line.count() - 1)));
  }

  /** Two bars of sixteenths in 4/4. */
  private static Line line(IntFunction<Pitch> pitch, IntFunction<Marks> marks) {
    Value sixteenth = new Value(Length.ofQuarters(1, 4), Optional.empty());
    return Invented.lineOf(
        IntStream.range(0, 32)
            .mapToObj(
                i -> stroke(Position.ofQuarters(i, 4), sixteenth, pitch.apply(i), marks.apply(i)))
            .toList(),
        120);
  }

  private static Pitch moving(int i) {
    return new Pitch(Step.values()[i % 2], 0, 5);
  }

  private static IntFunction<Marks> accentsAt(Integer... strokes) {
    return i -> List.of(strokes).contains(i) ? Marks.ACCENT : Marks.NONE;
  }

  private static Stroke stroke(Position onset, Value value, Pitch pitch, Marks marks) {
    return new Stroke(
        onset,
        List.of(pitch),
        List.of(value),
        List.of(),
        marks.slurred(),
        marks.goesOn(),
        true,
        marks.articulations(),
        marks.dynamic(),
        Manner.PLAIN);
  }

  static Player player(String name, String instrument, double decibel) {
    Instrument plain = Invented.instrument(instrument);
    return Invented.player(
        name, plain.with(decibel, Optional.empty(), plain.techniques()), 10, 7, 20, 8);
  }
}

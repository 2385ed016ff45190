package stafette.picture.notes;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import stafette.Invented;
import stafette.check.RandomPlans;
import stafette.notation.Accidentals;
import stafette.notation.NoteShape;
import stafette.picture.ink.Mark;
import stafette.picture.ribbon.InventedRelays;
import stafette.picture.ribbon.TimelineTest;
import stafette.plan.Hocket;
import stafette.plan.Plan;
import stafette.plan.Played;
import stafette.plan.Segment;
import stafette.plan.written.Landings;
import stafette.plan.written.WrittenPassage;
import stafette.score.Dynamic;
import stafette.score.Keys;
import stafette.score.Line;
import stafette.score.Manner;
import stafette.score.Pitch;
import stafette.score.Step;
import stafette.score.Stroke;
import stafette.score.Transposition;
import stafette.score.Value;
import stafette.time.Bar;
import stafette.time.Bars;
import stafette.time.Length;
import stafette.time.Meter;
import stafette.time.Position;
import stafette.time.Span;

/** Written music: what is on the staff, and where. */
class EngraverTest {
  private static final String BLACK_HEAD = Character.toString(0x1D158);
  private static final String SHARP = "\u266F";
  private static final String NATURAL = "\u266E";
  private static final String WHOLE_REST = Character.toString(0x1D13B);
  private static final Staff STAFF = new Staff(0, 4, Clef.TREBLE, Transposition.NONE);

  @Property(tries = 60)
  void notes_and_rests_fill_each_bar_without_gap_or_overlap(@ForAll long seed) {
    Plan plan = RandomPlans.any(seed);
    for (int player = 0; player < plan.brief().players().size(); player++) {
      List<WrittenPassage> plays =
          plan.segmentsOf(player).stream().map(segment -> written(plan, segment)).toList();
      List<Bar> bars = bars(plan.line());
      List<NotatedItem> written = Notation.of(plays, List.of(), bars);
      Position at = bars.get(0).span().start();
      for (NotatedItem one : written) {
        assertEquals(at, one.span().start());
        at = one.span().end();
      }
      assertEquals(bars.get(bars.size() - 1).span().end(), at);
    }
  }

  @Test
  void each_stroke_has_a_head_and_a_bar_without_any_has_a_whole_rest() {
    Line line = Invented.line(32, 4, 90, i -> Invented.A4);
    List<Mark> marks = engraved(line, 16, 31, 0);
    assertEquals(16, count(marks, BLACK_HEAD));
    assertEquals(1, count(marks, WHOLE_REST));
  }

  @Test
  void heads_stand_on_their_lines() {
    assertEquals(0, STAFF.step(new Pitch(Step.E, 0, 4)));
    assertEquals(8, STAFF.step(new Pitch(Step.F, 0, 5)));
    assertEquals(16, STAFF.y(0));
    assertEquals(0, STAFF.y(8));
    Staff bass = new Staff(0, 4, Clef.BASS, Transposition.NONE);
    assertEquals(0, bass.step(new Pitch(Step.G, 0, 2)));
    Staff tenor = new Staff(0, 4, Clef.TENOR, Transposition.NONE);
    assertEquals(6, tenor.step(new Pitch(Step.C, 0, 4)));
    Staff alto = new Staff(0, 4, Clef.ALTO, Transposition.NONE);
    assertEquals(4, alto.step(new Pitch(Step.C, 0, 4)));
  }

  @Test
  void a_clarinet_reads_a_tone_above_what_it_sounds() {
    Staff staff = new Staff(0, 4, Clef.TREBLE, new Transposition(-1, -2));
    assertEquals(new Pitch(Step.B, 0, 4), staff.written(Invented.A4));
    assertEquals(4, staff.step(Invented.A4));
  }

  @Test
  void an_accidental_holds_to_the_end_of_its_bar_and_is_taken_back_within_it() {
    Pitch sharp = new Pitch(Step.F, 1, 5);
    Pitch plain = new Pitch(Step.F, 0, 5);
    Line line =
        Invented.line(
            8, 1, 90, i -> List.of(sharp, sharp, plain, sharp, sharp, plain, plain, plain).get(i));
    List<Mark> marks = engraved(line, 0, 7, 0);
    assertEquals(3, count(marks, SHARP));
    assertEquals(2, count(marks, NATURAL));
  }

  @Test
  void under_a_key_signature_its_own_notes_need_no_accidentals() {
    Line line = Invented.line(4, 1, 90, i -> new Pitch(Step.F, 1, 5));
    assertEquals(1, count(engraved(line, 0, 3, 1), SHARP));
    Line flat = Invented.line(4, 1, 90, i -> new Pitch(Step.B, -1, 4));
    assertEquals(1, count(engraved(flat, 0, 3, -1), "\u266D"));
    assertEquals(1, count(engraved(flat, 0, 3, 0), "\u266D"));
    assertEquals(
        2 + 1, count(engraved(flat, 0, 3, 2), SHARP) + count(engraved(flat, 0, 3, 2), "\u266D"));
  }

  @Test
  void all_seven_signs_of_a_key_are_those_of_the_circle_of_fifths() {
    Accidentals threeSharps = new Accidentals(3);
    assertFalse(threeSharps.mustShow(new Pitch(Step.G, 1, 4)));
    assertTrue(threeSharps.mustShow(new Pitch(Step.D, 1, 4)));
    Accidentals twoFlats = new Accidentals(-2);
    assertFalse(twoFlats.mustShow(new Pitch(Step.E, -1, 4)));
    assertTrue(twoFlats.mustShow(new Pitch(Step.B, 0, 4)));
  }

  @Test
  void a_stroke_of_a_hocket_stands_between_rests_of_its_own_length() {
    Plan plan = InventedRelays.hocket(Hocket.STROKE);
    List<NotatedItem> written =
        Notation.of(
            List.of(written(plan, plan.segments().get(2))),
            List.of(),
            List.of(plan.line().bars().get(4)));
    assertEquals(16, written.size());
    for (int i = 0; i < 16; i++) {
      assertEquals(i % 2 == 0, written.get(i).isRest());
      assertEquals(new NoteShape("16th", 0), written.get(i).form().shape());
    }
  }

  @Test
  void a_landing_note_in_a_tuplet_is_written_plain() {
    Plan plan = InventedRelays.rotation(4, 2, 2);
    List<NotatedItem> bar =
        Notation.of(
            List.of(written(plan, plan.segments().get(0))),
            List.of(),
            List.of(plan.line().bars().get(2)));
    assertEquals(
        List.of("eighth", "eighth", "quarter", "half"),
        bar.subList(0, 4).stream().map(w -> w.form().shape().type()).toList());
    assertTrue(bar.stream().allMatch(w -> w.item().ratio().isEmpty()));
  }

  @Test
  void notes_of_a_beat_are_under_one_beam_whose_stems_are_long_enough() {
    Line line = Invented.line(16, 4, 90, i -> new Pitch(Step.values()[i % 7], 0, 4 + i % 3));
    BarRow row = row(bars(line));
    List<NotatedItem> written =
        Notation.of(
            List.of(WrittenPassage.plain(new Played(line, 0, 15), Landings.NONE)),
            List.of(),
            row.bars());
    List<StemGroup> groups = StemGroup.of(written, STAFF, row);
    assertEquals(4, groups.size());
    for (StemGroup group : groups) {
      assertEquals(4, group.notes().size());
      for (int i = 0; i < 4; i++) {
        double length = Math.abs(group.end(i) - group.far(i));
        assertTrue(length >= 2 * STAFF.space(), "a stem of " + length);
      }
    }
  }

  @Test
  void time_signatures_are_told_from_the_beats() {
    assertEquals(List.of("4", "4"), TimeSignature.figures(Meter.COMMON));
    assertEquals(List.of("6", "8"), TimeSignature.figures(Meter.of(List.of(6), 8)));
    assertEquals(List.of("3", "8"), TimeSignature.figures(Meter.of(List.of(3), 8)));
    assertEquals(List.of("2", "2"), TimeSignature.figures(Meter.of(List.of(2), 2)));
    assertEquals(List.of("3+2", "8"), TimeSignature.figures(Meter.of(List.of(3, 2), 8)));
  }

  @Test
  void tied_values_have_a_tie_and_one_accidental() {
    Stroke tied =
        new Stroke(
            Position.START,
            List.of(new Pitch(Step.C, 1, 5)),
            List.of(
                new Value(Length.QUARTER, Optional.empty()),
                new Value(Length.ofQuarters(1, 2), Optional.empty())),
            List.of(),
            false,
            false,
            true,
            Set.of(),
            Dynamic.MF,
            Manner.PLAIN);
    List<Mark> marks = engraved(Invented.lineOf(List.of(tied), 90), 0, 0, 0);
    assertEquals(2, count(marks, BLACK_HEAD));
    assertEquals(1, count(marks, SHARP));
  }

  private static List<Mark> engraved(Line line, int first, int last, int fifths) {
    Engraver.EngravedMusic music =
        new Engraver.EngravedMusic(
            List.of(WrittenPassage.plain(new Played(line, first, last), Landings.NONE)),
            List.of(),
            Keys.of(fifths),
            Optional.empty(),
            false);
    return Engraver.marks(music, STAFF, row(bars(line)));
  }

  private static WrittenPassage written(Plan plan, Segment segment) {
    return WrittenPassage.plain(plan.played(segment), Landings.of(plan, segment.player()));
  }

  private static BarRow row(List<Bar> bars) {
    return new BarRow(bars, 60, 40, 8);
  }

  /** All bars in which the line sounds. */
  private static List<Bar> bars(Line line) {
    Bars all = line.bars();
    Span span = line.span();
    List<Bar> bars = new ArrayList<>();
    all.forEach(
        bar -> {
          if (bar.span().overlaps(span)) {
            bars.add(bar);
          }
        });
    return bars;
  }

  private static long count(List<Mark> marks, String sign) {
    return TimelineTest.leaves(marks).stream()
        .filter(mark -> mark instanceof Mark.Lettering words && words.text().equals(sign))
        .count();
  }
}

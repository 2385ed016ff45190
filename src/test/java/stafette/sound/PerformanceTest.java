package stafette.sound;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import stafette.Invented;
import stafette.plan.Brief;
import stafette.plan.Hocket;
import stafette.plan.Pattern;
import stafette.plan.Plan;
import stafette.plan.Segment;
import stafette.score.Line;
import stafette.score.Part;
import stafette.score.Score;
import stafette.score.Stroke;
import stafette.score.Voice;
import stafette.time.Bars;
import stafette.time.Length;
import stafette.time.Meter;
import stafette.time.Position;
import stafette.time.Rational;
import stafette.time.Span;

/** What sounds, and when. */
class PerformanceTest {
  private static final Plan PLAN = InventedRelay.of(256, 3, 32, 1, InventedRelay::scale);
  private static final long STROKE_MICROS = 125_000;

  @Test
  void an_excerpt_sounds_like_the_same_place_in_the_whole() {
    Performance whole = InventedRelay.whole(PLAN, Timing.ENSEMBLE);
    Span round = Excerpts.round(PLAN, PLAN.handoffs().get(3));
    Performance excerpt = Performance.of(PLAN, round, InventedRelay.hearing(PLAN, Timing.ENSEMBLE));
    long start = PLAN.line().micros(round.start());
    List<Note> there =
        whole.notes().stream()
            .filter(note -> excerpt.notes().contains(note.later(-start)))
            .toList();
    assertTrue(excerpt.notes().size() > 30, excerpt.notes().toString());
    assertTrue(there.size() >= excerpt.notes().size() - 1, "but for a first one that came early");
    assertEquals(5.125, excerpt.lengthMicros() / 1e6, 0.5);
    assertTrue(round.contains(PLAN.line().stroke(127).onset()));
  }

  @Test
  void only_those_sound_who_are_to_be_heard() {
    Hearing all = InventedRelay.hearing(PLAN, Timing.ENSEMBLE);
    Hearing second = new Hearing(all.speed(), all.timing(), all.seats(), Set.of(1), all.rest());
    Performance solo = Performance.of(PLAN, Excerpts.whole(PLAN), second);
    assertEquals(
        InventedRelay.whole(PLAN, Timing.ENSEMBLE).notes().stream()
            .filter(note -> note.voice() == 1)
            .toList(),
        solo.notes());
    assertTrue(!solo.notes().isEmpty());
  }

  @Test
  void at_half_speed_everything_lasts_twice_as_long_but_players_are_no_further_apart() {
    Hearing all = InventedRelay.hearing(PLAN, Timing.ENSEMBLE);
    Hearing half =
        new Hearing(Rational.of(1, 2), all.timing(), all.seats(), all.heard(), all.rest());
    Performance slow = Performance.of(PLAN, Excerpts.whole(PLAN), half);
    Performance usual = InventedRelay.whole(PLAN, Timing.ENSEMBLE);
    assertEquals(2 * usual.lengthMicros(), slow.lengthMicros());
    Note before = usual.notes().get(20);
    Note after = slow.notes().get(20);
    assertEquals(20 * STROKE_MICROS, after.fromMicros() - before.fromMicros());
  }

  @Test
  void a_cursor_finds_the_second_at_any_speed() {
    Hearing all = InventedRelay.hearing(PLAN, Timing.ENSEMBLE);
    Hearing half =
        new Hearing(Rational.of(1, 2), all.timing(), all.seats(), all.heard(), all.rest());
    Performance slow = Performance.of(PLAN, Excerpts.whole(PLAN), half);
    assertEquals(1, slow.lineSeconds(2_000_000).orElseThrow(), 1e-6);
    assertEquals(2_000_000, slow.micros(1));
    assertTrue(slow.lineSeconds(slow.lengthMicros()).isEmpty());
    Performance round = Performance.of(PLAN, Excerpts.round(PLAN, PLAN.handoffs().get(0)), all);
    assertEquals(1, round.lineSeconds(round.micros(1)).orElseThrow(), 1e-6);
  }

  @Test
  void a_comparison_has_one_player_then_no_overlaps_then_the_plan() {
    Performance three =
        Comparison.of(PLAN, Excerpts.whole(PLAN), InventedRelay.hearing(PLAN, Timing.ENSEMBLE));
    long each = 256 * STROKE_MICROS;
    assertEquals(3, three.takes().size());
    assertEquals(3 * each + 2 * 1_500_000, three.lengthMicros());
    List<Note> first = three.notes().stream().filter(note -> note.toMicros() < each).toList();
    assertEquals(256, first.size());
    assertTrue(first.stream().allMatch(note -> note.voice() == 0));
    long second = each + 1_500_000;
    assertEquals(256, count(three, second, second + each));
    assertEquals(256 + 7, count(three, 2 * second, 2 * second + each));
    assertTrue(three.lineSeconds(each + 1).isEmpty());
    assertEquals(0, three.lineSeconds(second).orElseThrow(), 1e-6);
  }

  private static long count(Performance performance, long from, long to) {
    return performance.notes().stream()
        .filter(note -> note.fromMicros() >= from - 100_000 && note.fromMicros() < to)
        .count();
  }

  @Test
  void without_overlaps_a_hocket_pair_keeps_its_own_strokes() {
    Line line = Invented.line(96, 4, 120, InventedRelay::scale);
    Plan plan =
        new Plan(
            new Brief(
                List.of(line), InventedRelay.players(3), Invented.rules().with(Hocket.STROKE)),
            List.of(
                new Segment(0, 0, 0, 32),
                new Segment(0, 1, 0, 32, 64, Pattern.ODD),
                new Segment(0, 2, 0, 32, 64, Pattern.EVEN),
                new Segment(0, 0, 64, 95)));
    Plan apart = Comparison.withoutOverlaps(plan);
    assertEquals(33, apart.turns().get(1).first());
    assertEquals(
        InventedRelay.whole(plan, Timing.WRITTEN).notes().stream()
            .filter(note -> note.voice() == 2)
            .toList(),
        InventedRelay.whole(apart, Timing.WRITTEN).notes().stream()
            .filter(note -> note.voice() == 2)
            .toList());
    assertEquals(96, InventedRelay.whole(apart, Timing.WRITTEN).notes().size());
  }

  @Test
  void the_rest_of_the_score_sounds_softly_and_without_what_the_plan_plays() {
    Stroke line = Invented.stroke(Position.START, Length.QUARTER, InventedRelay.scale(0));
    Stroke chord = line.withTones(List.of(Invented.A4, InventedRelay.scale(0)));
    Stroke other =
        Invented.stroke(Position.ofQuarters(2, 1), Length.QUARTER, InventedRelay.scale(4));
    Score score =
        new Score(
            Optional.empty(),
            List.of(
                part("P1", "Piano", chord),
                part("P2", "Pipe", line, other),
                part("P3", "Bell", line)),
            Bars.regular(Meter.COMMON, 1),
            PLAN.line().tempo(),
            true);
    Performance heard = withRest(InventedRelay.piperOf("P2", List.of(line, tail())), score);
    assertEquals(List.of(69), keys(heard, 1), "the chord's other tone");
    assertEquals(List.of(79), keys(heard, 2), "the player has the line already");
    assertEquals(List.of(72), keys(heard, 3), "somebody else doubles it");
    assertEquals(
        1_000_000,
        heard.notes().stream().filter(n -> n.voice() == 2).findFirst().get().fromMicros());
    assertTrue(heard.voices().get(1).volume() < heard.voices().get(0).volume());
    assertEquals("Bell", heard.voices().get(3).name());
  }

  private static Part part(String id, String name, Stroke... strokes) {
    return new Part(id, name, List.of(), List.of(new Voice(1, "1", List.of(strokes))));
  }

  private static Performance withRest(Plan plan, Score score) {
    Hearing hearing =
        new Hearing(
            Rational.ONE,
            Timing.WRITTEN,
            Map.of(),
            Set.of(0),
            Optional.of(new RestOfScore(score, Map.of())));
    return Performance.of(plan, Excerpts.whole(plan), hearing);
  }

  private static List<Integer> keys(Performance performance, int voice) {
    return performance.notes().stream()
        .filter(note -> note.voice() == voice)
        .map(Note::key)
        .toList();
  }

  private static Stroke tail() {
    return Invented.stroke(Position.ofQuarters(3, 1), Length.QUARTER, Invented.A4);
  }

  @Test
  void seats_place_the_players_and_the_roster_does_where_there_are_none() {
    Hearing all = InventedRelay.hearing(PLAN, Timing.ENSEMBLE);
    assertEquals(List.of(20, 64, 108), pans(all));
    assertEquals(List.of(108, 42, 64), pans(InventedRelay.seated(all, 6, -3)));
  }

  private static List<Integer> pans(Hearing hearing) {
    return Performance.of(PLAN, Excerpts.whole(PLAN), hearing).voices().stream()
        .map(stafette.sound.SoundingVoice::pan)
        .toList();
  }

  @Test
  void a_speed_is_above_zero_and_a_note_has_midi_figures() {
    Hearing all = InventedRelay.hearing(PLAN, Timing.ENSEMBLE);
    assertThrows(
        IllegalArgumentException.class,
        () -> new Hearing(Rational.ZERO, all.timing(), all.seats(), all.heard(), all.rest()));
    assertThrows(IllegalArgumentException.class, () -> new Note(0, 128, 80, 0, 1));
    assertThrows(IllegalArgumentException.class, () -> new Note(0, 60, 80, 1, 1));
  }
}

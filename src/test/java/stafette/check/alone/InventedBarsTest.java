package stafette.check.alone;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import stafette.Invented;
import stafette.limits.Assurance;
import stafette.limits.Instrument;
import stafette.limits.Technique;
import stafette.score.Dynamic;
import stafette.score.Line;
import stafette.score.Manner;
import stafette.score.Pitch;
import stafette.score.Step;
import stafette.score.Stroke;
import stafette.score.Value;
import stafette.tables.LimitTables;
import stafette.time.Length;
import stafette.time.Position;

/** A few bars for each rule of the judge, on instruments of the tables (common practice). */
class InventedBarsTest {
  private static final Pitch B4 = new Pitch(Step.B, 0, 4);

  private static Instrument instrument(String name) {
    return LimitTables.builtIn().catalogue().find(name).orElseThrow();
  }

  private static LineVerdict verdict(String name, Line line) {
    Instrument instrument = instrument(name);
    List<Technique> expected =
        instrument.techniques().stream().filter(Technique::expected).toList();
    return LineTrial.of(line, instrument, Assurance.DEFAULT, expected);
  }

  /** Strokes at these sixteenths, each a sixteenth long. */
  private static Line at(int quarters, int... sixteenths) {
    List<Stroke> strokes = new ArrayList<>();
    for (int at : sixteenths) {
      strokes.add(
          Invented.stroke(Position.ofQuarters(at, 4), Length.ofQuarters(1, 4), Invented.A4));
    }
    return Invented.lineOf(strokes, quarters);
  }

  private static int[] repeated(int times, int length, int... places) {
    int[] all = new int[times * places.length];
    for (int i = 0; i < all.length; i++) {
      all[i] = i / places.length * length + places[i % places.length];
    }
    return all;
  }

  /** Sixteenths up and down a second, some slurred from the one before. */
  private static Line articulated(int quarters, boolean... slurredInBeat) {
    List<Stroke> strokes = new ArrayList<>();
    for (int i = 0; i < 64; i++) {
      strokes.add(
          new Stroke(
              Position.ofQuarters(i, 4),
              List.of(i % 2 == 0 ? Invented.A4 : B4),
              List.of(new Value(Length.ofQuarters(1, 4), Optional.empty())),
              List.of(),
              slurredInBeat[i % 4],
              slurredInBeat[(i + 1) % 4],
              true,
              Set.of(),
              Dynamic.MF,
              Manner.PLAIN));
    }
    return Invented.lineOf(strokes, quarters);
  }

  @Test
  void a_close_pair_is_nothing_and_the_same_rate_going_on_is_for_the_few() {
    assertEquals(
        Ease.COMFORTABLE, verdict("clarinet in B-flat", at(150, repeated(8, 8, 0, 1))).ease());
    assertEquals(Ease.FOR_THE_FEW, verdict("clarinet in B-flat", Invented.line(1, 4, 150)).ease());
  }

  @Test
  void turns_of_three_gaps_go_faster_than_a_line_does() {
    LineVerdict turns = verdict("violin", at(200, repeated(8, 16, 0, 1, 2, 3)));
    LineVerdict line = verdict("violin", Invented.line(8, 4, 200));
    assertTrue(turns.share() > line.share() + 20, turns.share() + " and " + line.share());
    assertEquals(turns.use(), line.use() / 1.1, 0.02, "three gaps may go 1.1 times as fast");
  }

  @Test
  void slur_two_tongue_two_is_the_way_out_for_a_single_tongue() {
    LineVerdict tongued =
        verdict("clarinet in B-flat", articulated(160, false, false, false, false));
    LineVerdict mixed = verdict("clarinet in B-flat", articulated(160, false, true, false, false));
    LineVerdict pairs = verdict("clarinet in B-flat", articulated(160, false, true, false, true));
    assertEquals(Ease.BEYOND, tongued.ease());
    assertTrue(mixed.share() > 16, "three strokes of the tongue in a beat: " + mixed.share());
    assertTrue(pairs.share() > mixed.share());
    assertEquals(Ease.COMFORTABLE, pairs.ease());
  }

  @Test
  void dotted_figures_are_what_timpani_play_every_week() {
    assertEquals(Ease.COMFORTABLE, verdict("timpani", dotted(132)).ease());
  }

  private static Line dotted(int quarters) {
    List<Stroke> strokes = new ArrayList<>();
    for (int at : repeated(16, 4, 0, 3)) {
      strokes.add(
          Invented.stroke(
              Position.ofQuarters(at, 4), Length.ofQuarters(1, 4), new Pitch(Step.A, 0, 2)));
    }
    return Invented.lineOf(strokes, quarters);
  }

  @Test
  void slurred_notes_between_bowed_ones_are_slurred_and_a_tremolo_goes_on_when_the_pitch_changes() {
    LineVerdict mixed = verdict("violin", articulated(140, false, true, false, false));
    assertTrue(mixed.share() >= 84, "" + mixed.share());
    Line tremolo = Invented.line(64, 4, 165, i -> i / 16 % 2 == 0 ? Invented.A4 : B4);
    Line zigzag = Invented.line(64, 4, 165, i -> i % 2 == 0 ? Invented.A4 : B4);
    assertTrue(verdict("violin", tremolo).share() > verdict("violin", zigzag).share());
  }

  @Test
  void a_line_at_10_a_second_stays_beyond_a_single_tongue_and_says_what_would_help() {
    LineVerdict clarinet = verdict("clarinet in B-flat", Invented.line(8, 6, 104));
    assertEquals(Ease.BEYOND, clarinet.ease());
    assertEquals("double tonguing", clarinet.helping().orElseThrow().technique().name());
    assertTrue(clarinet.helping().orElseThrow().share() > 20);
  }

  @Property(tries = 60)
  void what_more_of_100_manage_fewer_of_100_manage_too(
      @ForAll long seed, @ForAll @IntRange(min = 2, max = 97) int share) {
    Random random = new Random(seed);
    Line line = Invented.line(40, 4, 80 + random.nextInt(120), i -> pitch(random.nextInt(3)));
    for (String name : List.of("violin", "flute", "piano", "timpani", "clarinet in B-flat")) {
      Instrument own = instrument(name);
      List<Technique> expected = own.techniques().stream().filter(Technique::expected).toList();
      boolean most = LineTrial.manages(line, own, new Assurance(share + 1), expected).orElse(false);
      boolean fewer = LineTrial.manages(line, own, new Assurance(share), expected).orElse(true);
      assertTrue(fewer || !most, name + " at " + share);
    }
  }

  private static Pitch pitch(int step) {
    return new Pitch(Step.values()[step], 0, 5);
  }

  @Property(tries = 30)
  void a_faster_line_is_managed_by_no_more_where_nobody_breathes(
      @ForAll @IntRange(min = 80, max = 200) int quarters) {
    for (String name : List.of("violin", "piano", "timpani")) {
      double slower = verdict(name, dotted(quarters)).share();
      assertTrue(verdict(name, dotted(quarters + 8)).share() <= slower + 0.1, name);
      double even = verdict(name, at(quarters, repeated(16, 4, 0, 1, 2, 3))).share();
      assertTrue(
          verdict(name, at(quarters + 8, repeated(16, 4, 0, 1, 2, 3))).share() <= even + 0.1, name);
    }
  }

  @Test
  void a_verdict_is_the_same_a_third_higher_in_the_same_register() {
    Line low = Invented.line(32, 4, 140, i -> new Pitch(i % 2 == 0 ? Step.C : Step.D, 0, 5));
    Line high = Invented.line(32, 4, 140, i -> new Pitch(i % 2 == 0 ? Step.E : Step.F, 1, 5));
    for (String name : List.of("violin", "flute", "clarinet in B-flat")) {
      assertEquals(verdict(name, low).share(), verdict(name, high).share(), 1e-9, name);
    }
  }
}

package stafette.check;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import stafette.Invented;
import stafette.limits.Instrument;
import stafette.plan.Brief;
import stafette.plan.Handoff;
import stafette.plan.Pattern;
import stafette.plan.Plan;
import stafette.plan.Player;
import stafette.plan.Rules;
import stafette.plan.Segment;
import stafette.plan.Turn;
import stafette.plan.Weights;
import stafette.score.Line;
import stafette.score.Stroke;
import stafette.time.Bars;
import stafette.time.Length;
import stafette.time.Meter;
import stafette.time.Position;

/** Costs explained: the parts make the whole, and the words say what was paid for. */
class HandoffReasonsTest {
  private static final Instrument PIPE = Invented.instrument("pipe");
  private static final Instrument REED = Invented.instrument("reed");

  @Property(tries = 60)
  void fast_notes_and_tiredness_make_the_strain_and_all_parts_the_total(@ForAll long seed) {
    Plan plan = RandomPlans.any(seed);
    Cost cost = Costing.of(plan);
    int sum = cost.players() + cost.idle() + cost.hockets();
    for (int i = 0; i < plan.segments().size(); i++) {
      SegmentCost parts = cost.segments().get(i);
      assertEquals(parts.strain(), Costing.effort(plan.brief(), plan.segments().get(i)).points());
      sum += parts.strain() + parts.shortTurn() + parts.register();
    }
    for (HandoffCost parts : cost.handoffs()) {
      sum += parts.handoff() + parts.entry() + parts.landing() + parts.phrase();
      sum += parts.overlap() + parts.blend();
    }
    assertEquals(cost.total(), sum);
  }

  @Test
  void entries_and_landings_are_told_by_their_place_in_the_bar() {
    assertEquals("enters on the first beat of the bar", at(4, 16, 16).entry().toString());
    assertEquals("enters on the beat", at(4, 8, 8).entry().toString());
    assertEquals("enters on half the beat", at(4, 10, 10).entry().toString());
    assertEquals("enters off the beat", at(4, 11, 11).entry().toString());
    assertEquals("lands off the beat", at(4, 11, 11).landing().toString());
    assertEquals("lands on the beat", at(4, 8, 8).landing().toString());
  }

  @Test
  void in_compound_time_a_third_of_the_beat_is_no_half() {
    Line plain = Invented.line(2, 2, 120);
    Line gigue =
        new Line(
            plain.source(),
            plain.strokes(),
            IntStream.range(0, plain.count()).mapToObj(j -> 0).toList(),
            Bars.regular(Meter.of(List.of(6), 8), 3),
            plain.tempo());
    assertEquals(
        "enters on a third of the beat",
        reasons(brief(gigue, Invented.WEIGHTS), 4, 6).entry().toString());
    assertEquals(
        "lands on the first beat of the bar",
        reasons(brief(gigue, Invented.WEIGHTS), 4, 6).landing().toString());
  }

  @Test
  void the_overlap_is_told_beside_what_was_aimed_at() {
    assertEquals("shares the landing note alone", at(4, 8, 8).overlap().toString());
    assertEquals(
        "2 notes more shared than the landing note alone", at(4, 6, 8).overlap().toString());
    Weights three = withTarget(3);
    Brief brief = brief(Invented.line(2, 4, 120), three);
    assertEquals("shares the 3 aimed at", reasons(brief, 6, 8).overlap().toString());
    assertEquals(
        "1 note fewer shared than the 3 aimed at", reasons(brief, 7, 8).overlap().toString());
  }

  @Test
  void cover_is_told_with_what_it_takes_off() {
    Line plain = Invented.line(2, 4, 120);
    List<Integer> cover = IntStream.range(0, plain.count()).mapToObj(j -> j == 16 ? 9 : 0).toList();
    Line covered = new Line(plain.source(), plain.strokes(), cover, plain.bars(), plain.tempo());
    Brief brief = brief(covered, Invented.WEIGHTS);
    assertEquals(
        "12 less 8: attacks of other parts cover it", reasons(brief, 16, 16).handoff().toString());
    assertEquals("nothing covers it", reasons(brief, 8, 8).handoff().toString());
  }

  @Test
  void the_blend_is_told_by_instruments_and_a_difference_in_level_that_is_paid_for() {
    assertEquals("pipe to reed", at(4, 8, 8).blend().toString());
    Brief loud =
        Invented.brief(
            Invented.line(2, 4, 120),
            Invented.player("One", PIPE, 10, 7, 20, 8),
            Invented.player("Two", louder(REED, 6), 10, 7, 20, 8));
    assertEquals("pipe to reed, 6.0 dB louder", reasons(loud, 8, 8).blend().toString());
  }

  @Test
  void of_a_hocket_pair_the_two_that_blend_worst_are_told_of() {
    Brief brief = brief(Invented.line(2, 4, 120), Invented.WEIGHTS);
    Turn pair =
        new Turn(
            List.of(
                new Segment(0, 0, 0, 0, 16, Pattern.ODD),
                new Segment(0, 1, 0, 0, 16, Pattern.EVEN)));
    Handoff handoff = new Handoff(pair, turn(new Segment(0, 0, 16, 31)));
    assertEquals("reed to pipe", HandoffReasons.of(brief, handoff).blend().toString());
    assertEquals(10, Costing.handoff(brief, handoff).blend());
  }

  @Test
  void a_handoff_over_a_rest_is_told_to_be_free() {
    List<Stroke> strokes =
        IntStream.range(0, 8)
            .mapToObj(
                i ->
                    Invented.stroke(
                        Position.ofQuarters(i < 4 ? i : i + 8, 4),
                        Length.ofQuarters(1, 4),
                        Invented.A4))
            .toList();
    HandoffReasons why = reasons(brief(Invented.lineOf(strokes, 120), Invented.WEIGHTS), 4, 3);
    assertEquals("after a rest of the line, which costs nothing", why.handoff().toString());
    assertEquals("nothing shared", why.overlap().toString());
  }

  private static HandoffReasons at(int perBeat, int entry, int landing) {
    return reasons(brief(Invented.line(2, perBeat, 120), Invented.WEIGHTS), entry, landing);
  }

  private static HandoffReasons reasons(Brief brief, int entry, int landing) {
    return HandoffReasons.of(
        brief,
        new Handoff(
            turn(new Segment(0, 0, 0, landing)),
            turn(new Segment(1, 0, entry, brief.line().count() - 1))));
  }

  private static Turn turn(Segment segment) {
    return new Turn(List.of(segment));
  }

  private static Brief brief(Line line, Weights weights) {
    Player one = Invented.player("One", PIPE, 10, 7, 20, 8);
    Player two = Invented.player("Two", REED, 10, 7, 20, 8);
    Rules rules = Invented.rules();
    return new Brief(
        line,
        List.of(one, two),
        new Rules(
            rules.assurance(), rules.overlap(), rules.readySeconds(), rules.favour(), weights));
  }

  private static Weights withTarget(int strokes) {
    Weights w = Invented.WEIGHTS;
    return new Weights(
        w.handoff(),
        w.coverMost(),
        w.entry(),
        w.landing(),
        w.overlap(),
        Map.of("pipe", strokes),
        w.strain(),
        w.knee(),
        w.spent(),
        w.tiredKnee(),
        w.breathKnee(),
        w.phrase(),
        w.shortTurn(),
        w.decibel(),
        w.decibelFree(),
        w.register(),
        w.hocket(),
        w.player(),
        w.used(),
        w.idle(),
        w.rotation(),
        w.patternChange(),
        w.blend(),
        w.blendOther());
  }

  private static Instrument louder(Instrument of, double decibel) {
    return new Instrument(
        of.name(),
        of.aliases(),
        of.family(),
        of.range(),
        of.comfortable(),
        of.transposition(),
        of.clef(),
        of.levelDecibel() + decibel,
        of.breath(),
        of.midiProgram(),
        of.techniques(),
        of.source());
  }
}

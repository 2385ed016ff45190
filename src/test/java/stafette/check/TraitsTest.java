package stafette.check;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import stafette.Invented;
import stafette.limits.Instrument;
import stafette.plan.Brief;
import stafette.plan.Plan;
import stafette.plan.Segment;
import stafette.words.Sentence;

class TraitsTest {
  private static final Instrument FLUTE = Invented.instrument("flute");
  private static final Instrument CLARINET = Invented.instrument("clarinet");

  private final Brief brief =
      Invented.brief(
          Invented.line(8, 4, 120),
          Invented.player("Flute 1", FLUTE, 10, 9, 20, 8),
          Invented.player("Flute 2", FLUTE, 10, 9, 20, 8),
          Invented.player("Clarinet 1", CLARINET, 9, 8.5, 20, 8));
  private final Plan twoFlutes = plan(new Segment(0, 0, 0, 64), new Segment(1, 0, 64, 127));
  private final Plan withClarinet =
      plan(new Segment(0, 0, 0, 32), new Segment(2, 0, 32, 96), new Segment(0, 0, 96, 127));

  private Plan plan(Segment... segments) {
    return new Plan(brief, List.of(segments));
  }

  private Traits traits(Plan plan) {
    return Traits.of(plan, brief.rules());
  }

  /** Eight strokes a second: 0.8 of a peak of 10, 0.889 of a peak of 9. */
  @Test
  void strain_is_told_by_its_highest_and_its_mean_and_where_it_is_tightest() {
    Traits traits = traits(withClarinet);
    assertEquals(2, traits.handoffs());
    assertEquals(8.0 / 9, traits.highestStrain(), 1e-5);
    assertEquals((33 * 0.8 + 65 * 8.0 / 9 + 32 * 0.8) / 130, traits.meanStrain(), 1e-5);
    assertEquals("Clarinet 1", traits.tightest().part());
    assertEquals("bar 3, beat 1", traits.tightest().at().toString());
    assertEquals(20, traits.blend());
    assertEquals(2, traits.playersUsed());
    assertEquals(
        List.of(
            new Traits.TurnCounts("Flute 1", 2),
            new Traits.TurnCounts("Flute 2", 0),
            new Traits.TurnCounts("Clarinet 1", 1)),
        traits.turns());
  }

  @Test
  void what_differs_is_told_in_words() {
    List<String> words =
        traits(withClarinet).against(traits(twoFlutes)).stream().map(Sentence::toString).toList();
    assertEquals("1 handoff more", words.get(0));
    assertEquals("Flute 2 not needed", words.get(1));
    assertEquals("Clarinet 1 plays too", words.get(2));
    assertEquals("highest strain 89 % instead of 80 %", words.get(3));
    assertEquals("mean strain 85 % instead of 80 %", words.get(4));
    assertEquals("instruments 20 points further apart", words.get(5));
  }

  @Test
  void the_same_figures_leave_the_places_to_hand_over() {
    Plan later = plan(new Segment(0, 0, 0, 72), new Segment(1, 0, 72, 127));
    assertEquals(
        "[other places to hand over]", traits(later).against(traits(twoFlutes)).toString());
  }
}

package stafette.desktop.state;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stafette.check.JudgedPlan;
import stafette.plan.Favour;
import stafette.plan.Plan;
import stafette.plan.PlanEdit;
import stafette.words.Refusal;
import stafette.work.OpenLine;
import stafette.work.SideBySide;

/** Other plans beside the one on the desk. */
class ComparingTest {
  @TempDir private Path folder = Path.of("");
  private Opened desk = Opened.nothing();

  @BeforeEach
  void planned() throws Refusal {
    desk = Opened.lanternRun(folder);
  }

  private SideBySide compared() {
    desk.session().compare();
    desk.goOn();
    assertEquals(List.of(), desk.refused());
    return desk.plans().orElseThrow();
  }

  @Test
  void all_else_that_can_be_favoured_is_searched_and_told() {
    SideBySide plans = compared();
    assertFalse(plans.columns().isEmpty());
    assertEquals(
        Arrays.stream(Favour.values()).filter(favour -> favour != Favour.BALANCE).toList(),
        desk.searched());
    assertEquals(desk.plan(), plans.main().plan().orElseThrow().plan());
  }

  @Test
  void it_ends_when_told_to_with_what_it_has() {
    desk.session().compare();
    desk.session().enough();
    desk.goOn();
    SideBySide plans = desk.plans().orElseThrow();
    assertEquals(List.of(), desk.searched(), "no search begins any more");
    assertEquals(List.of(), plans.columns());
    assertTrue(plans.traits().isPresent());
  }

  @Test
  void what_was_found_before_it_was_told_to_end_stays() {
    desk.atSearchFor(Favour.BLEND, desk.session()::enough);
    SideBySide plans = compared();
    assertEquals(List.of(Favour.HANDOFFS, Favour.STRAIN, Favour.BLEND), desk.searched());
    assertFalse(plans.columns().isEmpty());
    assertTrue(plans.columns().stream().allMatch(one -> one.favour() != Favour.REGULAR));
  }

  @Test
  void a_change_of_the_desk_ends_it_unheard() {
    desk.session().compare();
    desk.session().remove("Clarinet 1");
    desk.goOn();
    assertTrue(desk.plans().isEmpty());
  }

  @Test
  void it_plans_with_measured_limits_locks_and_seats_of_the_desk() {
    desk.session().measured("Flute 2", "double tonguing", new OpenLine.Measured(10.9, 9.6, 16));
    desk.session().sit("Flute 1", Optional.of(new stafette.plan.Seat(-2, 3)));
    desk.planned();
    desk.session().byHand().lockSegment(0);
    SideBySide plans = compared();
    assertFalse(plans.columns().isEmpty());
    for (SideBySide.Column column : plans.columns()) {
      Plan plan = column.plan().plan();
      assertEquals(desk.line().brief().players(), plan.brief().players());
      assertEquals(desk.session().desk().locks(), plan.brief().rules().locks());
      assertTrue(plan.segments().contains(desk.plan().segments().get(0)));
      assertEquals(desk.line().seats(), column.outcome().seats());
    }
  }

  @Test
  void a_measured_limit_that_shuts_a_player_out_does_so_in_other_plans_too() {
    assertTrue(desk.plan().segmentsOf(0).size() > 0);
    desk.session().measured("Flute 1", "double tonguing", new OpenLine.Measured(3, 2, 6));
    desk.session().measured("Flute 1", "triple tonguing", new OpenLine.Measured(3, 2, 6));
    desk.session().measured("Flute 1", "single tonguing", new OpenLine.Measured(3, 2, 6));
    for (SideBySide.Column column : compared().columns()) {
      assertEquals(List.of(), column.plan().plan().segmentsOf(0));
    }
  }

  @Test
  void beside_a_plan_made_by_hand_stands_the_best_of_its_kind_too() {
    desk.session().byHand().edit(new PlanEdit.Join(0));
    SideBySide plans = compared();
    assertEquals(Favour.BALANCE, desk.searched().get(0));
    assertEquals(Favour.BALANCE, plans.columns().get(0).favour());
    assertTrue(plans.columns().get(0).plan().verdict().holds());
  }

  @Test
  void an_alternative_is_taken_in_one_step() {
    Plan before = desk.plan();
    SideBySide plans = compared();
    desk.session().take(plans.columns().get(0).outcome());
    assertEquals(plans.columns().get(0).plan().plan().segments(), desk.plan().segments());
    assertEquals(Favour.BALANCE, desk.line().brief().rules().favour());
    desk.session().undo();
    assertEquals(before, desk.plan());
  }

  @Test
  void an_alternative_of_a_player_who_has_gone_is_refused_in_words() {
    SideBySide plans = compared();
    SideBySide.Column column = plans.columns().get(0);
    desk.session().remove(column.plan().plan().playing().get(0));
    Optional<JudgedPlan> before = desk.session().desk().plan();
    desk.session().take(column.outcome());
    assertEquals(before, desk.session().desk().plan());
    assertTrue(desk.refused().get(0).contains("other players"), desk.refused().toString());
  }

  @Test
  void the_plan_compared_with_is_taken_back_with_its_proof() {
    SideBySide plans = compared();
    desk.session().take(plans.columns().get(0).outcome());
    assertFalse(desk.session().desk().isOptimal());
    desk.session().take(plans.main());
    assertTrue(desk.session().desk().isOptimal());
  }
}

package stafette.desktop.state;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stafette.plan.Handoff;
import stafette.plan.PlanEdit;
import stafette.words.Refusal;

/** A plan, its bound and the word "optimal" belong together: none outlives the others. */
class ProofTest {
  @TempDir private Path folder = Path.of("");
  private Opened desk = Opened.nothing();

  @BeforeEach
  void plan() throws Refusal {
    desk = Opened.lanternRun(folder);
    assertTrue(now().isOptimal());
  }

  private Desk now() {
    return desk.session().desk();
  }

  private void moveTheFirstHandoff() {
    Handoff first = desk.plan().handoffs().get(0);
    int stroke = first.enters().first() + 6;
    desk.session().byHand().edit(new PlanEdit.Move(0, stroke, stroke));
  }

  @Test
  void a_plan_changed_by_hand_is_not_called_optimal_until_the_change_is_taken_back() {
    Desk found = now();
    moveTheFirstHandoff();
    assertNotEquals(found.plan(), now().plan());
    assertFalse(now().isOptimal());
    assertEquals(Optional.empty(), now().result());
    desk.session().undo();
    assertTrue(now().isOptimal());
  }

  @Test
  void no_desk_holds_the_proof_of_another_plan() {
    Desk found = now();
    moveTheFirstHandoff();
    Desk changed = now();
    Desk mixed =
        new Desk(
            changed.score(),
            changed.line(),
            changed.plan(),
            found.found(),
            changed.writing(),
            changed.kept());
    assertFalse(mixed.isOptimal());
    assertEquals(Optional.empty(), mixed.result());
  }

  @Test
  void a_plan_changed_by_hand_is_kept_without_a_proof() throws Exception {
    Desk found = now();
    moveTheFirstHandoff();
    Path file = folder.resolve("changed.json");
    desk.session().writing().savePlan(file);
    assertFalse(Files.readString(file).contains("\"result\": \"optimal\""));
    assertFalse(
        now().line().orElseThrow().outcome(now().plan(), found.found()).result().isBest(),
        "nor if somebody hands an older proof on");
    assertFalse(reopened(file).isOptimal());
  }

  private Desk reopened(Path file) {
    desk.session().open(file);
    return now();
  }
}

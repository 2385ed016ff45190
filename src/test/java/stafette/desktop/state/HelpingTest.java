package stafette.desktop.state;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stafette.plan.SourceTreatment;
import stafette.time.BeatUnit;
import stafette.time.Rational;
import stafette.time.TempoMark;
import stafette.words.Refusal;
import stafette.work.Change;
import stafette.work.OpenLine;
import stafette.work.Remedy;

/** What would help where there is no plan, done on the desk, without a window. */
class HelpingTest {
  @TempDir private Path folder = Path.of("");

  /** Two players who can't play the line at a tempo, and other things that must stay as asked. */
  private Opened unplayable(String first, String second, long perMinute) throws Refusal {
    Opened desk =
        Opened.on(
            folder,
            "lantern-run.musicxml",
            Opened.bars("Piano", 1, "5-8", Optional.empty()),
            first + ", " + second);
    desk.session().tempo(new TempoMark(BeatUnit.QUARTER, Rational.of(perMinute)), true);
    desk.session().measured(first, "single tonguing", new OpenLine.Measured(8, 6, 60));
    desk.session().free(second, true);
    desk.session().rules().writing(now -> now.with(SourceTreatment.CUE));
    desk.planned();
    assertFalse(desk.session().desk().remedies().isEmpty());
    return desk;
  }

  @Test
  void each_remedy_is_one_step_to_its_plan_and_back() throws Refusal {
    Opened desk = unplayable("Clarinet 1", "Clarinet 2", 90);
    Session session = desk.session();
    Desk before = session.desk();
    OpenLine asked = desk.line();
    Set<Class<?>> kinds = new HashSet<>();
    for (Remedy remedy : before.remedies()) {
      if (Helping.canTake(remedy, before)) {
        kinds.add(remedy.change().getClass());
        new Helping(session).take(remedy);
        assertTrue(desk.holds(), remedy.change().toString());
        assertEquals(remedy.plan().plan().segments(), desk.plan().segments());
        assertEquals(
            remedy.plan().verdict().segments(),
            session.desk().plan().orElseThrow().verdict().segments());
        assertEquals(desk.line().brief(), desk.plan().brief());
        assertEquals(asked.measured(), desk.line().measured());
        assertTrue(desk.line().isFreed("Clarinet 2"));
        assertEquals(SourceTreatment.CUE, session.desk().writing().source());
        assertTrue(session.desk().preventing().isEmpty());
        session.undo();
        assertEquals(before, session.desk());
        session.redo();
        assertTrue(desk.holds());
        session.undo();
      }
    }
    assertTrue(
        kinds.containsAll(
            Set.of(
                Change.Tempo.class,
                Change.AllowedTechnique.class,
                Change.Turns.class,
                Change.Players.class)),
        kinds.toString());
    assertEquals(List.of(), desk.refused());
  }

  @Test
  void a_search_goes_on_from_what_a_remedy_changed() throws Refusal {
    Opened desk = unplayable("Flute 1", "Flute 2", 200);
    Remedy slower =
        desk.session().desk().remedies().stream()
            .filter(remedy -> remedy.change() instanceof Change.Tempo)
            .findFirst()
            .orElseThrow();
    new Helping(desk.session()).take(slower);
    int cost = slower.plan().verdict().cost().total();
    desk.planned();
    assertTrue(desk.holds());
    assertTrue(desk.session().desk().plan().orElseThrow().verdict().cost().total() <= cost);
  }

  @Test
  void notes_left_out_are_no_step() throws Refusal {
    Opened desk = unplayable("Flute 1", "Flute 2", 200);
    Desk before = desk.session().desk();
    Remedy thinned =
        before.remedies().stream()
            .filter(remedy -> remedy.change() instanceof Change.Thinned)
            .findFirst()
            .orElseThrow();
    assertFalse(Helping.canTake(thinned, before));
    new Helping(desk.session()).take(thinned);
    assertEquals(before, desk.session().desk());
  }
}

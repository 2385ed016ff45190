package stafette.desktop.state;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stafette.check.JudgedPlan;
import stafette.plan.PlanEdit;
import stafette.time.Rational;
import stafette.words.Refusal;
import stafette.work.ExportPlan;

/** Writing beside the window while the desk is worked on. */
class WritingTest {
  @TempDir private Path folder = Path.of("");

  @Test
  void what_is_written_is_told_though_the_desk_has_changed_and_the_change_is_not_taken_as_written()
      throws Refusal {
    Opened desk = Opened.lanternRun(folder.resolve("state"));
    Session session = desk.session();
    session.byHand().split(0, 20);
    Desk then = session.desk();
    Path out = folder.resolve("out.musicxml");
    List<Path> told = new ArrayList<>();
    session.toFile(
        going -> session.writing().write(then, out).file(),
        file -> {
          told.add(file);
          note(session, then, file);
        });
    session.byHand().edit(new PlanEdit.Join(0));
    desk.goOn();
    assertEquals(List.of(out), told);
    assertTrue(Files.exists(out));
    assertFalse(session.kept().safe());
    session.undo();
    note(session, session.desk(), out);
    assertTrue(session.kept().safe());
  }

  @Test
  void each_of_two_files_is_told_of_and_a_search_beside_them_goes_on() throws Refusal {
    Opened desk = Opened.lanternRun(folder.resolve("state"));
    Session session = desk.session();
    List<String> told = new ArrayList<>();
    session.toFile(going -> "one", told::add);
    session.toFile(going -> "two", told::add);
    session.stop();
    assertTrue(desk.isBusy());
    session.plan();
    desk.goOn();
    assertEquals(List.of("one", "two"), told);
    assertTrue(session.desk().isOptimal());
    assertFalse(desk.isBusy());
  }

  @Test
  void a_sound_that_is_ended_leaves_no_file() throws Refusal {
    Opened desk = Opened.lanternRun(folder.resolve("state"));
    Session session = desk.session();
    JudgedPlan judged = session.desk().plan().orElseThrow();
    Path out = folder.resolve("out.wav");
    ExportPlan.HeardAs heard = new ExportPlan.HeardAs(judged.plan().playing(), false, Rational.ONE);
    List<Boolean> written = new ArrayList<>();
    session.toFile(
        going -> ExportPlan.sound(judged, desk.line(), out, heard, session.limits(), going::isOver),
        written::add);
    session.enough();
    desk.goOn();
    assertEquals(List.of(false), written);
    assertFalse(Files.exists(out));
  }

  private static void note(Session session, Desk then, Path file) {
    try {
      session.writing().written(then, file);
    } catch (Refusal e) {
      throw new AssertionError(e);
    }
  }
}

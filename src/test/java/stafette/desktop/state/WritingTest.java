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
import stafette.plan.PlanEdit;
import stafette.work.Refusal;

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
    session.toTheEnd(
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

  private static void note(Session session, Desk then, Path file) {
    try {
      session.writing().written(then, file);
    } catch (Refusal e) {
      throw new AssertionError(e);
    }
  }
}

package stafette.desktop.state;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stafette.desktop.LeftBehind;
import stafette.keep.Remembered;
import stafette.keep.Unfinished;
import stafette.work.SplitLine;

/** Keeping what is on the desk beside the window. */
class AutosaveTest {
  @TempDir private Path folder = Path.of("");
  private final Deque<Runnable> toWrite = new ArrayDeque<>();
  private final List<String> refused = new ArrayList<>();

  private Optional<SplitLine.SplitOutcome> desk() throws IOException {
    Session session = LeftBehind.session(new Remembered(folder.resolve("elsewhere")));
    session.open(LeftBehind.score(folder));
    session.choose(LeftBehind.line());
    return session.desk().outcome();
  }

  private Autosave keeping(Unfinished unfinished) {
    return new Autosave(
        unfinished,
        new BackgroundWork(Runnable::run, Runnable::run, toWrite::add),
        why -> refused.add(why.toString()));
  }

  private Path state() {
    return folder.resolve("state");
  }

  private List<Path> kept() throws IOException {
    if (!Files.exists(state())) {
      return List.of();
    }
    try (var files = Files.list(state())) {
      return files.filter(file -> file.toString().endsWith(".json")).toList();
    }
  }

  @Test
  void steps_in_quick_succession_are_written_once_and_the_newest_wins() throws IOException {
    Autosave keeping = keeping(new Remembered(state()).unfinished());
    keeping.keep(desk());
    keeping.keep(desk());
    keeping.keep(Optional.empty());
    assertEquals(1, toWrite.size());
    toWrite.remove().run();
    assertEquals(List.of(), kept());
    keeping.keep(desk());
    assertEquals(1, toWrite.size());
    toWrite.remove().run();
    assertEquals(1, kept().size());
    assertEquals(List.of(), refused);
  }

  @Test
  void that_it_cannot_be_written_is_told_once_until_it_can_again() throws IOException {
    Files.writeString(state(), "no folder");
    Autosave keeping = keeping(new Remembered(state()).unfinished());
    for (int i = 0; i < 3; i++) {
      keeping.keep(desk());
      toWrite.remove().run();
    }
    assertEquals(1, refused.size());
    assertTrue(refused.get(0).contains("folder can't be made"), refused.get(0));
    Files.delete(state());
    keeping.keep(desk());
    toWrite.remove().run();
    assertEquals(1, kept().size());
    assertEquals(1, refused.size());
  }

  @Test
  void everything_is_written_once_it_is_settled() throws IOException {
    ExecutorService writer = Executors.newSingleThreadExecutor();
    try {
      Autosave keeping =
          new Autosave(
              new Remembered(state()).unfinished(),
              new BackgroundWork(Runnable::run, Runnable::run, writer),
              why -> refused.add(why.toString()));
      keeping.keep(desk());
      keeping.settle();
      assertEquals(1, kept().size());
    } finally {
      writer.shutdown();
    }
  }

  @Test
  void what_is_put_back_loses_its_old_file_only_when_it_is_kept_anew() throws IOException {
    LeftBehind.crashed(state(), LeftBehind.score(folder));
    Unfinished unfinished = new Remembered(state()).unfinished();
    Unfinished.Left left = unfinished.left().get(0);
    Autosave keeping = keeping(unfinished);
    keeping.replaces(left);
    keeping.keep(desk());
    assertTrue(Files.exists(left.file()));
    toWrite.remove().run();
    assertFalse(Files.exists(left.file()));
    assertEquals(1, kept().size());
  }
}

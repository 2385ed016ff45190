package stafette.keep;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stafette.ask.LineRequest;
import stafette.ask.PlayerWish;
import stafette.ask.SplitRequest;
import stafette.score.BarChoice;
import stafette.score.LineChoice;
import stafette.score.Tremolo;
import stafette.words.Refusal;
import stafette.work.OpenLine;
import stafette.work.OpenPlan;
import stafette.work.Reports;
import stafette.work.SplitLine;

/** What is kept of a desk in case the program ends unforeseen. */
class UnfinishedTest {
  @TempDir private Path folder = Path.of("");

  @Test
  void a_desk_is_offered_only_when_its_program_has_ended() throws Refusal {
    Unfinished first = new Unfinished(folder);
    Unfinished second = new Unfinished(folder);
    first.keep(desk());
    assertEquals(List.of(), second.left());
    first.close();
    assertEquals(List.of(Optional.of("lantern-run.musicxml")), scores(second.left()));
  }

  @Test
  void two_windows_keep_their_desks_apart() throws Refusal {
    Unfinished first = new Unfinished(folder);
    Unfinished second = new Unfinished(folder);
    first.keep(desk());
    second.keep(desk());
    second.finished();
    first.close();
    second.close();
    assertEquals(1, new Unfinished(folder).left().size());
  }

  @Test
  void what_was_left_behind_is_never_overwritten() throws Refusal, IOException {
    Unfinished first = new Unfinished(folder);
    first.keep(desk());
    first.close();
    Unfinished second = new Unfinished(folder);
    Unfinished.Left left = second.left().get(0);
    String before = Files.readString(left.file());
    second.keep(desk());
    assertEquals(before, Files.readString(left.file()));
    second.close();
    assertEquals(2, new Unfinished(folder).left().size());
  }

  @Test
  void the_oldest_comes_first() throws Refusal, IOException {
    List<Unfinished> crashed = List.of(new Unfinished(folder), new Unfinished(folder));
    for (Unfinished one : crashed) {
      one.keep(desk());
    }
    crashed.forEach(Unfinished::close);
    Path first = new Unfinished(folder).left().get(0).file();
    Files.setLastModifiedTime(first, FileTime.fromMillis(System.currentTimeMillis() + 60_000));
    List<Unfinished.Left> left = new Unfinished(folder).left();
    assertNotEquals(first, left.get(0).file());
    assertTrue(left.get(0).when().isBefore(left.get(1).when()));
  }

  @Test
  void it_stays_until_it_is_thrown_away() throws Refusal {
    Unfinished crashed = new Unfinished(folder);
    crashed.keep(desk());
    crashed.close();
    Unfinished next = new Unfinished(folder);
    Unfinished.Left left = next.left().get(0);
    next.claim(left);
    next.close();
    assertTrue(Files.exists(left.file()));
    Unfinished later = new Unfinished(folder);
    later.dismiss(later.left().get(0));
    assertFalse(Files.exists(left.file()));
  }

  @Test
  void only_one_window_puts_it_back() throws Refusal {
    Unfinished crashed = new Unfinished(folder);
    crashed.keep(desk());
    crashed.close();
    Unfinished one = new Unfinished(folder);
    Unfinished other = new Unfinished(folder);
    Unfinished.Left left = one.left().get(0);
    one.claim(left);
    assertEquals(List.of(), other.left());
    Refusal refusal = assertThrows(Refusal.class, () -> other.claim(left));
    assertTrue(String.valueOf(refusal.getMessage()).contains("another window"));
  }

  @Test
  void a_copy_opens_as_any_plan_wherever_it_lies() throws Refusal, IOException {
    Unfinished crashed = new Unfinished(folder.resolve("state"));
    crashed.keep(desk());
    crashed.close();
    Unfinished next = new Unfinished(folder.resolve("state"));
    Path copy = Files.createDirectories(folder.resolve("a/b")).resolve("copy.json");
    next.copy(next.left().get(0), copy);
    OpenPlan.OnDesk opened =
        OpenPlan.onDesk(copy, Optional.empty(), LimitsInForce.load(Optional.empty()));
    assertEquals(OpenPlan.ScoreNow.SAME, opened.score());
  }

  @Test
  void a_copy_replaces_neither_its_score_nor_itself() throws Refusal, IOException {
    Unfinished crashed = new Unfinished(folder.resolve("state"));
    crashed.keep(desk());
    crashed.close();
    Unfinished next = new Unfinished(folder.resolve("state"));
    Unfinished.Left left = next.left().get(0);
    Path score = Path.of("samples/lantern-run.musicxml");
    for (Path to : List.of(score, left.file())) {
      byte[] before = Files.readAllBytes(to);
      assertThrows(Refusal.class, () -> next.copy(left, to), to.toString());
      assertArrayEquals(before, Files.readAllBytes(to));
    }
  }

  @Test
  void a_file_nobody_can_read_is_offered_without_a_name() throws IOException {
    Files.writeString(folder.resolve("desk-3.json"), "{ broken");
    assertEquals(List.of(Optional.empty()), scores(new Unfinished(folder).left()));
  }

  private static List<Optional<String>> scores(List<Unfinished.Left> left) {
    return left.stream().map(Unfinished.Left::score).toList();
  }

  private static Unfinished.DeskWriter desk() throws Refusal {
    LimitsInForce limits = LimitsInForce.load(Optional.empty());
    OpenScore score =
        OpenScore.open(Path.of("samples/lantern-run.musicxml"), Tremolo.AS_WRITTEN, false, limits);
    LineChoice choice =
        new LineChoice(
            "Piano",
            Optional.of(new BarChoice("5-6")),
            OptionalInt.of(1),
            Optional.empty(),
            Optional.empty());
    SplitRequest request =
        SplitRequest.usual(LineRequest.whole(score.file()).with(choice))
            .with(List.of(new PlayerWish("Flute 1", Optional.empty())), List.of());
    SplitLine.SplitOutcome outcome =
        OpenLine.in(score, request, limits).outcome(Optional.empty(), Optional.empty());
    return file -> Reports.saveMovable(outcome, file);
  }
}

package stafette.desktop.state;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import org.junit.jupiter.api.io.TempDir;
import stafette.desktop.LeftBehind;
import stafette.keep.Remembered;
import stafette.keep.Unfinished;
import stafette.plan.Brief;
import stafette.plan.Plan;
import stafette.words.Refusal;
import stafette.work.OpenLine;
import stafette.work.OpenPlan;

/** Putting back what was on the desk, and knowing what is kept where. */
class RecoveryTest {
  @TempDir private Path folder = Path.of("");
  private final List<OpenPlan.ScoreNow> scores = new ArrayList<>();
  private final List<String> refused = new ArrayList<>();
  private Path score = Path.of("");

  @BeforeEach
  void writeScore() throws IOException {
    score = LeftBehind.score(folder);
  }

  private Path state() {
    return folder.resolve("state");
  }

  private Session recovered(Optional<Path> elsewhere) {
    Remembered remembered = new Remembered(state());
    Session session = LeftBehind.session(remembered);
    session.recover(
        remembered.unfinished().left().get(0),
        elsewhere,
        scores::add,
        why -> refused.add(why.toString()));
    return session;
  }

  private List<Unfinished.Left> left() {
    return new Remembered(state()).unfinished().left();
  }

  @Test
  void after_a_crash_the_desk_is_as_it_was_and_is_kept_anew() {
    Session crashed = LeftBehind.crashed(state(), score);
    Session session = recovered(Optional.empty());
    assertEquals(List.of(OpenPlan.ScoreNow.SAME), scores);
    assertEquals(plan(crashed).segments(), plan(session).segments());
    assertEquals(brief(crashed).players(), brief(session).players());
    assertTrue(session.desk().line().orElseThrow().isFreed("Flute 1"));
    assertFalse(session.kept().safe(), "it is in no file of the user's");
    assertEquals(List.of(), left(), "it belongs to the window that has it");
    session.close();
    assertEquals(List.of(), left());
  }

  @Test
  void a_score_changed_since_has_the_plan_judged_anew_and_says_so() throws IOException {
    Session crashed = LeftBehind.crashed(state(), score);
    change("<step>G</step><octave>5</octave>", "<step>A</step><octave>5</octave>");
    Session session = recovered(Optional.empty());
    assertEquals(List.of(OpenPlan.ScoreNow.CHANGED), scores);
    assertEquals(plan(crashed).segments(), plan(session).segments());
  }

  @Test
  void a_line_that_is_another_one_gets_its_players_back_and_the_old_plan_stays_in_its_file()
      throws IOException {
    Session crashed = LeftBehind.crashed(state(), score);
    LeftBehind.silenceFirstNotes(score);
    Session session = recovered(Optional.empty());
    assertEquals(List.of(OpenPlan.ScoreNow.UNFIT), scores);
    assertTrue(session.desk().plan().isEmpty());
    assertEquals(names(crashed), names(session));
    OpenLine line = session.desk().line().orElseThrow();
    assertTrue(line.isFreed("Flute 1"));
    assertTrue(line.measured().containsKey("Clarinet 1"));
    session.close();
    assertEquals(1, left().size());
  }

  @Test
  void a_score_that_is_gone_is_told_and_can_be_shown_where_it_is_now() throws IOException {
    Session crashed = LeftBehind.crashed(state(), score);
    Path moved = Files.move(score, folder.resolve("moved.musicxml"));
    Session empty = recovered(Optional.empty());
    assertEquals(1, refused.size());
    assertTrue(refused.get(0).contains("bells.musicxml: there is no such file"), refused.get(0));
    assertTrue(empty.desk().score().isEmpty());
    empty.close();
    assertEquals(1, left().size());
    Session session = recovered(Optional.of(moved));
    assertEquals(plan(crashed).segments(), plan(session).segments());
  }

  @Test
  void a_kept_plan_opens_where_it_was_left_and_kept_again_has_the_same_bytes()
      throws IOException, Refusal {
    Session session = LeftBehind.session(new Remembered(state()));
    LeftBehind.work(session, score);
    for (String name : List.of("byhand.json", "proven.json")) {
      Path kept = folder.resolve(name);
      session.writing().savePlan(kept);
      byte[] bytes = Files.readAllBytes(kept);
      Session other = LeftBehind.session(new Remembered(folder.resolve("other")));
      other.open(kept);
      assertEquals(plan(session).segments(), plan(other).segments());
      assertEquals(session.desk().isOptimal(), other.desk().isOptimal(), name);
      other.writing().savePlan(kept);
      assertArrayEquals(bytes, Files.readAllBytes(kept), name);
      session.plan();
      assertTrue(session.desk().isOptimal());
    }
  }

  @Test
  void only_work_by_hand_that_is_in_no_file_is_not_safe() throws Refusal {
    Session session = LeftBehind.session(new Remembered(state()));
    session.open(score);
    session.choose(LeftBehind.line());
    assertTrue(session.kept().safe(), "a choice and a search bring it back");
    session.add("Flute 2", Optional.empty());
    assertFalse(session.kept().safe());
    session.undo();
    assertTrue(session.kept().safe());
    session.redo();
    session.plan();
    assertFalse(session.kept().safe());
    Path kept = folder.resolve("kept.json");
    session.writing().savePlan(kept);
    assertEquals(SavedState.in(kept), session.kept());
    assertEquals(List.of(), left());
    session.add("Oboe 1", Optional.empty());
    assertFalse(session.kept().safe());
    session.plan();
    Path out = folder.resolve("out.musicxml");
    session.writing().write(session.desk(), out);
    session.writing().written(session.desk(), out);
    assertFalse(session.kept().safe(), "the plan file lacks the oboe");
    session.choose(LeftBehind.line());
    assertEquals(SavedState.EASILY_HAD_AGAIN, session.kept());
  }

  /** A desk with work by hand, before a crash. */
  private final class Crashing {
    private final Remembered remembered = new Remembered(state());
    private final Session session = LeftBehind.session(remembered);

    Crashing() {
      LeftBehind.work(session, score);
    }

    List<Unfinished.Left> crash() {
      remembered.close();
      return left();
    }
  }

  @Test
  void what_is_kept_in_a_file_of_the_users_is_not_offered_after_a_crash() throws Refusal {
    Crashing desk = new Crashing();
    desk.session.writing().savePlan(folder.resolve("kept.json"));
    assertEquals(List.of(), desk.crash());
  }

  @Test
  void what_is_done_after_it_was_kept_is_offered_after_a_crash() throws Refusal {
    Crashing desk = new Crashing();
    desk.session.writing().savePlan(folder.resolve("kept.json"));
    desk.session.add("Oboe 1", Optional.empty());
    assertEquals(1, desk.crash().size());
    assertTrue(names(recovered(Optional.empty())).contains("Oboe 1"));
  }

  @Test
  void a_score_that_was_written_takes_nothing_from_what_the_plan_file_lacks() throws Refusal {
    Crashing desk = new Crashing();
    desk.session.writing().savePlan(folder.resolve("kept.json"));
    desk.session.add("Oboe 1", Optional.empty());
    desk.session.writing().written(desk.session.desk(), folder.resolve("out.musicxml"));
    assertEquals(1, desk.crash().size());
  }

  @Test
  void what_could_not_be_kept_is_offered_after_a_crash() {
    Crashing desk = new Crashing();
    assertThrows(
        Refusal.class,
        () -> desk.session.writing().savePlan(folder.resolve("no/such/folder.json")));
    assertFalse(desk.session.kept().safe());
    assertEquals(1, desk.crash().size());
  }

  @Test
  void the_score_and_the_plan_it_is_kept_in_are_not_written_over() throws Exception {
    Session session = new Crashing().session;
    Path kept = folder.resolve("kept.json");
    session.writing().savePlan(kept);
    byte[] before = Files.readAllBytes(score);
    byte[] plan = Files.readAllBytes(kept);
    Path soft = Files.createSymbolicLink(folder.resolve("soft.json"), score);
    Path hard = Files.createLink(folder.resolve("hard.musicxml"), score);
    for (Path same : List.of(score, soft, hard)) {
      mustStay(() -> session.writing().savePlan(same));
      mustStay(() -> session.writing().write(session.desk(), same));
    }
    mustStay(() -> session.writing().write(session.desk(), kept));
    Path svg = Files.createSymbolicLink(folder.resolve("kept.svg"), kept);
    mustStay(() -> Writing.outputs(session.desk()).add(svg, true));
    assertArrayEquals(before, Files.readAllBytes(score));
    assertArrayEquals(plan, Files.readAllBytes(kept));
    session.writing().savePlan(kept);
  }

  private static void mustStay(Executable write) {
    String said = String.valueOf(assertThrows(Refusal.class, write).getMessage());
    assertTrue(said.contains("must stay as it is"), said);
  }

  private void change(String before, String after) throws IOException {
    String text = Files.readString(score);
    assertTrue(text.contains(before));
    int at = text.indexOf(before);
    Files.writeString(score, text.substring(0, at) + after + text.substring(at + before.length()));
  }

  private static Brief brief(Session session) {
    return session.desk().line().orElseThrow().brief();
  }

  private static List<String> names(Session session) {
    return brief(session).players().stream().map(player -> player.name()).toList();
  }

  private static Plan plan(Session session) {
    return session.desk().plan().orElseThrow().plan();
  }
}

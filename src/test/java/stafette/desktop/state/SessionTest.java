package stafette.desktop.state;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stafette.keep.LimitsInForce;
import stafette.keep.Remembered;
import stafette.limits.Assurance;
import stafette.limits.Capability;
import stafette.limits.Limit;
import stafette.limits.Saying;
import stafette.limits.Skill;
import stafette.plan.Handoff;
import stafette.plan.Hocket;
import stafette.plan.Plan;
import stafette.plan.PlanEdit;
import stafette.score.BarChoice;
import stafette.score.LineChoice;
import stafette.split.Splitter;
import stafette.time.TempoMark;
import stafette.words.Refusal;
import stafette.words.Sentence;
import stafette.work.OpenLine;
import stafette.work.SideBySide;
import stafette.work.WriteScore;

/** A session from opening a score to writing it, without a window. */
class SessionTest {
  private static final Path SAMPLE = Path.of("samples/lantern-run.musicxml");

  @TempDir private Path folder = Path.of("");
  private final Told told = new Told();
  private Session session = newSession(Runnable::run);

  /** What the session told. */
  private static final class Told implements Watcher {
    private final List<String> refused = new ArrayList<>();
    private final List<Boolean> dragging = new ArrayList<>();
    private Optional<SideBySide> plans = Optional.empty();
    private boolean resting = true;

    @Override
    public void changed(Desk desk, boolean whileDragging) {
      dragging.add(whileDragging);
    }

    @Override
    public void began(WatchedWork work) {
      resting = false;
    }

    @Override
    public void progress(Splitter.Progress progress) {}

    @Override
    public void goesOn(boolean anything) {
      resting = !anything;
    }

    @Override
    public void compared(SideBySide found) {
      plans = Optional.of(found);
    }

    @Override
    public void refused(Sentence why) {
      refused.add(why.toString());
    }
  }

  @BeforeEach
  void afresh() {
    session = newSession(Runnable::run);
  }

  private Session newSession(java.util.concurrent.Executor aside) {
    Session made =
        new Session(
            loaded(),
            new Remembered(folder.resolve("remembered")),
            new BackgroundWork(aside, Runnable::run));
    made.watchedBy(told);
    return made;
  }

  private static LimitsInForce loaded() {
    try {
      return LimitsInForce.load(Optional.empty());
    } catch (Refusal e) {
      throw new AssertionError(e);
    }
  }

  @Test
  void a_score_shows_its_fast_passages_and_a_passage_chosen_is_planned_for_proposed_players() {
    session.open(SAMPLE);
    assertFalse(session.desk().passages().isEmpty());
    session.choose(session.desk().passages().get(0));
    assertEquals(List.of(), told.refused);
    assertFalse(session.desk().line().orElseThrow().brief().players().isEmpty());
    assertTrue(told.resting);
  }

  @Test
  void a_drag_is_one_step_and_shows_findings_on_the_way() {
    Plan before = planned();
    Handoff handoff = before.handoffs().get(0);
    int steps = told.dragging.size();
    for (int i = 1; i <= 60; i++) {
      session.byHand().drag(moved(handoff, i));
    }
    assertFalse(session.desk().plan().orElseThrow().verdict().holds());
    assertTrue(told.dragging.subList(steps, told.dragging.size()).stream().allMatch(d -> d));
    session.byHand().edit(moved(handoff, 12));
    assertNotEquals(before, present());
    session.undo();
    assertEquals(before, present());
    session.redo();
    assertEquals(handoff.leaves().last() + 12, present().turns().get(0).last());
  }

  @Test
  void a_drag_given_up_leaves_no_trace() {
    Plan before = planned();
    session.byHand().drag(moved(before.handoffs().get(0), 6));
    session.letGo();
    assertEquals(before, present());
    boolean could = session.canRedo();
    assertFalse(could);
  }

  @Test
  void everything_that_was_done_can_be_undone_to_the_beginning() {
    planned();
    session.byHand().split(0, 20);
    session.byHand().lockHandoff(0);
    hocket();
    session.add("Oboe 1", Optional.empty());
    session.remove("Clarinet 1");
    session.tempo(TempoMark.QUARTER_120, true);
    while (session.canUndo()) {
      session.undo();
    }
    assertTrue(session.desk().line().isEmpty());
    while (session.canRedo()) {
      session.redo();
    }
    List<String> names =
        session.desk().line().orElseThrow().brief().players().stream()
            .map(player -> player.name())
            .toList();
    assertTrue(names.contains("Oboe 1") && !names.contains("Clarinet 1"), names.toString());
    assertEquals(List.of(), told.refused);
  }

  @Test
  void another_tempo_judges_the_same_plan_again_at_once() {
    Plan before = planned();
    session.tempo(at(118), false);
    assertFalse(session.desk().plan().orElseThrow().verdict().holds());
    assertEquals(before.segments(), present().segments());
    session.tempo(at(90), true);
    assertTrue(session.desk().plan().orElseThrow().verdict().holds());
    assertEquals("quarter = 90", session.desk().line().orElseThrow().tempo().toString());
  }

  @Test
  void a_new_search_plans_around_what_was_locked() {
    Plan before = planned();
    Handoff handoff = before.handoffs().get(0);
    session.byHand().edit(moved(handoff, -6));
    session.byHand().lockHandoff(0);
    assertEquals(1, session.desk().locks().size());
    session.plan();
    assertTrue(session.desk().isOptimal());
    Plan after = present();
    boolean kept =
        after.handoffs().stream()
            .anyMatch(
                h ->
                    h.enters().first() == handoff.enters().first() - 6
                        && h.leaves().last() == handoff.leaves().last() - 6);
    assertTrue(kept, after.handoffs().toString());
    session.byHand().lockHandoff(after.handoffs().indexOf(after.handoffs().get(0)));
    session.byHand().lockPlayer("Flute 1", true);
    assertTrue(session.desk().locks().size() > 1);
    session.byHand().lockPlayer("Flute 1", false);
  }

  @Test
  void a_turn_is_dealt_out_between_two_and_given_back() {
    planned();
    hocket();
    Plan before = present();
    session.byHand().hocket(0);
    assertTrue(present().turns().get(0).isHocket());
    session.byHand().hocket(0);
    assertEquals(before, present());
  }

  @Test
  void a_player_whose_instrument_nobody_knows_is_refused_in_words_until_it_is_said() {
    planned();
    session.add("Anna", Optional.empty());
    assertEquals(1, told.refused.size());
    assertTrue(told.refused.get(0).contains("Anna"), told.refused.get(0));
    session.add("Anna", Optional.of("bassoon"));
    assertEquals(1, told.refused.size());
    assertEquals(4, session.desk().line().orElseThrow().brief().players().size());
  }

  @Test
  void a_divided_section_is_added_as_its_players() {
    planned();
    session.add("Violins I div. a 2", Optional.empty());
    assertEquals(List.of(), told.refused);
    List<String> names =
        session.desk().line().orElseThrow().brief().players().stream()
            .map(player -> player.name())
            .toList();
    assertEquals(List.of("Violins I outside", "Violins I inside"), names.subList(3, 5));
    session.add("Clarinet 1 div.", Optional.empty());
    assertTrue(told.refused.get(0).contains("only sections of bowed strings"), told.refused.get(0));
  }

  @Test
  void somebody_has_to_play() {
    planned();
    List.of("Flute 1", "Flute 2", "Clarinet 1").forEach(session::remove);
    assertEquals(1, told.refused.size(), told.refused::toString);
    assertTrue(told.refused.get(0).contains("who shall play?"), told.refused.get(0));
    assertEquals(1, session.desk().line().orElseThrow().brief().players().size());
  }

  @Test
  void nothing_goes_on_any_more_once_the_question_is_another_one() {
    Deque<Runnable> later = new ArrayDeque<>();
    session = newSession(later::add);
    session.open(SAMPLE);
    later.remove().run();
    session.choose(line());
    assertFalse(told.resting);
    session.add("Oboe 1", Optional.empty());
    assertTrue(told.resting, "the search for other players is over");
  }

  @Test
  void a_search_never_undoes_what_was_changed_by_hand_meanwhile() {
    Deque<Runnable> later = new ArrayDeque<>();
    planned();
    Session direct = session;
    session = newSession(later::add);
    session.open(saved(direct));
    later.remove().run();
    session.plan();
    session.byHand().edit(moved(present().handoffs().get(0), -3));
    Plan byHand = present();
    later.remove().run();
    assertEquals(byHand, present());
  }

  private Path saved(Session other) {
    try {
      Path file = folder.resolve("kept.json");
      other.writing().savePlan(file);
      return file;
    } catch (Refusal e) {
      throw new AssertionError(e);
    }
  }

  @Test
  void looking_at_bars_ends_no_search() {
    Deque<Runnable> later = new ArrayDeque<>();
    session = newSession(later::add);
    session.open(SAMPLE);
    later.remove().run();
    proposed(later);
    session.writing().lookAtBars(bars -> {});
    later.remove().run();
    assertTrue(session.desk().plan().isPresent());
  }

  @Test
  void measured_limits_and_seats_are_planned_with() {
    planned();
    session.measured("Flute 1", "double tonguing", new OpenLine.Measured(5, 4, 12));
    assertFalse(session.desk().plan().orElseThrow().verdict().holds());
    session.sit("Flute 1", Optional.of(new stafette.plan.Seat(-2, 3)));
    assertEquals(1, session.desk().line().orElseThrow().seats().size());
    session.remove("Flute 1");
    assertEquals(List.of(), told.refused);
  }

  @Test
  void what_a_search_finds_too_late_is_dropped() {
    Deque<Runnable> later = new ArrayDeque<>();
    session = newSession(later::add);
    session.open(SAMPLE);
    later.remove().run();
    proposed(later);
    Runnable search = later.remove();
    session.add("Oboe 1", Optional.empty());
    search.run();
    assertTrue(session.desk().plan().isEmpty(), "the search was for other players");
    session.plan();
    later.remove().run();
    assertTrue(session.desk().plan().isPresent());
  }

  @Test
  void a_search_that_is_cut_short_ends_with_what_it_has() {
    Deque<Runnable> later = new ArrayDeque<>();
    session = newSession(later::add);
    session.open(SAMPLE);
    later.remove().run();
    proposed(later);
    session.enough();
    later.remove().run();
    assertTrue(session.desk().found().isPresent());
    assertFalse(session.desk().isOptimal());
    assertTrue(told.resting);
  }

  @Test
  void a_line_is_on_the_desk_with_whoever_has_it_while_others_are_looked_for() {
    Deque<Runnable> later = new ArrayDeque<>();
    session = newSession(later::add);
    session.open(SAMPLE);
    later.remove().run();
    session.choose(line());
    assertEquals(List.of("Piano"), players());
    assertTrue(session.desk().plan().isEmpty());
    later.remove().run();
    assertEquals(List.of("Flute 1", "Flute 2"), players());
    session.undo();
    assertTrue(session.desk().line().isEmpty());
  }

  @Test
  void nothing_is_planned_once_it_is_enough_to_know_who_could_play() {
    Deque<Runnable> later = new ArrayDeque<>();
    session = newSession(later::add);
    session.open(SAMPLE);
    later.remove().run();
    session.choose(line());
    session.enough();
    later.remove().run();
    assertEquals(List.of("Flute 1", "Flute 2"), players());
    assertTrue(later.isEmpty());
    assertTrue(told.resting);
  }

  private List<String> players() {
    return session.desk().line().orElseThrow().brief().players().stream()
        .map(player -> player.name())
        .toList();
  }

  /** The line is chosen, and players are found; they are not planned for yet. */
  private void proposed(Deque<Runnable> later) {
    session.choose(line());
    later.remove().run();
  }

  @Test
  void a_search_that_is_stopped_is_heard_of_no_more() {
    Deque<Runnable> later = new ArrayDeque<>();
    session = newSession(later::add);
    session.open(SAMPLE);
    later.remove().run();
    proposed(later);
    session.stop();
    later.remove().run();
    assertTrue(session.desk().plan().isEmpty());
  }

  @Test
  void what_a_player_says_to_manage_is_planned_with_and_can_be_undone() throws Refusal {
    planned();
    Skill usual = skill("Flute 1", "double tonguing");
    Skill single = skill("Flute 1", "single tonguing");
    says("single tonguing", "sixteenths at 120");
    assertEquals(8.001, skill("Flute 1", "single tonguing").capability().peakPerSecond());
    Limit shifted = skill("Flute 1", "double tonguing").technique().limit();
    assertEquals(
        8.001 / single.technique().limit().peakPerSecond(),
        shifted.peakPerSecond() / usual.technique().limit().peakPerSecond(),
        1e-3);
    session.rules().assurance(new Assurance(98));
    assertEquals(shifted.at(new Assurance(98)), skill("Flute 1", "double tonguing").capability());
    session.undo();
    says("single tonguing", "sixteenths at 126; sixteenths at 120 for 10 seconds");
    assertEquals(8.4, skill("Flute 1", "single tonguing").capability().peakPerSecond(), 0.002);
    session.measured("Flute 1", "single tonguing", new OpenLine.Measured(9, 8, 20));
    assertEquals(Map.of(), session.desk().line().orElseThrow().said("Flute 1"));
    assertEquals(usual, skill("Flute 1", "double tonguing"));
    says("single tonguing", "sixteenths at 120");
    session.says("Flute 1", "single tonguing", Optional.empty());
    assertEquals(single, skill("Flute 1", "single tonguing"));
    assertEquals(List.of(), told.refused);
  }

  @Test
  void what_was_said_comes_back_as_figures_with_the_plan() throws IOException, Refusal {
    planned();
    says("double tonguing", "sextuplets at 112; sextuplets at 106 for 10 seconds");
    session.writing().savePlan(folder.resolve("said.json"));
    Plan plan = present();
    List<Capability> figures = capabilities();
    session = newSession(Runnable::run);
    session.open(folder.resolve("said.json"));
    assertEquals(List.of(), told.refused);
    assertEquals(plan.segments(), present().segments());
    assertEquals(figures, capabilities());
  }

  private List<Capability> capabilities() {
    return present().brief().players().stream()
        .flatMap(player -> player.skills().stream().map(Skill::capability))
        .toList();
  }

  private void says(String technique, String words) throws Refusal {
    session.says("Flute 1", technique, Optional.of(Saying.parse(words)));
  }

  private Skill skill(String player, String technique) {
    return session.desk().line().orElseThrow().brief().players().stream()
        .filter(one -> one.name().equals(player))
        .flatMap(one -> one.skills().stream())
        .filter(one -> one.technique().name().equals(technique))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void a_plan_is_written_kept_and_opened_where_it_was_left() throws IOException, Refusal {
    planned();
    session.byHand().edit(moved(present().handoffs().get(0), -3));
    session.byHand().lockHandoff(0);
    assertFalse(session.writing().changes(session.desk()).sentences().isEmpty());
    Path out = folder.resolve("out.musicxml");
    WriteScore.Saved saved = session.writing().write(session.desk(), out);
    assertEquals(session.writing().changes(session.desk()).sentences(), saved.changes());
    assertTrue(Files.readString(out).contains("Flute 1"));
    Path kept = folder.resolve("plan.json");
    session.writing().savePlan(kept);
    Plan plan = present();
    session = newSession(Runnable::run);
    session.open(kept);
    assertEquals(List.of(), told.refused);
    assertEquals(plan.segments(), present().segments());
    assertEquals(plan.brief().rules().locks(), session.desk().locks());
    assertEquals(plan.brief().players(), present().brief().players());
  }

  @Test
  void files_that_were_opened_are_remembered_the_last_first() {
    session.open(SAMPLE);
    session.open(Path.of("samples/mill-stairs.musicxml"));
    List<Path> recent = new Remembered(folder.resolve("remembered")).recent();
    assertEquals("mill-stairs.musicxml", recent.get(0).getFileName().toString());
    assertEquals(2, recent.size());
  }

  @Test
  void a_file_that_is_no_score_is_refused_and_the_desk_stays() throws IOException {
    planned();
    Desk before = session.desk();
    session.open(Files.writeString(folder.resolve("no.musicxml"), "no score"));
    assertEquals(1, told.refused.size());
    assertEquals(before, session.desk());
  }

  @Test
  void other_plans_are_set_beside_it_and_can_be_taken() {
    planned();
    session.compare();
    SideBySide plans = told.plans.orElseThrow();
    assertFalse(plans.columns().isEmpty());
    session.take(plans.columns().get(0).outcome());
    assertEquals(plans.columns().get(0).plan().plan().segments(), present().segments());
  }

  private Plan planned() {
    session.open(SAMPLE);
    session.choose(line());
    List<String> wanted = List.of("Flute 1", "Flute 2", "Clarinet 1");
    wanted.forEach(name -> session.add(name, Optional.empty()));
    session.desk().line().orElseThrow().brief().players().stream()
        .map(player -> player.name())
        .filter(name -> !wanted.contains(name))
        .forEach(session::remove);
    session.plan();
    assertEquals(List.of(), told.refused);
    assertTrue(session.desk().isOptimal());
    return present();
  }

  private static LineChoice line() {
    return new LineChoice(
        "Piano",
        Optional.of(new BarChoice("5-16")),
        OptionalInt.of(1),
        Optional.empty(),
        Optional.empty());
  }

  private static PlanEdit moved(Handoff handoff, int by) {
    return new PlanEdit.Move(0, handoff.enters().first() + by, handoff.leaves().last() + by);
  }

  private static TempoMark at(int quarters) {
    return new TempoMark(stafette.time.BeatUnit.QUARTER, stafette.time.Rational.of(quarters));
  }

  private void hocket() {
    try {
      session.rules().hocket(Hocket.BEAT);
    } catch (Refusal e) {
      throw new AssertionError(e);
    }
  }

  private Plan present() {
    return session.desk().plan().orElseThrow().plan();
  }
}

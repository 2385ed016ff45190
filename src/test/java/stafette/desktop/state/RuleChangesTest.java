package stafette.desktop.state;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Function;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stafette.limits.Assurance;
import stafette.plan.Favour;
import stafette.plan.Hocket;
import stafette.plan.OverlapRule;
import stafette.plan.Plan;
import stafette.plan.Rules;
import stafette.plan.SourceTreatment;
import stafette.score.Slurring;
import stafette.score.ToneChoice;
import stafette.score.Tremolo;
import stafette.words.Refusal;
import stafette.words.Sentence;

/** Rules changed on the desk, without a window. */
class RuleChangesTest {
  private static final ToneChoice TOP = new ToneChoice.FromTop(1);

  @TempDir private Path folder = Path.of("");
  private Opened desk = Opened.nothing();
  private RuleChanges rules = desk.session().rules();

  @BeforeEach
  void planned() throws Refusal {
    desk = Opened.lanternRun(folder);
    rules = desk.session().rules();
    assertTrue(desk.session().desk().isOptimal());
  }

  private interface Change {
    void of(RuleChanges rules) throws Refusal;
  }

  /** The plan stays, is judged by the new rule, and one step back all is as it was. */
  private <T> void oneStep(Change change, Function<Rules, T> rule, T expected) throws Refusal {
    Desk before = desk.session().desk();
    Plan plan = desk.plan();
    T was = rule.apply(plan.brief().rules());
    assertNotEquals(expected, was);
    change.of(rules);
    assertEquals(expected, rule.apply(desk.line().brief().rules()));
    assertEquals(plan.segments(), desk.plan().segments());
    assertEquals(expected, rule.apply(desk.plan().brief().rules()));
    assertFalse(desk.session().desk().isOptimal(), "nobody has searched under the new rules");
    desk.session().undo();
    assertEquals(before, desk.session().desk());
    desk.session().redo();
    assertEquals(expected, rule.apply(desk.plan().brief().rules()));
    assertEquals(List.of(), desk.refused());
  }

  @Test
  void another_thing_is_favoured_and_the_same_plan_costs_by_its_weights() throws Refusal {
    int before = cost();
    oneStep(now -> now.favour(Favour.STRAIN), Rules::favour, Favour.STRAIN);
    assertTrue(cost() > before, before + " " + cost());
    oneStep(now -> now.favour(Favour.REGULAR), Rules::favour, Favour.REGULAR);
  }

  private int cost() {
    return desk.session().desk().plan().orElseThrow().verdict().cost().total();
  }

  @Test
  void more_shared_notes_than_the_plan_has_are_a_finding() throws Refusal {
    OverlapRule three = new OverlapRule(3, OptionalInt.of(5));
    oneStep(now -> now.overlap(three), Rules::overlap, three);
    assertFalse(desk.holds());
    desk.planned();
    assertTrue(desk.holds());
    desk.plan()
        .handoffs()
        .forEach(handoff -> assertTrue(handoff.leaves().last() - handoff.enters().first() >= 2));
  }

  @Test
  void a_rest_longer_than_the_plan_leaves_is_a_finding() throws Refusal {
    oneStep(now -> now.ready(30), Rules::readySeconds, 30.0);
    assertFalse(desk.holds());
  }

  @Test
  void for_more_players_the_same_plan_is_harder() throws Refusal {
    assertTrue(desk.holds());
    oneStep(now -> now.assurance(new Assurance(99)), Rules::assurance, new Assurance(99));
    assertFalse(desk.holds());
    rules.assurance(new Assurance(60));
    assertTrue(desk.holds());
  }

  @Test
  void pairs_may_take_turns() throws Refusal {
    oneStep(now -> now.hocket(Hocket.BEAT), Rules::hocket, Hocket.BEAT);
  }

  @Test
  void several_who_always_play_need_another_plan_and_locks_of_relays_go_with_them() throws Refusal {
    rules.together(2);
    assertEquals(2, desk.line().brief().lines().size());
    assertTrue(desk.session().desk().plan().isEmpty(), "one relay is no plan for two");
    desk.session().add("Flute 3", Optional.empty());
    desk.session().add("Flute 4", Optional.empty());
    desk.planned();
    Plan two = desk.plan();
    int second =
        two.segments()
            .indexOf(
                two.segments().stream().filter(one -> one.relay() == 1).findFirst().orElseThrow());
    desk.session().byHand().lockSegment(second);
    assertEquals(1, desk.session().desk().locks().size());
    rules.together(1);
    assertEquals(List.of(), desk.session().desk().locks());
    desk.session().undo();
    assertEquals(two.segments(), desk.plan().segments());
    assertEquals(1, desk.session().desk().locks().size());
    assertEquals(List.of(), desk.refused());
  }

  @Test
  void the_same_rule_again_is_no_step() throws Refusal {
    Desk before = desk.session().desk();
    rules.favour(Favour.BALANCE);
    rules.overlap(OverlapRule.DEFAULT);
    rules.assurance(Assurance.DEFAULT);
    rules.ready(Rules.DEFAULT_READY_SECONDS);
    rules.hocket(Hocket.NO);
    rules.together(1);
    rules.writing(now -> now.with(SourceTreatment.KEEP));
    rules.tremolo(Tremolo.AS_WRITTEN);
    rules.slurring(Slurring.AS_WRITTEN);
    desk.goOn();
    assertEquals(before, desk.session().desk());
    assertTrue(desk.session().desk().isOptimal());
  }

  @Test
  void a_tone_that_no_chord_has_is_refused_and_nothing_changes() {
    Desk before = desk.session().desk();
    Refusal refused =
        assertThrows(Refusal.class, () -> rules.tones(new ToneChoice.FromTop(7), false));
    assertTrue(String.valueOf(refused.getMessage()).contains("7"), refused.getMessage());
    assertEquals(before, desk.session().desk());
  }

  @Test
  void chords_are_planned_by_one_tone_or_each_tone_with_its_own_players() throws Refusal {
    desk =
        Opened.on(
            folder,
            "lantern-run.musicxml",
            Opened.bars("Piano", 2, "5-8", Optional.of(TOP)),
            "Violin 1, Violin 2, Cello 1 = cello, Cello 2 = cello");
    rules = desk.session().rules();
    int tones = desk.line().tones();
    assertTrue(tones > 1, "the left hand plays chords");
    assertEquals(TOP, desk.line().line().source().tone());
    rules.tones(new ToneChoice.Bottom(), false);
    assertEquals(new ToneChoice.Bottom(), desk.line().line().source().tone());
    rules.tones(new ToneChoice.All(), true);
    assertEquals(tones, desk.line().brief().lines().size());
    assertThrows(Refusal.class, () -> rules.together(2), "they don't go together");
    desk.session().undo();
    desk.session().undo();
    assertEquals(TOP, desk.line().line().source().tone());
  }

  @Test
  void a_line_is_slurred_and_no_longer() throws Refusal {
    desk =
        Opened.on(
            folder,
            "mill-stairs.musicxml",
            Opened.bars("P1", 1, "1-4", Optional.empty()),
            "Bassoon 1, Bassoon 2");
    rules = desk.session().rules();
    rules.slurring(Slurring.PAIRS);
    assertEquals(Slurring.PAIRS, desk.line().line().source().slurring());
    assertTrue(desk.line().line().stroke(1).slurred());
    rules.slurring(Slurring.AS_WRITTEN);
    assertFalse(desk.line().line().stroke(1).slurred());
    desk.session().undo();
    assertTrue(desk.line().line().stroke(1).slurred());
    assertEquals(List.of(), desk.refused());
  }

  @Test
  void tremolos_are_read_otherwise_and_back() throws Refusal {
    desk =
        Opened.on(
            folder,
            "signal-hill.musicxml",
            Opened.bars("Timpani", 1, "28", Optional.empty()),
            "Timpani, Harp");
    rules = desk.session().rules();
    assertEquals(1, desk.line().line().count(), "a roll");
    rules.tremolo(Tremolo.MEASURED);
    desk.goOn();
    assertEquals(Tremolo.MEASURED, desk.line().asked().line().tremolo());
    assertEquals(32, desk.line().line().count(), "thirty-second notes for a whole one");
    desk.session().undo();
    assertEquals(1, desk.line().line().count());
    assertEquals(List.of(), desk.refused());
  }

  @Test
  void what_writing_makes_of_the_line_can_be_undone_and_leaves_the_plan_proven() throws Refusal {
    List<Sentence> kept = desk.session().writing().changes(desk.session().desk()).sentences();
    rules.writing(now -> now.with(SourceTreatment.REMOVE));
    assertEquals(SourceTreatment.REMOVE, desk.session().desk().writing().source());
    assertTrue(desk.session().desk().isOptimal());
    assertNotEquals(kept, desk.session().writing().changes(desk.session().desk()).sentences());
    desk.session().undo();
    assertEquals(SourceTreatment.KEEP, desk.session().desk().writing().source());
    desk.session().redo();
    desk.session().byHand().edit(new stafette.plan.PlanEdit.Join(0));
    assertEquals(SourceTreatment.REMOVE, desk.session().desk().writing().source());
  }

  @Test
  void a_technique_that_not_everybody_has_is_allowed_to_one_player_and_taken_back() {
    assertFalse(has("Clarinet 1"));
    rules.allow("Clarinet 1", "double tonguing", true);
    assertTrue(has("Clarinet 1"));
    desk.session().undo();
    assertFalse(has("Clarinet 1"));
    desk.session().redo();
    rules.allow("Clarinet 1", "double tonguing", false);
    assertFalse(has("Clarinet 1"));
    rules.allow("Clarinet 1", "flying", true);
    assertEquals(1, desk.refused().size());
    assertTrue(desk.refused().get(0).contains("flying"), desk.refused().get(0));
  }

  @Test
  void who_goes_or_plays_something_else_takes_the_technique_along() {
    rules.allow("Clarinet 1", "double tonguing", true);
    desk.session().add("Clarinet 1", Optional.of("violin"));
    assertEquals(List.of(), desk.refused());
    desk.session().undo();
    assertTrue(has("Clarinet 1"));
    desk.session().remove("Clarinet 1");
    assertEquals(List.of(), desk.refused());
    assertEquals(2, desk.line().brief().players().size());
  }

  private boolean has(String player) {
    return desk.line().brief().players().stream()
        .filter(one -> one.name().equals(player))
        .flatMap(one -> one.skills().stream())
        .anyMatch(skill -> skill.technique().name().equals("double tonguing"));
  }

  @Test
  void another_line_stands_under_the_same_rules() throws Refusal {
    rules.assurance(new Assurance(95));
    rules.hocket(Hocket.GROUP);
    desk.session().choose(Opened.bars("Piano", 1, "5-9", Optional.empty()));
    desk.goOn();
    assertEquals(95, desk.line().brief().rules().assurance().percent());
    assertEquals(Hocket.GROUP, desk.line().brief().rules().hocket());
  }
}

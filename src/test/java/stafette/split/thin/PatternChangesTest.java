package stafette.split.thin;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.function.IntFunction;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.ShrinkingMode;
import stafette.Invented;
import stafette.check.alone.ThinnedPart;
import stafette.check.alone.ThinnedPart.ThinnedStretch;
import stafette.check.alone.ThinnedStroke;
import stafette.check.alone.Thinning;
import stafette.limits.Breath;
import stafette.limits.Range;
import stafette.plan.GivenStretch;
import stafette.plan.Player;
import stafette.score.Line;
import stafette.score.Pitch;
import stafette.score.Step;
import stafette.split.thin.ThinCases.ThinCase;

/** Where a background part changes its pattern. */
class PatternChangesTest {
  private static final Pitch B4 = new Pitch(Step.B, 0, 4);

  @Provide
  Arbitrary<ThinCase> longer() {
    return Arbitraries.longs().map(seed -> ThinCases.tiring(new Random(seed), 9));
  }

  @Property(tries = 40, shrinking = ShrinkingMode.OFF)
  void no_bar_is_thinner_than_both_its_neighbours(@ForAll("longer") ThinCase given) {
    Line line = given.line();
    ThinnedPart part = Thinner.thin(line, given.player(), Invented.rules());
    List<ThinnedStretch> rows = part.stretches();
    for (int i = 1; i + 1 < rows.size(); i++) {
      ThinnedStretch row = rows.get(i);
      boolean oneBar = bar(line, row.first()) == bar(line, row.last());
      assertFalse(
          oneBar
              && keeps(line, row, rows.get(i - 1).pattern()) > row.kept()
              && keeps(line, row, rows.get(i + 1).pattern()) > row.kept(),
          rows::toString);
    }
  }

  private static int bar(Line line, int j) {
    return line.bars().at(line.stroke(j).onset()).index();
  }

  private static int keeps(Line line, ThinnedStretch row, Thinning pattern) {
    return ThinnedStroke.of(line, row.first(), row.last(), pattern, true).size();
  }

  /** So each falls where something begins, if a part as full does. */
  @Property(tries = 40, shrinking = ShrinkingMode.OFF)
  void no_change_can_be_put_a_bar_earlier_or_later_at_less_cost(@ForAll("longer") ThinCase given) {
    ThinnedPart part = Thinner.thin(given.line(), given.player(), Invented.rules());
    assertFalse(AllThinnings.canMove(given, part), () -> part.stretches().toString());
  }

  /** Bars of which the player can play some in full, and all of them halved. */
  private static List<ThinnedStretch> tiring(int bars, IntFunction<Pitch> pitchOfBar) {
    Line line = Invented.line(bars * 16, 4, 120, i -> pitchOfBar.apply(i / 16));
    Player player = Invented.player("Reed 1", Invented.instrument("reed"), 12, 7, 8.5, 60);
    return Thinner.thin(line, player, Invented.rules()).stretches();
  }

  @Example
  void among_bars_that_are_alike_a_pattern_changes_after_four() {
    assertEquals(
        List.of(
            new ThinnedStretch(0, 63, Thinning.HALF, 32),
            new ThinnedStretch(64, 127, Thinning.ALL, 64)),
        tiring(8, bar -> Invented.A4));
  }

  @Example
  void where_the_harmony_changes_earlier_it_changes_there() {
    assertEquals(
        List.of(
            new ThinnedStretch(0, 47, Thinning.HALF, 24),
            new ThinnedStretch(48, 111, Thinning.ALL, 64)),
        tiring(7, bar -> bar < 3 ? Invented.A4 : B4));
  }

  /** Air for four bars of six, of which each has another pitch: one bar of silence would do. */
  @Example
  void who_needs_a_breath_leaves_out_more_than_one_bar() {
    Optional<Breath> lungs = Optional.of(new Breath(8, 0.3, 1, Map.of()));
    Player player =
        Invented.player(
            "Reed 1", Invented.instrument("reed", new Range(60, 96), lungs), 12, 10, 20, 8);
    Line line = Invented.line(6 * 8, 2, 120, i -> i / 8 % 2 == 0 ? Invented.A4 : B4);
    List<ThinnedStretch> rows = Thinner.thin(line, player, Invented.rules()).stretches();
    assertEquals(
        List.of(
            new ThinnedStretch(0, 15, Thinning.NOTHING, 0),
            new ThinnedStretch(16, 47, Thinning.ALL, 32)),
        rows);
  }

  @Example
  void after_something_else_to_play_the_pattern_goes_on() {
    Player free = Invented.player("Reed 1", Invented.instrument("reed"), 6, 6, 20, 8);
    Player busy =
        new Player(
            free.name(),
            free.instrument(),
            free.part(),
            free.skills(),
            List.of(new GivenStretch(2_500_000, 2_900_000, List.of(2_500_000L))));
    ThinnedPart part = Thinner.thin(Invented.line(3, 4, 120), busy, Invented.rules());
    assertEquals(
        List.of(
            new ThinnedStretch(0, 19, Thinning.HALF, 10),
            new ThinnedStretch(20, 27, Thinning.NOTHING, 0),
            new ThinnedStretch(28, 47, Thinning.HALF, 10)),
        part.stretches());
  }

  @Example
  void a_phrase_a_harmony_and_a_return_are_beginnings() {
    Line line = Invented.line(9 * 16, 4, 120, i -> i < 5 * 16 ? Invented.A4 : B4);
    assertEquals(ChangePlace.ELSEWHERE, ChangePlace.at(line, 16, false));
    assertEquals(ChangePlace.BEGINNING, ChangePlace.at(line, 16, true));
    assertEquals(ChangePlace.HALFWAY, ChangePlace.at(line, 2 * 16, false));
    assertEquals(ChangePlace.ELSEWHERE, ChangePlace.at(line, 2 * 16 + 4, false));
    assertEquals(ChangePlace.BEGINNING, ChangePlace.at(line, 4 * 16, false));
    assertEquals(ChangePlace.BEGINNING, ChangePlace.at(line, 5 * 16, false));
    assertEquals(ChangePlace.ELSEWHERE, ChangePlace.at(line, 6 * 16, false));
  }

  @Example
  void in_figuration_a_bar_of_other_notes_is_a_harmony_and_the_octave_is_none() {
    List<Step> chord = List.of(Step.A, Step.C, Step.E, Step.C);
    Line line =
        Invented.line(
            4 * 16,
            4,
            120,
            i ->
                i / 16 == 2
                    ? new Pitch(i % 2 == 0 ? Step.B : Step.D, 0, 4)
                    : new Pitch(chord.get(i % 4), 0, i / 16 == 1 ? 5 : 4));
    assertEquals(ChangePlace.ELSEWHERE, ChangePlace.at(line, 16, false));
    assertEquals(ChangePlace.BEGINNING, ChangePlace.at(line, 2 * 16, false));
    assertEquals(ChangePlace.ELSEWHERE, ChangePlace.at(line, 2 * 16 + 4, false));
  }
}

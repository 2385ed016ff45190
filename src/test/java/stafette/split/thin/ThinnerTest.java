package stafette.split.thin;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Stream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Assume;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.ShrinkingMode;
import stafette.Invented;
import stafette.check.Finding;
import stafette.check.Judge;
import stafette.check.alone.ThinnedPart;
import stafette.check.alone.ThinnedStroke;
import stafette.check.alone.Thinning;
import stafette.limits.Act;
import stafette.limits.Breath;
import stafette.limits.Capability;
import stafette.limits.Instrument;
import stafette.limits.Range;
import stafette.limits.Skill;
import stafette.limits.Technique;
import stafette.plan.Brief;
import stafette.plan.GivenStretch;
import stafette.plan.Plan;
import stafette.plan.Player;
import stafette.plan.Segment;
import stafette.score.Line;
import stafette.score.Manner;
import stafette.score.Pitch;
import stafette.score.Step;
import stafette.score.Stroke;
import stafette.time.Length;
import stafette.time.Position;
import stafette.time.Rank;

/** Background parts on small lines, held against all combinations of patterns and the judge. */
class ThinnerTest {
  private static final List<Integer> PARTS_OF_A_BEAT = List.of(1, 2, 3, 3, 4, 6);
  private static final int BARS = 3;

  private static final double MOST_COMBINATIONS = 400;

  /** A line and a player. */
  record Case(Line line, Player player) {}

  @Provide
  Arbitrary<Case> cases() {
    return Arbitraries.longs().map(seed -> random(new Random(seed)));
  }

  private static Case random(Random random) {
    Line line = line(random);
    Technique technique = technique(random.nextBoolean() ? Act.KEY : Act.TONGUE);
    Optional<Breath> lungs =
        random.nextBoolean()
            ? Optional.of(
                new Breath(
                    1 + 4 * random.nextDouble(), 0.1 + 0.4 * random.nextDouble(), 1, Map.of()))
            : Optional.empty();
    Range range = new Range(random.nextInt(5) == 0 ? 70 : 60, 96);
    Instrument plain = Invented.instrument("reed", range, lungs);
    double peak = 3 + 9 * random.nextDouble();
    Capability able =
        new Capability(
            (int) (peak * 1000),
            (int) (peak * (500 + random.nextInt(400))),
            1000 + random.nextInt(6000),
            1000 + random.nextInt(7000),
            random.nextBoolean() ? Capability.UNLIMITED : (int) (peak * 800));
    return new Case(
        line,
        new Player(
            "Colour", plain, Optional.empty(), List.of(new Skill(technique, able)), busy(random)));
  }

  private static Technique technique(Act act) {
    Technique plain = Invented.tonguing("strokes");
    return new Technique(
        plain.name(),
        act,
        plain.pitches(),
        plain.slurs(),
        plain.groups(),
        plain.twinStrings(),
        1,
        plain.expected(),
        plain.limit(),
        plain.lowestPerSecond(),
        Map.of(stafette.limits.Condition.LEAP, 0.8),
        plain.source(),
        plain.note());
  }

  /** Bars of one division each, with rests, slurs and two pitches that mostly repeat. */
  private static Line line(Random random) {
    List<Stroke> strokes = new ArrayList<>();
    boolean moving = random.nextInt(3) == 0;
    boolean high = false;
    boolean slurring = false;
    for (int beat = 0; beat < BARS * 4; beat++) {
      int parts =
          beat % 4 == 0 || strokes.isEmpty()
              ? PARTS_OF_A_BEAT.get(random.nextInt(PARTS_OF_A_BEAT.size()))
              : 1 + random.nextInt(4);
      for (int i = 0; i < parts; i++) {
        high ^= random.nextInt(moving ? 2 : 8) == 0;
        if (random.nextInt(12) > 0 || (beat == BARS * 4 - 1 && strokes.isEmpty())) {
          boolean on = random.nextInt(6) == 0;
          Stroke plain =
              Invented.stroke(
                  Position.ofQuarters((long) beat * parts + i, parts),
                  Length.ofQuarters(1, parts),
                  new Pitch(high ? Step.E : Step.A, 0, high ? 5 : 4));
          strokes.add(slurred(plain, slurring && random.nextInt(4) > 0, on));
          slurring = on;
        } else {
          slurring = false;
        }
      }
    }
    return Invented.lineOf(strokes, 60 + random.nextInt(120));
  }

  private static Stroke slurred(Stroke plain, boolean from, boolean on) {
    return new Stroke(
        plain.onset(),
        plain.tones(),
        plain.values(),
        plain.graces(),
        from,
        on,
        true,
        plain.articulations(),
        plain.dynamic(),
        Manner.PLAIN);
  }

  private static List<GivenStretch> busy(Random random) {
    List<GivenStretch> busy = new ArrayList<>();
    long at = -2_000_000;
    while (random.nextInt(3) == 0) {
      at += random.nextInt(4_000_000);
      long to = at + 100_000 + random.nextInt(1_000_000);
      busy.add(new GivenStretch(at, to, List.of(at, at + (to - at) / 2)));
      at = to + 1;
    }
    return busy;
  }

  @Property(tries = 120, shrinking = ShrinkingMode.OFF)
  void no_combination_of_patterns_that_the_judge_accepts_keeps_more(@ForAll("cases") Case given) {
    Assume.that(combinations(given) <= MOST_COMBINATIONS);
    ThinnedPart part = Thinner.thin(given.line, given.player, Invented.rules());
    assertEquals(most(given), part.strokes(), () -> given + " " + part.stretches());
  }

  @Property(tries = 120, shrinking = ShrinkingMode.OFF)
  void what_is_kept_can_be_played_and_the_beats_are_in_it(@ForAll("cases") Case given) {
    ThinnedPart part = Thinner.thin(given.line, given.player, Invented.rules());
    assertEquals(List.of(), part.kept().map(Judge::playing).orElse(List.of()));
    assertEquals(part.strokes(), part.kept().map(plan -> plan.line().count()).orElse(0));
    List<Position> onsets =
        part.kept().stream()
            .flatMap(plan -> plan.line().strokes().stream())
            .map(Stroke::onset)
            .toList();
    int next = 0;
    for (ThinnedPart.ThinnedStretch stretch : part.stretches()) {
      assertEquals(next, stretch.first());
      next = stretch.last() + 1;
      for (int j = stretch.first(); j <= stretch.last(); j++) {
        boolean beat = given.line.rank(j).compareTo(Rank.BEAT) <= 0;
        if (beat && stretch.pattern() != Thinning.NOTHING) {
          assertTrue(onsets.contains(given.line.stroke(j).onset()), () -> part.toString());
        }
      }
    }
    assertEquals(given.line.count(), next);
  }

  /**
   * Players who can play each bar, but not all of them: what was played before decides, and it pays
   * to spare oneself for the bars with more notes.
   */
  @Provide
  Arbitrary<Case> tiring() {
    return Arbitraries.longs().map(seed -> tiring(new Random(seed)));
  }

  private static Case tiring(Random random) {
    List<Stroke> strokes = new ArrayList<>();
    for (int bar = 0; bar < 5; bar++) {
      int perBeat = bar < 3 ? 2 : 4;
      for (int i = 0; i < 4 * perBeat; i++) {
        strokes.add(
            Invented.stroke(
                Position.ofQuarters(4L * bar * perBeat + i, perBeat),
                Length.ofQuarters(1, perBeat),
                Invented.A4));
      }
    }
    Line line = Invented.lineOf(strokes, 60 + random.nextInt(60));
    double rate = 1e6 / line.onsetMicros(1);
    Optional<Breath> lungs =
        random.nextInt(3) > 0
            ? Optional.of(
                new Breath(
                    1.5 + 3 * random.nextDouble(),
                    0.1 + random.nextDouble(),
                    0.5 + 3 * random.nextDouble(),
                    Map.of()))
            : Optional.empty();
    Player player =
        Invented.player(
            "Colour",
            Invented.instrument("reed", new Range(60, 96), lungs),
            rate * 2.2,
            rate * (0.3 + 0.9 * random.nextDouble()),
            1 + 12 * random.nextDouble(),
            1 + 7 * random.nextDouble());
    return new Case(line, player);
  }

  @Property(tries = 30, shrinking = ShrinkingMode.OFF)
  void where_tiredness_and_breath_decide_nothing_keeps_more_either(@ForAll("tiring") Case given) {
    ThinnedPart part = Thinner.thin(given.line, given.player, Invented.rules());
    assertEquals(most(given), part.strokes(), () -> given.player + " " + part.stretches());
  }

  private static double combinations(Case given) {
    long ready = Invented.rules().readyMicros(given.player);
    return new ThinChoices(given.line, given.player, ready, true)
        .all().stream().mapToDouble(List::size).reduce(1, (a, b) -> a * b);
  }

  /** The most strokes that any choice for all stretches keeps. */
  private static int most(Case given) {
    long ready = Invented.rules().readyMicros(given.player);
    return Stream.of(true, false)
        .filter(sounding -> sounding || given.player.instrument().isWind())
        .map(sounding -> new ThinChoices(given.line, given.player, ready, sounding).all())
        .mapToInt(choices -> most(given, choices, 0, List.of(), 0))
        .max()
        .orElse(0);
  }

  private static int most(
      Case given,
      List<List<ThinChoices.Choice>> choices,
      int stretch,
      List<ThinnedStroke> kept,
      int known) {
    int left =
        choices.subList(stretch, choices.size()).stream()
            .mapToInt(each -> each.get(0).kept().size())
            .sum();
    if (kept.size() + left <= known) {
      return known;
    }
    if (stretch == choices.size()) {
      return kept.isEmpty() || holds(given, kept) ? kept.size() : known;
    }
    int best = known;
    for (ThinChoices.Choice choice : choices.get(stretch)) {
      List<ThinnedStroke> more = new ArrayList<>(kept);
      more.addAll(choice.kept());
      best = Math.max(best, most(given, choices, stretch + 1, more, best));
    }
    return best;
  }

  private static boolean holds(Case given, List<ThinnedStroke> kept) {
    Line left = ThinnedStroke.line(given.line, kept);
    List<Segment> segments = new ArrayList<>();
    int first = 0;
    for (int j = 1; j <= left.count(); j++) {
      int stroke = j;
      boolean parted =
          j == left.count()
              || given.player.busy().stream()
                  .anyMatch(
                      busy ->
                          left.onsetMicros(stroke - 1) < busy.fromMicros()
                              && busy.fromMicros() <= left.onsetMicros(stroke));
      if (parted) {
        segments.add(new Segment(0, 0, first, j - 1));
        first = j;
      }
    }
    Plan plan = new Plan(new Brief(left, List.of(given.player), Invented.rules()), segments);
    List<Finding> findings = Judge.playing(plan);
    return findings.isEmpty();
  }

  @Example
  void a_fresh_player_who_can_play_it_all_keeps_it_all() {
    Player player = Invented.player("Reed 1", Invented.instrument("reed"), 12, 10, 20, 8);
    ThinnedPart part = Thinner.thin(Invented.line(4, 4, 120), player, Invented.rules());
    assertEquals(
        List.of(new ThinnedPart.ThinnedStretch(0, 63, Thinning.ALL, 64)), part.stretches());
  }

  @Example
  void where_the_score_gives_something_else_only_the_beats_concerned_are_left_out() {
    Player free = Invented.player("Reed 1", Invented.instrument("reed"), 12, 10, 20, 8);
    Player busy =
        new Player(
            free.name(),
            free.instrument(),
            free.part(),
            free.skills(),
            List.of(new GivenStretch(2_500_000, 2_900_000, List.of(2_500_000L))));
    ThinnedPart part = Thinner.thin(Invented.line(2, 4, 120), busy, Invented.rules());
    assertEquals(
        List.of(
            new ThinnedPart.ThinnedStretch(0, 19, Thinning.ALL, 20),
            new ThinnedPart.ThinnedStretch(20, 27, Thinning.NOTHING, 0),
            new ThinnedPart.ThinnedStretch(28, 31, Thinning.ALL, 4)),
        part.stretches());
    assertEquals(2, part.kept().orElseThrow().segments().size());
  }

  /** A quarter of its own in the middle of the second bar, and nothing of the line in that beat. */
  @Example
  void what_the_score_gives_may_touch_what_is_kept_on_both_sides() {
    Player free = Invented.player("Reed 1", Invented.instrument("reed"), 12, 10, 20, 8);
    Player busy =
        new Player(
            free.name(),
            free.instrument(),
            free.part(),
            free.skills(),
            List.of(new GivenStretch(2_500_000, 3_000_000, List.of(2_500_000L))));
    ThinnedPart part = Thinner.thin(Invented.line(2, 4, 120), busy, Invented.rules().withReady(0));
    assertEquals(
        List.of(
            new ThinnedPart.ThinnedStretch(0, 19, Thinning.ALL, 20),
            new ThinnedPart.ThinnedStretch(20, 23, Thinning.NOTHING, 0),
            new ThinnedPart.ThinnedStretch(24, 31, Thinning.ALL, 8)),
        part.stretches());
  }

  /** Somebody who must breathe every other bar, so that bars are left out now and then. */
  private static Player shortOfBreath() {
    Optional<Breath> lungs = Optional.of(new Breath(6, 0.3, 1, Map.of()));
    return Invented.player(
        "Reed 1", Invented.instrument("reed", new Range(60, 96), lungs), 12, 10, 20, 8);
  }

  private static int reckoned(int bars) {
    List<Integer> counts = new ArrayList<>();
    Thinner.thin(
        Invented.line(bars, 4, 120),
        shortOfBreath(),
        Invented.rules(),
        () -> false,
        progress -> counts.add(progress.reckoned()));
    return counts.get(counts.size() - 1);
  }

  /** Whenever the player last played, what follows a long silence asks the same. */
  @Example
  void a_line_twice_as_long_is_no_more_than_twice_the_reckoning() {
    int once = reckoned(16);
    int twice = reckoned(32);
    assertTrue(twice <= 2.5 * once, once + " and " + twice);
  }

  @Example
  void a_search_that_is_stopped_has_what_it_found_and_keeps_nothing_from_there() {
    AtomicInteger tried = new AtomicInteger();
    Thinner.Found found =
        Thinner.thin(
            Invented.line(16, 4, 120),
            shortOfBreath(),
            Invented.rules(),
            () -> tried.get() == 3,
            progress -> tried.set(progress.stretches()));
    assertFalse(found.proven());
    assertTrue(found.part().strokes() > 0, found.toString());
    assertEquals(List.of(), found.part().kept().map(Judge::playing).orElseThrow());
    ThinnedPart.ThinnedStretch last =
        found.part().stretches().get(found.part().stretches().size() - 1);
    assertEquals(Thinning.NOTHING, last.pattern());
    assertTrue(last.first() <= 3 * 16, last.toString());
    assertEquals(16 * 16 - 1, last.last());
  }

  @Example
  void a_search_that_may_not_begin_keeps_nothing_and_proves_nothing() {
    Thinner.Found found =
        Thinner.thin(
            Invented.line(2, 4, 120), shortOfBreath(), Invented.rules(), () -> true, p -> {});
    assertEquals(0, found.part().strokes());
    assertFalse(found.proven());
  }

  @Example
  void out_of_range_nothing_is_kept() {
    Player player =
        Invented.player(
            "Low reed",
            Invented.instrument("reed", new Range(30, 60), Optional.empty()),
            12,
            10,
            20,
            8);
    ThinnedPart part = Thinner.thin(Invented.line(2, 4, 120), player, Invented.rules());
    assertEquals(Optional.empty(), part.kept());
    assertEquals(0, part.strokes());
  }
}

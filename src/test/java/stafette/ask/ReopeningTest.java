package stafette.ask;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Random;
import java.util.stream.IntStream;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.lifecycle.AfterContainer;
import net.jqwik.api.lifecycle.BeforeContainer;
import stafette.check.JudgedPlan;
import stafette.keep.LimitsInForce;
import stafette.keep.OpenScore;
import stafette.limits.Assurance;
import stafette.plan.Brief;
import stafette.plan.Favour;
import stafette.plan.Hocket;
import stafette.plan.Lock;
import stafette.plan.Margin;
import stafette.plan.OverlapRule;
import stafette.plan.Pattern;
import stafette.plan.Plan;
import stafette.plan.PlanEdit;
import stafette.plan.Seat;
import stafette.plan.Segment;
import stafette.score.BarChoice;
import stafette.score.Line;
import stafette.score.LineChoice;
import stafette.score.ToneChoice;
import stafette.score.Tremolo;
import stafette.time.BeatUnit;
import stafette.time.Rational;
import stafette.words.Refusal;
import stafette.work.BellScore;
import stafette.work.OpenLine;
import stafette.work.OpenPlan;
import stafette.work.Reports;

/** What was on the desk, kept in a file and opened again. */
class ReopeningTest {
  /** After bar 4 the numbers begin again, as in the second movement of a file. */
  private static final List<String> NUMBERS = List.of("1", "2", "3", "4", "1", "2", "3", "4");

  private static final List<PlayerWish> PLAYERS =
      List.of(
          new PlayerWish("Flute 1", Optional.empty()),
          new PlayerWish("Flute 2", Optional.empty()),
          new PlayerWish("Clarinet 1", Optional.empty()),
          new PlayerWish("Anna", Optional.of("oboe")),
          new PlayerWish("Violin I", Optional.of("violin")));

  private static Path folder = Path.of("");
  private static Path score = Path.of("");

  @BeforeContainer
  static void writeScore() throws IOException {
    folder = Files.createTempDirectory("stafette-reopening");
    score = BellScore.writeSlashed(folder.resolve("bells.musicxml"), NUMBERS);
  }

  @AfterContainer
  static void removeScore() throws IOException {
    try (var files = Files.list(folder)) {
      for (Path file : files.toList()) {
        Files.delete(file);
      }
    }
    Files.delete(folder);
  }

  @Property(tries = 25)
  void any_desk_comes_back_as_it_was(@ForAll Random random) throws Exception {
    LimitsInForce limits = LimitsInForce.load(Optional.empty());
    OpenScore open = OpenScore.open(score, one(Tremolo.values(), random), false, limits);
    OpenLine line = line(open, limits, random);
    Optional<JudgedPlan> judged = plan(line.brief(), random).map(JudgedPlan::of);
    Path kept = folder.resolve("kept.json");
    Reports.savePlan(line.outcome(judged, Optional.empty()), kept, true);
    OpenPlan.OnDesk back = OpenPlan.onDesk(kept, Optional.empty(), limits);
    assertSame(line, back.line());
    assertEquals(judged.map(j -> j.plan().segments()), back.judged().map(j -> j.plan().segments()));
    assertEquals(judged.map(JudgedPlan::verdict), back.judged().map(JudgedPlan::verdict));
    Path again = folder.resolve("again.json");
    Reports.savePlan(back.line().outcome(back.judged(), back.found()), again, true);
    assertArrayEquals(Files.readAllBytes(kept), Files.readAllBytes(again));
  }

  private static void assertSame(OpenLine line, OpenLine back) {
    Brief before = line.brief();
    Brief after = back.brief();
    assertEquals(before.rules(), after.rules());
    assertEquals(before.players(), after.players());
    assertEquals(line.seats(), back.seats());
    assertEquals(line.tempo(), back.tempo());
    assertEquals(line.asked().line().tremolo(), back.asked().line().tremolo());
    assertEquals(
        IntStream.range(0, before.lines().size()).mapToObj(r -> notes(before, r)).toList(),
        IntStream.range(0, after.lines().size()).mapToObj(r -> notes(after, r)).toList());
    for (PlayerWish wish : line.asked().players()) {
      assertEquals(line.isFreed(wish.name()), back.isFreed(wish.name()), wish.name());
    }
    assertEquals(line.measured(), back.measured());
    assertEquals(line.asked().relaying().together(), back.asked().relaying().together());
    assertEquals(line.asked().relaying().eachTone(), back.asked().relaying().eachTone());
  }

  /** When each stroke sounds, and with which of the relays it is shared. */
  private static List<Object> notes(Brief brief, int relay) {
    Line line = brief.line(relay);
    List<Object> notes = new ArrayList<>(line.strokes());
    IntStream.range(0, line.count()).forEach(j -> notes.add(line.onsetMicros(j)));
    notes.add(brief.lines().indexOf(line));
    return notes;
  }

  private static OpenLine line(OpenScore open, LimitsInForce limits, Random random) throws Refusal {
    boolean eachTone = random.nextInt(4) == 0;
    LineChoice choice =
        new LineChoice(
            "Piano",
            Optional.of(new BarChoice("#" + (1 + random.nextInt(4)) + "-#" + 8)),
            OptionalInt.empty(),
            Optional.empty(),
            Optional.of(eachTone ? new ToneChoice.All() : new ToneChoice.FromTop(1)));
    LineRequest where = LineRequest.whole(open.file()).with(choice).with(open.tremolo());
    List<PlayerWish> players = new ArrayList<>(PLAYERS);
    Collections.shuffle(players, random);
    players = players.subList(0, 2 + random.nextInt(3));
    SplitRequest request =
        new SplitRequest(
            random.nextBoolean() ? where : where.with(tempo(random)),
            players,
            Optional.empty(),
            List.of(),
            new Assurance(50 + random.nextInt(45)),
            new OverlapRule(
                1 + random.nextInt(2),
                random.nextBoolean() ? OptionalInt.empty() : OptionalInt.of(2 + random.nextInt(3))),
            random.nextInt(20) / 10.0,
            one(Favour.values(), random),
            new Relaying(one(Hocket.values(), random), 1 + random.nextInt(2), eachTone, List.of()),
            20,
            new Margin(random.nextInt(6)),
            Map.of());
    return withPlayersSaid(OpenLine.in(open, request, limits), random);
  }

  private static TempoWish tempo(Random random) {
    return new TempoWish(Optional.of(BeatUnit.QUARTER), Rational.of(41 + random.nextInt(200), 2));
  }

  private static OpenLine withPlayersSaid(OpenLine line, Random random) throws Refusal {
    OpenLine said = line;
    Map<String, Seat> seats = new HashMap<>();
    for (var player : line.brief().players()) {
      if (random.nextInt(3) == 0) {
        said = said.freeing(player.name(), true);
      }
      if (random.nextBoolean() && !player.skills().isEmpty()) {
        int peak = 4 + random.nextInt(10);
        said =
            said.measuring(
                player.name(),
                player.skills().get(0).technique().name(),
                new OpenLine.Measured(peak + 0.125, peak / 2.0, 5 + random.nextInt(30)));
      }
      if (random.nextBoolean()) {
        seats.put(player.name(), new Seat(random.nextInt(20) / 2.0 - 5, random.nextInt(9)));
      }
    }
    said = said.asking(said.asked().with(seats));
    return said.locking(locks(said.brief(), random));
  }

  private static List<Lock> locks(Brief brief, Random random) {
    List<Lock> locks = new ArrayList<>();
    for (int i = random.nextInt(4); i > 0; i--) {
      int relay = random.nextInt(brief.lines().size());
      int first = random.nextInt(brief.line(relay).count() - 1);
      int last = first + random.nextInt(brief.line(relay).count() - first);
      int player = random.nextInt(brief.players().size());
      boolean any = random.nextBoolean() || brief.players().get(player).skills().isEmpty();
      locks.add(
          switch (random.nextInt(4)) {
            case 0 -> handoff(brief.line(relay), relay, random);
            case 1 ->
                new Lock.Exactly(
                    relay, player, any ? OptionalInt.empty() : OptionalInt.of(0), first, last);
            case 2 -> new Lock.In(relay, player, first, last);
            default -> new Lock.Out(relay, player, first, last);
          });
    }
    return locks;
  }

  /** A handoff neither on the line's first note nor on its last, where nobody hands over. */
  private static Lock handoff(Line line, int relay, Random random) {
    int first = 1 + random.nextInt(line.count() - 2);
    return new Lock.At(relay, first, first + random.nextInt(line.count() - 1 - first));
  }

  /** A plan as hands may leave it, good or not; none for some. */
  private static Optional<Plan> plan(Brief brief, Random random) {
    List<Segment> segments = new ArrayList<>();
    for (int relay = 0; relay < brief.lines().size(); relay++) {
      int from = 0;
      while (from < brief.line(relay).count()) {
        int last = Math.min(brief.line(relay).count() - 1, from + 8 + random.nextInt(40));
        int player = random.nextInt(brief.players().size());
        int ways = brief.players().get(player).ways().size();
        if (ways == 0) {
          return Optional.empty();
        }
        segments.add(new Segment(relay, player, random.nextInt(ways), from, last, Pattern.ALL));
        from = last + 1;
      }
    }
    Plan plan = new Plan(brief, segments);
    int other = (segments.get(0).player() + 1) % brief.players().size();
    return brief.rules().hocket() == Hocket.NO || brief.players().get(other).skills().isEmpty()
        ? Optional.of(plan)
        : plan.with(new PlanEdit.Pair(0, other, 0)).or(() -> Optional.of(plan));
  }

  private static <T> T one(T[] values, Random random) {
    return values[random.nextInt(values.length)];
  }

  @Example
  void a_lock_in_the_second_of_two_bars_with_the_same_number_stays_there() throws Exception {
    LimitsInForce limits = LimitsInForce.load(Optional.empty());
    OpenLine line =
        line(OpenScore.open(score, Tremolo.AS_WRITTEN, false, limits), limits, new Random(5))
            .locking(List.of(new Lock.Out(0, 1, 70, 75)));
    assertEquals(List.of(new Lock.Out(0, 1, 70, 75)), line.brief().rules().locks());
    assertTrue(line.asked().relaying().locks().get(0).from().startsWith("#"));
    Path kept = folder.resolve("locked.json");
    Reports.savePlan(line.outcome(Optional.empty(), Optional.empty()), kept, true);
    OpenPlan.OnDesk back = OpenPlan.onDesk(kept, Optional.empty(), limits);
    assertEquals(line.brief().rules().locks(), back.line().brief().rules().locks());
  }
}

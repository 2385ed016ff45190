package stafette.split.tempo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.BooleanSupplier;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import stafette.Invented;
import stafette.check.Costing;
import stafette.check.Judge;
import stafette.limits.Instrument;
import stafette.plan.Brief;
import stafette.plan.GivenStretch;
import stafette.plan.Player;
import stafette.score.Line;
import stafette.split.SmallBriefs;
import stafette.split.rotate.RotationOrCheapest;
import stafette.time.BeatUnit;
import stafette.time.Rational;
import stafette.time.TempoMark;

class TempoTableTest {
  private static final Instrument FLUTE = Invented.instrument("flute");

  @Property(tries = 60)
  void a_cell_is_the_cheapest_plan_of_all_choices_of_so_many_players(@ForAll long seed) {
    Brief brief = SmallBriefs.of(seed, 14, 4);
    for (TempoRow row : table(brief, 5).rows()) {
      for (int players = 1; players <= brief.players().size(); players++) {
        TempoCell cell = row.cell(players);
        assertTrue(cell.proven());
        assertEquals(
            cheapest(at(brief, row.mark()), players),
            cell.plan().map(plan -> Costing.of(plan).total()));
        int most = players;
        cell.plan().ifPresent(plan -> assertTrue(TempoCell.playersUsed(plan) <= most));
      }
    }
  }

  @Property(tries = 60)
  void a_plan_for_one_player_more_is_no_worse(@ForAll long seed) {
    for (TempoRow row : table(SmallBriefs.of(seed, 14, 4), 5).rows()) {
      int before = Integer.MAX_VALUE;
      for (TempoCell cell : row.cells()) {
        int cost = cell.plan().map(plan -> Costing.of(plan).total()).orElse(Integer.MAX_VALUE);
        assertTrue(cost <= before);
        before = cost;
        cell.plan().ifPresent(plan -> assertEquals(List.of(), Judge.judge(plan).findings()));
      }
    }
  }

  @Property(tries = 60)
  void at_the_fastest_tempo_there_is_a_plan_and_one_mark_faster_there_is_none(@ForAll long seed) {
    Brief brief = SmallBriefs.of(seed, 14, 4);
    for (FastestTempo edge : table(brief, 3).fastest()) {
      edge.plan().ifPresent(plan -> assertEquals(List.of(), Judge.judge(plan).findings()));
      if (edge.mark().isPresent() && edge.proven()) {
        TempoMark mark = edge.mark().get();
        TempoMark next = new TempoMark(mark.unit(), mark.perMinute().plus(Rational.ONE));
        assertTrue(cheapest(at(brief, mark), edge.players()).isPresent());
        assertEquals(Optional.empty(), cheapest(at(brief, next), edge.players()));
      }
    }
  }

  @Property(tries = 60)
  void one_player_more_is_never_slower_and_never_makes_fewer_than_the_fewest(@ForAll long seed) {
    TempoTable table = table(SmallBriefs.of(seed, 14, 4), 3);
    OptionalInt fewest = table.presentRow().fewest();
    Rational before = Rational.ZERO;
    for (FastestTempo edge : table.fastest()) {
      Rational perMinute = edge.mark().map(TempoMark::perMinute).orElse(Rational.ZERO);
      assertTrue(perMinute.compareTo(before) >= 0);
      before = perMinute;
    }
    for (int players = 1; players < fewest.orElse(1); players++) {
      assertEquals(TempoCell.NONE, table.presentRow().cell(players));
    }
  }

  /** A peak of 13.02 a second is reached at 13.02 · 60 / 3 = 260.4 quarters of three. */
  @Test
  void without_tiredness_the_peak_bounds_everybody() {
    TempoTable table = table(Invented.brief(Invented.line(4, 3, 240), flutes(2, 13, 2000)), 5);
    assertEquals("quarter = 260", table.fastest().get(0).mark().orElseThrow().toString());
    assertTrue(table.fastest().get(0).proven());
    assertEquals(table.fastest().get(0).mark(), table.fastest().get(1).mark());
  }

  /**
   * 95 gaps at r spend 95 · (1 − 8/r) strokes, 20 of them at r = 10.13, 202.7 quarters of three;
   * two players halve the line and reach the peak.
   */
  @Test
  void a_long_line_needs_more_players_the_faster_it_goes() {
    TempoTable table = table(Invented.brief(Invented.line(8, 3, 240), flutes(2, 8, 20)), 9);
    assertEquals(OptionalInt.of(2), table.presentRow().fewest());
    assertTrue(table.presentRow().fewestIsProven());
    assertEquals(
        List.of("quarter = 202", "quarter = 260"),
        table.fastest().stream().map(edge -> edge.mark().orElseThrow().toString()).toList());
    assertEquals(OptionalInt.of(1), table.rows().get(0).fewest());
    assertEquals(OptionalInt.empty(), table.rows().get(8).fewest());
  }

  @Test
  void the_reasons_of_the_present_tempo_are_kept_where_there_is_no_plan() {
    TempoTable table = table(Invented.brief(Invented.line(2, 4, 240), flutes(2, 8, 20)), 1);
    assertEquals(List.of(TempoCell.NONE, TempoCell.NONE), table.presentRow().cells());
    assertTrue(table.presentRow().reasons().get(0).text().toString().contains("beyond the peak"));
    assertEquals(Optional.empty(), table.fastest().get(1).mark());
    assertTrue(table.fastest().get(1).proven());
  }

  @Test
  void what_a_stopped_search_leaves_open_is_not_called_impossible() {
    Brief brief = Invented.brief(Invented.line(8, 3, 240), flutes(2, 8, 20));
    TempoMark mark = present(brief);
    TempoTable table = TempoTable.of(List.of(mark), 0, m -> at(brief, m), searches -> () -> true);
    assertTrue(table.presentRow().cells().stream().noneMatch(TempoCell::proven));
    assertTrue(table.fastest().stream().noneMatch(FastestTempo::proven));
  }

  @Test
  void each_search_is_told_how_many_may_come() {
    Brief brief = Invented.brief(Invented.line(8, 3, 240), flutes(2, 8, 20));
    AtomicInteger least = new AtomicInteger(Integer.MAX_VALUE);
    TempoTable.of(
        marks(brief, 5),
        2,
        m -> at(brief, m),
        searches -> {
          least.accumulateAndGet(searches, Math::min);
          return () -> false;
        });
    assertTrue(least.get() >= 3, "no search may take nearly all of the time: " + least);
  }

  private static Player[] flutes(int count, double sustained, double stamina) {
    return IntStream.range(0, count)
        .mapToObj(i -> Invented.player("Flute " + (i + 1), FLUTE, 13.02, sustained, stamina, 8))
        .toArray(Player[]::new);
  }

  /** Marks ten apart, the present one in their midst. */
  private static TempoTable table(Brief brief, int rows) {
    BooleanSupplier never = () -> false;
    return TempoTable.of(marks(brief, rows), rows / 2, mark -> at(brief, mark), n -> never);
  }

  private static List<TempoMark> marks(Brief brief, int rows) {
    Rational present = present(brief).perMinute();
    return IntStream.range(0, rows)
        .mapToObj(i -> present.plus(Rational.of(10L * (i - rows / 2))))
        .map(beats -> new TempoMark(BeatUnit.QUARTER, beats))
        .toList();
  }

  private static TempoMark present(Brief brief) {
    return brief.line().tempo().at(brief.line().stroke(0).onset());
  }

  /** The brief at another tempo, given passages scaled with it. */
  private static Brief at(Brief brief, TempoMark mark) {
    Line line = brief.line();
    double factor = present(brief).perMinute().dividedBy(mark.perMinute()).toDouble();
    List<Player> players =
        brief.players().stream()
            .map(p -> p.busyWith(p.busy().stream().map(busy -> stretched(busy, factor)).toList()))
            .toList();
    return TempoTable.bare(
        new Brief(
            line.at(line.tempo().scaledTo(line.stroke(0).onset(), mark)), players, brief.rules()));
  }

  private static GivenStretch stretched(GivenStretch busy, double factor) {
    return new GivenStretch(
        Math.round(busy.fromMicros() * factor),
        Math.round(busy.toMicros() * factor),
        busy.strokeMicros().stream().map(micros -> Math.round(micros * factor)).toList());
  }

  /** By splitting the line among every choice of so many players. */
  private static Optional<Integer> cheapest(Brief brief, int players) {
    return choices(brief.players(), players)
        .map(chosen -> new Brief(brief.line(), chosen, brief.rules()))
        .map(chosen -> RotationOrCheapest.among(chosen, chosen.players().size(), () -> false))
        .flatMap(
            result ->
                result.match(
                    best -> Stream.of(best.cost()), none -> Stream.of(), stopped -> Stream.of()))
        .min(Integer::compare);
  }

  private static Stream<List<Player>> choices(List<Player> players, int size) {
    return IntStream.range(1, 1 << players.size())
        .filter(bits -> Integer.bitCount(bits) == size)
        .mapToObj(
            bits -> {
              List<Player> chosen = new ArrayList<>();
              for (int i = 0; i < players.size(); i++) {
                if ((bits >> i & 1) == 1) {
                  chosen.add(players.get(i));
                }
              }
              return chosen;
            });
  }
}

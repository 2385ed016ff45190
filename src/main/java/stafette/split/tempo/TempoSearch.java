package stafette.split.tempo;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.Function;
import java.util.function.IntFunction;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import stafette.plan.Brief;
import stafette.plan.Plan;
import stafette.split.tempo.FewestPlayers.Fewest;
import stafette.time.Rational;
import stafette.time.TempoMark;

/**
 * Fills a {@link TempoTable}: the present tempo first, with the largest shares of the time, then
 * the other rows, then the fastest tempi. How few players are enough is kept for each tempo, so
 * that the edges of all numbers of players share their searches.
 */
final class TempoSearch {
  private static final int SHARES_OF_PRESENT = 4;
  private static final int SEARCHES_PER_ROW = 2;
  private static final int SEARCHES_PER_EDGE = 3;
  private static final int FASTER_AT_MOST = 4;
  private static final int FIRST_STEP = 16;

  private final List<TempoMark> marks;
  private final Function<TempoMark, Brief> briefs;
  private final IntFunction<BooleanSupplier> stops;
  private final Map<TempoMark, FewestPlayers> tried = new HashMap<>();
  private int toCome;

  TempoSearch(
      List<TempoMark> marks,
      Function<TempoMark, Brief> briefs,
      IntFunction<BooleanSupplier> stops) {
    this.marks = marks;
    this.briefs = briefs;
    this.stops = stops;
  }

  TempoTable table(int present) {
    TempoRow now = row(marks.get(present), () -> stops.apply(SHARES_OF_PRESENT));
    int players = now.cells().size();
    toCome = SEARCHES_PER_ROW * marks.size() + SEARCHES_PER_EDGE * players;
    List<TempoRow> rows = new ArrayList<>();
    for (int i = 0; i < marks.size(); i++) {
      rows.add(i == present ? now : row(marks.get(i), this::share));
    }
    return new TempoTable(
        rows,
        present,
        IntStream.rangeClosed(1, players).mapToObj(number -> fastest(number, rows)).toList());
  }

  private BooleanSupplier share() {
    toCome = Math.max(SEARCHES_PER_EDGE, toCome - 1);
    return stops.apply(toCome);
  }

  private TempoRow row(TempoMark mark, Supplier<BooleanSupplier> share) {
    return RowSearch.row(mark, briefs.apply(mark), fewest(mark, share), share);
  }

  private FewestPlayers fewest(TempoMark mark, Supplier<BooleanSupplier> share) {
    return tried.computeIfAbsent(mark, m -> FewestPlayers.of(briefs.apply(m), share.get()));
  }

  private FastestTempo fastest(int players, List<TempoRow> rows) {
    for (int i = rows.size() - 1; i >= 0; i--) {
      Optional<Plan> plan = rows.get(i).cell(players).plan();
      if (plan.isPresent()) {
        FastestTempo found = new FastestTempo(players, Optional.of(marks.get(i)), plan, false);
        return i + 1 == rows.size()
            ? above(found)
            : between(found, ceiling(marks.get(i + 1)), rows.get(i + 1).cell(players).proven());
      }
    }
    boolean proven = rows.stream().allMatch(row -> row.cell(players).proven());
    return new FastestTempo(players, Optional.empty(), Optional.empty(), proven);
  }

  /** Goes up in steps that double, until no plan is found. */
  private FastestTempo above(FastestTempo held) {
    FastestTempo best = held;
    long low = floor(held);
    long most = low * FASTER_AT_MOST;
    long step = Math.max(1, low / FIRST_STEP);
    while (low + step <= most) {
      TempoMark next = whole(low + step);
      FewestPlayers found = fewest(next, this::share);
      Fewest answer = found.answer(held.players());
      if (answer != Fewest.YES) {
        return between(best, low + step, answer == Fewest.NO);
      }
      best = new FastestTempo(held.players(), Optional.of(next), found.plan(), false);
      low += step;
      step *= 2;
    }
    return best;
  }

  /**
   * Bisects whole marks.
   *
   * @param limit the whole mark at or above the one that has no plan
   * @param proven whether that one is proven to have none
   */
  private FastestTempo between(FastestTempo held, long limit, boolean proven) {
    FastestTempo best = held;
    long low = floor(held);
    long high = limit;
    boolean sure = proven;
    while (high - low > 1) {
      TempoMark middle = whole((low + high) / 2);
      FewestPlayers found = fewest(middle, this::share);
      Fewest answer = found.answer(held.players());
      if (answer == Fewest.YES) {
        best = new FastestTempo(held.players(), Optional.of(middle), found.plan(), false);
        low = (low + high) / 2;
      } else {
        high = (low + high) / 2;
        sure = answer == Fewest.NO;
      }
    }
    return new FastestTempo(best.players(), best.mark(), best.plan(), sure);
  }

  private TempoMark whole(long perMinute) {
    return new TempoMark(marks.get(0).unit(), Rational.of(perMinute));
  }

  private static long floor(FastestTempo held) {
    return held.mark().orElseThrow().perMinute().floor().longValueExact();
  }

  private static long ceiling(TempoMark mark) {
    BigInteger below = mark.perMinute().negated().floor();
    return below.negate().longValueExact();
  }
}

package stafette.split.why;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import stafette.check.Strain;
import stafette.check.Tolerance;
import stafette.check.Wording;
import stafette.limits.Burst;
import stafette.limits.Demand;
import stafette.plan.Brief;
import stafette.plan.Player;
import stafette.score.Line;
import stafette.words.Sentence;

/** How fast a stretch of a line goes, and how fast each player can take it at that very place. */
final class Speeds {
  private final Line line;
  private final int first;
  private final int last;
  private final List<Tried> tried;

  /** What a stretch asks of a player in one way. */
  private record Tried(Player player, Demand demand) {
    static Stream<Tried> of(Player player, Line line) {
      return player.ways().stream()
          .map(way -> new Tried(player, Demand.of(player.instrument(), way, line)));
    }
  }

  /**
   * How fast some notes go, and how fast a player can play them.
   *
   * @param use the share of the limit that they take
   */
  private record Taken(Player player, int stroke, double use, Optional<Burst.Tightest> burst) {
    static final Comparator<Taken> EASIER = Comparator.comparingDouble(Taken::use);
  }

  Speeds(Brief brief, int first, int last) {
    this.line = brief.line();
    this.first = first;
    this.last = last;
    this.tried =
        brief.players().stream().flatMap(player -> Tried.of(player, brief.line())).toList();
  }

  /** The notes that are hardest for whoever finds them easiest; empty where no rate is tested. */
  Optional<Sentence> fastest() {
    return IntStream.rangeClosed(first + 1, last)
        .boxed()
        .flatMap(j -> taken(j).min(Taken.EASIER).stream())
        .max(Taken.EASIER)
        .flatMap(hardest -> hardest.burst().map(burst -> fastest(hardest.stroke(), burst)));
  }

  private Sentence fastest(int stroke, Burst.Tightest burst) {
    List<Taken> each =
        ofEachPlayer(player -> taken(stroke).filter(one -> one.player().equals(player)))
            .filter(one -> one.use() > 0)
            .toList();
    double rate = burst.perSecond();
    int decimals =
        each.stream()
            .filter(one -> !Tolerance.within(one.use(), 1))
            .mapToInt(one -> Wording.above(rate, rate / one.use()).scale())
            .max()
            .orElse(1);
    return Sentence.of(
        "{0} notes at {1} a second ({2}), and they manage {3}",
        burst.strokes(),
        Sentence.decimal(rate, decimals),
        line.placeOf(stroke).at(),
        Sentence.list(
            each.stream()
                .map(
                    one ->
                        Sentence.of(
                            "{0} {1}",
                            one.player().name(), Sentence.decimal(rate / one.use(), decimals)))
                .toList()));
  }

  private Stream<Taken> ofEachPlayer(Function<Player, Stream<Taken>> taken) {
    return tried.stream()
        .map(Tried::player)
        .distinct()
        .flatMap(player -> taken.apply(player).min(Taken.EASIER).stream());
  }

  private Stream<Taken> taken(int stroke) {
    return tried.stream().map(one -> taken(one, stroke));
  }

  private Taken taken(Tried one, int stroke) {
    double use = Strain.use(one.demand(), line, first, stroke);
    Optional<Burst.Tightest> burst =
        Stream.of(Burst.values())
            .filter(kind -> kind.use(one.demand(), line, first, stroke) == use)
            .flatMap(kind -> kind.tightest(one.demand(), line, first, stroke).stream())
            .findFirst();
    return new Taken(one.player(), stroke, use, burst);
  }
}

package stafette.ask;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stafette.limits.Assurance;
import stafette.plan.Favour;
import stafette.plan.Margin;
import stafette.plan.OverlapRule;
import stafette.plan.Rules;
import stafette.plan.Seat;

/**
 * What is asked of a line: who may share it, under which rules.
 *
 * @param line the line
 * @param players among whom; all of the players' file if none
 * @param playersFile players with measured limits
 * @param allowances techniques that not everybody has
 * @param assurance the share of players who should manage
 * @param overlap how much two players share
 * @param readySeconds rest before an entry
 * @param favour what to favour
 * @param relaying hockets, how many play at a time, and locks
 * @param searchSeconds how long the search may take
 * @param margin how far the tempo may drift while the plan holds; where no such plan is found, one
 *     without it will do
 * @param seats where players sit, by name, before what the players' file says
 */
public record SplitRequest(
    LineRequest line,
    List<PlayerWish> players,
    Optional<Path> playersFile,
    List<Allowance> allowances,
    Assurance assurance,
    OverlapRule overlap,
    double readySeconds,
    Favour favour,
    Relaying relaying,
    double searchSeconds,
    Margin margin,
    Map<String, Seat> seats) {
  /** How long a search may take unless something else is asked, seconds. */
  public static final double USUAL_SECONDS = 120;

  /** What is usual, for nobody yet. */
  public static SplitRequest usual(LineRequest line) {
    return new SplitRequest(
        line,
        List.of(),
        Optional.empty(),
        List.of(),
        Assurance.DEFAULT,
        OverlapRule.DEFAULT,
        Rules.DEFAULT_READY_SECONDS,
        Favour.BALANCE,
        Relaying.PLAIN,
        USUAL_SECONDS,
        Margin.DEFAULT,
        Map.of());
  }

  /** With another time for the search. */
  public SplitRequest within(double seconds) {
    return changed(line, players, allowances, relaying, seconds, seats);
  }

  /** With other seats. */
  public SplitRequest with(Map<String, Seat> others) {
    return changed(line, players, allowances, relaying, searchSeconds, others);
  }

  /** For another line or at another tempo. */
  public SplitRequest with(LineRequest other) {
    return changed(other, players, allowances, relaying, searchSeconds, seats);
  }

  /** Relayed otherwise. */
  public SplitRequest with(Relaying other) {
    return changed(line, players, allowances, other, searchSeconds, seats);
  }

  /** Favouring something else. */
  public SplitRequest with(Favour other) {
    return under(assurance, overlap, readySeconds, other);
  }

  /** Under other rules. */
  public SplitRequest under(
      Assurance otherAssurance, OverlapRule otherOverlap, double seconds, Favour otherFavour) {
    return new SplitRequest(
        line,
        players,
        playersFile,
        allowances,
        otherAssurance,
        otherOverlap,
        seconds,
        otherFavour,
        relaying,
        searchSeconds,
        margin,
        seats);
  }

  /** With another margin of tempo. */
  public SplitRequest with(Margin other) {
    return new SplitRequest(
        line,
        players,
        playersFile,
        allowances,
        assurance,
        overlap,
        readySeconds,
        favour,
        relaying,
        searchSeconds,
        other,
        seats);
  }

  /** Under the rules of another request, which lock nothing. */
  public SplitRequest underRulesOf(SplitRequest other) {
    return under(other.assurance, other.overlap, other.readySeconds, other.favour)
        .with(new Relaying(other.relaying.hocket(), other.relaying.together(), false, List.of()))
        .with(other.margin);
  }

  /** With other players and techniques. */
  public SplitRequest with(List<PlayerWish> others, List<Allowance> techniques) {
    return changed(line, others, techniques, relaying, searchSeconds, seats);
  }

  private SplitRequest changed(
      LineRequest otherLine,
      List<PlayerWish> otherPlayers,
      List<Allowance> otherAllowances,
      Relaying otherRelaying,
      double seconds,
      Map<String, Seat> otherSeats) {
    return new SplitRequest(
        otherLine,
        otherPlayers,
        playersFile,
        otherAllowances,
        assurance,
        overlap,
        readySeconds,
        favour,
        otherRelaying,
        seconds,
        margin,
        otherSeats);
  }
}

package stafette.work.who;

import java.util.List;
import java.util.Optional;
import stafette.ask.LineRequest;
import stafette.ask.MeasuredPlayers;
import stafette.ask.PlayerWish;
import stafette.ask.SplitRequest;
import stafette.chairs.Chairs;
import stafette.keep.LimitsInForce;
import stafette.keep.OpenScore;
import stafette.words.Refusal;

/**
 * Who could play a line.
 *
 * @param found the line
 * @param candidates every player of the score whose instrument is known, and the usual neighbours
 * @param crews the best few, each with its plan, the best first
 * @param likeliest who comes nearest to it together, where no crew has a plan
 */
public record WhoCouldPlay(
    LineRequest.FoundLine found,
    List<Candidate> candidates,
    List<SolvedCrew> crews,
    List<PlayerWish> likeliest) {
  public WhoCouldPlay {
    candidates = List.copyOf(candidates);
    crews = List.copyOf(crews);
    likeliest = List.copyOf(likeliest);
  }

  /**
   * Looks for players.
   *
   * @param request which line, under which rules; its players don't count
   * @throws Refusal if the score or the line is not there
   */
  public static WhoCouldPlay of(SplitRequest request, LimitsInForce limits) throws Refusal {
    return in(request, request.line().find(limits).score(), limits);
  }

  /**
   * Looks for players in a score that is open.
   *
   * @throws Refusal if the line is not there
   */
  public static WhoCouldPlay in(SplitRequest request, OpenScore score, LimitsInForce limits)
      throws Refusal {
    LineRequest.FoundLine found = request.line().in(score);
    Chairs chairs = Chairs.of(score.score(), limits.catalogue());
    SplitRequest free = request.with(request.relaying().with(List.of()));
    MeasuredPlayers measured = MeasuredPlayers.load(free.playersFile(), limits);
    List<Candidate> candidates =
        new Candidates(score.score(), chairs, found.line(), free, limits, measured).all();
    BestCrews crews = new BestCrews(found, free, limits, measured, chairs, candidates);
    return new WhoCouldPlay(found, candidates, crews.best(), crews.likeliest());
  }

  public Optional<SolvedCrew> best() {
    return crews.stream().findFirst();
  }

  /** Whether a crew's plan holds for the share of players asked for. */
  public boolean holds() {
    return best().map(SolvedCrew::holds).orElse(false);
  }

  /**
   * A request with the best crew for its players; with those who come nearest, so that a search can
   * say what would help, if no crew has a plan.
   */
  public SplitRequest into(SplitRequest request) {
    return best()
        .map(crew -> request.with(crew.players(), crew.asked().allowances()))
        .orElseGet(() -> request.with(likeliest, List.of()));
  }
}

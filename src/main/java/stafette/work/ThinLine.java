package stafette.work;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stafette.check.Kept;
import stafette.check.ThinnedPart;
import stafette.limits.Assurance;
import stafette.plan.Busy;
import stafette.plan.Favour;
import stafette.plan.OverlapRule;
import stafette.plan.Player;
import stafette.plan.Rules;
import stafette.score.Line;
import stafette.score.Score;
import stafette.split.Thinner;
import stafette.words.Sentence;
import stafette.words.Settable;

/** Finds what players can keep of a line in the background. */
public final class ThinLine {
  private ThinLine() {}

  /**
   * What is asked.
   *
   * @param line the line
   * @param players who shall keep some of it, each for itself
   * @param playersFile players with measured limits
   * @param allowances techniques that not everybody has
   * @param assurance the share of players who should manage
   * @param readySeconds rest before an entry
   */
  public record Request(
      LineRequest line,
      List<PlayerWish> players,
      Optional<Path> playersFile,
      List<Allowance> allowances,
      Assurance assurance,
      double readySeconds) {}

  /**
   * What came of it.
   *
   * @param score the score the line was taken from
   * @param line the line
   * @param parts one for each player
   */
  public record Outcome(OpenScore score, Line line, List<ThinnedPart> parts) {
    /** Whether somebody can't keep anything. */
    public boolean hasFindings() {
      return parts.stream().anyMatch(part -> part.kept().isEmpty());
    }
  }

  /**
   * Thins a line.
   *
   * @throws Refusal if the score, the line or a player is not there
   */
  public static Outcome thin(Request request, LimitsInForce limits) throws Refusal {
    LineRequest.Found found = request.line().find();
    Roster roster = roster(found.score(), found.line(), request, limits);
    return of(found.score(), found.line(), roster.of(request.players()), request, limits);
  }

  /**
   * Background parts beside a relay. Of several lines, for the tones of chords, the first is
   * thinned: the top tone is the one that the ear follows.
   *
   * @param wishes who colours; nobody who plays in the relay
   * @throws Refusal if one does, or is not there
   */
  public static Outcome beside(
      SplitLine.Outcome relay,
      SplitLine.Request request,
      List<PlayerWish> wishes,
      LimitsInForce limits)
      throws Refusal {
    for (PlayerWish wish : wishes) {
      if (relay.brief().players().stream()
          .anyMatch(player -> player.name().equalsIgnoreCase(wish.name()))) {
        throw Refusal.wrongUse(
            Sentence.of(
                "{0} is to colour the line{1} and is one of its players{2} already; leave one of the"
                    + " two out",
                wish.name(), Settable.COLOUR, Settable.PLAYERS));
      }
      refuseTheSource(wish, relay.score().score(), relay.brief().line());
    }
    Request background =
        new Request(
            request.line(),
            wishes,
            request.playersFile(),
            request.allowances(),
            request.assurance(),
            request.readySeconds());
    Line line = relay.brief().line();
    Roster roster = roster(relay.score(), line, background, limits);
    return of(relay.score(), line, roster.beside(wishes), background, limits);
  }

  private static void refuseTheSource(PlayerWish wish, Score score, Line line) throws Refusal {
    if (score
        .part(wish.name())
        .filter(part -> part.id().equals(line.source().part()))
        .isPresent()) {
      throw Refusal.wrongUse(
          Sentence.of(
              "{0} can't colour the line{1}: it is {0}'s own, and thinned there it could not be"
                  + " split again; split it first, then thin it in what was written",
              wish.name(), Settable.COLOUR));
    }
  }

  private static Roster roster(OpenScore score, Line line, Request request, LimitsInForce limits)
      throws Refusal {
    return new Roster(
        score.score(),
        List.of(line),
        limits,
        MeasuredPlayers.load(request.playersFile(), limits),
        request.assurance(),
        request.allowances());
  }

  private static Outcome of(
      OpenScore score, Line line, List<Player> players, Request request, LimitsInForce limits) {
    Rules rules =
        new Rules(
            request.assurance(),
            OverlapRule.DEFAULT,
            request.readySeconds(),
            Favour.BALANCE,
            limits.weights());
    Line everything = Kept.everything(line);
    List<ThinnedPart> parts = new ArrayList<>();
    for (Player player : players) {
      parts.add(Thinner.thin(line, besideLine(player, score.score(), everything), rules));
    }
    return new Outcome(score, line, List.copyOf(parts));
  }

  /** The player, with what the score gives it beside the line however thinned. */
  private static Player besideLine(Player player, Score score, Line everything) {
    List<Busy> busy =
        player
            .part()
            .flatMap(score::part)
            .map(part -> Busy.of(part, List.of(everything)))
            .orElse(List.of());
    return new Player(player.name(), player.instrument(), player.part(), player.skills(), busy);
  }
}

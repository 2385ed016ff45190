package stafette.work;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import stafette.ask.Allowance;
import stafette.ask.LineRequest;
import stafette.ask.MeasuredPlayers;
import stafette.ask.PlayerWish;
import stafette.ask.Roster;
import stafette.ask.SplitRequest;
import stafette.chairs.Chairs;
import stafette.check.alone.ThinnedPart;
import stafette.check.alone.ThinnedStroke;
import stafette.keep.LimitsInForce;
import stafette.keep.OpenScore;
import stafette.limits.Assurance;
import stafette.plan.Favour;
import stafette.plan.GivenStretch;
import stafette.plan.OverlapRule;
import stafette.plan.Player;
import stafette.plan.Rules;
import stafette.score.Line;
import stafette.score.Score;
import stafette.split.thin.Thinner;
import stafette.words.Refusal;
import stafette.words.Sentence;
import stafette.words.Settable;

/** Finds what players can keep of a line in the background. */
public final class ThinLine {
  /** So often the search for one player's part may ask whether to stop. */
  private static final long QUESTIONS_EACH = 20_000_000;

  private final OpenScore score;
  private final Line line;
  private final Line everything;
  private final Rules rules;
  private final double seconds;

  private ThinLine(OpenScore score, Line line, ThinRequest request, LimitsInForce limits) {
    this.score = score;
    this.line = line;
    this.everything = ThinnedStroke.everything(line);
    this.rules =
        new Rules(
            request.assurance(),
            OverlapRule.DEFAULT,
            request.readySeconds(),
            Favour.BALANCE,
            limits.weights());
    this.seconds = request.searchSeconds();
  }

  /**
   * What is asked.
   *
   * @param line the line
   * @param players who shall keep some of it, each for itself
   * @param playersFile players with measured limits
   * @param allowances techniques that not everybody has
   * @param assurance the share of players who should manage
   * @param readySeconds rest before an entry
   * @param searchSeconds for the searches of all players together
   */
  public record ThinRequest(
      LineRequest line,
      List<PlayerWish> players,
      Optional<Path> playersFile,
      List<Allowance> allowances,
      Assurance assurance,
      double readySeconds,
      double searchSeconds) {}

  /**
   * What came of it.
   *
   * @param score the score the line was taken from
   * @param line the line
   * @param parts one for each player
   * @param unfinished names of the players whose search was stopped: they might keep more
   */
  public record ThinOutcome(
      OpenScore score, Line line, List<ThinnedPart> parts, Set<String> unfinished) {
    public ThinOutcome {
      parts = List.copyOf(parts);
      unfinished = Set.copyOf(unfinished);
    }

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
  public static ThinOutcome thin(ThinRequest request, LimitsInForce limits) throws Refusal {
    return thin(request, limits, () -> false, progress -> {});
  }

  /**
   * Thins a line, telling how the search goes.
   *
   * @param stop asked often; ends the search, with what was found so far, if it says yes
   * @param progress told after each stretch of the line
   */
  public static ThinOutcome thin(
      ThinRequest request,
      LimitsInForce limits,
      BooleanSupplier stop,
      Consumer<Thinner.ThinProgress> progress)
      throws Refusal {
    LineRequest.FoundLine found = request.line().find(limits);
    Roster roster = roster(found.score(), found.line(), request, limits);
    ThinLine thinning = new ThinLine(found.score(), found.line(), request, limits);
    return thinning.of(roster.of(request.players()), stop, progress);
  }

  /**
   * Background parts beside a relay. Of several lines, for the tones of chords, the first is
   * thinned: the top tone is the one that the ear follows.
   *
   * @param wishes who colours; nobody who plays in the relay
   * @throws Refusal if one does, or is not there
   */
  public static ThinOutcome beside(
      SplitLine.SplitOutcome relay,
      SplitRequest request,
      List<PlayerWish> wishes,
      LimitsInForce limits,
      Consumer<Thinner.ThinProgress> progress)
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
    ThinRequest background =
        new ThinRequest(
            request.line(),
            wishes,
            request.playersFile(),
            request.allowances(),
            request.assurance(),
            request.readySeconds(),
            request.searchSeconds());
    Line line = relay.brief().line();
    Roster roster = roster(relay.score(), line, background, limits);
    ThinLine thinning = new ThinLine(relay.score(), line, background, limits);
    return thinning.of(roster.beside(wishes), () -> false, progress);
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

  private static Roster roster(
      OpenScore score, Line line, ThinRequest request, LimitsInForce limits) throws Refusal {
    return new Roster(
        score.score(),
        Chairs.of(score.score(), limits.catalogue()),
        List.of(line),
        limits,
        MeasuredPlayers.load(request.playersFile(), limits),
        request.assurance(),
        request.allowances());
  }

  private ThinOutcome of(
      List<Player> players, BooleanSupplier stop, Consumer<Thinner.ThinProgress> progress) {
    CountedWork time =
        new CountedWork(QUESTIONS_EACH * players.size(), Deadline.ofSeconds(seconds, stop)::isOver);
    List<Thinner.Found> found = new ArrayList<>();
    for (Player each : players) {
      Player player = besideLine(each);
      BooleanSupplier over = time.share(players.size() - found.size());
      found.add(
          alike(found, player).orElseGet(() -> Thinner.thin(line, player, rules, over, progress)));
    }
    return new ThinOutcome(
        score,
        line,
        found.stream().map(Thinner.Found::part).toList(),
        found.stream()
            .filter(each -> !each.proven())
            .map(each -> each.part().player().name())
            .collect(Collectors.toSet()));
  }

  private static Optional<Thinner.Found> alike(List<Thinner.Found> found, Player player) {
    return found.stream()
        .filter(each -> each.part().player().isLike(player))
        .findFirst()
        .map(each -> new Thinner.Found(each.part().by(player), each.proven()));
  }

  /** The player, with what the score gives it beside the line however thinned. */
  private Player besideLine(Player player) {
    List<GivenStretch> busy =
        player
            .part()
            .flatMap(score.score()::part)
            .map(part -> GivenStretch.besideThinned(part, List.of(everything)))
            .orElse(List.of());
    return player.busyWith(busy);
  }
}

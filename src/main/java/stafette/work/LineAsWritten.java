package stafette.work;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import stafette.ask.PlayerWish;
import stafette.ask.SplitRequest;
import stafette.check.JudgedPlan;
import stafette.keep.LimitsInForce;
import stafette.keep.OpenScore;
import stafette.plan.Brief;
import stafette.plan.Lock;
import stafette.plan.Pattern;
import stafette.plan.Plan;
import stafette.plan.Player;
import stafette.plan.Segment;
import stafette.score.LineSource;
import stafette.words.Refusal;

/** A line before anybody shares it: all of it with whoever has it in the score. */
public final class LineAsWritten {
  /** Stands in for an instrument that the limits don't know: it reaches any notes. */
  private static final String STAND_IN = "piano";

  private LineAsWritten() {}

  /**
   * A line of a score that is open, asked of whoever has it there.
   *
   * @param request which line, under which rules; its players don't count
   * @throws Refusal if the line is not there
   */
  public static OpenLine in(OpenScore score, SplitRequest request, LimitsInForce limits)
      throws Refusal {
    LineSource source = request.line().in(score).line().source();
    try {
      return OpenLine.in(score, askedOf(source, Optional.empty(), request), limits);
    } catch (Refusal unknownInstrument) {
      return OpenLine.in(score, askedOf(source, Optional.of(STAND_IN), request), limits);
    }
  }

  private static SplitRequest askedOf(
      LineSource source, Optional<String> instrument, SplitRequest request) {
    PlayerWish writer = new PlayerWish(source.partName(), instrument, false);
    return request.with(List.of(writer), List.of()).with(request.relaying().with(List.of()));
  }

  /**
   * The line in one hand, above those who are asked for it, with what they already play. Empty if
   * no technique fits it.
   */
  public static Optional<JudgedPlan> of(OpenLine line) {
    return Stream.<Function<OpenLine, Optional<Player>>>of(
            LineAsWritten::asked, LineAsWritten::writer, LineAsWritten::standIn)
        .flatMap(who -> who.apply(line).stream())
        .filter(player -> !player.ways().isEmpty())
        .findFirst()
        .map(player -> JudgedPlan.atOnce(alone(player, line.brief())));
  }

  private static Optional<Player> asked(OpenLine line) {
    return line.brief().players().stream()
        .filter(player -> player.part().equals(Optional.of(line.line().source().part())))
        .findFirst();
  }

  private static Optional<Player> writer(OpenLine line) {
    return player(line, Optional.empty());
  }

  private static Optional<Player> standIn(OpenLine line) {
    return player(line, Optional.of(STAND_IN));
  }

  private static Optional<Player> player(OpenLine line, Optional<String> instrument) {
    try {
      return line
          .asking(askedOf(line.line().source(), instrument, line.asked()))
          .brief()
          .players()
          .stream()
          .findFirst();
    } catch (Refusal unknown) {
      return Optional.empty();
    }
  }

  private static Plan alone(Player player, Brief asked) {
    List<Player> players =
        Stream.concat(
                Stream.of(player.busyWith(List.of())),
                asked.players().stream().filter(other -> !other.name().equals(player.name())))
            .toList();
    Brief brief = new Brief(asked.lines(), players, asked.rules().with(List.<Lock>of()));
    List<Segment> segments =
        IntStream.range(0, brief.lines().size())
            .mapToObj(
                relay -> new Segment(relay, 0, 0, 0, brief.line(relay).count() - 1, Pattern.ALL))
            .toList();
    return new Plan(brief, segments);
  }
}

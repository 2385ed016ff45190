package stafette.work;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stafette.ask.Allowance;
import stafette.ask.PlayerWish;
import stafette.ask.SplitRequest;
import stafette.check.JudgedPlan;
import stafette.check.SegmentReport;
import stafette.limits.Skill;
import stafette.plan.Brief;
import stafette.plan.Player;
import stafette.plan.Rules;
import stafette.words.Sentence;

/**
 * A change under which a line has a plan, verified by making one.
 *
 * @param plan a plan under the changed brief, the cheapest that was found
 */
public record Remedy(Change change, JudgedPlan plan) {
  /** What changes and what comes of it. */
  public Sentence sentence() {
    long percent =
        Math.round(
            100
                * plan.verdict().segments().stream()
                    .mapToDouble(SegmentReport::strain)
                    .max()
                    .orElse(0));
    return Sentence.of(
        "{0}: {1} play it, highest strain {2} %",
        change, Sentence.list(plan.plan().playing()), percent);
  }

  /** What to ask instead: all that was asked, with the players and rules of the plan. */
  SplitRequest instead(SplitRequest asked, List<PlayerWish> present) {
    Brief changed = plan.plan().brief();
    Rules rules = changed.rules();
    List<PlayerWish> players = new ArrayList<>(present);
    changed.players().stream()
        .skip(present.size())
        .map(player -> new PlayerWish(player.name(), Optional.of(player.instrument().name())))
        .forEach(players::add);
    return asked
        .with(asked.line().with(changed.line().source().slurring()))
        .under(rules.assurance(), rules.overlap(), rules.readySeconds(), rules.favour())
        .with(asked.relaying().with(rules.hocket()))
        .with(players, allowances(asked.allowances(), changed.players()));
  }

  private static List<Allowance> allowances(List<Allowance> before, List<Player> players) {
    List<Allowance> all = new ArrayList<>(before);
    for (Player player : players) {
      player.skills().stream()
          .map(Skill::technique)
          .filter(technique -> !technique.expected())
          .filter(
              technique ->
                  before.stream()
                      .noneMatch(one -> one.covers(player.name(), player.instrument(), technique)))
          .map(technique -> new Allowance(Optional.of(player.name()), technique.name()))
          .forEach(all::add);
    }
    return all;
  }
}

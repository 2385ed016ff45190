package stafette.work;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import stafette.ask.Allowance;
import stafette.ask.PlayerWish;
import stafette.ask.SplitRequest;
import stafette.check.JudgedPlan;
import stafette.check.SegmentReport;
import stafette.limits.Skill;
import stafette.plan.Brief;
import stafette.plan.Plan;
import stafette.plan.Player;
import stafette.plan.Rules;
import stafette.plan.TurnsInWords;
import stafette.words.Sentence;

/**
 * A change under which a line has a plan, verified by making one.
 *
 * @param plan a plan under the changed brief, the cheapest that was found
 */
public record Remedy(Change change, JudgedPlan plan) {
  /** So many entries show how the plan goes. */
  private static final int ENTRIES = 3;

  /** What changes and what comes of it. */
  public Sentence sentence() {
    long percent =
        Math.round(
            100
                * plan.verdict().segments().stream()
                    .mapToDouble(SegmentReport::strain)
                    .max()
                    .orElse(0));
    Plan made = plan.plan();
    if (made.turns().size() == 1) {
      return Sentence.of("{0}: {1}; highest strain {2} %", change, TurnsInWords.of(made), percent);
    }
    return Sentence.of(
        "{0}: {1}; {2}; highest strain {3} %",
        change, TurnsInWords.of(made), TurnsInWords.entries(made, ENTRIES), percent);
  }

  /** What to ask instead: all that was asked, with the players and rules of the plan. */
  SplitRequest instead(SplitRequest asked, List<PlayerWish> present) {
    Brief changed = plan.plan().brief();
    Rules rules = changed.rules();
    return asked
        .with(asked.line().with(changed.line().source().slurring()))
        .under(rules.assurance(), rules.overlap(), rules.readySeconds(), rules.favour())
        .with(asked.relaying().with(rules.hocket()))
        .with(players(present), allowances(asked.allowances(), changed.players()));
  }

  private List<PlayerWish> players(List<PlayerWish> present) {
    if (change instanceof Change.Players added) {
      return Stream.concat(present.stream(), added.more().stream()).toList();
    }
    return change instanceof Change.Divided divided
        ? present.stream()
            .flatMap(
                wish -> wish.equals(divided.whole()) ? divided.each().stream() : Stream.of(wish))
            .toList()
        : present;
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

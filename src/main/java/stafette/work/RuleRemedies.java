package stafette.work;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import stafette.ask.Allowance;
import stafette.ask.Briefing;
import stafette.ask.Roster;
import stafette.limits.Technique;
import stafette.plan.Brief;
import stafette.plan.Favour;
import stafette.plan.Hocket;
import stafette.plan.OverlapRule;
import stafette.plan.Player;
import stafette.plan.Rules;
import stafette.words.Refusal;
import stafette.words.Sentence;

/** Remedies that leave players and tempo as they are: other techniques, other rules. */
final class RuleRemedies {
  private static final int WIDEST = 8;
  private static final double TENTHS = 10;

  private final Briefing briefing;
  private final Brief brief;
  private final Rules rules;
  private final RemedyTrials trials;

  RuleRemedies(Briefing briefing, RemedyTrials trials) {
    this.briefing = briefing;
    this.brief = briefing.brief();
    this.rules = brief.rules();
    this.trials = trials;
  }

  /** Each technique that is not expected of everybody, and not allowed yet, by itself. */
  List<Remedy> techniques() throws Refusal {
    List<String> names =
        brief.players().stream()
            .flatMap(
                player -> player.instrument().techniques().stream().filter(t -> lacks(player, t)))
            .map(Technique::name)
            .distinct()
            .toList();
    List<Remedy> found = new ArrayList<>();
    for (String name : names) {
      trials
          .remedy(
              new Change.AllowedTechnique(name),
              briefing.allowing(new Allowance(Optional.empty(), name)))
          .ifPresent(found::add);
    }
    return found;
  }

  private boolean lacks(Player player, Technique technique) {
    return player.skills().stream().noneMatch(skill -> skill.technique().equals(technique))
        && Roster.suits(technique, brief.lines());
  }

  /** The narrowest overlap that is wider than the present one. */
  List<Remedy> overlap() {
    return widerOverlap().stream().toList();
  }

  private Optional<Remedy> widerOverlap() {
    int min = rules.overlap().min();
    int next = Math.max(min, rules.overlap().max().orElse(1) + 1);
    Optional<Remedy> toTheBeat =
        rules.overlap().max().isPresent()
            ? overlap(new OverlapRule(min, OptionalInt.empty()))
            : Optional.empty();
    if (toTheBeat.isPresent()) {
      return toTheBeat;
    }
    if (next > WIDEST || !trials.succeeds(with(new OverlapRule(min, OptionalInt.of(WIDEST))))) {
      return min > 1 ? overlap(new OverlapRule(1, rules.overlap().max())) : Optional.empty();
    }
    int most = next;
    while (most < WIDEST && !trials.succeeds(with(new OverlapRule(min, OptionalInt.of(most))))) {
      most++;
    }
    return overlap(new OverlapRule(min, OptionalInt.of(most)));
  }

  private Optional<Remedy> overlap(OverlapRule rule) {
    return trials.remedy(new Change.Overlap(rule), with(rule));
  }

  private Brief with(OverlapRule rule) {
    return brief.with(rules.with(rule));
  }

  /**
   * The longest rest before entries, in tenths of a second, that is shorter than the present, so
   * that turns can be shorter.
   */
  List<Remedy> ready() {
    if (rules.readySeconds() <= 0 || !trials.succeeds(ready(0))) {
      return List.of();
    }
    long fails = (long) Math.ceil(rules.readySeconds() * TENTHS);
    long works = trials.edge(0, fails, this::ready);
    BigDecimal seconds = Sentence.decimal(works / TENTHS, 1);
    return trials.remedy(new Change.Readiness(seconds), ready(works)).stream().toList();
  }

  /** Turns of any length where a regular rotation was asked for. */
  List<Remedy> anyTurns() {
    return rules.favour() == Favour.REGULAR
        ? trials
            .remedy(
                new Change.AnyTurns(), brief.with(rules.favouring(Favour.BALANCE, rules.weights())))
            .stream()
            .toList()
        : List.of();
  }

  private Brief ready(long tenths) {
    return brief.with(rules.withReady(tenths / TENTHS));
  }

  /** Pairs that take turns by stroke, by group or by beat. */
  List<Remedy> hockets() {
    List<Remedy> found = new ArrayList<>();
    for (Hocket hocket : Hocket.values()) {
      if (hocket != Hocket.NO && rules.hocket() == Hocket.NO && brief.players().size() > 1) {
        trials
            .remedy(new Change.Turns(hocket), brief.with(rules.with(hocket)))
            .ifPresent(found::add);
      }
    }
    return found;
  }
}

package stafette.work;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import stafette.ask.Briefing;
import stafette.check.alone.Thinning;
import stafette.keep.LimitsInForce;
import stafette.plan.Brief;
import stafette.score.Line;
import stafette.words.Refusal;

/** What would make a plan possible, the smallest change first; each with the plan it makes. */
final class Remedies {
  private Remedies() {}

  /**
   * Tries all kinds of remedies on a brief that has no plan.
   *
   * @param time ends the trials early; else what they find does not depend on it
   * @throws Refusal if a file that was there is gone
   */
  static List<Remedy> of(Briefing briefing, LimitsInForce limits, Allotment time) throws Refusal {
    RemedyTrials trials = new RemedyTrials(time::isOver);
    RuleRemedies rules = new RuleRemedies(briefing, trials);
    List<Remedy> found = new ArrayList<>(rules.techniques());
    rules.overlap().ifPresent(found::add);
    rules.ready().ifPresent(found::add);
    found.addAll(rules.hockets());
    Optional<TempoRemedy.Slower> slower = new TempoRemedy(briefing, trials).fastest();
    slower.filter(s -> s.small()).ifPresent(s -> found.add(s.remedy()));
    found.addAll(new PlayerRemedies(briefing, limits, trials).all());
    slower.filter(s -> !s.small()).ifPresent(s -> found.add(s.remedy()));
    thinned(briefing.brief(), trials).ifPresent(found::add);
    return found;
  }

  /** The fullest pattern; locks speak of notes that it may leave out, so it needs a free plan. */
  private static Optional<Remedy> thinned(Brief brief, RemedyTrials trials) {
    if (!brief.rules().locks().isEmpty()
        || !brief.lines().stream().allMatch(brief.line()::equals)) {
      return Optional.empty();
    }
    for (Thinning thinning : Thinning.partial()) {
      Optional<Remedy> remedy =
          thinning
              .of(brief.line())
              .flatMap(
                  line ->
                      trials.remedy(
                          new Change.Thinned(thinning),
                          thinned(brief, line.withClockFrom(brief.line().clockStart()))));
      if (remedy.isPresent()) {
        return remedy;
      }
    }
    return Optional.empty();
  }

  private static Brief thinned(Brief brief, Line line) {
    return new Brief(
        Collections.nCopies(brief.lines().size(), line), brief.players(), brief.rules());
  }
}

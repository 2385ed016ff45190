package stafette.work;

import java.util.ArrayList;
import java.util.List;
import stafette.ask.Briefing;
import stafette.keep.LimitsInForce;
import stafette.words.Refusal;

/**
 * What would make a plan possible, in the order to try it; each with the plan it makes.
 *
 * <p>The order follows the obstacle. Where notes come too fast for anybody, no relay helps, but
 * another way of making them: a technique, slurs, another colour or a hocket, and in the background
 * tremolo or thinning before these. Where players are spent, more of them help, or a section
 * divided. A slower tempo comes late in both.
 */
final class Remedies {
  private final Briefing briefing;
  private final RemedyTrials trials;
  private final RuleRemedies rules;
  private final PlayerRemedies players;
  private final NoteRemedies notes;
  private final TempoRemedy tempo;

  private Remedies(Briefing briefing, LimitsInForce limits, Deadline time) {
    this.briefing = briefing;
    this.trials = new RemedyTrials(time::isOver);
    this.rules = new RuleRemedies(briefing, trials);
    this.players = new PlayerRemedies(briefing, limits, trials);
    this.notes = new NoteRemedies(briefing, limits, trials);
    this.tempo = new TempoRemedy(briefing, trials);
  }

  /**
   * Tries all kinds of remedies on a brief that has no plan.
   *
   * @param time ends the trials early; else what they find does not depend on it
   * @throws Refusal if a file that was there is gone
   */
  static List<Remedy> of(Briefing briefing, LimitsInForce limits, Deadline time) throws Refusal {
    return new Remedies(briefing, limits, time).found();
  }

  /** One kind of remedy. */
  private interface Kind {
    List<Remedy> tried() throws Refusal;
  }

  private List<Remedy> found() throws Refusal {
    List<Remedy> found = new ArrayList<>();
    for (Kind kind : kinds()) {
      found.addAll(kind.tried());
    }
    return found;
  }

  private List<Kind> kinds() {
    return switch (trials.obstacle(briefing.brief())) {
      case RATE -> tooFast(notes.areInBackground());
      case SPENT ->
          List.of(
              players::more,
              players::divided,
              rules::anyTurns,
              rules::ready,
              players::colours,
              tempo::all,
              rules::techniques,
              notes::slurred,
              rules::hockets,
              notes::tremolo,
              notes::thinned);
      case OTHER ->
          List.of(
              rules::anyTurns,
              rules::techniques,
              rules::overlap,
              rules::ready,
              rules::hockets,
              notes::slurred,
              tempo::small,
              players::more,
              players::divided,
              players::colours,
              tempo::large,
              notes::tremolo,
              notes::thinned);
    };
  }

  private List<Kind> tooFast(boolean background) {
    List<Kind> kinds = new ArrayList<>(List.of(rules::techniques, notes::slurred));
    List<Kind> foreground = List.of(players::colours, rules::hockets);
    List<Kind> thinner = List.of(notes::tremolo, notes::thinned);
    kinds.addAll(background ? thinner : foreground);
    kinds.addAll(background ? foreground : thinner);
    kinds.addAll(List.of(players::more, tempo::all));
    return kinds;
  }
}

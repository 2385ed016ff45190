package stafette.desktop.rules;

import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.UnaryOperator;
import stafette.desktop.state.Desk;
import stafette.desktop.state.RuleChanges;
import stafette.desktop.state.Session;
import stafette.desktop.texts.Texts;
import stafette.limits.Assurance;
import stafette.plan.Favour;
import stafette.plan.Hocket;
import stafette.plan.Joins;
import stafette.plan.OverlapRule;
import stafette.plan.SourceTreatment;
import stafette.plan.WrittenAs;
import stafette.score.Slurring;
import stafette.score.ToneChoice;
import stafette.score.Tremolo;
import stafette.words.Refusal;

/** Puts the session under other rules, and says what that means for the plan. */
public final class RulesPresenter implements RuleGestures {
  private final Session session;
  private final RuleChanges rules;
  private final Texts texts;
  private final Consumer<String> say;
  private final RulesView view;

  public RulesPresenter(Session session, Texts texts, Consumer<String> say) {
    this.session = session;
    this.rules = session.rules();
    this.texts = texts;
    this.say = say;
    this.view = new RulesView(texts, this);
  }

  public RulesView view() {
    return view;
  }

  /** Shows the rules of the line on the desk. */
  public void show(Desk desk) {
    view.show(desk.line().map(line -> RulesNow.of(line, desk.writing())));
  }

  @Override
  public Optional<String> favour(Favour favour) {
    return judged(() -> rules.favour(favour));
  }

  @Override
  public Optional<String> overlap(OverlapRule overlap) {
    return judged(() -> rules.overlap(overlap));
  }

  @Override
  public Optional<String> ready(double seconds) {
    return judged(() -> rules.ready(seconds));
  }

  @Override
  public Optional<String> assurance(Assurance assurance) {
    return judged(() -> rules.assurance(assurance));
  }

  @Override
  public Optional<String> hocket(Hocket hocket) {
    return judged(() -> rules.hocket(hocket));
  }

  @Override
  public Optional<String> together(int players) {
    return judged(() -> rules.together(players));
  }

  @Override
  public Optional<String> tones(ToneChoice choice, boolean each) {
    return judged(() -> rules.tones(choice, each));
  }

  @Override
  public Optional<String> slurring(Slurring slurring) {
    return judged(() -> rules.slurring(slurring));
  }

  @Override
  public Optional<String> tremolo(Tremolo tremolo) {
    rules.tremolo(tremolo);
    return Optional.empty();
  }

  @Override
  public Optional<String> source(SourceTreatment source) {
    return written(now -> now.with(source));
  }

  @Override
  public Optional<String> joins(Joins joins) {
    return written(now -> now.with(joins));
  }

  @Override
  public Optional<String> balanced(boolean balanced) {
    return written(now -> now.balanced(balanced));
  }

  @Override
  public Optional<String> pedals(boolean told) {
    return written(now -> now.pedals(told));
  }

  private Optional<String> written(UnaryOperator<WrittenAs> change) {
    rules.writing(change);
    return Optional.empty();
  }

  /** Does it; the words why not, if it is refused. */
  private Optional<String> judged(Session.SessionStep step) {
    Desk before = session.desk();
    try {
      step.run();
    } catch (Refusal e) {
      return Optional.of(texts.say(e));
    }
    if (!session.desk().equals(before)) {
      say.accept(texts.get(key(session.desk())));
    }
    return Optional.empty();
  }

  private static String key(Desk desk) {
    return desk.plan()
        .map(plan -> plan.verdict().holds() ? "rules.judged" : "rules.broken")
        .orElse("rules.unplanned");
  }
}

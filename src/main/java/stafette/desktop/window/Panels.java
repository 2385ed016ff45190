package stafette.desktop.window;

import java.util.function.Consumer;
import java.util.function.Predicate;
import stafette.desktop.passages.PassagesPresenter;
import stafette.desktop.players.PlayersPresenter;
import stafette.desktop.relay.RelayPresenter;
import stafette.desktop.rules.RulesPresenter;
import stafette.desktop.state.Desk;
import stafette.desktop.state.Session;
import stafette.desktop.tempo.TempoPresenter;
import stafette.desktop.texts.Texts;
import stafette.desktop.verdict.VerdictPresenter;
import stafette.desktop.welcome.WelcomeView;
import stafette.desktop.written.WrittenPresenter;
import stafette.keep.Samples;

/** The panels of one window, each with what joins it to the session. */
record Panels(
    RelayPresenter relay,
    PassagesPresenter passages,
    TempoPresenter tempo,
    PlayersPresenter players,
    RulesPresenter rules,
    VerdictPresenter verdict,
    WrittenPresenter written,
    WelcomeView welcome) {
  /**
   * @param say says something in a line
   * @param leaving does what clears the desk; no if the user would rather not
   * @param why brings the verdict to the front
   * @param doors the ways to a score
   */
  static Panels of(
      Session session,
      Texts texts,
      Consumer<String> say,
      Predicate<Runnable> leaving,
      Runnable why,
      WelcomeView.WelcomeDoors doors) {
    RelayPresenter relay = new RelayPresenter(session, texts, why);
    return new Panels(
        relay,
        new PassagesPresenter(session, texts, leaving),
        new TempoPresenter(session, texts),
        new PlayersPresenter(session, texts),
        new RulesPresenter(session, texts, say),
        new VerdictPresenter(session, texts, relay.view()::focusSegment),
        new WrittenPresenter(session, texts, relay.view()::reveal),
        new WelcomeView(texts, doors, Samples.titles()));
  }

  /**
   * Shows a desk in all of them; whether the verdict should not be overlooked.
   *
   * @param dragging whether the plan is only tried
   */
  boolean show(Desk desk, boolean dragging) {
    if (!dragging) {
      welcome.setVisible(desk.score().isEmpty());
      passages.show(desk);
      players.show(desk);
      rules.show(desk);
    }
    relay.show(desk);
    tempo.show(desk);
    return verdict.show(desk, dragging);
  }
}

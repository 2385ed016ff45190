package stafette.desktop.window;

import stafette.desktop.passages.PassagesView;
import stafette.desktop.players.PlayersView;
import stafette.desktop.relay.RelayView;
import stafette.desktop.rules.RuleGestures;
import stafette.desktop.rules.RulesView;
import stafette.desktop.tempo.TempoRule;
import stafette.desktop.texts.Texts;
import stafette.desktop.verdict.VerdictView;
import stafette.desktop.welcome.WelcomeView;
import stafette.desktop.written.WrittenView;
import stafette.keep.Samples;

/** The panels of one window. */
record Panels(
    RelayView relay,
    PassagesView passages,
    TempoRule tempo,
    PlayersView players,
    RulesView rules,
    VerdictView verdict,
    WrittenView written,
    WelcomeView welcome) {
  /**
   * @param doors the ways to a score
   */
  static Panels of(
      Texts texts, Gestures gestures, RuleGestures rules, WelcomeView.WelcomeDoors doors) {
    RelayView relay = new RelayView(texts, gestures);
    return new Panels(
        relay,
        new PassagesView(texts, gestures),
        new TempoRule(texts, gestures),
        new PlayersView(texts, gestures),
        new RulesView(texts, rules),
        new VerdictView(texts, gestures),
        new WrittenView(texts, bar -> relay.reveal(bar.span())),
        new WelcomeView(texts, doors, Samples.titles()));
  }
}

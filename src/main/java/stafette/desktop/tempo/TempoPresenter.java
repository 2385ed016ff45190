package stafette.desktop.tempo;

import stafette.desktop.state.Desk;
import stafette.desktop.state.Session;
import stafette.desktop.texts.Texts;
import stafette.time.TempoMark;
import stafette.work.OpenLine;

/** Shows the tempo of the line on the desk and where its plan holds, and takes it elsewhere. */
public final class TempoPresenter implements TempoRule.Moved {
  private final Session session;
  private final TempoRule view;

  public TempoPresenter(Session session, Texts texts) {
    this.session = session;
    this.view = new TempoRule(texts, this);
  }

  public TempoRule view() {
    return view;
  }

  public void show(Desk desk) {
    desk.line().ifPresentOrElse(line -> show(desk, line), view::clear);
  }

  private void show(Desk desk, OpenLine line) {
    desk.plan()
        .ifPresentOrElse(
            judged -> view.show(line.tempo(), judged.window()), () -> view.show(line.tempo()));
  }

  @Override
  public void to(TempoMark tempo, boolean done) {
    session.tempo(tempo, done);
  }
}

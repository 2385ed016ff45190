package stafette.desktop.written;

import java.util.function.Consumer;
import stafette.desktop.state.Session;
import stafette.desktop.texts.Texts;
import stafette.time.Span;

/** Shows the bars that would be written, once somebody looks. */
public final class WrittenPresenter {
  private final Session session;
  private final WrittenView view;

  /**
   * @param reveal shows a stretch of the plan
   */
  public WrittenPresenter(Session session, Texts texts, Consumer<Span> reveal) {
    this.session = session;
    this.view = new WrittenView(texts, bar -> reveal.accept(bar.span()));
  }

  public WrittenView view() {
    return view;
  }

  /** Looks at what the plan on the desk would change. */
  public void look() {
    session.writing().lookAtBars(view::show);
  }
}

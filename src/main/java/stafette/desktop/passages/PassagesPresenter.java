package stafette.desktop.passages;

import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import javafx.application.Platform;
import stafette.desktop.state.Desk;
import stafette.desktop.state.Session;
import stafette.desktop.texts.Texts;
import stafette.score.BarChoice;
import stafette.score.LineChoice;
import stafette.score.Score;
import stafette.work.CheckScore;

/** Shows the passages of the score on the desk, and puts there the line that is chosen. */
public final class PassagesPresenter implements PassagesView.Chosen {
  private final Session session;
  private final Predicate<Runnable> leaving;
  private final PassagesView view;
  private Optional<CheckScore.CheckedScore> shown = Desk.EMPTY.score();

  /**
   * @param leaving does what clears the desk; no if the user would rather not
   */
  public PassagesPresenter(Session session, Texts texts, Predicate<Runnable> leaving) {
    this.session = session;
    this.leaving = leaving;
    this.view = new PassagesView(texts, this);
  }

  public PassagesView view() {
    return view;
  }

  public void show(Desk desk) {
    if (!shown.equals(desk.score())) {
      shown = desk.score();
      view.show(
          desk.passages(),
          shown
              .map(CheckScore.CheckedScore::score)
              .map(open -> open.score())
              .map(Score::parts)
              .orElse(List.of()));
    }
    view.mark(desk.line().map(line -> line.line().source()));
  }

  @Override
  public void passage(CheckScore.PassageVerdicts passage) {
    choose(() -> session.choose(passage));
  }

  @Override
  public void line(LineForm.Wish line) {
    LineChoice choice =
        new LineChoice(
            line.part(),
            line.bars().map(BarChoice::new),
            line.staves(),
            line.voices(),
            Optional.of(line.tone()),
            line.reading());
    choose(() -> session.choose(choice));
  }

  /** The passage shown as chosen stays the present one where the user would rather stay with it. */
  private void choose(Runnable other) {
    if (!leaving.test(other)) {
      Platform.runLater(view::unchoose);
    }
  }
}

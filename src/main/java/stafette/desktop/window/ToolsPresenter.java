package stafette.desktop.window;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javafx.scene.Scene;
import stafette.check.JudgedPlan;
import stafette.desktop.hearing.HearingPresenter;
import stafette.desktop.playing.HearingWish;
import stafette.desktop.state.BackgroundWork;
import stafette.desktop.state.Desk;
import stafette.desktop.state.LineInWords;
import stafette.desktop.state.Session;
import stafette.desktop.state.Writing;
import stafette.desktop.texts.Texts;
import stafette.keep.Outputs;
import stafette.keep.Remembered;
import stafette.plan.WrittenAs;
import stafette.time.Rational;
import stafette.work.ExportPlan;
import stafette.work.OpenLine;
import stafette.work.ScoreChanges;

/** Does what the tools ask for. */
final class ToolsPresenter implements Tools.Actions {
  private final Session session;
  private final Remembered remembered;
  private final Asking asking;
  private final Leaving leaving;
  private final HearingPresenter listener;
  private final Texts texts;
  private final Scene scene;
  private final LineInWords words;

  ToolsPresenter(
      Session session,
      Remembered remembered,
      Asking asking,
      Leaving leaving,
      HearingPresenter listener,
      Texts texts,
      Scene scene,
      LineInWords words) {
    this.session = session;
    this.remembered = remembered;
    this.asking = asking;
    this.leaving = leaving;
    this.listener = listener;
    this.texts = texts;
    this.scene = scene;
    this.words = words;
  }

  @Override
  public void open() {
    asking.toOpen().ifPresent(this::opened);
  }

  @Override
  public void open(Path file) {
    words.attempt(
        texts,
        () -> {
          if (remembered.forgetMissing(file)) {
            words.warn(texts.get("window.missing", file));
          } else {
            opened(file);
          }
        });
  }

  private void opened(Path file) {
    leaving.before(() -> session.open(file));
  }

  @Override
  public List<Path> recent() {
    return remembered.recent();
  }

  @Override
  public void plan() {
    session.plan();
  }

  @Override
  public void stop() {
    session.enough();
    listener.enough();
    words.say(texts.get("window.stopped"));
  }

  @Override
  public void undo() {
    session.undo();
  }

  @Override
  public void redo() {
    session.redo();
  }

  @Override
  public void compare() {
    session.compare();
  }

  /** Hears the plan, or silences it. */
  void hear() {
    listener.hear();
  }

  @Override
  public void write() {
    Desk now = session.desk();
    if (now.plan().isPresent()) {
      session.beside(going -> session.writing().changes(now), changes -> write(now, changes));
    }
  }

  private void write(Desk now, ScoreChanges changes) {
    words.rest();
    if (changes.sentences().isEmpty()) {
      words.say(texts.get("window.unchanged"));
      return;
    }
    Asking.Proposal proposal =
        new Asking.Proposal(
            texts.get("write.title"),
            Stream.concat(
                    changes.sentences().stream().map(texts::say),
                    new BarByBar(texts).lines(changes.parts()).stream())
                .toList(),
            texts.get("verdict.caution"),
            texts.get("write.go"));
    if (asking.agrees(proposal)) {
      asking.toWrite(words.proposed("-relay.musicxml")).ifPresent(file -> write(now, file));
    }
  }

  private void write(Desk now, Path file) {
    session.toFile(
        going -> session.writing().write(now, file),
        saved -> {
          words.say(texts.get("window.written", saved.file()));
          words.attempt(texts, () -> session.writing().written(now, saved.file()));
        });
  }

  @Override
  public void savePlan() {
    words.attempt(
        texts,
        () -> {
          Optional<Path> file = asking.toWrite(words.proposed(".json"));
          if (file.isPresent()) {
            session.writing().savePlan(file.get());
            words.say(texts.get("window.written", file.get()));
          }
        });
  }

  @Override
  public void export(Tools.Export what) {
    Optional<JudgedPlan> judged = session.desk().plan();
    Optional<OpenLine> line = session.desk().line();
    Outputs outputs = Writing.outputs(session.desk());
    if (judged.isEmpty() || line.isEmpty()) {
      words.rest();
    } else if (what == Tools.Export.SOUND && listener.heard().isEmpty()) {
      words.warn(texts.get("hearing.nobody"));
    } else {
      asking
          .toWrite(words.proposed(what.ending()))
          .ifPresent(
              file ->
                  session.toFile(
                      exporting(what, judged.get(), line.get(), file, outputs),
                      written ->
                          words.say(
                              written
                                  .map(one -> texts.get("window.written", one))
                                  .orElse(texts.get("window.stopped")))));
    }
  }

  /** Writes a file; none if it is ended. */
  private BackgroundWork.WorkPiece<Optional<Path>> exporting(
      Tools.Export what, JudgedPlan judged, OpenLine line, Path file, Outputs outputs) {
    ExportPlan.HeardAs heard = asHeardNow();
    WrittenAs how = session.desk().writing();
    return going -> {
      outputs.add(file, true);
      boolean written = true;
      switch (what) {
        case TIMELINE -> ExportPlan.timeline(judged, file, texts::say);
        case SHEET -> ExportPlan.sheet(judged, how, line, file, texts.locale(), texts::say);
        case SOUND ->
            written = ExportPlan.sound(judged, line, file, heard, session.limits(), going::isOver);
      }
      return written ? Optional.of(file) : Optional.empty();
    };
  }

  private ExportPlan.HeardAs asHeardNow() {
    HearingWish wish = listener.wish();
    return new ExportPlan.HeardAs(
        listener.heard(), wish.behind(), Rational.of(wish.percent(), 100));
  }

  @Override
  public boolean isDark() {
    return remembered.isDark();
  }

  @Override
  public void dark(boolean now) {
    Style.of(now).applyTo(scene);
    words.attempt(texts, () -> remembered.dark(now));
  }
}

package stafette.desktop.window;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import javafx.scene.Scene;
import stafette.desktop.state.Session;
import stafette.desktop.texts.Texts;
import stafette.plan.Handoff;
import stafette.plan.Plan;
import stafette.score.Line;
import stafette.time.Rational;
import stafette.words.Sentence;
import stafette.work.ExportPlan;
import stafette.work.JudgedPlan;
import stafette.work.OpenLine;
import stafette.work.Playback;
import stafette.work.Refusal;
import stafette.work.Remembered;
import stafette.work.WriteScore;

/** Does what the tools ask for. */
final class Doer implements Tools.Actions {
  private static final long AROUND_MICROS = 2_000_000;

  private final Session session;
  private final Remembered remembered;
  private final Asking asking;
  private final Leaving leaving;
  private final Listener listener;
  private final Texts texts;
  private final Scene scene;
  private final Words words;
  private Style style = Style.LIGHT;
  private int percent = 100;

  /** Where something is said. */
  interface Words {
    void say(String words);

    void warn(String words);

    /** A name for a file made from the score's. */
    String proposed(String ending);
  }

  Doer(
      Session session,
      Remembered remembered,
      Asking asking,
      Leaving leaving,
      Listener listener,
      Texts texts,
      Scene scene,
      Words words) {
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
    attempt(
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

  @Override
  public void play() {
    if (listener.isPlaying()) {
      listener.stop();
    } else {
      playback().ifPresent(playback -> listener.play(playback, from()));
    }
  }

  private long from() {
    return session
        .desk()
        .plan()
        .map(JudgedPlan::plan)
        .filter(plan -> listener.chosen() < plan.segments().size())
        .map(
            plan ->
                plan.line(plan.segments().get(listener.chosen()))
                    .onsetMicros(plan.segments().get(listener.chosen()).first()))
        .orElse(0L);
  }

  @Override
  public void loop() {
    Optional<Handoff> next =
        session.desk().plan().map(JudgedPlan::plan).flatMap(plan -> handoffAt(plan, from()));
    if (next.isPresent()) {
      Line line = session.desk().line().orElseThrow().brief().line(next.get().enters().relay());
      long from = line.onsetMicros(next.get().enters().first()) - AROUND_MICROS;
      long to = line.endMicros(next.get().leaves().last()) + AROUND_MICROS;
      playback().ifPresent(playback -> listener.loop(playback, from, to));
    }
  }

  /** The first handoff from a moment on. */
  private static Optional<Handoff> handoffAt(Plan plan, long micros) {
    return plan.handoffs().stream()
        .filter(
            handoff ->
                plan.brief().line(handoff.enters().relay()).onsetMicros(handoff.enters().first())
                    >= micros)
        .findFirst();
  }

  private Optional<Playback> playback() {
    return session
        .desk()
        .plan()
        .map(
            judged ->
                Playback.of(
                    judged.plan(),
                    session.desk().line().map(OpenLine::seats).orElseThrow(),
                    true,
                    Rational.of(percent, 100),
                    Optional.empty(),
                    session.limits()));
  }

  @Override
  public void solo(boolean alone) {
    Optional<String> player =
        session
            .desk()
            .plan()
            .map(JudgedPlan::plan)
            .filter(plan -> alone && listener.chosen() < plan.segments().size())
            .map(plan -> plan.player(plan.segments().get(listener.chosen())).name());
    listener.solo(player);
  }

  @Override
  public void speed(int newPercent) {
    percent = newPercent;
    listener.stop();
    words.say(texts.get("tools.speed", percent));
  }

  @Override
  public void write() {
    attempt(
        () -> {
          List<Sentence> changes = session.writing().changes(session.desk().source());
          if (changes.isEmpty()) {
            words.say(texts.get("window.unchanged"));
          } else if (asking.agrees(
              texts.get("write.title"), changes.stream().map(texts::say).toList())) {
            write(asking.toWrite(words.proposed("-relay.musicxml")));
          }
        });
  }

  private void write(Optional<Path> file) throws Refusal {
    if (file.isPresent()) {
      WriteScore.Saved saved = session.writing().write(file.get(), session.desk().source());
      words.say(texts.get("window.written", saved.file()));
    }
  }

  @Override
  public void savePlan() {
    attempt(
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
    if (judged.isPresent() && line.isPresent()) {
      asking
          .toWrite(words.proposed(what.ending()))
          .ifPresent(
              file ->
                  session.beside(
                      () -> {
                        switch (what) {
                          case TIMELINE -> ExportPlan.timeline(judged.get(), file);
                          case SOUND ->
                              ExportPlan.sound(judged.get(), line.get(), file, session.limits());
                        }
                      },
                      () -> words.say(texts.get("window.written", file))));
    }
  }

  @Override
  public void style() {
    style = style.other();
    style.applyTo(scene);
  }

  private interface Step {
    void run() throws Refusal;
  }

  private void attempt(Step step) {
    try {
      step.run();
    } catch (Refusal e) {
      words.warn(texts.say(e));
    }
  }
}

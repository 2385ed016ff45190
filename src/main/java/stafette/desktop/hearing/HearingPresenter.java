package stafette.desktop.hearing;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.OptionalLong;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javafx.animation.AnimationTimer;
import stafette.desktop.hearing.HearingStrip.Going;
import stafette.desktop.playing.HearingWish;
import stafette.desktop.playing.LoopStretch;
import stafette.desktop.playing.Playing;
import stafette.desktop.relay.HearingGestures;
import stafette.desktop.relay.MuteSoloGestures;
import stafette.desktop.relay.RelayView;
import stafette.desktop.state.BackgroundWork;
import stafette.desktop.state.Desk;
import stafette.desktop.state.LineInWords;
import stafette.desktop.texts.Texts;
import stafette.keep.LimitsInForce;
import stafette.work.Playback;

/**
 * Hears the plan on the desk, and goes on while it is changed. What is heard is made ready beside
 * the window; each new wish ends the making of the one before.
 */
public final class HearingPresenter
    implements HearingStrip.HearingAsked, MuteSoloGestures, HearingGestures {
  private final RelayView relay;
  private final HearingStrip strip;
  private final Texts texts;
  private final LimitsInForce limits;
  private final BackgroundWork labour;
  private final Supplier<Optional<Playing>> open;
  private final LineInWords words;
  private volatile Optional<Playing> playing = Optional.empty();
  private volatile boolean closed;
  private Optional<HeardPlan> piece = Optional.empty();
  private Optional<Loaded> loaded = Optional.empty();
  private HearingWish wish = HearingWish.PLAIN;
  private Going going = Going.SILENT;
  private boolean saidSoundless;
  private final AnimationTimer clock =
      new AnimationTimer() {
        @Override
        public void handle(long now) {
          follow();
        }
      };

  /** What the sequencer has. */
  private record Loaded(HeardPlan piece, Playback.PlaybackManner manner) {
    boolean is(Loaded other) {
      return piece.plan().equals(other.piece.plan()) && manner.equals(other.manner);
    }
  }

  /**
   * A listener who has nothing to hear yet.
   *
   * @param labour where what is heard is made ready
   * @param open opens what plays it
   */
  public HearingPresenter(
      RelayView relay,
      Texts texts,
      LimitsInForce limits,
      BackgroundWork labour,
      Supplier<Optional<Playing>> open,
      LineInWords words) {
    this.relay = relay;
    this.texts = texts;
    this.limits = limits;
    this.labour = labour;
    this.open = open;
    this.words = words;
    strip = new HearingStrip(texts, this);
    relay.lanesTold(this);
  }

  public HearingStrip strip() {
    return strip;
  }

  public HearingWish wish() {
    return wish;
  }

  /** Who is heard of the plan on the desk. */
  public List<String> heard() {
    return piece.map(now -> now.heard(wish)).orElse(List.of());
  }

  /** Another desk: goes on at the same place if it has a plan for the same notes. */
  public void show(Desk desk) {
    Optional<HeardPlan> before = piece;
    piece = HeardPlan.of(desk);
    if (piece.isPresent() && before.isPresent() && before.get().continues(piece.get())) {
      long from = before.get().places().carried(wish.fromMicros(), piece.get().places());
      wish = from == wish.fromMicros() ? wish : wish.from(from);
      reload();
    } else {
      silence();
      wish = wish.from(piece.map(now -> now.places().first()).orElse(0L));
    }
    refresh();
  }

  @Override
  public void choose(int segment) {
    piece
        .map(HeardPlan::plan)
        .filter(plan -> segment < plan.segments().size())
        .map(plan -> plan.segments().get(segment))
        .ifPresent(
            one -> {
              HeardPlan now = piece.get();
              wish = wish.from(now.plan().line(one).onsetMicros(one.first()));
              turnBack();
              refresh();
            });
  }

  @Override
  public void chooseHandoff(int handoff) {
    wish = wish.withHandoff(handoff);
    turnBack();
    refresh();
  }

  @Override
  public void from(long lineMicros) {
    piece.ifPresent(
        now -> {
          wish = wish.from(now.places().nearest(lineMicros));
          whileGoing(engine -> engine.to(wish.fromMicros()));
          turnBack();
          refresh();
        });
  }

  @Override
  public void hear() {
    switch (going) {
      case SILENT, PAUSED -> begin();
      case PLAYING, PREPARING -> silence();
    }
  }

  @Override
  public void pause() {
    if (going == Going.PLAYING) {
      playing.ifPresent(Playing::pause);
      clock.stop();
      going = Going.PAUSED;
    } else if (going == Going.PAUSED) {
      playing.ifPresent(Playing::play);
      clock.start();
      going = Going.PLAYING;
    }
    refresh();
  }

  @Override
  public void speed(int percent, boolean settled) {
    wish = wish.at(percent);
    playing.ifPresent(engine -> engine.speed(percent));
    if (settled) {
      reload();
    }
    refresh();
  }

  @Override
  public void again(boolean now) {
    wish = wish.again(now);
    turnBack();
    refresh();
  }

  @Override
  public void behind(boolean now) {
    wish = wish.behind(now);
    reload();
    refresh();
  }

  @Override
  public void byOne(boolean now) {
    wish = wish.byOne(now);
    reload();
    refresh();
  }

  @Override
  public void silence(String player) {
    wish = wish.with(wish.balance().silencing(player));
    refresh();
  }

  @Override
  public void alone(String player) {
    wish = wish.with(wish.balance().alone(player));
    refresh();
  }

  /** Ends what is being made ready. */
  public void enough() {
    if (going == Going.PREPARING) {
      silence();
    }
  }

  private void silence() {
    labour.stop();
    playing.ifPresent(Playing::pause);
    clock.stop();
    relay.hear(OptionalLong.empty());
    if (going != Going.SILENT) {
      going = Going.SILENT;
      words.rest();
    }
    refresh();
  }

  private void begin() {
    if (piece.isPresent()) {
      Loaded asked = new Loaded(piece.get(), piece.get().manner(wish));
      if (loaded.filter(asked::is).isPresent()) {
        playing.ifPresent(this::start);
      } else {
        going = Going.PREPARING;
        words.say(texts.get("hearing.preparing"));
        refresh();
        prepare(asked, ready -> playing.ifPresent(engine -> load(engine, asked, ready)));
      }
    }
  }

  private void load(Playing engine, Loaded asked, Playback ready) {
    engine.load(ready, wish.fromMicros());
    loaded = Optional.of(asked);
    start(engine);
  }

  private void start(Playing engine) {
    HeardPlan now = piece.orElseThrow();
    Optional<LoopStretch> stretch = wish.stretch(now.plan());
    long from = stretch.map(LoopStretch::fromMicros).orElse(wish.fromMicros());
    engine.to(from);
    engine.again(stretch);
    engine.speed(wish.percent());
    engine.hear(now.balance(wish));
    engine.play();
    going = Going.PLAYING;
    clock.start();
    if (engine.isHeard() || saidSoundless) {
      words.say(texts.get("hearing.heard", texts.say(now.places().name(from))));
    } else {
      words.say(texts.get("window.silent"));
      saidSoundless = true;
    }
    refresh();
  }

  private void prepare(Loaded asked, Consumer<Playback> then) {
    labour.start(
        labouring -> {
          engine();
          return asked.piece().playback(asked.manner(), limits);
        },
        then,
        refusal -> {
          silence();
          words.warn(texts.say(refusal));
        });
  }

  /**
   * Opened at the first need, beside the window, since that takes a while; it may close by then.
   */
  private void engine() {
    if (playing.isEmpty()) {
      playing = open.get();
    }
    if (closed) {
      playing.ifPresent(Playing::close);
    }
  }

  /** Takes what is wished now to the same place in what plays. */
  private void reload() {
    if (going != Going.SILENT && piece.isPresent()) {
      Loaded asked = new Loaded(piece.get(), piece.get().manner(wish));
      if (going == Going.PREPARING) {
        begin();
      } else if (loaded.filter(asked::is).isEmpty()) {
        prepare(asked, ready -> playing.ifPresent(engine -> exchange(engine, asked, ready)));
      } else {
        labour.stop();
      }
    }
  }

  private void exchange(Playing engine, Loaded asked, Playback ready) {
    OptionalLong at = engine.lineMicros();
    long there =
        loaded
            .filter(before -> at.isPresent())
            .map(before -> before.piece().places().carried(at.getAsLong(), asked.piece().places()))
            .orElse(wish.fromMicros());
    engine.again(Optional.empty());
    engine.load(ready, there);
    loaded = Optional.of(asked);
    turnBack();
    refresh();
  }

  private void turnBack() {
    whileGoing(engine -> piece.ifPresent(now -> engine.again(wish.stretch(now.plan()))));
  }

  private void whileGoing(Consumer<Playing> step) {
    if (going == Going.PLAYING || going == Going.PAUSED) {
      playing.ifPresent(step);
      relay.hear(playing.map(Playing::lineMicros).orElse(OptionalLong.empty()));
    }
  }

  private void follow() {
    playing.map(Playing::lineMicros).ifPresent(relay::hear);
    if (going == Going.PLAYING && !playing.map(Playing::isPlaying).orElse(false)) {
      silence();
    }
  }

  private void refresh() {
    playing.ifPresent(engine -> piece.ifPresent(now -> engine.hear(now.balance(wish))));
    relay.hear(wish.balance());
    piece.ifPresent(now -> relay.markFrom(now.places().position(wish.fromMicros())));
    strip.show(
        new HearingStrip.ShownHearing(
            piece.map(HeardPlan::places),
            wish,
            piece.map(now -> wish.handoffIn(now.plan())).orElse(OptionalInt.empty()),
            going,
            playing.map(Playing::isHeard).orElse(true)));
  }

  public void close() {
    closed = true;
    labour.stop();
    clock.stop();
    playing.ifPresent(Playing::close);
    playing = Optional.empty();
  }
}

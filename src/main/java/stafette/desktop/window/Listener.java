package stafette.desktop.window;

import java.util.Optional;
import java.util.OptionalLong;
import java.util.function.Consumer;
import javafx.animation.AnimationTimer;
import stafette.desktop.playing.Playing;
import stafette.desktop.relay.RelayView;
import stafette.work.Playback;

/** Plays, and moves the cursor along. */
final class Listener {
  private final RelayView relay;
  private final Consumer<Boolean> told;
  private final Runnable silent;
  private Optional<Playing> playing = Optional.empty();
  private Optional<String> solo = Optional.empty();
  private int chosen;
  private final AnimationTimer clock =
      new AnimationTimer() {
        @Override
        public void handle(long now) {
          follow();
        }
      };

  /**
   * @param told whether something plays now
   * @param silent run if nothing can be heard
   */
  Listener(RelayView relay, Consumer<Boolean> told, Runnable silent) {
    this.relay = relay;
    this.told = told;
    this.silent = silent;
  }

  /** The segment that was chosen last: from there it plays. */
  void choose(int segment) {
    chosen = segment;
  }

  int chosen() {
    return chosen;
  }

  boolean isPlaying() {
    return playing.map(Playing::isPlaying).orElse(false);
  }

  void play(Playback playback, long fromLineMicros) {
    ready().ifPresent(now -> now.play(playback, fromLineMicros));
    begin();
  }

  void loop(Playback playback, long fromLineMicros, long toLineMicros) {
    ready().ifPresent(now -> now.loop(playback, fromLineMicros, toLineMicros));
    begin();
  }

  /** Only this player is heard from now on; everybody if empty. */
  void solo(Optional<String> player) {
    solo = player;
    hear();
  }

  private void hear() {
    playing.ifPresent(now -> now.hear(voice -> solo.map(voice::equals).orElse(true)));
  }

  private Optional<Playing> ready() {
    if (playing.isEmpty()) {
      playing = Playing.open();
    }
    if (playing.map(Playing::isHeard).orElse(false).equals(false)) {
      silent.run();
    }
    return playing;
  }

  private void begin() {
    hear();
    told.accept(isPlaying());
    clock.start();
  }

  void stop() {
    playing.ifPresent(Playing::stop);
    follow();
  }

  private void follow() {
    OptionalLong at = playing.map(Playing::lineMicros).orElse(OptionalLong.empty());
    relay.hear(at);
    if (!isPlaying()) {
      clock.stop();
      told.accept(false);
    }
  }

  void close() {
    clock.stop();
    playing.ifPresent(Playing::close);
  }
}

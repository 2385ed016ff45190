package stafette.desktop.playing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import java.util.function.BooleanSupplier;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import stafette.desktop.ShownRelays;
import stafette.keep.LimitsInForce;
import stafette.plan.Plan;
import stafette.time.Rational;
import stafette.words.Refusal;
import stafette.work.Playback;

/** Playing into an ear that notes what it hears. */
@Timeout(value = 60, unit = TimeUnit.SECONDS)
class PlayingTest {
  private static final Plan PLAN = ShownRelays.plan();

  private final Ear ear = new Ear();
  private final Playing playing = Playing.into(Optional.of(ear)).orElseThrow();

  @AfterEach
  void close() {
    playing.close();
  }

  @Test
  void plays_from_anywhere_pauses_and_goes_on() throws Exception {
    playing.load(playback(100), 5_000_000);
    assertFalse(playing.isPlaying());
    assertEquals(5_000_000, at());
    playing.play();
    until(() -> at() > 5_100_000);
    assertTrue(at() < 12_000_000);
    playing.pause();
    long stood = at();
    assertFalse(playing.isPlaying());
    assertEquals(stood, at());
    playing.play();
    until(() -> at() > stood);
    playing.to(2_000_000);
    assertTrue(at() < 4_000_000);
  }

  @Test
  void another_speed_keeps_the_place_and_so_does_a_playback_made_for_it() throws Exception {
    playing.load(playback(100), 4_000_000);
    playing.play();
    until(() -> at() > 4_200_000);
    long before = at();
    playing.speed(25);
    assertTrue(Math.abs(at() - before) < 2_500_000, before + " and " + at());
    playing.pause();
    long stood = at();
    playing.load(playback(25), stood);
    assertTrue(Math.abs(at() - stood) < 10, stood + " and " + at());
    playing.speed(150);
    assertTrue(Math.abs(at() - stood) < 10, stood + " and " + at());
  }

  @Test
  void a_stretch_comes_again_and_again_at_any_speed() throws Exception {
    playing.load(playback(100), 0);
    LoopStretch short_ = new LoopStretch(3_000_000, 3_400_000);
    playing.again(Optional.of(short_));
    assertEquals(3_000_000, at());
    playing.speed(150);
    playing.play();
    int turns = 0;
    long last = at();
    while (turns < 3) {
      long now = at();
      assertTrue(now >= 2_800_000 && now < 3_500_000, now + " is outside");
      turns += now < last ? 1 : 0;
      last = now;
    }
    playing.again(Optional.empty());
    until(() -> at() > 3_600_000);
  }

  @Test
  void silences_and_lets_sound_while_it_plays() throws Exception {
    playing.load(playback(100), 0);
    playing.hear(Balance.EVERYBODY.silencing("Flute 1"));
    playing.again(Optional.of(new LoopStretch(0, 1_000_000)));
    playing.play();
    onceRound();
    assertEquals(Set.of(), ear.channels());
    playing.hear(Balance.EVERYBODY);
    until(() -> ear.channels().size() == 1);
    playing.hear(Balance.EVERYBODY.alone("Oboe 1"));
    onceRound();
    ear.forget();
    onceRound();
    assertEquals(Set.of(), ear.channels());
  }

  private void onceRound() throws InterruptedException {
    long last = at();
    for (long now = at(); now >= last; now = at()) {
      last = now;
      Thread.sleep(5);
    }
  }

  @Test
  void one_player_for_all_is_heard_whoever_is_silenced() throws Exception {
    Playback.PlaybackManner alone =
        new Playback.PlaybackManner(Map.of(), Rational.ONE, true, Optional.empty());
    playing.hear(Balance.EVERYBODY.silencing("Flute 1"));
    playing.load(Playback.of(PLAN, alone, limits()), 0);
    playing.play();
    until(() -> ear.channels().size() == 1);
  }

  @Test
  void without_an_ear_time_goes_on() throws Exception {
    try (Playing deaf = Playing.into(Optional.empty()).orElseThrow()) {
      assertTrue(deaf.lineMicros().isEmpty());
      deaf.load(playback(100), 1_000_000);
      deaf.play();
      assertFalse(deaf.isHeard());
      until(() -> deaf.lineMicros().orElseThrow() > 1_100_000);
    }
  }

  private long at() {
    return playing.lineMicros().orElseThrow();
  }

  private static Playback playback(int percent) throws Refusal {
    return Playback.of(
        PLAN,
        new Playback.PlaybackManner(Map.of(), Rational.of(percent, 100), false, Optional.empty()),
        limits());
  }

  private static LimitsInForce limits() throws Refusal {
    return LimitsInForce.load(Optional.empty());
  }

  private static void until(BooleanSupplier condition) throws InterruptedException {
    while (!condition.getAsBoolean()) {
      Thread.sleep(5);
    }
  }
}

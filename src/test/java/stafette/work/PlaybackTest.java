package stafette.work;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import javax.sound.midi.MidiSystem;
import javax.sound.midi.Sequencer;
import javax.sound.midi.ShortMessage;
import org.junit.jupiter.api.Test;
import stafette.Invented;
import stafette.keep.LimitsInForce;
import stafette.keep.OpenScore;
import stafette.plan.Brief;
import stafette.plan.Plan;
import stafette.plan.Segment;
import stafette.score.Line;
import stafette.score.Tremolo;
import stafette.time.Rational;
import stafette.words.Refusal;

/** A plan made ready for a sequencer. */
class PlaybackTest {
  private static final Line LINE = Invented.line(8, 4, 120);
  private static final Plan PLAN =
      new Plan(
          new Brief(
              LINE,
              List.of(
                  Invented.player("Piper 1", Invented.instrument("pipe"), 13, 10, 100, 8),
                  Invented.player("Piper 2", Invented.instrument("pipe"), 13, 10, 100, 8)),
              Invented.rules()),
          List.of(new Segment(0, 0, 0, 64), new Segment(1, 0, 64, 127)));

  @Test
  void a_sequencer_without_sound_card_takes_it_and_its_ticks_lead_back_to_the_line()
      throws Exception {
    Playback playback =
        playback(new Playback.PlaybackManner(Map.of(), Rational.of(1, 2), false, Optional.empty()));
    try (Sequencer sequencer = MidiSystem.getSequencer(false)) {
      sequencer.open();
      sequencer.setSequence(playback.sequence());
      assertEquals(playback.lengthMicros(), sequencer.getTickLength());
      sequencer.setTickPosition(playback.micros(2));
      assertEquals(2, playback.lineSeconds(sequencer.getTickPosition()).orElseThrow(), 1e-6);
      assertEquals(2 * playback.micros(2), playback.micros(4));
    }
  }

  @Test
  void it_has_a_track_for_each_voice_and_those_of_the_score_behind() throws Exception {
    OpenScore score =
        OpenScore.open(
            Path.of("samples/signal-hill.musicxml"), Tremolo.AS_WRITTEN, false, limits());
    Playback playback =
        playback(new Playback.PlaybackManner(Map.of(), Rational.ONE, false, Optional.of(score)));
    assertEquals(List.of("Piper 1", "Piper 2"), playback.voices().subList(0, 2));
    assertEquals(2 + score.score().parts().size(), playback.voices().size());
    assertEquals(1 + playback.voices().size(), playback.sequence().getTracks().length);
    assertFalse(playback.isBehind(1));
    assertTrue(playback.isBehind(2));
  }

  @Test
  void one_player_alone_plays_the_whole_line_in_the_same_time() throws Exception {
    Playback alone =
        playback(new Playback.PlaybackManner(Map.of(), Rational.ONE, true, Optional.empty()));
    Playback all =
        playback(new Playback.PlaybackManner(Map.of(), Rational.ONE, false, Optional.empty()));
    assertEquals(List.of("Piper 1"), alone.voices());
    assertEquals(LINE.count(), struck(alone));
    assertEquals(LINE.count() + 1, struck(all), "the landing note is heard twice");
    assertEquals(all.lengthMicros(), alone.lengthMicros());
  }

  private static long struck(Playback playback) {
    return Arrays.stream(playback.sequence().getTracks())
        .flatMap(track -> IntStream.range(0, track.size()).mapToObj(track::get))
        .filter(event -> event.getMessage() instanceof ShortMessage)
        .map(event -> (ShortMessage) event.getMessage())
        .filter(message -> message.getCommand() == ShortMessage.NOTE_ON && message.getData2() > 0)
        .count();
  }

  private static Playback playback(Playback.PlaybackManner manner) throws Refusal {
    return Playback.of(PLAN, manner, limits());
  }

  private static LimitsInForce limits() throws Refusal {
    return LimitsInForce.load(Optional.empty());
  }
}

package stafette.sound;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;

/** Who has which channel. */
class ChannelsTest {
  @Test
  void fifteen_players_have_a_channel_each_and_none_that_of_the_drums() {
    int[] channels = Channels.of(players(15, 73));
    assertEquals(15, Arrays.stream(channels).distinct().count());
    assertTrue(Arrays.stream(channels).noneMatch(channel -> channel == 9));
  }

  @Test
  void more_players_of_one_instrument_share_but_never_with_their_neighbours() {
    int[] channels = Channels.of(players(40, 73));
    assertEquals(15, Arrays.stream(channels).distinct().count());
    for (int i = 1; i < channels.length; i++) {
      assertNotEquals(channels[i - 1], channels[i]);
    }
  }

  @Test
  void the_background_leaves_the_players_their_channels() {
    List<SoundingVoice> voices = new ArrayList<>(players(10, 73));
    IntStream.range(0, 30).forEach(i -> voices.add(background(i % 5)));
    int[] channels = Channels.of(voices);
    assertEquals(10, Arrays.stream(channels, 0, 10).distinct().count());
    assertEquals(5, Arrays.stream(channels, 10, 40).distinct().count());
    assertEquals(15, Arrays.stream(channels).distinct().count());
  }

  /** General MIDI has sixteen families of eight programs. */
  @Test
  void with_too_many_programs_those_of_a_family_sound_alike() {
    List<SoundingVoice> voices = new ArrayList<>(players(1, 73));
    IntStream.range(0, 24).forEach(i -> voices.add(background(i)));
    int[] channels = Channels.of(voices);
    assertEquals(channels[1], channels[8]);
    assertNotEquals(channels[1], channels[9]);
  }

  @Property(tries = 200)
  void every_voice_has_a_channel_and_only_drums_have_the_tenth(
      @ForAll @Size(max = 60) List<@IntRange(max = 127) Integer> programs) {
    List<SoundingVoice> voices = new ArrayList<>();
    for (int program : programs) {
      voices.add(program % 3 == 0 ? background(program) : players(1, program).get(0));
      voices.add(new SoundingVoice("Drum", 0, OptionalInt.of(38), 64, true));
    }
    int[] channels = Channels.of(voices);
    for (int i = 0; i < channels.length; i++) {
      assertTrue(channels[i] >= 0 && channels[i] < 16);
      assertEquals(voices.get(i).drum().isPresent(), channels[i] == 9);
    }
  }

  private static List<SoundingVoice> players(int count, int program) {
    return IntStream.range(0, count)
        .mapToObj(i -> new SoundingVoice("Player " + i, program, OptionalInt.empty(), 64, false))
        .toList();
  }

  private static SoundingVoice background(int program) {
    return new SoundingVoice("Part", program, OptionalInt.empty(), 64, true);
  }
}

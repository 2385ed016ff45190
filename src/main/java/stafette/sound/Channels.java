package stafette.sound;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Which of MIDI's sixteen channels each voice has. Percussion without pitch has the one that
 * General MIDI keeps for it. Each player has a channel alone as long as there are enough; parts of
 * the background share one by program. With too many players those of one program share, neighbours
 * in the brief on different channels; with too many programs those of one family of General MIDI
 * sound alike.
 */
final class Channels {
  static final int PERCUSSION = 9;
  private static final List<Integer> FREE =
      List.of(0, 1, 2, 3, 4, 5, 6, 7, 8, 10, 11, 12, 13, 14, 15);
  private static final int FAMILY = 8;

  private Channels() {}

  private record ChannelUse(int program, boolean background) {}

  /** The channel of each voice. */
  static int[] of(List<SoundingVoice> voices) {
    Map<ChannelUse, List<Integer>> groups = groups(voices, 1);
    if (groups.size() > FREE.size()) {
      groups = groups(voices, FAMILY);
    }
    Map<ChannelUse, Integer> shares = shares(groups);
    int[] channels = new int[voices.size()];
    int used = 0;
    for (Map.Entry<ChannelUse, List<Integer>> group : groups.entrySet()) {
      int share = shares.getOrDefault(group.getKey(), 1);
      for (int i = 0; i < group.getValue().size(); i++) {
        channels[group.getValue().get(i)] = FREE.get((used + i % share) % FREE.size());
      }
      used += share;
    }
    for (int i = 0; i < channels.length; i++) {
      channels[i] = voices.get(i).drum().isPresent() ? PERCUSSION : channels[i];
    }
    return channels;
  }

  private static Map<ChannelUse, List<Integer>> groups(List<SoundingVoice> voices, int programs) {
    Map<ChannelUse, List<Integer>> groups = new LinkedHashMap<>();
    for (int i = 0; i < voices.size(); i++) {
      SoundingVoice voice = voices.get(i);
      if (voice.drum().isEmpty()) {
        ChannelUse sound = new ChannelUse(voice.program() / programs, voice.background());
        groups.computeIfAbsent(sound, key -> new ArrayList<>()).add(i);
      }
    }
    return groups;
  }

  /** One channel for each group; what is left, to those whose players share most. */
  private static Map<ChannelUse, Integer> shares(Map<ChannelUse, List<Integer>> groups) {
    Map<ChannelUse, Integer> shares = new LinkedHashMap<>();
    groups.keySet().forEach(sound -> shares.put(sound, 1));
    Comparator<ChannelUse> crowd =
        Comparator.comparingDouble(
            sound ->
                (double) groups.getOrDefault(sound, List.of()).size()
                    / shares.getOrDefault(sound, 1));
    for (int left = FREE.size() - groups.size(); left > 0; left--) {
      groups.keySet().stream()
          .filter(sound -> !sound.background())
          .max(crowd)
          .filter(
              sound -> groups.getOrDefault(sound, List.of()).size() > shares.getOrDefault(sound, 1))
          .ifPresent(sound -> shares.merge(sound, 1, Integer::sum));
    }
    return shares;
  }
}

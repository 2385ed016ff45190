package stafette.sound;

import java.util.List;
import stafette.limits.TypedNames;

/** The percussion keys of General MIDI, level 1 (MIDI Manufacturers Association 1991). */
final class Drums {
  private static final int SNARE = 38;

  private static final List<PercussionKey> KEYS =
      List.of(
          new PercussionKey("bass drum", 36),
          new PercussionKey("gran cassa", 36),
          new PercussionKey("side stick", 37),
          new PercussionKey("snare", SNARE),
          new PercussionKey("tenor drum", 43),
          new PercussionKey("tom", 47),
          new PercussionKey("suspended cymbal", 51),
          new PercussionKey("cymbal", 49),
          new PercussionKey("tambourine", 54),
          new PercussionKey("cowbell", 56),
          new PercussionKey("bongo", 60),
          new PercussionKey("conga", 63),
          new PercussionKey("timbales", 65),
          new PercussionKey("castanets", 75),
          new PercussionKey("wood block", 76),
          new PercussionKey("temple block", 77),
          new PercussionKey("triangle", 81),
          new PercussionKey("tam tam", 52),
          new PercussionKey("gong", 52));

  private Drums() {}

  private record PercussionKey(String name, int key) {}

  /** The key for an instrument without pitch; that of the snare drum if it has none of its own. */
  static int key(String name) {
    String plain = TypedNames.plain(name);
    return KEYS.stream()
        .filter(drum -> plain.contains(drum.name()))
        .mapToInt(PercussionKey::key)
        .findFirst()
        .orElse(SNARE);
  }
}

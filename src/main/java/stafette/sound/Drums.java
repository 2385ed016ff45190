package stafette.sound;

import java.util.List;
import stafette.limits.Spelling;

/** The percussion keys of General MIDI, level 1 (MIDI Manufacturers Association 1991). */
final class Drums {
  private static final int SNARE = 38;

  private static final List<Drum> KEYS =
      List.of(
          new Drum("bass drum", 36),
          new Drum("gran cassa", 36),
          new Drum("side stick", 37),
          new Drum("snare", SNARE),
          new Drum("tom", 47),
          new Drum("suspended cymbal", 51),
          new Drum("cymbal", 49),
          new Drum("tambourine", 54),
          new Drum("cowbell", 56),
          new Drum("bongo", 60),
          new Drum("conga", 63),
          new Drum("timbales", 65),
          new Drum("castanets", 75),
          new Drum("wood block", 76),
          new Drum("triangle", 81),
          new Drum("tam tam", 52),
          new Drum("gong", 52));

  private Drums() {}

  private record Drum(String name, int key) {}

  /** The key for an instrument without pitch; that of the snare drum if it has none of its own. */
  static int key(String name) {
    String plain = Spelling.plain(name);
    return KEYS.stream()
        .filter(drum -> plain.contains(drum.name()))
        .mapToInt(Drum::key)
        .findFirst()
        .orElse(SNARE);
  }
}

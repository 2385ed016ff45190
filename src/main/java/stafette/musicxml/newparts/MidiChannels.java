package stafette.musicxml.newparts;

import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import stafette.musicxml.text.Origin;
import stafette.musicxml.text.Origin.PartText;

/**
 * Deals MIDI channels out to new parts: to each one that no other part has, and once all are taken,
 * one that the fewest have. The percussion's is left out. A part that states no channel is taken to
 * be given the next free one by whoever plays the score (common practice, no source).
 */
final class MidiChannels {
  /** Counted from 1, as MusicXML counts. General MIDI keeps it for percussion. */
  static final int PERCUSSION = 10;

  private static final int COUNT = 16;
  private static final Pattern CHANNEL =
      Pattern.compile("<midi-channel(?:\\s[^>]*)?>\\s*0*(\\d{1,2})\\s*</midi-channel>");

  private final int[] parts = new int[COUNT + 1];

  /** As the parts of a score have them. */
  MidiChannels(Origin origin) {
    int silent = 0;
    for (PartText part : origin.parts()) {
      Set<Integer> stated = stated(part.scorePart().map(span -> span.in(origin.text())));
      stated.forEach(channel -> parts[channel]++);
      silent += stated.isEmpty() ? 1 : 0;
    }
    for (int i = 0; i < silent; i++) {
      next();
    }
  }

  private static Set<Integer> stated(Optional<String> scorePart) {
    return scorePart.stream()
        .flatMap(text -> CHANNEL.matcher(text).results())
        .map(found -> Integer.parseInt(found.group(1)))
        .filter(channel -> channel >= 1 && channel <= COUNT)
        .collect(Collectors.toSet());
  }

  /** A channel for one more part, the lowest of those that the fewest have. */
  int next() {
    int next =
        IntStream.rangeClosed(1, COUNT)
            .filter(channel -> channel != PERCUSSION)
            .reduce(1, (best, channel) -> parts[channel] < parts[best] ? channel : best);
    parts[next]++;
    return next;
  }
}

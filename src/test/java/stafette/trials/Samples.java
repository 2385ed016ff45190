package stafette.trials;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Some bars of the samples. */
final class Samples {
  private static final int BARS = 5;

  private final Map<String, Node> read = new HashMap<>();

  /** The first bars, or later ones with what the first ones say of key, metre and clef. */
  Node extract(Dice dice) {
    Node score =
        read.computeIfAbsent(
                dice.of("lantern-run", "mill-stairs", "signal-hill", "weir-gate"), Samples::read)
            .copy();
    int from = dice.between(0, 9);
    for (Node part : score.all("part")) {
      List<Node> measures = part.children();
      Node attributes = measures.get(0).all("attributes").get(0);
      measures.subList(Math.min(measures.size(), from + BARS), measures.size()).clear();
      measures.subList(0, Math.min(from, measures.size() - 1)).clear();
      if (from > 0) {
        measures.get(0).children().add(0, attributes);
      }
    }
    return score;
  }

  private static Node read(String name) {
    try {
      return Node.parse(Files.readString(Path.of("samples", name + ".musicxml")));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}

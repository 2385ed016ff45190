package stafette.trials;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/** Makes a trial smaller for as long as it breaks the same demand. */
final class Shrinker {
  private final Predicate<Trial> breaks;
  private Trial smallest;
  private int left;

  private Shrinker(Trial trial, Predicate<Trial> breaks, int runs) {
    this.smallest = trial;
    this.breaks = breaks;
    this.left = runs;
  }

  /**
   * The smallest trial that is found.
   *
   * @param breaks whether a trial breaks the demand
   * @param runs how many may be tried
   */
  static Trial smallest(Trial trial, Predicate<Trial> breaks, int runs) {
    return new Shrinker(trial, breaks, runs).shrink();
  }

  private Trial shrink() {
    boolean smaller = true;
    while (smaller && left > 0) {
      smaller = options();
      smaller |= files();
      smaller |= score();
    }
    return smallest;
  }

  private boolean holds(Trial trial) {
    if (left-- > 0 && breaks.test(trial)) {
      smallest = trial;
      return true;
    }
    return false;
  }

  private boolean options() {
    boolean smaller = false;
    for (int at = smallest.args().size() - 1; at >= 2; at--) {
      if (at < smallest.args().size() && smallest.args().get(at).startsWith("-")) {
        smaller |= holds(without(at, 2)) || holds(without(at, 1));
      }
    }
    return smaller;
  }

  private Trial without(int at, int count) {
    List<String> args = new ArrayList<>(smallest.args());
    args.subList(at, Math.min(args.size(), at + count)).clear();
    return smallest.with(args);
  }

  private boolean files() {
    boolean smaller = false;
    for (String name : List.copyOf(smallest.files().keySet())) {
      if (!name.startsWith("score.")) {
        smaller |= holds(smallest.without(name));
      }
    }
    return smaller;
  }

  private boolean score() {
    Optional<String> file =
        smallest.files().keySet().stream().filter(name -> name.startsWith("score.")).findFirst();
    if (file.isEmpty()) {
      return false;
    }
    String text = new String(smallest.files().get(file.get()), StandardCharsets.UTF_8);
    try {
      return elements(file.get(), Node.parse(text));
    } catch (IllegalArgumentException notSound) {
      return lines(file.get());
    }
  }

  private boolean elements(String file, Node score) {
    boolean smaller = false;
    for (int at = 1; at < score.all().size() && left > 0; ) {
      Node tried = score.copy();
      Node gone = tried.all().get(at);
      tried.all().forEach(parent -> parent.children().removeIf(child -> child == gone));
      if (holds(smallest.with(file, BytesSpoiler.utf8(tried.document())))) {
        score = tried;
        smaller = true;
      } else {
        at++;
      }
    }
    return smaller;
  }

  private boolean lines(String file) {
    boolean smaller = false;
    List<String> lines =
        new ArrayList<>(
            List.of(
                new String(smallest.files().get(file), StandardCharsets.ISO_8859_1)
                    .split("(?<=\n)", -1)));
    for (int size = lines.size() / 2; size > 0 && left > 0; size /= 2) {
      for (int at = 0; at + size <= lines.size() && left > 0; ) {
        List<String> tried = new ArrayList<>(lines);
        tried.subList(at, at + size).clear();
        byte[] bytes = String.join("", tried).getBytes(StandardCharsets.ISO_8859_1);
        if (holds(smallest.with(file, bytes))) {
          lines = tried;
          smaller = true;
        } else {
          at += size;
        }
      }
    }
    return smaller;
  }
}

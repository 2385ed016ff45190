package stafette.repertoire;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
import stafette.keep.LimitsInForce;
import stafette.keep.OpenScore;
import stafette.limits.Instrument;
import stafette.limits.Singers;
import stafette.score.Line;
import stafette.score.Part;
import stafette.score.Score;
import stafette.score.Tremolo;
import stafette.words.Refusal;

/**
 * The fast stretches of all scores of a folder that state a tempo, each with the instrument that it
 * is written for; singers have none. What is wanted of each is worked out while its score is open.
 *
 * @param <T> what is wanted of a passage
 */
final class Passages<T> {
  private final LimitsInForce limits;
  private final LeftOut leftOut = LeftOut.read();
  private final Function<Found, T> wanted;
  private final List<T> found = Collections.synchronizedList(new ArrayList<>());
  private final List<Heard> heard = Collections.synchronizedList(new ArrayList<>());
  private final Map<String, Integer> aside = Collections.synchronizedMap(new TreeMap<>());

  /** A passage. */
  record Found(Corpora.File file, Instrument instrument, Line line) {}

  /** That an instrument has a part in a score. */
  record Heard(Corpora.File file, String instrument) {}

  private Passages(LimitsInForce limits, Function<Found, T> wanted) {
    this.limits = limits;
    this.wanted = wanted;
  }

  static <T> Passages<T> in(Path folder, LimitsInForce limits, Function<Found, T> wanted)
      throws IOException {
    Passages<T> passages = new Passages<>(limits, wanted);
    Corpora.in(folder).parallelStream().forEach(passages::read);
    return passages;
  }

  /** What was wanted of all that are not left aside. */
  List<T> found() {
    return List.copyOf(found);
  }

  /** Who has a part in what. */
  List<Heard> heard() {
    return List.copyOf(heard);
  }

  /** How many are not, by reason. */
  Map<String, Integer> aside() {
    return Map.copyOf(aside);
  }

  private void read(Corpora.File file) {
    try {
      Score score = OpenScore.open(file.path(), Tremolo.AS_WRITTEN, false, limits).score();
      if (score.tempoStated()) {
        score.parts().stream()
            .filter(part -> !Singers.sing(part))
            .forEach(part -> read(file, score, part));
      }
    } catch (Refusal unreadable) {
      System.err.println(unreadable.getMessage());
    }
  }

  private void read(Corpora.File file, Score score, Part part) {
    Optional<Instrument> instrument = limits.catalogue().of(part);
    instrument.ifPresent(own -> heard.add(new Heard(file, own.name())));
    for (Line line : FastStretches.of(score, part)) {
      Optional<String> reason =
          leftOut
              .reason(file, line)
              .or(
                  () ->
                      instrument.isPresent()
                          ? Optional.empty()
                          : Optional.of("unknown instrument"));
      reason.ifPresentOrElse(
          why -> aside.merge(why, 1, Integer::sum),
          () -> found.add(wanted.apply(new Found(file, instrument.orElseThrow(), line))));
    }
  }
}

package stafette.keep;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import stafette.limits.Assurance;
import stafette.limits.Catalogue;
import stafette.limits.Evidence;
import stafette.limits.Instrument;
import stafette.limits.Registers;
import stafette.plan.Weights;
import stafette.score.Score;
import stafette.tables.LimitTables;
import stafette.words.Refusal;
import stafette.words.Sentence;
import stafette.words.Settable;
import stafette.words.UnreadableFile;

/**
 * The limits and weights that a command works with: the built-in tables, with the user's own laid
 * over them.
 *
 * @param catalogue the instruments
 * @param weights what a plan costs
 * @param evidence what sources say of the limits
 * @param registers how instruments sound from low to high
 */
public record LimitsInForce(
    Catalogue catalogue, Weights weights, Evidence evidence, Registers registers) {
  /**
   * Loads the tables.
   *
   * @param own a folder with tables of the user's own
   * @throws Refusal if a table can't be read; the message has a line for each problem
   */
  public static LimitsInForce load(Optional<Path> own) throws Refusal {
    LimitTables tables = read(own);
    return new LimitsInForce(
        tables.catalogue(), tables.weights(), tables.evidence(), tables.registers());
  }

  /**
   * Where judgements of the tables contradict what sources say, a line each; they can be used all
   * the same.
   *
   * @param own a folder with tables of the user's own
   * @throws Refusal if a table can't be read; the message has a line for each problem
   */
  public static List<String> contradictions(Optional<Path> own) throws Refusal {
    return read(own).contradictions();
  }

  private static LimitTables read(Optional<Path> own) throws Refusal {
    try {
      return own.isPresent() ? LimitTables.over(own.get()) : LimitTables.builtIn();
    } catch (UnreadableFile e) {
      throw Refusal.ofFile(e.inWords());
    }
  }

  /** The tables that a folder has, or may have. */
  public static List<Path> tables(Path own) {
    return LimitTables.files(own);
  }

  /**
   * What is wrong with a folder of tables, a sentence for each problem; empty if they can be used.
   */
  public static List<String> problemsIn(Path own) {
    return LimitTables.problems(own);
  }

  /**
   * One instrument.
   *
   * @throws Refusal if the limits don't know it; the message names the nearest ones
   */
  public Instrument instrument(String name) throws Refusal {
    return catalogue
        .find(name)
        .orElseThrow(
            () ->
                Refusal.wrongUse(
                    Sentence.of(
                        "the limits know no instrument \"{0}\"; nearest: {1}{2}",
                        name,
                        Sentence.list(
                            catalogue.nearest(name).stream().map(Sentence::name).toList()),
                        Settable.LIMITS)));
  }

  /**
   * The peak of the slowest wind in single tonguing: what an unknown instrument is held against.
   */
  public double slowestWindPerSecond(Assurance assurance) {
    return catalogue.instruments().stream()
        .filter(Instrument::isWind)
        .flatMap(wind -> Catalogue.technique(wind, "single tonguing").stream())
        .mapToDouble(technique -> technique.limit().at(assurance).peakPerSecond())
        .min()
        .orElse(Double.POSITIVE_INFINITY);
  }

  /** What somebody plays, as far as the score or the name tells. */
  public Optional<Instrument> told(Score score, String name) {
    return score.part(name).flatMap(catalogue::of).or(() -> catalogue.find(name));
  }
}

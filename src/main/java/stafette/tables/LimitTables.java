package stafette.tables;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import java.util.stream.Stream;
import stafette.limits.Catalogue;
import stafette.limits.Evidence;
import stafette.limits.Registers;
import stafette.plan.Weights;
import stafette.words.UnreadableFile;

/**
 * The instruments and weights in force: the tables that come with the program, and over them those
 * of a directory if one is given. A directory may hold only some of the files; a row with the same
 * key (instrument; instrument and technique; …) replaces the built-in one, any other is added.
 *
 * @param catalogue all instruments with their limits
 * @param weights what plans cost
 * @param evidence what sources say of the limits
 * @param registers how instruments sound from low to high
 * @param contradicting finds the contradictions, which nobody needs to plan
 */
public record LimitTables(
    Catalogue catalogue,
    Weights weights,
    Evidence evidence,
    Registers registers,
    Supplier<List<String>> contradicting) {
  /**
   * A line for each judgement that contradicts a statement which is not set aside, with file and
   * row; the tables can be used all the same.
   */
  public List<String> contradictions() {
    return contradicting.get();
  }

  /** The tables that come with the program. */
  public static LimitTables builtIn() {
    return BuiltIn.TABLES;
  }

  /** Read at the first need. */
  private static final class BuiltIn {
    static final LimitTables TABLES = read();

    private static LimitTables read() {
      Problems problems = new Problems();
      LimitTables tables = new TableReader(TableFiles.builtIn(), Map.of(), problems).read();
      if (!problems.all().isEmpty()) {
        throw new IllegalStateException("the built-in tables are at fault: " + problems.all());
      }
      return tables;
    }
  }

  /**
   * The built-in tables with a directory's own laid over them.
   *
   * @throws UnreadableFile with everything that is wrong in the directory
   */
  public static LimitTables over(Path directory) throws UnreadableFile {
    Problems problems = new Problems();
    Map<Table, String> own = TableFiles.of(directory, problems);
    LimitTables tables = new TableReader(TableFiles.builtIn(), own, problems).read();
    problems.throwIfAny();
    return tables;
  }

  /** The files of a directory that are read, where they are there. */
  public static List<Path> files(Path directory) {
    return Stream.of(Table.values()).map(table -> directory.resolve(table.file())).toList();
  }

  /** Everything that is wrong in a directory of tables; empty if nothing is. */
  public static List<String> problems(Path directory) {
    try {
      over(directory);
      return List.of();
    } catch (UnreadableFile unreadable) {
      return unreadable.problems();
    }
  }
}

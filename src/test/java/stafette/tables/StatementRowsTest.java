package stafette.tables;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stafette.limits.Evidence;
import stafette.limits.Grade;
import stafette.limits.Instrument;
import stafette.limits.Statement;
import stafette.limits.StatementKind;

/** Statements of one's own beside the built-in ones, and mistakes in them. */
class StatementRowsTest {
  private static final String COLUMNS =
      "instrument,technique,kind,figure,of,low,high,seconds,conditions,source,grade,set aside\n";
  private static final String TECHNIQUES = "instrument,technique,act,peak,deviation,source,grade\n";

  private final Path directory;

  StatementRowsTest(@TempDir Path directory) {
    this.directory = directory;
  }

  @Test
  void a_row_is_read_with_all_its_cells() throws Exception {
    state("flute; oboe,single tonguing; double tonguing,asked,,moving,7,9.5,12,a suite,me,C,odd");
    Evidence evidence = LimitTables.over(directory).evidence();
    Statement last = evidence.statements().get(evidence.statements().size() - 1);
    assertEquals(List.of("flute", "oboe"), last.instruments());
    assertEquals(List.of("single tonguing", "double tonguing"), last.techniques());
    assertEquals(StatementKind.ASKED, last.kind());
    assertEquals(Statement.Figure.MOVING, last.figure());
    assertEquals(7, last.lowPerSecond());
    assertEquals(9.5, last.highPerSecond());
    assertEquals(OptionalDouble.of(12), last.seconds());
    assertEquals("a suite", last.conditions());
    assertEquals(Grade.C, last.source().grade());
    assertEquals(Optional.of("odd"), last.setAside());
    assertEquals("7 to 9.5 a second (105 to 143)", last.rate());
  }

  @Test
  void a_family_stands_for_those_of_it_that_have_the_technique() throws Exception {
    state("brass,double tonguing,one player,9,,,,,,me,C,");
    LimitTables tables = LimitTables.over(directory);
    List<String> brass =
        tables.catalogue().instruments().stream()
            .filter(instrument -> instrument.family().equals("brass"))
            .map(Instrument::name)
            .toList();
    Evidence evidence = tables.evidence();
    assertEquals(brass, evidence.statements().get(evidence.statements().size() - 1).instruments());
    write("statements.csv", COLUMNS + "woodwind,triple tonguing,one player,9,,,,,,me,C,\n");
    evidence = LimitTables.over(directory).evidence();
    assertEquals(
        List.of("piccolo", "flute", "alto flute", "bass flute"),
        evidence.statements().get(evidence.statements().size() - 1).instruments());
  }

  @Test
  void a_row_replaces_what_the_same_source_says_of_the_same() throws Exception {
    List<Statement> builtIn = LimitTables.builtIn().evidence().statements();
    String source = "\"hornmatters.com, July 2018 (a university's horn teacher)\"";
    state("Horn,Single Tonguing,relied on,8.2,peak,,,,,hornmatters,B,");
    assertEquals(
        builtIn.size() + 1, LimitTables.over(directory).evidence().statements().size(), "another");
    state("Horn,Single Tonguing,relied on,8.2,peak,,,,mine," + source + ",B,");
    List<Statement> statements = LimitTables.over(directory).evidence().statements();
    assertEquals(builtIn.size(), statements.size());
    assertTrue(statements.stream().anyMatch(said -> said.conditions().equals("mine")));
  }

  @ParameterizedTest
  @CsvSource(
      quoteCharacter = '\'',
      delimiter = '|',
      value = {
        "flute,single tonguing,asked,,,,,,,me,C, | give either figure, or both low and high",
        "flute,single tonguing,asked,8,,7,9,,,me,C, | give either figure, or both low and high",
        "flute,single tonguing,asked,,,7,,,,me,C, | give either figure, or both low and high",
        "flute,single tonguing,asked,,,9,7,,,me,C, | low (9) is above high (7): swap them",
        "flute,single tonguing,asked,fast,,,,,,me,C, | figure must be a number above 0, found 'fast'",
        "flute,single tonguing,asked,8,,,,0,,me,C, | seconds must be a number above 0, found '0'",
        "flute,single tonguing,,8,,,,,,me,C, | kind is empty; fill it in",
        "flute,single tonguing,wished,8,,,,,,me,C, | kind must be one of mean, relied on, one player, asked, beyond most, border, found 'wished'",
        "flute,single tonguing,asked,8,best,,,,,me,C, | of must be one of peak, sustained, moving, found 'best'",
        "flute,single tonguing,asked,8,,,,,,,C, | source is empty; fill it in",
        "flute,single tonguing,asked,8,,,,,,me,F, | grade must be A, B, C or D, found 'F'",
        "fluet,single tonguing,asked,8,,,,,,me,C, | no instrument is called 'fluet'; use flute",
        ",single tonguing,asked,8,,,,,,me,C, | instrument is empty; fill it in",
        "flute,,asked,8,,,,,,me,C, | technique is empty; fill it in",
        "flute,détaché,asked,8,,,,,,me,C, | flute has no détaché; use slurred, single tonguing, triple tonguing, double tonguing",
        "flute,single tonguing; whistling,asked,8,,,,,,me,C, | no technique is called 'whistling' there; use slurred, single tonguing, triple tonguing, double tonguing",
        "harp,détaché,asked,8,,,,,,me,C, | no technique is called 'détaché' there; name one of techniques.csv",
        "violin,spiccato,border,8,,,,,,me,C, | technique must be the two strokes of the border, as in 'spiccato; sautillé', found 'spiccato'",
      })
  void a_mistake_is_told_with_file_and_row(String row, String message) throws IOException {
    state(row);
    List<String> problems = LimitTables.problems(directory);
    String told = "statements.csv, row 2: " + message;
    assertTrue(problems.contains(told), () -> told + " is not in " + problems);
  }

  @Test
  void the_same_source_says_a_thing_once() throws Exception {
    state(
        "flute,single tonguing,asked,8,,,,,,me,C,\nFlauto,single tonguing,asked,9,peak,,,,,me,C,");
    assertEquals(
        List.of(
            "statements.csv, row 3: says again what statements.csv, row 2 says; keep one of them"),
        LimitTables.problems(directory));
  }

  @Test
  void a_contradiction_is_told_with_both_rows_and_what_to_do() throws Exception {
    write("techniques.csv", TECHNIQUES + "tuba,single tonguing,tongue,8.5,1,my section,D\n");
    state("tuba,single tonguing,asked,8.8,,,,,,my conductor,C,");
    assertTrue(
        LimitTables.over(directory)
            .contradictions()
            .contains(
                "techniques.csv, row 2 (tuba, single tonguing): asked 8.8 a second (132), says my"
                    + " conductor (grade C, statements.csv, row 2), but 50 of 100 reach 8.5; raise"
                    + " peak to 8.8, or set the statement aside with a reason"));
    state("tuba,single tonguing,asked,8.8,,,,,,my conductor,C,he is always too fast");
    assertEquals(List.of(), ofTuba(LimitTables.over(directory)));
  }

  @Test
  void a_built_in_judgement_is_named_as_such() throws Exception {
    state("tuba,single tonguing,asked,12,,,,,,my conductor,C,");
    List<String> told = ofTuba(LimitTables.over(directory));
    assertEquals(1, told.size());
    assertTrue(told.get(0).startsWith("built-in techniques.csv, row "), told.get(0));
    assertTrue(told.get(0).contains("(grade C, statements.csv, row 2)"), told.get(0));
  }

  private static List<String> ofTuba(LimitTables tables) {
    return tables.contradictions().stream().filter(line -> line.contains("(tuba, ")).toList();
  }

  private void state(String rows) throws IOException {
    write("statements.csv", COLUMNS + rows + "\n");
  }

  private void write(String file, String text) throws IOException {
    Files.writeString(directory.resolve(file), text);
  }
}

package stafette.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stafette.tables.LimitTables;

/** The limits as they are shown and validated. */
class LimitsCommandTest {
  private static final String STATEMENTS =
      "instrument,technique,kind,figure,source,grade,set aside\n";

  @TempDir private Path folder = Path.of("");

  @Test
  void sources_that_contradict_each_other_are_shown_both_in_a_line_of_their_own() {
    Ran ran = Ran.command("limits", "clarinet");
    assertEquals(0, ran.exitCode(), ran.err());
    String known = ran.out().substring(ran.out().indexOf("What is known"));
    assertTrue(known.contains("relied on 8.8 a second (132) for 3 s\n"), known);
    assertTrue(known.contains("osbornmusic.com/mendscherzo"), known);
    assertTrue(known.contains("beyond most 9 to 10.13 a second (135 to 152)\n"), known);
    assertTrue(known.contains("Fobes, Synthetic Speed Tonguing, 2000 (grade B)"), known);
    assertTrue(known.contains("set aside: 8.8 is asked in auditions"), known);
    String disputes =
        known
            .substring(known.indexOf("Where sources contradict each other"))
            .replaceAll("\\s+", " ");
    assertTrue(
        disputes.contains("single tonguing: relied on 8.8 (osbornmusic.com/mendscherzo")
            && disputes.contains("against beyond most 9 (Fobes"),
        disputes);
  }

  @Test
  void an_instrument_is_shown_in_lines_that_fit() {
    for (String instrument : List.of("clarinet", "violin", "snare drum", "piano", "celesta")) {
      Ran ran = Ran.command("limits", instrument);
      assertEquals(List.of(), ran.out().lines().filter(line -> line.length() > 100).toList());
      assertEquals(
          !instrument.equals("celesta"), ran.out().contains("What is known"), "of " + instrument);
    }
  }

  @Test
  void tables_without_a_folder_are_the_built_in_ones() {
    Ran ran = Ran.command("limits", "--validate");
    List<String> contradictions = LimitTables.builtIn().contradictions();
    assertEquals(contradictions.isEmpty() ? 0 : 1, ran.exitCode(), ran.err());
    assertTrue(ran.out().contains("the built-in tables can be used"), ran.out());
    assertEquals(contradictions.size() + 1, ran.out().lines().count());
  }

  @Test
  void a_contradiction_is_named_and_the_tables_can_be_used_all_the_same() throws IOException {
    state("contrabassoon,single tonguing,asked,11,my conductor,C,");
    Ran ran = Ran.command("limits", "--validate", folder.toString());
    assertEquals(1, ran.exitCode(), ran.err());
    assertTrue(
        ran.out().contains("(contrabassoon, single tonguing): asked 11 a second (165), says my"),
        ran.out());
    assertTrue(ran.out().contains(folder + ": these tables can be used, though "), ran.out());
    assertEquals(
        ran.out(), Ran.command("limits", "--validate", "--limits", folder.toString()).out());
    Ran shown = Ran.command("limits", "contrabassoon", "--limits", folder.toString());
    assertEquals(0, shown.exitCode(), shown.err());
    assertTrue(shown.out().contains(", a contradiction: raise peak to 11\n"), shown.out());
  }

  @Test
  void what_is_set_aside_is_shown_with_its_reason_and_not_counted() throws IOException {
    state("contrabassoon,single tonguing,asked,11,my conductor,C,he is always too fast");
    Ran ran = Ran.command("limits", "--validate", folder.toString());
    assertFalse(ran.out().contains("contrabassoon"), ran.out());
    Ran shown = Ran.command("limits", "contrabassoon", "--limits", folder.toString());
    assertTrue(
        shown.out().contains(", a contradiction, set aside: he is always too fast\n"), shown.out());
  }

  @Test
  void tables_that_cannot_be_used_are_not_held_against_statements() throws IOException {
    state("contrabassoon,single tonguing,wished,11,my conductor,C,");
    Ran ran = Ran.command("limits", "--validate", folder.toString());
    assertEquals(3, ran.exitCode(), ran.err());
    assertTrue(ran.out().startsWith("statements.csv, row 2: kind must be one of"), ran.out());
    assertFalse(ran.out().contains("can be used"), ran.out());
  }

  private void state(String row) throws IOException {
    Files.writeString(folder.resolve("statements.csv"), STATEMENTS + row + "\n");
  }
}

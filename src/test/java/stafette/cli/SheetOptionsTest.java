package stafette.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The command preview, printing a sheet. */
class SheetOptionsTest {
  @TempDir private Path folder = Path.of("");

  @Test
  void prints_a_sheet_with_the_scores_title_and_the_date_given() throws IOException {
    Path file = folder.resolve("a.pdf");
    Ran ran = LanternRun.run("preview", "--sheet", file.toString(), "--date", "2026-03-01");
    assertEquals(Commands.FINE, ran.exitCode(), ran.err());
    assertTrue(ran.out().endsWith("Printed    " + file + "\n"), ran.out());
    try (PDDocument pdf = Loader.loadPDF(file.toFile())) {
      String text = new PDFTextStripper().getText(pdf);
      assertTrue(text.contains("Lantern Run") && text.contains("1 March 2026"), text);
      assertTrue(text.contains("from Flute 2"), text);
    }
    byte[] bytes = Files.readAllBytes(file);
    LanternRun.run("preview", "--sheet", file.toString(), "--date", "2026-03-01", "--force");
    assertArrayEquals(bytes, Files.readAllBytes(file));
  }

  @Test
  void tells_what_the_parts_have_at_joins_and_proposes_it_no_more() throws IOException {
    Path plain = folder.resolve("c.pdf");
    Path marked = folder.resolve("d.pdf");
    String pair = "Flute 1, Trumpet 1";
    LanternRun.run("preview", LanternRun.FILE, "5-16", pair, "--sheet", plain.toString());
    LanternRun.run(
        "preview",
        LanternRun.FILE,
        "5-16",
        pair,
        "--sheet",
        marked.toString(),
        "--joins",
        "shaded",
        "--balance");
    assertTrue(words(plain).contains("p against flute mf"), words(plain));
    assertFalse(words(plain).contains("Balanced in the parts"), words(plain));
    String text = words(marked);
    assertTrue(text.contains("without accent and a step softer"), text);
    assertTrue(text.contains("Balanced in the parts: trumpet in B-flat"), text);
    assertEquals(1, text.split(" against flute", -1).length - 1, text);
  }

  @Test
  void players_find_their_way_by_the_words_for_the_tempo() throws IOException {
    Path file = folder.resolve("e.pdf");
    LanternRun.run("preview", "--sheet", file.toString());
    assertTrue(words(file).contains("The run"), words(file));
    assertTrue(words(file).contains("sempre staccato"), words(file));
  }

  @Test
  void what_is_marked_goes_with_a_sheet() {
    Ran ran = LanternRun.run("preview", "--balance");
    assertTrue(ran.err().contains("go with --sheet"), ran.err());
  }

  private static String words(Path sheet) throws IOException {
    try (PDDocument pdf = Loader.loadPDF(sheet.toFile())) {
      return new PDFTextStripper().getText(pdf).replaceAll("\\s+", " ");
    }
  }

  @Test
  void goes_together_with_a_timeline_on_other_paper() throws IOException {
    Path sheet = folder.resolve("b.pdf");
    Path timeline = folder.resolve("b.svg");
    Ran ran =
        LanternRun.run(
            "preview",
            "--sheet",
            sheet.toString(),
            "--timeline",
            timeline.toString(),
            "--paper",
            "letter");
    assertEquals(Commands.FINE, ran.exitCode(), ran.err());
    assertTrue(Files.exists(timeline));
    try (PDDocument pdf = Loader.loadPDF(sheet.toFile())) {
      assertEquals(612, pdf.getPage(0).getMediaBox().getWidth());
    }
  }

  @Test
  void refuses_other_endings_papers_and_files_that_are_there_before_it_searches()
      throws IOException {
    Ran ending = LanternRun.run("preview", "--sheet", folder.resolve("a.svg").toString());
    assertEquals(Commands.WRONG_USE, ending.exitCode());
    Ran paper =
        LanternRun.run("preview", "--sheet", folder.resolve("a.pdf").toString(), "--paper", "wide");
    assertEquals(Commands.WRONG_USE, paper.exitCode());
    assertEquals(Commands.WRONG_USE, LanternRun.run("preview", "--date", "2026-03-01").exitCode());
    Path there = Files.writeString(folder.resolve("there.pdf"), "mine");
    Ran exists = LanternRun.run("preview", "--sheet", there.toString());
    assertEquals(Commands.FILE, exists.exitCode());
    assertEquals("mine", Files.readString(there));
    assertFalse(exists.out().contains("Plan"));
  }
}

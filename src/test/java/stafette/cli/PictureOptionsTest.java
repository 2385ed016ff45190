package stafette.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The command preview, drawing. */
class PictureOptionsTest {
  @TempDir private Path folder = Path.of("");

  @Test
  void draws_svg_png_and_pdf_by_the_ending_of_the_name() throws IOException {
    assertTrue(Files.readString(drawn("a.svg")).contains("id=\"segment-1\""));
    assertEquals((byte) 0x89, Files.readAllBytes(drawn("a.png"))[0]);
    assertEquals('%', Files.readAllBytes(drawn("a.PDF", "--notes", "--paper", "letter"))[0]);
  }

  @Test
  void the_picture_of_the_readme_is_the_one_that_is_drawn_now() throws IOException {
    assertEquals(
        Files.readString(Path.of("samples/lantern-run.svg")), Files.readString(drawn("b.svg")));
  }

  @Test
  void draws_a_plan_that_was_kept() throws IOException {
    Path plan = folder.resolve("plan.json");
    assertEquals(Commands.FINE, LanternRun.run("split", "--plan", plan.toString()).exitCode());
    Path picture = folder.resolve("kept.svg");
    Ran ran = Ran.command("preview", plan.toString(), "--timeline", picture.toString());
    assertEquals(Commands.FINE, ran.exitCode(), ran.err());
    assertTrue(Files.readString(picture).contains("id=\"handoff-1\""));
  }

  @Test
  void refuses_other_endings_papers_and_files_that_are_there_before_it_searches()
      throws IOException {
    Ran ending = preview("--timeline", folder.resolve("a.gif").toString());
    assertEquals(Commands.WRONG_USE, ending.exitCode());
    assertTrue(ending.err().contains(".svg, .png or .pdf"), ending.err());
    Ran paper = preview("--timeline", folder.resolve("a.pdf").toString(), "--paper", "a3");
    assertEquals(Commands.WRONG_USE, paper.exitCode());
    Ran pages = preview("--timeline", folder.resolve("a.svg").toString(), "--paper", "a4");
    assertEquals(Commands.WRONG_USE, pages.exitCode());
    Path there = Files.writeString(folder.resolve("there.svg"), "mine");
    Ran exists = preview("--timeline", there.toString());
    assertEquals(Commands.FILE, exists.exitCode());
    assertEquals("mine", Files.readString(there));
    assertFalse(exists.out().contains("Plan"));
    assertEquals(Commands.FINE, preview("--timeline", there.toString(), "--force").exitCode());
  }

  private Path drawn(String name, String... more) {
    Path file = folder.resolve(name);
    List<String> options = new ArrayList<>(List.of("--timeline", file.toString()));
    options.addAll(List.of(more));
    Ran ran = preview(options.toArray(String[]::new));
    assertEquals(Commands.FINE, ran.exitCode(), ran.err());
    assertTrue(ran.out().endsWith("Drawn      " + file + "\n"), ran.out());
    return file;
  }

  private static Ran preview(String... options) {
    return LanternRun.run("preview", options);
  }
}

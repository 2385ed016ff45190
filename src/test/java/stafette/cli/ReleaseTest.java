package stafette.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.gson.JsonParser;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The version stands in one place, the build's. */
class ReleaseTest {
  @TempDir private Path folder = Path.of("");

  private static String release() throws IOException {
    Matcher version =
        Pattern.compile("<artifactId>stafette</artifactId>\\s*<version>(.*?)</version>")
            .matcher(Files.readString(Path.of("pom.xml")));
    assertTrue(version.find());
    return "Stafette " + version.group(1);
  }

  @Test
  void every_command_says_the_version_of_the_build() throws IOException {
    assertEquals(release(), Ran.command("--version").out().strip());
    assertEquals(release(), Ran.command("split", "--version").out().strip());
  }

  @Test
  void plans_and_pages_say_which_release_made_them() throws IOException {
    Path plan = folder.resolve("plan.json");
    Path sheet = folder.resolve("sheet.pdf");
    LanternRun.run("split", LanternRun.FILE, "5-6", "Flute 1", "--plan", plan.toString());
    Ran.command("preview", plan.toString(), "--sheet", sheet.toString());
    assertEquals(
        release(),
        JsonParser.parseString(Files.readString(plan))
            .getAsJsonObject()
            .get("program")
            .getAsString());
    try (PDDocument pdf = Loader.loadPDF(sheet.toFile())) {
      assertEquals(release(), pdf.getDocumentInformation().getCreator());
    }
  }
}

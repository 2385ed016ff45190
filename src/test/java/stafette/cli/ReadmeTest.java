package stafette.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** Every command of the README does what it says. */
class ReadmeTest {
  private static final Pattern BLOCK = Pattern.compile("```(sh|text)\n(.*?)```", Pattern.DOTALL);
  private static final Pattern DEFAULT_ARGUMENTS =
      Pattern.compile("<exec.args>(.*?)</exec.args>", Pattern.DOTALL);
  private static final Pattern WORD = Pattern.compile("\"([^\"]*)\"|(\\S+)");
  private static final Pattern SEARCH_TIME = Pattern.compile("found in [0-9.]+ s");

  @TestFactory
  Stream<DynamicTest> every_command_runs_and_its_exit_code_is_fine_or_findings()
      throws IOException {
    return commands().stream()
        .filter(command -> !command.equals("mvn verify"))
        .filter(command -> !opensAWindow(command))
        .map(
            command ->
                DynamicTest.dynamicTest(
                    command,
                    () -> {
                      Ran ran = Ran.command(arguments(command));
                      boolean finds = arguments(command)[0].equals("check") && asks(command);
                      assertEquals(
                          finds ? Commands.FINDINGS : Commands.FINE, ran.exitCode(), ran.err());
                      assertTrue(ran.out().length() > 200, ran.out());
                    }));
  }

  /** Of instruments that can't. */
  private static boolean asks(String command) {
    return command.contains("--as ");
  }

  @Test
  void the_command_that_opens_the_window_hands_the_sample_on() throws IOException {
    String command = commands().stream().filter(ReadmeTest::opensAWindow).findFirst().orElseThrow();
    Ran ran = Ran.command(arguments(command));
    assertTrue(ran.err().contains("samples/lantern-run.musicxml"), ran.err());
  }

  /** What goes on in the window has tests of its own. */
  private static boolean opensAWindow(String command) {
    return command.contains("\"app ");
  }

  @Test
  void the_output_it_shows_is_the_output_of_its_first_command() throws IOException {
    Matcher block = BLOCK.matcher(readme());
    String shown = "";
    while (block.find() && shown.isEmpty()) {
      shown = block.group(1).equals("text") ? block.group(2) : "";
    }
    String printed = Ran.command(arguments("mvn compile exec:java")).out();
    assertEquals(withoutTime(shown), withoutTime(printed));
  }

  @Test
  void the_tempo_table_it_shows_is_that_of_its_tempo_command() throws IOException {
    String command =
        commands().stream().filter(c -> c.contains(".jar tempo ")).findFirst().orElseThrow();
    Matcher block = BLOCK.matcher(readme());
    String shown = "";
    while (block.find()) {
      shown = block.group(2).contains("1 player") ? block.group(2) : shown;
    }
    String printed = Ran.command(arguments(command)).out();
    assertTrue(!shown.isEmpty() && printed.contains(shown), printed);
  }

  @Test
  void the_alternatives_it_shows_are_those_of_its_command() throws IOException {
    String command =
        commands().stream().filter(c -> c.contains("--alternatives")).findFirst().orElseThrow();
    Matcher block = BLOCK.matcher(readme());
    String shown = "";
    while (block.find()) {
      shown = block.group(2).contains("mean strain") ? block.group(2) : shown;
    }
    String printed = Ran.command(arguments(command)).out();
    assertTrue(!shown.isEmpty() && printed.contains(shown), printed);
  }

  @Test
  void the_thinned_part_it_shows_is_that_of_its_command() throws IOException {
    String command =
        commands().stream().filter(c -> c.contains(".jar thin ")).findFirst().orElseThrow();
    Matcher block = BLOCK.matcher(readme());
    String shown = "";
    while (block.find()) {
      shown = block.group(2).contains("two for three") ? block.group(2) : shown;
    }
    String printed = Ran.command(arguments(command + " --time 600")).out();
    assertTrue(!shown.isEmpty() && printed.contains(shown), printed);
  }

  @Test
  void the_crews_it_shows_are_those_of_its_command() throws IOException {
    String command =
        commands().stream().filter(c -> c.contains(".jar who ")).findFirst().orElseThrow();
    Matcher block = BLOCK.matcher(readme());
    String shown = "";
    while (block.find()) {
      shown = block.group(2).contains("Crews, ") ? block.group(2) : shown;
    }
    String printed = Ran.command(arguments(command)).out();
    assertTrue(!shown.isEmpty() && printed.contains(shown), printed);
  }

  /** Of Java's own sounds; where another bank is installed, other levels are measured. */
  @Test
  void the_published_steps_it_shows_are_those_of_its_sound() throws IOException {
    String command =
        commands().stream().filter(c -> c.contains("lantern-run.wav")).findFirst().orElseThrow();
    Matcher block = BLOCK.matcher(readme());
    String shown = "";
    while (block.find()) {
      shown = block.group(2).contains("over before") ? block.group(2) : shown;
    }
    String printed = Ran.command(arguments(command)).out();
    List<String> rows = shown.lines().toList();
    assertEquals(7, rows.size());
    for (String row : rows) {
      String published = row.substring(0, rows.get(0).indexOf("over one")).stripTrailing();
      assertTrue(printed.contains(published), printed);
    }
  }

  @Test
  void every_option_it_names_is_one() throws IOException {
    String help = "";
    for (String command : List.of("check", "split", "preview", "thin", "tempo", "who", "limits")) {
      help += Ran.command(command, "--help").out();
    }
    Matcher option = Pattern.compile("`(--[a-z-]+)").matcher(readme());
    while (option.find()) {
      assertTrue(
          option.group(1).equals("--help") || help.contains(option.group(1)), option.group(1));
    }
  }

  private static String withoutTime(String output) {
    return SEARCH_TIME.matcher(output).replaceAll("found in a moment").strip();
  }

  private static List<String> commands() throws IOException {
    List<String> commands = new ArrayList<>();
    Matcher block = BLOCK.matcher(readme());
    while (block.find()) {
      if (block.group(1).equals("sh")) {
        block.group(2).lines().forEach(commands::add);
      }
    }
    return commands;
  }

  private static String[] arguments(String command) throws IOException {
    String text = command;
    if (command.startsWith("java -jar target/stafette.jar ")) {
      text = command.substring("java -jar target/stafette.jar ".length());
    } else if (command.contains("-Dexec.args=")) {
      text = command.replaceFirst(".*-Dexec.args=\"(.*)\"$", "$1");
    } else {
      Matcher arguments = DEFAULT_ARGUMENTS.matcher(Files.readString(Path.of("pom.xml")));
      assertTrue(arguments.find());
      text = arguments.group(1);
    }
    List<String> words = new ArrayList<>();
    Matcher word = WORD.matcher(text);
    while (word.find()) {
      words.add(word.group(1) != null ? word.group(1) : word.group(2));
    }
    return words.toArray(String[]::new);
  }

  private static String readme() throws IOException {
    return Files.readString(Path.of("README.md"));
  }
}

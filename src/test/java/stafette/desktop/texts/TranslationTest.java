package stafette.desktop.texts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import stafette.check.alone.Thinning;
import stafette.limits.Technique;
import stafette.plan.Hocket;
import stafette.score.Pitch;
import stafette.score.Step;
import stafette.tables.LimitTables;
import stafette.time.BeatUnit;
import stafette.time.Length;
import stafette.time.Rational;

/** Every sentence and every name of the program has a German one. */
class TranslationTest {
  private static final Pattern SENTENCE =
      Pattern.compile("Sentence\\s*\\.of\\(\\s*((?:\"(?:[^\"\\\\]|\\\\.)*\"[\\s+]*)*)");
  private static final Pattern LITERAL = Pattern.compile("\"((?:[^\"\\\\]|\\\\.)*)\"");
  private static final Pattern WORD = Pattern.compile("[A-Za-z]{3}");
  private static final Pattern GAP = Pattern.compile("\\{[0-9]+}");

  @Test
  void every_sentence_of_the_program_has_a_german_one() throws IOException {
    Set<String> missing = new TreeSet<>(templates());
    missing.removeIf(template -> !WORD.matcher(template).find());
    missing.removeAll(read("sentences").stringPropertyNames());
    assertEquals(Set.of(), missing);
  }

  @Test
  void no_german_sentence_is_left_over() throws IOException {
    Set<String> unsaid = new TreeSet<>(read("sentences").stringPropertyNames());
    unsaid.removeAll(templates());
    assertEquals(Set.of(), unsaid);
  }

  @Test
  void german_sentences_have_the_same_gaps() throws IOException {
    Properties german = read("sentences");
    for (String english : german.stringPropertyNames()) {
      assertEquals(gaps(english), gaps(german.getProperty(english)), english);
    }
  }

  /** The message of an exception is English; the window says its sentence instead. */
  @Test
  void the_window_shows_no_message_of_an_exception() throws IOException {
    Set<String> showing = new TreeSet<>();
    for (Path file : sources(Path.of("src/main/java/stafette/desktop"))) {
      if (!file.endsWith("Desktop.java") && Files.readString(file).contains("getMessage()")) {
        showing.add(file.toString());
      }
    }
    assertEquals(Set.of(), showing);
  }

  /** What is no literal can't be found, and would stay English. */
  @Test
  void every_template_is_a_literal() throws IOException {
    assertTrue(templates().stream().noneMatch(String::isEmpty));
  }

  @Test
  void every_name_of_the_built_in_tables_has_a_german_one() throws IOException {
    Set<String> names =
        LimitTables.builtIn().catalogue().instruments().stream()
            .flatMap(
                one ->
                    Stream.concat(
                        Stream.of(one.name(), one.family()),
                        one.techniques().stream().map(Technique::name)))
            .collect(Collectors.toCollection(TreeSet::new));
    names.removeAll(read("names").stringPropertyNames());
    assertEquals(Set.of(), names);
  }

  @Test
  void no_german_name_is_left_over() throws IOException {
    Set<String> unsaid = new TreeSet<>(read("names").stringPropertyNames());
    LimitTables.builtIn().catalogue().instruments().stream()
        .peek(one -> unsaid.removeAll(List.of(one.name(), one.family())))
        .flatMap(one -> one.techniques().stream())
        .forEach(technique -> unsaid.remove(technique.name()));
    unsaid.removeAll(others());
    assertEquals(Set.of(), unsaid);
  }

  @Test
  void note_values_pitches_pairs_and_thinned_lines_have_german_names() throws IOException {
    Set<String> missing = new TreeSet<>(others());
    missing.removeAll(read("names").stringPropertyNames());
    assertEquals(Set.of(), missing);
  }

  /** The names that no table holds. */
  private static List<String> others() {
    List<String> names = new ArrayList<>();
    Stream.iterate(Rational.of(16), length -> length.dividedBy(2))
        .limit(11)
        .forEach(
            length ->
                names.add(BeatUnit.of(new Length(length)).orElseThrow().inWords().template()));
    for (Step step : Step.values()) {
      for (int alter = -2; alter <= 2; alter++) {
        String pitch = new Pitch(step, alter, 4).toString();
        names.add(pitch.substring(0, pitch.length() - 1));
      }
    }
    Arrays.stream(Hocket.values())
        .filter(hocket -> hocket != Hocket.NO)
        .forEach(hocket -> names.add(hocket.name().toLowerCase(Locale.ROOT)));
    Thinning.partial()
        .forEach(thinning -> names.add("with the whole line thinned, " + thinning.text()));
    return names;
  }

  private static Set<String> templates() throws IOException {
    Set<String> templates = new TreeSet<>();
    for (Path file : sources(Path.of("src/main/java/stafette"))) {
      SENTENCE
          .matcher(Files.readString(file))
          .results()
          .forEach(found -> templates.add(text(found.group(1))));
    }
    return templates;
  }

  private static List<Path> sources(Path folder) throws IOException {
    try (Stream<Path> files = Files.walk(folder)) {
      return files.filter(path -> path.toString().endsWith(".java")).toList();
    }
  }

  private static String text(String literals) {
    return LITERAL
        .matcher(literals)
        .results()
        .map(found -> found.group(1))
        .collect(Collectors.joining())
        .replace("\\\"", "\"");
  }

  private static Set<String> gaps(String text) {
    Matcher gaps = GAP.matcher(text);
    return gaps.results().map(found -> found.group()).collect(Collectors.toSet());
  }

  static Properties read(String name) throws IOException {
    Properties properties = new Properties();
    Path file = Path.of("src/main/resources/stafette/desktop/texts", name + "_de.properties");
    try (var reader = Files.newBufferedReader(file, StandardCharsets.UTF_8)) {
      properties.load(reader);
    }
    return properties;
  }
}

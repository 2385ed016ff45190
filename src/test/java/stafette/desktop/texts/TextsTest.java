package stafette.desktop.texts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Locale;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import stafette.check.alone.Ease;
import stafette.desktop.state.Watcher;
import stafette.plan.Favour;
import stafette.plan.Hocket;
import stafette.plan.Joins;
import stafette.plan.SourceTreatment;
import stafette.score.Reading;
import stafette.score.Slurring;
import stafette.score.Tremolo;
import stafette.words.Sentence;
import stafette.words.Settable;

/** The words of the desktop: complete in each language, and none that nobody says. */
class TextsTest {
  private static final Pattern QUOTED = Pattern.compile("\"([a-z]+(?:\\.[a-z]+)*)\"");
  private static final Pattern GAP = Pattern.compile("\\{([0-9])");

  @Test
  void both_languages_have_the_same_texts() throws IOException {
    assertEquals(english().stringPropertyNames(), german().stringPropertyNames());
  }

  @Test
  void translations_have_the_same_gaps() throws IOException {
    Properties german = german();
    Properties english = english();
    for (String key : english.stringPropertyNames()) {
      assertEquals(gaps(english.getProperty(key)), gaps(german.getProperty(key)), key);
    }
  }

  private static Set<String> gaps(String text) {
    return GAP.matcher(text)
        .results()
        .map(found -> found.group(1))
        .collect(Collectors.toCollection(TreeSet::new));
  }

  @Test
  void a_sentence_names_the_control_beside_what_can_be_set() {
    Sentence reason =
        Sentence.of(
            "every note can be played, but no chain of handoffs holds from the first to the last:"
                + " overlaps, rests before entries or breaths don't fit together; add a player,"
                + " allow wider overlaps{0}, less rest{1} or a slower tempo",
            Settable.OVERLAP, Settable.REST);
    String english = Texts.in(Locale.ENGLISH).say(reason);
    assertTrue(
        english.endsWith(
            "allow wider overlaps (\"Notes both play at a handoff\"), less rest (\"Rest before an"
                + " entry\") or a slower tempo"),
        english);
    String german = Texts.in(Locale.GERMAN).say(reason);
    assertTrue(
        german.endsWith(
            "breitere Überlappungen („Noten, die beide spielen“), kürzere Pausen („Pause vor einem"
                + " Einsatz“) oder ein langsameres Tempo erlauben"),
        german);
  }

  @Test
  void where_the_window_has_no_control_nothing_is_said() {
    Sentence refusal =
        Sentence.of(
            "the limits know no instrument \"{0}\"; nearest: {1}{2}",
            "fluta", Sentence.name("flute"), Settable.LIMITS);
    assertEquals(
        "the limits know no instrument \"fluta\"; nearest: flute",
        Texts.in(Locale.ENGLISH).say(refusal));
  }

  @Test
  void every_text_is_said_somewhere() throws IOException {
    Set<String> said = quoted();
    Set<String> unsaid = new TreeSet<>(english().stringPropertyNames());
    Arrays.stream(Ease.values()).forEach(ease -> unsaid.remove("ease." + ease.name()));
    Arrays.stream(Favour.values()).forEach(favour -> unsaid.remove("favour." + favour.name()));
    Arrays.stream(Hocket.values()).forEach(unit -> unsaid.remove("hocket." + unit));
    Arrays.stream(Watcher.WatchedWork.values())
        .forEach(work -> unsaid.remove("window.work." + work));
    Arrays.stream(Tremolo.values()).forEach(how -> unsaid.remove("tremolo." + how));
    Arrays.stream(Slurring.values()).forEach(how -> unsaid.remove("slurring." + how));
    Arrays.stream(Reading.values()).forEach(how -> unsaid.remove("reading." + how));
    Arrays.stream(SourceTreatment.values()).forEach(what -> unsaid.remove("source." + what));
    Arrays.stream(Joins.values()).forEach(how -> unsaid.remove("joins." + how));
    Stream.of("balance.", "pedals.")
        .forEach(rule -> unsaid.removeAll(Set.of(rule + true, rule + false)));
    unsaid.removeIf(key -> key.startsWith("tools.export."));
    unsaid.removeAll(said);
    unsaid.removeIf(key -> said.contains(key.replaceFirst("\\.(long|help|unit)$", "")));
    assertEquals(Set.of(), unsaid);
  }

  @Test
  void every_text_that_is_said_exists() throws IOException {
    Set<String> all = english().stringPropertyNames();
    Set<String> rooms = all.stream().map(TextsTest::room).collect(Collectors.toSet());
    Set<String> missing = new TreeSet<>();
    for (String key : quoted()) {
      if (key.contains(".") && rooms.contains(room(key)) && !all.contains(key)) {
        missing.add(key);
      }
    }
    assertEquals(Set.of(), missing);
  }

  @Test
  void apostrophes_are_kept() {
    assertTrue(Texts.in(Locale.ENGLISH).get("verdict.caution").contains("one's limit"));
  }

  private static String room(String key) {
    int point = key.indexOf('.');
    return point < 0 ? key : key.substring(0, point);
  }

  @Test
  void each_kind_of_ease_and_favour_has_a_word() {
    for (Locale locale : new Locale[] {Locale.ENGLISH, Locale.GERMAN}) {
      Texts texts = Texts.in(locale);
      Arrays.stream(Ease.values()).forEach(ease -> texts.get("ease." + ease.name()));
      Arrays.stream(Favour.values()).forEach(favour -> texts.get("favour." + favour.name()));
    }
  }

  @Test
  void a_language_without_a_translation_gets_english() {
    assertEquals("Add", Texts.in(Locale.FRENCH).get("players.add"));
    assertEquals("Hinzufügen", Texts.in(Locale.GERMANY).get("players.add"));
  }

  @Test
  void shares_beyond_the_limit_never_show_as_a_hundred_per_cent() {
    assertEquals("101 %", Texts.in(Locale.ENGLISH).percent(1.0001));
    assertEquals("100 %", Texts.in(Locale.ENGLISH).percent(1));
  }

  private static Set<String> quoted() throws IOException {
    Set<String> quoted = new TreeSet<>();
    try (Stream<Path> files = Files.walk(Path.of("src/main/java/stafette/desktop"))) {
      for (Path file : files.filter(path -> path.toString().endsWith(".java")).toList()) {
        QUOTED.matcher(Files.readString(file)).results().forEach(m -> quoted.add(m.group(1)));
      }
    }
    return quoted;
  }

  private static Properties english() throws IOException {
    return read("desktop.properties");
  }

  private static Properties german() throws IOException {
    return read("desktop_de.properties");
  }

  private static Properties read(String name) throws IOException {
    Properties properties = new Properties();
    try (InputStream stream =
        Files.newInputStream(Path.of("src/main/resources/stafette/desktop/texts", name))) {
      properties.load(
          new java.io.InputStreamReader(stream, java.nio.charset.StandardCharsets.UTF_8));
    }
    return properties;
  }
}

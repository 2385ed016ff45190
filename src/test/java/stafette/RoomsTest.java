package stafette;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideOutsideOfPackages;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaMethodCall;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.io.FileOutputStream;
import java.io.FileWriter;
import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** The architecture: each room and the doors out of it. */
class RoomsTest {
  /** Each room, from the ground up, with the rooms it may use. */
  private static final Map<String, List<String>> DOORS = new LinkedHashMap<>();

  static {
    room("words", "");
    room("time", "words");
    room("score", "words time");
    room("score.source", "words time score");
    room("notation", "words time score");
    room("limits", "words time score");
    room("chairs", "words time score limits");
    room("plan", "words time score limits");
    // what is given to players to read, for files and pictures alike
    room("plan.written", "words time score notation limits plan");
    room("check", "words time score limits plan");
    // an estimate of what is heard, which no verdict and no cost may rest on
    room("check.ear", "words time score limits plan");
    // advice for players and copyists, which no verdict and no cost may rest on either
    room("check.join", "words time score limits plan check check.ear");
    room("check.alone", "words time score limits plan check");
    // the search knows of no rotation, so that each can be read and proven alone
    room("split", "words time score limits plan check");
    // above both searches, as it says which of them is wanted
    room("split.rotate", "words time score limits plan check split");
    room("split.thin", "words time score limits plan check check.alone split");
    room("split.why", "words time score limits plan check split split.rotate");
    room("split.nearest", "words time score limits plan check split split.rotate split.why");
    room("split.tempo", "words time score limits plan check split split.rotate");
    // a text and changes to it: what is music is for those who read and write it
    room("musicxml.text", "words time score");
    room("musicxml.read", "words time score notation musicxml.text");
    room(
        "musicxml.share",
        "words time score notation limits chairs plan plan.written musicxml.text");
    room(
        "musicxml.make",
        "words time score notation limits musicxml.text musicxml.read musicxml.share");
    room(
        "musicxml.newparts",
        "words time score notation limits chairs plan musicxml.text musicxml.share musicxml.make");
    room(
        "musicxml.write",
        "words time score notation limits chairs plan plan.written musicxml.text musicxml.read musicxml.share"
            + " musicxml.make musicxml.newparts");
    room("tables", "words time score limits plan");
    // writes down what was judged and chosen as it is: without these rooms it needs a copy of each
    // of their results
    room(
        "json",
        "words time score score.source limits plan check check.ear check.join check.alone split split.rotate"
            + " split.thin split.why split.tempo");
    room("sound", "words time score limits plan check check.ear");
    room("picture.ink", "words");
    room("picture.notes", "words time score notation limits plan plan.written picture.ink");
    room(
        "picture.ribbon",
        "words time score limits plan plan.written check picture.ink picture.notes");
    room(
        "picture.sheet",
        "words time score limits plan plan.written check check.ear check.join check.alone picture.ink"
            + " picture.notes picture.ribbon");
    // what was left unfinished is a plan file: it is named by its score; slashes are read as the
    // judge of single players has it
    room(
        "keep", "words time score limits plan check.alone tables json musicxml.text musicxml.read");
    // cue notes are known for a line's own by the words that a relay left
    room(
        "ask",
        "words time score limits chairs plan json keep musicxml.text musicxml.read musicxml.write");
    room(
        "work",
        "words time score score.source limits chairs plan check check.ear check.alone split split.rotate split.thin"
            + " split.why split.nearest split.tempo musicxml.text musicxml.read musicxml.share musicxml.make musicxml.newparts musicxml.write tables json sound"
            + " picture.ink picture.notes picture.ribbon picture.sheet keep ask");
    // solves crews as any other line is split
    room(
        "work.who",
        "words time score limits chairs plan check check.alone split split.nearest json keep ask"
            + " work");
    room(
        "cli",
        "words time score score.source limits chairs plan check check.ear check.join check.alone split split.rotate split.thin"
            + " split.why split.tempo keep ask work work.who");
    room(
        "desktop",
        "words time score score.source limits chairs plan plan.written check check.ear check.join check.alone split split.rotate split.thin"
            + " split.why split.tempo picture.ink picture.notes picture.ribbon keep ask work"
            + " work.who");
  }

  private static void room(String name, String doors) {
    DOORS.put(name, Stream.of(doors.split(" ")).filter(door -> !door.isEmpty()).toList());
  }

  /** The front end with a package for each panel; other rooms have none but those on the list. */
  private static final String PANELS = "desktop";

  private static final int MOST_FILES = 45;

  private static final Pattern OPTION = Pattern.compile("--[a-z]");
  private static final Pattern OPTION_IN_QUOTES = Pattern.compile("\"[^\"\\n]*--[a-z][^\"\\n]*\"");

  private static final List<String> CORE =
      DOORS.keySet().stream().takeWhile(room -> !room.equals("musicxml.text")).toList();

  private static final JavaClasses PROGRAM =
      new ClassFileImporter()
          .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
          .importPackages("stafette");

  @TestFactory
  Stream<DynamicTest> each_room_uses_only_the_doors_it_has() {
    return DOORS.entrySet().stream()
        .map(
            room ->
                DynamicTest.dynamicTest(
                    room.getKey(),
                    () ->
                        classes()
                            .that()
                            .resideInAPackage(inside(room.getKey()))
                            .should()
                            .onlyDependOnClassesThat(
                                resideOutsideOfPackages("stafette..")
                                    .or(allowedFrom(room.getKey(), room.getValue())))
                            .because("a room imports only rooms above it, so circles can't arise")
                            .allowEmptyShould(true)
                            .check(PROGRAM)));
  }

  @Test
  void every_class_stands_in_a_room_or_is_the_main_class() {
    classes()
        .that(resideInAnyPackage("stafette.."))
        .and()
        .doNotHaveFullyQualifiedName("stafette.Stafette")
        .should()
        .resideInAnyPackage(DOORS.keySet().stream().map(RoomsTest::inside).toArray(String[]::new))
        .because("a line of code that knows no room is two lines")
        .check(PROGRAM);
  }

  @Test
  void a_room_uses_only_rooms_that_stand_before_it() {
    List<String> before = new ArrayList<>();
    DOORS.forEach(
        (room, doors) -> {
          assertTrue(before.containsAll(doors), room + " uses " + doors);
          before.add(room);
        });
  }

  @Test
  void no_room_is_a_drawer() {
    Map<String, Set<String>> files = new TreeMap<>();
    for (JavaClass each : PROGRAM) {
      String file = each.getName().replaceFirst("\\$.*", "");
      files.computeIfAbsent(each.getPackageName(), room -> new TreeSet<>()).add(file);
    }
    files.values().removeIf(room -> room.size() <= MOST_FILES);
    assertEquals(Map.of(), files);
  }

  @Test
  void a_simple_name_stands_for_one_thing_in_the_whole_house() {
    Map<String, Set<String>> classes = new TreeMap<>();
    for (JavaClass each : PROGRAM) {
      if (!each.getSimpleName().isEmpty() && !each.getSimpleName().equals("package-info")) {
        classes.computeIfAbsent(each.getSimpleName(), name -> new TreeSet<>()).add(each.getName());
      }
    }
    classes.values().removeIf(names -> names.size() == 1);
    assertEquals(Map.of(), classes);
  }

  @Test
  void the_panels_of_the_desktop_stand_in_no_circle() {
    slices()
        .matching("stafette.desktop.(*)..")
        .should()
        .beFreeOfCycles()
        .because("each panel can be read alone")
        .check(PROGRAM);
  }

  @Test
  void the_core_knows_no_files_screens_streams_clock_or_chance() {
    noClasses()
        .that()
        .resideInAnyPackage(CORE.stream().map(RoomsTest::inside).toArray(String[]::new))
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage(
            "java.io..", "java.nio..", "java.net..", "javax.xml..", "java.time..", "javafx..")
        .orShould()
        .dependOnClassesThat()
        .belongToAnyOf(java.util.Random.class, java.util.Timer.class)
        .orShould()
        .accessField(System.class, "out")
        .orShould()
        .accessField(System.class, "err")
        .orShould()
        .callMethod(System.class, "nanoTime")
        .orShould()
        .callMethod(System.class, "currentTimeMillis")
        .because("the same input gives the same answer, on any machine, without one")
        .check(PROGRAM);
  }

  /** The main class opens the terminal, and a lock is a file that nothing is written into. */
  @Test
  void files_are_written_through_one_door() {
    noClasses()
        .that()
        .doNotHaveFullyQualifiedName("stafette.Stafette")
        .and()
        .haveNameNotMatching("stafette\\.keep\\.(FileDoor|FileBeside|FileLock)(\\$.*)?")
        .should()
        .callMethodWhere(DescribedPredicate.describe("writes files", RoomsTest::writes))
        .orShould()
        .dependOnClassesThat()
        .belongToAnyOf(FileOutputStream.class, FileWriter.class, FileChannel.class)
        .because("what is written beside it may be spoilt, or spoil what is read")
        .check(PROGRAM);
  }

  private static boolean writes(JavaMethodCall call) {
    return call.getTargetOwner().isEquivalentTo(Files.class)
        && call.getName()
            .matches(
                "write.*|new(OutputStream|BufferedWriter|ByteChannel)|move|copy|create.*|delete.*");
  }

  /** What can be set is a fact of a sentence instead; each front end says how. */
  @Test
  void no_room_but_the_command_line_speaks_of_its_options() throws IOException {
    Set<String> speaking = new TreeSet<>();
    try (Stream<Path> files = Files.walk(Path.of("src/main"))) {
      for (Path file : files.filter(RoomsTest::speaks).toList()) {
        String text = Files.readString(file);
        Pattern option = file.toString().endsWith(".java") ? OPTION_IN_QUOTES : OPTION;
        option.matcher(text).results().forEach(found -> speaking.add(file + ": " + found.group()));
      }
    }
    assertEquals(Set.of(), speaking);
  }

  private static boolean speaks(Path file) {
    return file.toString().matches(".*\\.(java|properties)")
        && !file.startsWith("src/main/java/stafette/cli");
  }

  private static DescribedPredicate<JavaClass> allowedFrom(String room, List<String> doors) {
    return resideInAnyPackage(
        Stream.concat(Stream.of(room), doors.stream())
            .map(RoomsTest::inside)
            .toArray(String[]::new));
  }

  private static String inside(String room) {
    return "stafette." + room + (room.equals(PANELS) ? ".." : "");
  }
}

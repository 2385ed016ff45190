package stafette;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideOutsideOfPackages;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.junit.jupiter.api.Assertions.assertEquals;

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
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** The architecture: each room and the doors out of it. */
class RoomsTest {
  private static final Map<String, List<String>> DOORS = new LinkedHashMap<>();

  static {
    DOORS.put("words", List.of());
    DOORS.put("time", List.of("words"));
    DOORS.put("score", List.of("words", "time"));
    DOORS.put("limits", List.of("words", "time", "score"));
    DOORS.put("plan", List.of("words", "time", "score", "limits"));
    DOORS.put("check", List.of("words", "time", "score", "limits", "plan"));
    DOORS.put("split", List.of("words", "time", "score", "limits", "plan", "check"));
    DOORS.put("musicxml", List.of("words", "time", "score", "limits", "plan"));
    DOORS.put("tables", List.of("words", "time", "score", "limits", "plan"));
    // writes down what was judged and chosen as it is: without check and split it needs a copy of
    // each of their results
    DOORS.put("json", List.of("words", "time", "score", "limits", "plan", "check", "split"));
    DOORS.put("sound", List.of("words", "time", "score", "limits", "plan", "check"));
    DOORS.put("picture", List.of("words", "time", "score", "limits", "plan", "check"));
    DOORS.put(
        "work",
        List.of(
            "words",
            "time",
            "score",
            "limits",
            "plan",
            "check",
            "split",
            "musicxml",
            "tables",
            "json",
            "sound",
            "picture"));
    DOORS.put("cli", List.of("words", "time", "score", "limits", "plan", "check", "split", "work"));
    DOORS.put(
        "desktop",
        List.of("words", "time", "score", "limits", "plan", "check", "split", "picture", "work"));
  }

  private static final Pattern OPTION = Pattern.compile("--[a-z]");
  private static final Pattern OPTION_IN_QUOTES = Pattern.compile("\"[^\"\\n]*--[a-z][^\"\\n]*\"");

  private static final List<String> CORE =
      List.of("words", "time", "score", "limits", "plan", "check", "split");

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
    return "stafette." + room + "..";
  }
}

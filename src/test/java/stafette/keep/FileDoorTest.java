package stafette.keep;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.nio.file.attribute.PosixFileAttributeView;
import java.nio.file.attribute.PosixFileAttributes;
import java.nio.file.attribute.PosixFilePermission;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stafette.words.Refusal;
import stafette.words.Sentence;

/** No file is ever spoilt. */
class FileDoorTest {
  private static final byte[] NEW = "new".getBytes(StandardCharsets.UTF_8);

  @TempDir private Path folder = Path.of("");

  private Path old(String name) throws IOException {
    return Files.writeString(folder.resolve(name), "old");
  }

  private static void write(Path file) throws Refusal {
    FileDoor.write(file, NEW, true, RereadProof.BYTES);
  }

  private static String refused(Path file) {
    return refused(file, true);
  }

  private static String refused(Path file, boolean replace) {
    return String.valueOf(
        assertThrows(Refusal.class, () -> FileDoor.write(file, NEW, replace, RereadProof.BYTES))
            .getMessage());
  }

  private List<String> names() throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.map(file -> String.valueOf(file.getFileName())).sorted().toList();
    }
  }

  @Test
  void a_new_file_holds_what_was_written_and_nothing_is_left_beside_it() throws Exception {
    write(folder.resolve("a"));
    assertArrayEquals(NEW, Files.readAllBytes(folder.resolve("a")));
    assertEquals(List.of("a"), names());
  }

  @Test
  void a_link_stays_a_link_and_what_it_leads_to_is_replaced() throws Exception {
    Path target = old("target");
    Path link = Files.createSymbolicLink(folder.resolve("link"), Path.of("target"));
    Path far = Files.createSymbolicLink(folder.resolve("far"), link.toAbsolutePath());
    write(far);
    assertTrue(Files.isSymbolicLink(far) && Files.isSymbolicLink(link));
    assertEquals("new", Files.readString(target));
  }

  @Test
  void a_link_to_nothing_yet_is_followed_too() throws Exception {
    Files.createDirectory(folder.resolve("sub"));
    Path link = Files.createSymbolicLink(folder.resolve("link"), Path.of("sub", "made"));
    write(link);
    assertTrue(Files.isSymbolicLink(link));
    assertEquals("new", Files.readString(folder.resolve("sub/made")));
  }

  @Test
  void links_in_a_circle_are_refused_in_words() throws Exception {
    Path one = Files.createSymbolicLink(folder.resolve("one"), Path.of("other"));
    Files.createSymbolicLink(folder.resolve("other"), Path.of("one"));
    assertTrue(refused(one).contains("links lead round in a circle"), refused(one));
  }

  @Test
  void a_file_that_is_replaced_keeps_its_mode_owner_and_group() throws Exception {
    Path file = old("mine");
    PosixFileAttributeView view = Files.getFileAttributeView(file, PosixFileAttributeView.class);
    assumeTrue(view != null, "there are no modes here");
    Set<PosixFilePermission> mode = PosixFilePermissions.fromString("rw-r-----");
    view.setPermissions(mode);
    boolean mayGive = given(file, view);
    PosixFileAttributes before = Files.readAttributes(file, PosixFileAttributes.class);
    write(file);
    PosixFileAttributes after = Files.readAttributes(file, PosixFileAttributes.class);
    assertNotEquals(before.fileKey(), after.fileKey(), "it is another file in its place");
    assertEquals(mode, after.permissions());
    assertEquals(before.owner(), after.owner(), "given away: " + mayGive);
    assertEquals(before.group(), after.group(), "given away: " + mayGive);
  }

  /** To somebody else, where the system allows that. */
  private static boolean given(Path file, PosixFileAttributeView view) {
    try {
      Files.setAttribute(file, "unix:uid", 1);
      Files.setAttribute(file, "unix:gid", 1);
      return view.readAttributes().owner().getName() != null;
    } catch (IOException | UnsupportedOperationException | IllegalArgumentException e) {
      return false;
    }
  }

  @Test
  void what_cannot_be_read_again_replaces_nothing_and_leaves_nothing() throws Exception {
    Path file = old("score");
    Refusal no = Refusal.ofFile(Sentence.of("no score"));
    assertEquals(
        no,
        assertThrows(
            Refusal.class,
            () ->
                FileDoor.write(
                    file,
                    NEW,
                    true,
                    bytes -> {
                      assertArrayEquals(NEW, bytes);
                      assertEquals("old", string(file), "it is proven before it is moved");
                      throw no;
                    })));
    assertEquals("old", Files.readString(file));
    assertEquals(List.of("score"), names());
  }

  private static String string(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException e) {
      throw new AssertionError(e);
    }
  }

  @Test
  void what_was_put_there_while_it_was_written_is_not_replaced_unasked() throws Exception {
    Path file = folder.resolve("race");
    Refusal late =
        assertThrows(
            Refusal.class,
            () -> FileDoor.write(file, NEW, false, bytes -> assertTrue(put(file), "put there")));
    assertTrue(String.valueOf(late.getMessage()).contains("exists already"), late.getMessage());
    assertEquals("old", Files.readString(file));
  }

  private boolean put(Path file) {
    try {
      return Files.exists(old(String.valueOf(file.getFileName())));
    } catch (IOException e) {
      throw new AssertionError(e);
    }
  }

  @Test
  void what_the_disk_gives_back_otherwise_replaces_nothing() throws Exception {
    Path file = old("score");
    Refusal spoilt =
        assertThrows(
            Refusal.class,
            () -> FileDoor.write(file, NEW, true, bytes -> assertTrue(spoil(), "spoilt")));
    assertTrue(String.valueOf(spoilt.getMessage()).contains("gives back something else"));
    assertEquals("old", Files.readString(file));
    assertEquals(List.of("score"), names());
  }

  /** What stands beside the file while it is written. */
  private boolean spoil() {
    try {
      Path part = folder.resolve(names().get(0));
      Files.writeString(part, "neW");
      return part.toString().endsWith(".part");
    } catch (IOException e) {
      throw new AssertionError(e);
    }
  }

  @Test
  void only_the_very_same_bytes_are_what_was_written() throws Exception {
    Path file = old("file");
    assertTrue(FileDoor.holds(file, "old".getBytes(StandardCharsets.UTF_8)));
    for (String other : List.of("", "ol", "olD", "older")) {
      assertFalse(FileDoor.holds(file, other.getBytes(StandardCharsets.UTF_8)), other);
    }
    byte[] large = new byte[(1 << 17) + 1];
    Files.write(file, large);
    assertTrue(FileDoor.holds(file, large));
    large[large.length - 1] = 1;
    assertFalse(FileDoor.holds(file, large));
  }

  @Test
  void a_place_that_is_none_is_told_in_words() throws Exception {
    assertTrue(refused(folder).contains("is a folder"), refused(folder));
    Path nowhere = folder.resolve("no/such/file");
    assertTrue(refused(nowhere).contains("there is no folder"), refused(nowhere));
    Path through = old("file").resolve("on/top");
    assertTrue(refused(through).contains("can't be written"), refused(through));
    assertTrue(refused(old("f").resolve("top")).contains("is no folder"));
    assertTrue(refused(old("there"), false).contains("exists already"));
    assertEquals("old", Files.readString(folder.resolve("there")));
  }

  @Test
  void a_device_is_no_file() {
    Path device = Path.of("/dev/null");
    assumeTrue(Files.exists(device));
    assertTrue(refused(device).contains("device"), refused(device));
    assertFalse(Files.isRegularFile(device));
  }

  @Test
  void a_protected_file_is_left_alone() throws Exception {
    Path file = old("protected");
    assumeTrue(file.toFile().setWritable(false) && !Files.isWritable(file), "root may all");
    assertTrue(refused(file).contains("protected"), refused(file));
  }

  @Test
  void a_name_as_long_as_names_can_be_is_written() throws Exception {
    Path file = folder.resolve("n".repeat(255));
    write(file);
    assertArrayEquals(NEW, Files.readAllBytes(file));
    assertTrue(refused(folder.resolve("n".repeat(256))).contains("can't be written"));
  }

  @Test
  void what_killed_programs_left_is_cleaned_away_and_what_others_write_is_not() throws Exception {
    long dead = deadProgram();
    long own = ProcessHandle.current().pid();
    Path left = part(dead, Duration.ofMinutes(2));
    Path fresh = part(dead, Duration.ofSeconds(5));
    Path atWork = part(own, Duration.ZERO);
    Path number = part(own, Duration.ofHours(2));
    Path ancient = part(own, Duration.ofHours(25));
    Path other = aged(folder.resolve(".stafette-notes.part"), Duration.ofDays(9));
    write(folder.resolve("a"));
    assertFalse(Files.exists(left), "its program is no more");
    assertTrue(Files.exists(fresh), "a program of another machine may be at it");
    assertTrue(Files.exists(atWork));
    assertFalse(Files.exists(number), "a program that had this number before left it");
    assertFalse(Files.exists(ancient));
    assertTrue(Files.exists(other), "it is nobody's but the user's");
  }

  private static long deadProgram() throws Exception {
    Process program = java("-version").start();
    program.waitFor();
    return program.pid();
  }

  private Path part(long program, Duration age) throws IOException {
    return aged(folder.resolve(".stafette-%d-%d.part".formatted(program, age.toSeconds())), age);
  }

  private static Path aged(Path file, Duration age) throws IOException {
    Files.writeString(file, "half");
    return Files.setLastModifiedTime(file, FileTime.from(Instant.now().minus(age)));
  }

  private static ProcessBuilder java(String... arguments) {
    List<String> command =
        Stream.concat(
                Stream.of(Path.of(System.getProperty("java.home", ""), "bin", "java").toString()),
                Stream.of(arguments))
            .toList();
    return new ProcessBuilder(command).redirectErrorStream(true);
  }

  /** Writes into the file named, and is killed in the middle of it. */
  static final class Killed {
    private Killed() {}

    public static void main(String[] args) throws Refusal {
      FileDoor.write(Path.of(args[0]), NEW, true, bytes -> Runtime.getRuntime().halt(9));
    }
  }

  @Test
  void a_program_killed_while_it_writes_leaves_the_old_file_and_the_next_one_cleans_up()
      throws Exception {
    Path file = old("score");
    Process killed =
        java("-cp", System.getProperty("java.class.path", ""), Killed.class.getName(), file + "")
            .start();
    assertEquals(9, killed.waitFor(), () -> said(killed));
    assertEquals("old", Files.readString(file));
    assertEquals(2, names().size(), names().toString());
    Path left = folder.resolve(names().get(0));
    Files.setLastModifiedTime(left, FileTime.from(Instant.now().minus(Duration.ofMinutes(2))));
    write(file);
    assertEquals(List.of("score"), names());
    assertEquals("new", Files.readString(file));
  }

  private static String said(Process program) {
    try {
      return new String(program.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new AssertionError(e);
    }
  }

  @Test
  void what_cannot_be_read_is_told_in_words_without_those_of_java() throws Exception {
    assertTrue(unread(folder.resolve("none")).contains("there is no such file"));
    assertTrue(unread(folder).contains("is a folder"));
    String through = unread(old("file").resolve("top"));
    assertFalse(through.contains("Exception"), through);
    Path link = Files.createSymbolicLink(folder.resolve("link"), Path.of("gone"));
    assertTrue(unread(link).contains("there is no such file"));
  }

  private static String unread(Path file) {
    return String.valueOf(assertThrows(Refusal.class, () -> FileDoor.read(file)).getMessage());
  }

  @Test
  void files_of_each_kind_begin_and_end_as_their_kind_does() throws Exception {
    RereadProof proof = RereadProof.frame("%PDF-", "%%EOF\n");
    proof.of("%PDF-1.7 …%%EOF\n".getBytes(StandardCharsets.UTF_8));
    for (String cut : List.of("", "%PDF-", "%%EOF\n", "%PDF-1.7", "PDF-1.7%%EOF\n")) {
      assertThrows(
          IllegalStateException.class, () -> proof.of(cut.getBytes(StandardCharsets.UTF_8)), cut);
    }
  }
}

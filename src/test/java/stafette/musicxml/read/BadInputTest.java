package stafette.musicxml.read;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static stafette.musicxml.read.Xml.ATTRIBUTES;
import static stafette.musicxml.read.Xml.note;
import static stafette.musicxml.read.Xml.score;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import stafette.musicxml.text.UnreadableScore;

class BadInputTest {
  private static final String GOOD = score(ATTRIBUTES + note("A", 4, 48, ""));

  @TestFactory
  Stream<DynamicTest> each_bad_file_gets_one_clear_message() throws IOException {
    String entity = "<!DOCTYPE score-partwise [<!ENTITY e \"x\">]>";
    String outside = "<!DOCTYPE score-partwise [<!ENTITY e SYSTEM \"file:///etc/hostname\">]>";
    String bomb =
        "<!DOCTYPE score-partwise [<!ENTITY a \"aaaaaaaaaa\"><!ENTITY b \"&a;&a;&a;&a;&a;&a;&a;&a;&a;&a;\">]>";
    Map<String, byte[]> cases =
        Map.ofEntries(
            Map.entry("empty", new byte[0]),
            Map.entry("a picture", new byte[] {(byte) 0x89, 'P', 'N', 'G', 13, 10, 26, 10, 0, 0}),
            Map.entry("plain words", utf8("Dear conductor, here is the score.")),
            Map.entry("truncated", utf8(GOOD.substring(0, GOOD.length() / 2))),
            Map.entry("timewise", utf8("<score-timewise version=\"4.0\"></score-timewise>")),
            Map.entry("another root", utf8("<opus><title>x</title></opus>")),
            Map.entry("no part", utf8("<score-partwise><part-list/></score-partwise>")),
            Map.entry(
                "no measure",
                utf8("<score-partwise><part-list/><part id=\"P1\"/></score-partwise>")),
            Map.entry(
                "a list after the parts",
                utf8(GOOD.replaceFirst("(?s)(<part-list>.*</part-list>)(.*</part>)", "$2$1"))),
            Map.entry("a second root", utf8(GOOD + "<score-partwise/>")),
            Map.entry("an entity", utf8(withDoctype(entity, "&e;"))),
            Map.entry("an external entity", utf8(withDoctype(outside, "&e;"))),
            Map.entry("an entity bomb", utf8(withDoctype(bomb, "&b;"))),
            Map.entry(
                "deep nesting", utf8(GOOD.replace("<part id", "<x>".repeat(300_000) + "<part id"))),
            Map.entry(
                "wrong encoding",
                GOOD.replace("Flute", "Fl\u00f6te").getBytes(StandardCharsets.ISO_8859_1)),
            Map.entry("unknown encoding", utf8(GOOD.replace("UTF-8", "UTF-99"))),
            Map.entry("divisions of zero", utf8(GOOD.replace("<divisions>12", "<divisions>0"))),
            Map.entry(
                "an absurd duration", utf8(GOOD.replace("<duration>48", "<duration>1e99999999"))),
            Map.entry("a zip without a score", zip(Map.of("readme.txt", utf8("x")))),
            Map.entry(
                "a zip bomb",
                zip(
                    Map.of(
                        "META-INF/container.xml", container(), "score.xml", new byte[600 << 20]))),
            Map.entry("a broken zip", broken()));
    return cases.entrySet().stream()
        .map(
            entry ->
                DynamicTest.dynamicTest(
                    entry.getKey(), () -> refusedWithOneMessage(entry.getValue())));
  }

  private static void refusedWithOneMessage(byte[] bytes) {
    String message =
        String.valueOf(
            assertThrows(UnreadableScore.class, () -> MusicXmlReader.read(bytes)).getMessage());
    assertTrue(message.length() > 20 && message.length() < 400, message);
    assertFalse(message.contains("Exception") || message.contains("\tat "), message);
  }

  @Property(tries = 300)
  void a_damaged_file_is_read_or_refused_but_never_crashes(
      @ForAll @IntRange(max = 5000) int at, @ForAll byte with, @ForAll boolean cut)
      throws IOException {
    byte[] bytes = Files.readAllBytes(Path.of("samples/mill-stairs.musicxml"));
    byte[] damaged = java.util.Arrays.copyOf(bytes, cut ? at : 6000);
    if (!cut) {
      damaged[at] = with;
    }
    try {
      MusicXmlReader.read(damaged);
    } catch (UnreadableScore expected) {
      assertTrue(String.valueOf(expected.getMessage()).length() > 10);
    }
  }

  @Property(tries = 300)
  void a_character_changed_in_a_whole_file_never_crashes_the_reader(
      @ForAll @IntRange(max = 700) int at, @ForAll char with) {
    StringBuilder text = new StringBuilder(GOOD);
    text.setCharAt(at % GOOD.length(), with);
    try {
      MusicXmlReader.read(utf8(text.toString()));
    } catch (UnreadableScore expected) {
      assertTrue(String.valueOf(expected.getMessage()).length() > 10);
    }
  }

  private static String withDoctype(String doctype, String reference) {
    return GOOD.replace("<score-partwise", doctype + "<score-partwise").replace("Flute", reference);
  }

  private static byte[] utf8(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }

  private static byte[] container() {
    return utf8(
        "<container><rootfiles><rootfile full-path=\"score.xml\"/></rootfiles></container>");
  }

  private static byte[] broken() throws IOException {
    byte[] whole = zip(Map.of("META-INF/container.xml", container(), "score.xml", utf8(GOOD)));
    return java.util.Arrays.copyOf(whole, whole.length / 2);
  }

  private static byte[] zip(Map<String, byte[]> entries) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
      for (Map.Entry<String, byte[]> entry : entries.entrySet()) {
        zip.putNextEntry(new ZipEntry(entry.getKey()));
        zip.write(entry.getValue());
        zip.closeEntry();
      }
    }
    return bytes.toByteArray();
  }
}

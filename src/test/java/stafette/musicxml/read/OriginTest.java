package stafette.musicxml.read;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import stafette.musicxml.text.Origin;
import stafette.musicxml.text.UnreadableScore;

class OriginTest {
  private static final List<String> SAMPLES = List.of("lantern-run", "mill-stairs", "signal-hill");

  @TestFactory
  Stream<DynamicTest> spans_fit_in_every_encoding_and_with_every_line_end() {
    return SAMPLES.stream()
        .flatMap(
            name ->
                Stream.of(
                        StandardCharsets.UTF_8,
                        StandardCharsets.UTF_16LE,
                        StandardCharsets.ISO_8859_1)
                    .flatMap(
                        charset ->
                            Stream.of("\n", "\r\n")
                                .map(
                                    end ->
                                        DynamicTest.dynamicTest(
                                            name + " " + charset + " " + end.length(),
                                            () -> fits(name, charset, end)))));
  }

  private static void fits(String name, Charset charset, String lineEnd)
      throws IOException, UnreadableScore {
    String text =
        sample(name).replace("\n", lineEnd).replace("UTF-8", charset.name().replace("LE", ""));
    boolean marked = charset.equals(StandardCharsets.UTF_16LE);
    byte[] bytes = ((marked ? "\ufeff" : "") + text).getBytes(charset);
    Document document = MusicXmlReader.read(bytes);
    Origin origin = document.origin();
    assertEquals(text, origin.text());
    assertEquals(marked, origin.byteOrderMark());
    assertEquals(lineEnd, origin.lineEnd());
    assertEquals(document.score().parts().size(), origin.parts().size());
    for (Origin.PartText part : origin.parts()) {
      assertEquals(document.score().bars().count(), part.measures().size());
      part.measures().forEach(measure -> elementsFollowOneAnother(origin.text(), measure));
    }
  }

  private static void elementsFollowOneAnother(String text, Origin.MeasureText measure) {
    assertTrue(measure.whole().in(text).startsWith("<measure"));
    int end = measure.startTag().end();
    for (Origin.ElementText element : measure.elements()) {
      String own = element.span().in(text);
      assertTrue(element.span().start() >= end, own);
      assertTrue(own.startsWith("<" + element.name()) && own.endsWith(">"), own);
      assertTrue(text.substring(end, element.span().start()).isBlank(), own);
      end = element.span().end();
    }
  }

  @Test
  void a_compressed_score_names_the_entry_that_holds_it() throws IOException, UnreadableScore {
    byte[] container =
        "<?xml version=\"1.0\"?><!DOCTYPE container><container><rootfiles><rootfile full-path=\"in/hill.xml\"/></rootfiles></container>"
            .getBytes(StandardCharsets.UTF_8);
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
      zip.putNextEntry(new ZipEntry("META-INF/container.xml"));
      zip.write(container);
      zip.putNextEntry(new ZipEntry("in/hill.xml"));
      zip.write(sample("signal-hill").getBytes(StandardCharsets.UTF_8));
    }
    Document document = MusicXmlReader.read(bytes.toByteArray());
    assertEquals("in/hill.xml", document.container().rootEntry().orElseThrow());
    assertEquals(14, document.score().parts().size());
  }

  private static String sample(String name) throws IOException {
    return Files.readString(Path.of("samples", name + ".musicxml"));
  }
}

package stafette.picture.ink;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import javax.imageio.ImageIO;
import javax.xml.parsers.DocumentBuilderFactory;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import stafette.picture.ribbon.InventedRelays;
import stafette.plan.Hocket;
import stafette.plan.Plan;

/** The same drawing as SVG, PDF and PNG. */
class InksTest {
  private static final Plan PLAN = InventedRelays.rotation(8, 3, 2);

  @Test
  void svg_is_well_formed_and_shows_each_segment_and_handoff_by_its_id() throws Exception {
    Document svg = parsed(SvgInk.svg(sheet(PLAN, false)));
    assertEquals("svg", svg.getDocumentElement().getTagName());
    Set<String> ids = new HashSet<>();
    NodeList groups = svg.getElementsByTagName("g");
    for (int i = 0; i < groups.getLength(); i++) {
      Element group = (Element) groups.item(i);
      assertTrue(ids.add(group.getAttribute("id")), group.getAttribute("id"));
      assertEquals("title", ((Element) group.getFirstChild()).getTagName());
      double left = Double.parseDouble(group.getAttribute("data-left"));
      double right = Double.parseDouble(group.getAttribute("data-right"));
      assertTrue(left < right);
    }
    assertEquals(
        Set.of(
            "segment-1",
            "segment-2",
            "segment-3",
            "segment-4",
            "handoff-1",
            "handoff-2",
            "handoff-3",
            "lane-1",
            "lane-2",
            "lane-3"),
        ids);
  }

  @Test
  void svg_says_bars_and_beats_of_a_handoff() throws Exception {
    Document svg = parsed(SvgInk.svg(sheet(PLAN, false)));
    Element handoff = byId(svg, "handoff-2");
    assertEquals("Player 2", handoff.getAttribute("data-leaves"));
    assertEquals("Player 3", handoff.getAttribute("data-enters"));
    assertEquals("5.1", handoff.getAttribute("data-from"));
    assertEquals("96", handoff.getAttribute("data-first"));
    assertEquals("96", handoff.getAttribute("data-last"));
  }

  @Test
  void svg_escapes_names_and_drops_what_xml_cannot_hold() throws Exception {
    Mark words = new Mark.Lettering("A<&\"\u0001B", 10, 10, 8, Face.PLAIN, Ink.FULL);
    Mark group =
        new Mark.MarkGroup(Optional.of("x"), "<t>", Map.of("name", "\"&\""), List.of(words));
    Document svg = parsed(SvgInk.svg(new Drawing(50, 20, "A & B", List.of(group))));
    assertEquals("A<&\"\uFFFDB", svg.getElementsByTagName("text").item(0).getTextContent());
    assertEquals("\"&\"", byId(svg, "x").getAttribute("data-name"));
  }

  @Test
  void figures_are_short_and_never_written_with_an_exponent() {
    assertEquals("0", SvgInk.figure(0.001));
    assertEquals("-1.05", SvgInk.figure(-1.05));
    assertEquals("12.5", SvgInk.figure(12.5));
    assertEquals("100000", SvgInk.figure(1e5));
  }

  @Test
  void pdf_has_the_words_of_the_drawing_and_its_fonts_inside_and_no_images() throws IOException {
    List<Drawing> pages = InventedRelays.drawn(PLAN, Paper.A4, true);
    try (PDDocument pdf = Loader.loadPDF(PdfInk.pdf(pages, "title", "Stafette 1"))) {
      assertEquals(pages.size(), pdf.getNumberOfPages());
      String text = new PDFTextStripper().getText(pdf);
      for (String words : List.of("Piano, bars 1–8", "Player 1", "Player 3", "quarter = 92")) {
        assertTrue(text.contains(words), text);
      }
      for (PDPage page : pdf.getPages()) {
        assertFalse(page.getResources().getXObjectNames().iterator().hasNext());
        for (COSName name : page.getResources().getFontNames()) {
          PDFont font = page.getResources().getFont(name);
          assertTrue(font.isEmbedded(), font.getName());
        }
      }
    }
  }

  @Test
  void a_name_in_letters_that_no_font_has_does_not_stop_the_pdf() throws IOException {
    Mark words = new Mark.Lettering("Flöte 1 笛", 10, 10, 8, Face.BOLD, Ink.FULL);
    byte[] bytes = PdfInk.pdf(List.of(new Drawing(90, 20, "笛", List.of(words))), "笛", "Stafette 1");
    try (PDDocument pdf = Loader.loadPDF(bytes)) {
      assertTrue(new PDFTextStripper().getText(pdf).contains("Flöte 1"));
    }
  }

  @Test
  void png_has_ink_of_all_sorts_on_white_and_the_size_asked_for() throws IOException {
    Drawing drawing = sheet(InventedRelays.hocket(Hocket.GROUP), true);
    BufferedImage image = ImageIO.read(new ByteArrayInputStream(PngInk.png(drawing, 1)));
    assertEquals((int) Math.ceil(drawing.width()), image.getWidth());
    Set<Integer> colours = new HashSet<>();
    for (int x = 0; x < image.getWidth(); x++) {
      for (int y = 0; y < image.getHeight(); y++) {
        colours.add(image.getRGB(x, y) & 0xffffff);
      }
    }
    assertEquals(0xffffff, image.getRGB(2, 2) & 0xffffff);
    assertTrue(colours.contains(Ink.FULL.rgb()));
    assertTrue(colours.contains(Ink.JOIN.rgb()));
  }

  @Test
  void a_drawing_too_large_for_an_image_is_drawn_coarser() {
    Drawing wide = new Drawing(90_000, 400, "wide", List.of());
    double scale = PngInk.scale(wide, 2);
    assertTrue(scale < 2);
    assertTrue(wide.width() * scale * wide.height() * scale <= 120e6 + 1);
    assertEquals(2, PngInk.scale(sheet(PLAN, false), 2));
  }

  @Test
  void the_same_plan_gives_the_same_bytes() {
    for (boolean notes : new boolean[] {false, true}) {
      assertEquals(SvgInk.svg(sheet(PLAN, notes)), SvgInk.svg(sheet(PLAN, notes)));
      assertArrayEquals(PngInk.png(sheet(PLAN, notes), 1), PngInk.png(sheet(PLAN, notes), 1));
      assertArrayEquals(
          PdfInk.pdf(InventedRelays.drawn(PLAN, Paper.A4, notes), "t", "Stafette 1"),
          PdfInk.pdf(InventedRelays.drawn(PLAN, Paper.A4, notes), "t", "Stafette 1"));
    }
  }

  @Test
  void every_ink_but_hairlines_is_dark_enough_to_be_seen_in_black_and_white() {
    for (Ink ink : List.of(Ink.FULL, Ink.SOFT, Ink.JOIN)) {
      assertTrue(contrastToWhite(ink) >= 4.5, ink + " " + contrastToWhite(ink));
    }
  }

  /** WCAG 2.1, definitions of relative luminance and contrast ratio (4.5 is level AA for text). */
  private static double contrastToWhite(Ink ink) {
    double luminance =
        0.2126 * linear(ink.rgb() >> 16)
            + 0.7152 * linear(ink.rgb() >> 8 & 255)
            + 0.0722 * linear(ink.rgb() & 255);
    return 1.05 / (luminance + 0.05);
  }

  private static double linear(int byteValue) {
    double share = byteValue / 255.0;
    return share <= 0.03928 ? share / 12.92 : Math.pow((share + 0.055) / 1.055, 2.4);
  }

  private static Drawing sheet(Plan plan, boolean notes) {
    return InventedRelays.drawn(plan, Paper.SHEET, notes).get(0);
  }

  private static Document parsed(String svg) throws Exception {
    return DocumentBuilderFactory.newInstance()
        .newDocumentBuilder()
        .parse(new ByteArrayInputStream(svg.getBytes(StandardCharsets.UTF_8)));
  }

  private static Element byId(Document svg, String id) {
    NodeList groups = svg.getElementsByTagName("g");
    for (int i = 0; i < groups.getLength(); i++) {
      Element group = (Element) groups.item(i);
      if (group.getAttribute("id").equals(id)) {
        return group;
      }
    }
    throw new AssertionError("no " + id);
  }
}

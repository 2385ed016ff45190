package stafette.work;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javax.sound.midi.MidiSystem;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stafette.check.JudgedPlan;
import stafette.desktop.SplitSample;
import stafette.desktop.texts.Texts;
import stafette.keep.LimitsInForce;
import stafette.plan.SourceTreatment;
import stafette.plan.WrittenAs;
import stafette.time.Rational;
import stafette.words.Refusal;

/** Files of a plan as they are usually wanted. */
class ExportPlanTest {
  @TempDir private Path folder = Path.of("");

  private record Split(JudgedPlan judged, OpenLine line) {
    static Split sample() throws Refusal {
      OpenLine line = SplitSample.line();
      JudgedPlan judged = line.plan(() -> false, progress -> {}).plan().orElseThrow();
      return new Split(judged, line);
    }
  }

  @Test
  void a_sheet_names_every_player_and_replaces_the_one_before() throws Exception {
    Split split = Split.sample();
    Path file = Files.writeString(folder.resolve("a.pdf"), "older");
    ExportPlan.sheet(
        split.judged(),
        WrittenAs.plain(SourceTreatment.KEEP),
        split.line(),
        file,
        Locale.UK,
        what -> what.inWords().toString());
    try (PDDocument pdf = Loader.loadPDF(file.toFile())) {
      String text = new PDFTextStripper().getText(pdf);
      assertTrue(text.contains("Lantern Run"), text);
      split.judged().plan().playing().forEach(name -> assertTrue(text.contains(name), text));
    }
    assertThrows(
        Refusal.class,
        () ->
            ExportPlan.sheet(
                split.judged(),
                WrittenAs.plain(SourceTreatment.KEEP),
                split.line(),
                folder.resolve("a.txt"),
                Locale.UK,
                what -> ""));
  }

  @Test
  void a_timeline_for_a_german_window_has_a_german_heading() throws Exception {
    Split split = Split.sample();
    Path file = folder.resolve("de.svg");
    ExportPlan.timeline(split.judged(), file, Texts.in(Locale.GERMANY)::say);
    String text = Files.readString(file);
    assertTrue(text.contains("Takte 5–"), text);
    assertTrue(text.contains(" Noten in "), text);
    assertTrue(text.contains("schneller endet er"), text);
    assertFalse(text.contains("ends it"), text);
  }

  @Test
  void a_sheet_for_a_german_window_is_german_with_the_caution() throws Exception {
    Split split = Split.sample();
    Path file = folder.resolve("de.pdf");
    ExportPlan.sheet(
        split.judged(),
        WrittenAs.plain(SourceTreatment.KEEP),
        split.line(),
        file,
        Locale.GERMANY,
        Texts.in(Locale.GERMANY)::say);
    try (PDDocument pdf = Loader.loadPDF(file.toFile())) {
      String text = new PDFTextStripper().getText(pdf).replaceAll("\\s+", " ");
      for (String words : List.of("Takt", "Viertel = 104", "verletzen", "Einsatz", "Seite 1")) {
        assertTrue(text.contains(words), words + " in " + text);
      }
      for (String words :
          List.of("bar", "beat", "quarter", "note", "you", "page", "tonguing", "limit", "of")) {
        assertFalse(text.matches(".*\\b" + words + "\\b.*"), words + " in " + text);
      }
    }
  }

  @Test
  void the_ending_decides_what_a_timeline_and_a_sound_become() throws Exception {
    Split split = Split.sample();
    for (String ending : List.of("svg", "png", "pdf")) {
      ExportPlan.timeline(
          split.judged(), folder.resolve("t." + ending), what -> what.inWords().toString());
    }
    assertEquals("<?xml", begins("t.svg", 5));
    assertEquals("PNG", begins("t.png", 4).substring(1));
    assertEquals("%PDF", begins("t.pdf", 4));
    ExportPlan.HeardAs heard =
        new ExportPlan.HeardAs(split.judged().plan().playing(), false, Rational.ONE);
    LimitsInForce limits = LimitsInForce.load(Optional.empty());
    ExportPlan.sound(
        split.judged(), split.line(), folder.resolve("s.mid"), heard, limits, () -> false);
    ExportPlan.sound(
        split.judged(), split.line(), folder.resolve("s.wav"), heard, limits, () -> false);
    assertEquals("MThd", begins("s.mid", 4));
    assertEquals("RIFF", begins("s.wav", 4));
  }

  @Test
  void only_those_named_are_heard_and_as_slowly_as_asked() throws Exception {
    Split split = Split.sample();
    LimitsInForce limits = LimitsInForce.load(Optional.empty());
    List<String> playing = split.judged().plan().playing();
    Path all = folder.resolve("all.mid");
    Path first = folder.resolve("first.mid");
    ExportPlan.sound(
        split.judged(),
        split.line(),
        all,
        new ExportPlan.HeardAs(playing, false, Rational.ONE),
        limits,
        () -> false);
    ExportPlan.sound(
        split.judged(),
        split.line(),
        first,
        new ExportPlan.HeardAs(playing.subList(0, 1), false, Rational.of(1, 2)),
        limits,
        () -> false);
    assertTrue(Files.size(first) < Files.size(all));
    assertTrue(
        MidiSystem.getSequence(first.toFile()).getMicrosecondLength()
            > 1.5 * MidiSystem.getSequence(all.toFile()).getMicrosecondLength());
    assertThrows(
        IllegalArgumentException.class,
        () -> new ExportPlan.HeardAs(List.of(), false, Rational.ONE));
  }

  private String begins(String name, int count) throws IOException {
    byte[] bytes = Files.readAllBytes(folder.resolve(name));
    return new String(bytes, 0, count, StandardCharsets.ISO_8859_1);
  }
}

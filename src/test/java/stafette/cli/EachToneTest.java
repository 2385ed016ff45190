package stafette.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stafette.musicxml.read.MusicXmlReader;
import stafette.musicxml.text.UnreadableScore;
import stafette.score.Part;
import stafette.score.Score;
import stafette.score.Stroke;
import stafette.score.Tone;

/** Chords of two tones, each tone with a relay of its own, from the command line and back again. */
class EachToneTest {
  private static final int BARS = 3;
  private static final String FLUTES = "Flute 1, Flute 2, Flute 3, Flute 4";

  @TempDir private Path folder = Path.of("");

  @Test
  void every_tone_has_its_players_and_nobody_is_asked_twice() throws Exception {
    Path score = repeatedChords();
    Path out = folder.resolve("out.musicxml");
    Ran ran = split(score, FLUTES, "--lock", "not Flute 1: 2.1-3.4", "-o", out.toString());
    assertEquals(0, ran.exitCode(), ran.err() + ran.out());
    assertTrue(ran.out().contains("no plan costs less"), ran.out());
    Score after = read(out);
    Map<String, TreeSet<Integer>> heard = new TreeMap<>();
    for (int flute = 1; flute <= 4; flute++) {
      List<Stroke> strokes = strokes(after, "Flute " + flute);
      for (int i = 0; i < strokes.size(); i++) {
        Stroke stroke = strokes.get(i);
        assertEquals(1, stroke.tones().size());
        assertFalse(i > 0 && stroke.onset().isBefore(strokes.get(i - 1).span().end()));
        heard
            .computeIfAbsent(stroke.onset().toString(), at -> new TreeSet<>())
            .add(stroke.tones().get(0).key());
      }
    }
    Map<String, TreeSet<Integer>> written = new TreeMap<>();
    for (Stroke stroke : strokes(after, "Piano")) {
      written.put(
          stroke.onset().toString(),
          new TreeSet<>(stroke.tones().stream().map(Tone::key).toList()));
    }
    assertEquals(16 * BARS, written.size());
    assertEquals(written, heard);
  }

  @Test
  void written_again_nothing_changes() throws IOException {
    Path once = folder.resolve("once.musicxml");
    Path twice = folder.resolve("twice.musicxml");
    assertEquals(0, split(repeatedChords(), FLUTES, "-o", once.toString()).exitCode());
    Ran second = split(once, FLUTES, "-o", twice.toString());
    assertTrue(second.out().contains("nothing changed"), second.out() + second.err());
    assertArrayEquals(Files.readAllBytes(once), Files.readAllBytes(twice));
  }

  @Test
  void what_becomes_of_the_line_becomes_of_every_tone() throws Exception {
    Path removed = folder.resolve("removed.musicxml");
    split(repeatedChords(), FLUTES, "--source", "remove", "-o", removed.toString());
    assertEquals(List.of(), strokes(read(removed), "Piano"));
    Path cued = folder.resolve("cued.musicxml");
    Path twice = folder.resolve("twice.musicxml");
    split(repeatedChords(), FLUTES, "--source", "cue", "-o", cued.toString());
    assertEquals(List.of(), strokes(read(cued), "Piano"));
    Ran second = split(cued, FLUTES, "--source", "cue", "-o", twice.toString());
    assertTrue(second.out().contains("nothing changed"), second.out() + second.err());
  }

  @Test
  void who_colours_it_has_the_top_tone_thinned() throws Exception {
    Path out = folder.resolve("coloured.musicxml");
    Ran ran = split(repeatedChords(), FLUTES, "--colour", "Oboe 1", "-o", out.toString());
    assertTrue(ran.out().contains("Of the top tone:"), ran.out());
    List<Stroke> strokes = strokes(read(out), "Oboe 1");
    assertFalse(strokes.isEmpty());
    for (Stroke stroke : strokes) {
      assertTrue(List.of(76, 77).contains(stroke.tones().get(0).key()), stroke.toString());
    }
  }

  @Test
  void each_tone_twice_is_refused() throws IOException {
    Ran ran = split(repeatedChords(), FLUTES, "--double", "2");
    assertEquals(2, ran.exitCode());
    assertTrue(ran.err().contains("--double and --tone each don't go together"), ran.err());
  }

  @Test
  void a_plan_kept_in_a_file_is_opened_with_both_relays() throws IOException {
    Path plan = folder.resolve("plan.json");
    split(repeatedChords(), FLUTES, "--plan", plan.toString());
    JsonObject json = JsonParser.parseString(Files.readString(plan)).getAsJsonObject();
    TreeSet<Integer> relays = new TreeSet<>();
    for (JsonElement segment : json.getAsJsonArray("segments")) {
      JsonElement relay = segment.getAsJsonObject().get("relay");
      relays.add(relay == null ? 0 : relay.getAsInt());
    }
    assertEquals(new TreeSet<>(List.of(0, 1)), relays);
    Ran shown = Ran.command("preview", plan.toString());
    assertEquals(0, shown.exitCode(), shown.err());
  }

  @Test
  void fewer_players_than_tones_are_too_few() throws IOException {
    assertEquals(1, split(repeatedChords(), "Flute 1").exitCode());
  }

  /** Measured tremolo repeats one note: here it suits the upper tone only. */
  @Test
  void a_technique_that_suits_one_tone_only_is_not_used_on_the_other() throws IOException {
    StringBuilder bar = new StringBuilder();
    for (int i = 0; i < 16; i++) {
      bar.append(note("", i % 2 == 0 ? "C" : "D", 5)).append(note("<chord/>", "G", 5));
    }
    Ran ran = split(score(List.of(bar.toString())), "Violin 1, Violin 2");
    assertEquals(0, ran.exitCode(), ran.err() + ran.out());
  }

  @Test
  void the_sheet_tells_everybody_which_tone_to_play() throws IOException {
    Path sheet = folder.resolve("sheet.pdf");
    Ran ran = run("preview", repeatedChords(), FLUTES, "--sheet", sheet.toString());
    assertEquals(0, ran.exitCode(), ran.err() + ran.out());
    try (PDDocument pdf = Loader.loadPDF(sheet.toFile())) {
      String text = new PDFTextStripper().getText(pdf);
      assertTrue(text.contains("top tone"), text);
      assertTrue(text.contains("tone 2"), text);
    }
  }

  private Ran split(Path score, String players, String... more) {
    return run("split", score, players, more);
  }

  private static Ran run(String command, Path score, String players, String... more) {
    List<String> args = new ArrayList<>(List.of(command, score.toString()));
    args.addAll(List.of("--part", "Piano", "--tone", "each", "--players", players));
    args.addAll(Arrays.asList(more));
    return Ran.command(args.toArray(String[]::new));
  }

  /** Too fast for one flute's air and tongue throughout. */
  private Path repeatedChords() throws IOException {
    List<String> bars = new ArrayList<>();
    for (int bar = 0; bar < BARS; bar++) {
      bars.add((note("", "C", 5) + note("<chord/>", bar % 2 == 0 ? "E" : "F", 5)).repeat(16));
    }
    return score(bars);
  }

  private Path score(List<String> bars) throws IOException {
    StringBuilder text =
        new StringBuilder(
            """
            <?xml version="1.0" encoding="UTF-8"?>
            <score-partwise version="4.0">
              <part-list><score-part id="P1"><part-name>Piano</part-name></score-part></part-list>
              <part id="P1">
            """);
    for (int i = 0; i < bars.size(); i++) {
      text.append("<measure number=\"").append(i + 1).append("\">");
      if (i == 0) {
        text.append(
            "<attributes><divisions>4</divisions><time><beats>4</beats><beat-type>4</beat-type></time></attributes>"
                + "<direction><direction-type><metronome><beat-unit>quarter</beat-unit><per-minute>132</per-minute></metronome></direction-type></direction>");
      }
      text.append(bars.get(i)).append("</measure>\n");
    }
    Path score = folder.resolve("chords.musicxml");
    Files.writeString(score, text.append("</part>\n</score-partwise>\n"));
    return score;
  }

  private static String note(String chord, String step, int octave) {
    return "<note>"
        + chord
        + "<pitch><step>"
        + step
        + "</step><octave>"
        + octave
        + "</octave></pitch><duration>1</duration><type>16th</type></note>";
  }

  private static Score read(Path file) throws IOException, UnreadableScore {
    return MusicXmlReader.read(Files.readAllBytes(file)).score();
  }

  private static List<Stroke> strokes(Score score, String part) {
    return score.part(part).map(Part::voices).orElse(List.of()).stream()
        .flatMap(voice -> voice.strokes().stream())
        .toList();
  }
}

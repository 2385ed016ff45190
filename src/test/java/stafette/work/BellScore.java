package stafette.work;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;

/** A score invented for tests: two tones in quick notes for a piano, and a flute with a few. */
public final class BellScore {
  private static final String HEAD =
      """
      <?xml version="1.0" encoding="UTF-8"?>
      <score-partwise version="4.0">
        <part-list>
          <score-part id="P1"><part-name>Piano</part-name></score-part>
          <score-part id="P2"><part-name>Flute 1</part-name></score-part>
        </part-list>
      """;
  private static final String ATTRIBUTES =
      """
      <attributes><divisions>4</divisions><key><fifths>0</fifths></key>
      <time><beats>4</beats><beat-type>4</beat-type></time>
      <clef><sign>G</sign><line>2</line></clef></attributes>
      <direction><direction-type><metronome><beat-unit>quarter</beat-unit>
      <per-minute>144</per-minute></metronome></direction-type></direction>
      """;

  private static final String SLASH =
      "<notations><ornaments><tremolo type=\"single\">1</tremolo></ornaments></notations>";

  private BellScore() {}

  /** Writes it with bars of these printed numbers. */
  public static Path write(Path file, List<String> numbers) throws IOException {
    return Files.writeString(file, text(numbers));
  }

  /** The same with a slash through the stem of each note on E. */
  public static Path writeSlashed(Path file, List<String> numbers) throws IOException {
    String slashed = "$1" + SLASH + "$2";
    return Files.writeString(
        file, text(numbers).replaceAll("(<step>E</step><octave>5.*)(</note>)", slashed));
  }

  static String text(List<String> numbers) {
    StringBuilder text = new StringBuilder(HEAD).append("<part id=\"P1\">\n");
    for (int bar = 0; bar < numbers.size(); bar++) {
      text.append(bar(numbers.get(bar), bar)).append(quick(bar)).append("</measure>\n");
    }
    text.append("</part>\n<part id=\"P2\">\n");
    for (int bar = 0; bar < numbers.size(); bar++) {
      text.append(bar(numbers.get(bar), bar)).append(slow(bar)).append("</measure>\n");
    }
    return text.append("</part>\n</score-partwise>\n").toString();
  }

  private static String bar(String number, int bar) {
    return "<measure number=\"%s\">\n%s".formatted(number, bar == 0 ? ATTRIBUTES : "");
  }

  private static String quick(int bar) {
    StringBuilder notes = new StringBuilder();
    for (int i = 0; i < 16; i++) {
      notes.append(note("", "CDEFGAB".charAt((i + bar) % 7), 5, 1, "16th"));
      notes.append(note("<chord/>", "EFGABCD".charAt((i + bar) % 7), 4, 1, "16th"));
    }
    return notes.toString();
  }

  /** The flute plays in every third bar. */
  private static String slow(int bar) {
    return bar % 3 == 2 ? note("", 'A', 5, 4, "quarter").repeat(2) + rest(8) : rest(16);
  }

  private static String rest(int duration) {
    return "<note><rest/><duration>%d</duration><voice>1</voice></note>\n".formatted(duration);
  }

  private static String note(String chord, char step, int octave, int duration, String type) {
    return String.format(
        Locale.ROOT,
        "<note>%s<pitch><step>%s</step><octave>%d</octave></pitch><duration>%d</duration>"
            + "<voice>1</voice><type>%s</type></note>\n",
        chord,
        step,
        octave,
        duration,
        type);
  }
}

package stafette.work;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;

/**
 * Small scores made up for tests, bar by bar: the parts of an orchestra, in one of which the fast
 * line stands.
 */
final class GoldenScore {
  /** In a quarter, so that thirds, sixths, eighths and ninths of it are whole. */
  private static final int DIVISIONS = 72;

  /** "C4", "F#3", "Bb5"; a dash is a rest. */
  private static final String REST = "-";

  private final String beatUnit;
  private final int perMinute;
  private final List<GoldenPart> parts = new ArrayList<>();

  private record GoldenPart(String name, List<String> bars) {}

  /** A note value: how long it is, in parts of a quarter, and how it is written. */
  enum GoldenValue {
    WHOLE("whole", 4 * DIVISIONS, 1, 1),
    HALF("half", 2 * DIVISIONS, 1, 1),
    QUARTER("quarter", DIVISIONS, 1, 1),
    EIGHTH("eighth", DIVISIONS / 2, 1, 1),
    EIGHTH_TRIPLET("eighth", DIVISIONS / 3, 3, 2),
    SIXTEENTH("16th", DIVISIONS / 4, 1, 1),
    SIXTEENTH_TRIPLET("16th", DIVISIONS / 6, 3, 2),
    SEXTUPLET("16th", DIVISIONS / 6, 6, 4),
    NONUPLET("32nd", DIVISIONS / 9, 9, 8);

    private final String type;
    private final int duration;
    private final int actual;
    private final int normal;

    GoldenValue(String type, int duration, int actual, int normal) {
      this.type = type;
      this.duration = duration;
      this.actual = actual;
      this.normal = normal;
    }
  }

  /**
   * @param beatUnit such as "quarter" or "dotted quarter"
   */
  GoldenScore(String beatUnit, int perMinute) {
    this.beatUnit = beatUnit;
    this.perMinute = perMinute;
  }

  /** The same with one part more. */
  GoldenScore with(String name, List<String> bars) {
    parts.add(new GoldenPart(name, bars));
    return this;
  }

  /** Notes of one value, pitch by pitch. */
  static String notes(GoldenValue value, List<String> pitches) {
    StringBuilder text = new StringBuilder();
    for (String pitch : pitches) {
      text.append(note(value, pitch, ""));
    }
    return text.toString();
  }

  /** Notes of one value in groups: beamed together, and slurred or accented as asked. */
  static String groups(GoldenValue value, List<String> pitches, List<Integer> groups, String mark) {
    StringBuilder text = new StringBuilder();
    int from = 0;
    for (int group : groups) {
      for (int i = 0; i < group; i++) {
        String beam = i == 0 ? "begin" : i == group - 1 ? "end" : "continue";
        String more = "<beam number=\"1\">" + beam + "</beam>" + notation(mark, i, group);
        text.append(note(value, pitches.get(from + i), more));
      }
      from += group;
    }
    return text.toString();
  }

  private static String notation(String mark, int i, int group) {
    if (mark.equals("accent") && i == 0) {
      return "<notations><articulations><accent/></articulations></notations>";
    }
    if (mark.equals("slur") && (i == 0 || i == group - 1)) {
      return "<notations><slur type=\"%s\" number=\"1\"/></notations>"
          .formatted(i == 0 ? "start" : "stop");
    }
    return "";
  }

  private static String note(GoldenValue value, String pitch, String more) {
    String head =
        pitch.equals(REST)
            ? "<rest/>"
            : "<pitch><step>%s</step>%s<octave>%s</octave></pitch>"
                .formatted(
                    pitch.substring(0, 1), alteration(pitch), pitch.substring(pitch.length() - 1));
    String tuplet =
        value.actual == 1
            ? ""
            : "<time-modification><actual-notes>%d</actual-notes><normal-notes>%d</normal-notes></time-modification>"
                .formatted(value.actual, value.normal);
    return "<note>%s<duration>%d</duration><voice>1</voice><type>%s</type>%s%s</note>\n"
        .formatted(head, value.duration, value.type, tuplet, more);
  }

  private static String alteration(String pitch) {
    return switch (pitch.charAt(1)) {
      case '#' -> "<alter>1</alter>";
      case 'b' -> "<alter>-1</alter>";
      default -> "";
    };
  }

  /** A change of metre before what stands in a bar. */
  static String metre(String beats, int beatType) {
    return "<attributes><time><beats>%s</beats><beat-type>%d</beat-type></time></attributes>\n"
        .formatted(beats, beatType);
  }

  /** A dynamic before what stands in a bar. */
  static String dynamic(String sign) {
    return "<direction><direction-type><dynamics><%s/></dynamics></direction-type></direction>\n"
        .formatted(sign);
  }

  /** So many bars alike. */
  static List<String> bars(int count, String bar) {
    return IntStream.range(0, count).mapToObj(i -> bar).toList();
  }

  String text() {
    StringBuilder text =
        new StringBuilder(
            "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<score-partwise version=\"4.0\">\n<part-list>\n");
    for (int i = 0; i < parts.size(); i++) {
      text.append(
          "<score-part id=\"P%d\"><part-name>%s</part-name></score-part>\n"
              .formatted(i + 1, parts.get(i).name()));
    }
    text.append("</part-list>\n");
    for (int i = 0; i < parts.size(); i++) {
      text.append(part("P" + (i + 1), parts.get(i).bars()));
    }
    return text.append("</score-partwise>\n").toString();
  }

  private String part(String id, List<String> bars) {
    StringBuilder text = new StringBuilder("<part id=\"" + id + "\">\n");
    for (int bar = 0; bar < bars.size(); bar++) {
      text.append("<measure number=\"").append(bar + 1).append("\">\n");
      if (bar == 0) {
        text.append("<attributes><divisions>")
            .append(DIVISIONS)
            .append("</divisions></attributes>");
        text.append(tempo());
      }
      text.append(bars.get(bar)).append("</measure>\n");
    }
    return text.append("</part>\n").toString();
  }

  private String tempo() {
    String dot = beatUnit.startsWith("dotted ") ? "<beat-unit-dot/>" : "";
    return String.format(
        Locale.ROOT,
        "<direction><direction-type><metronome><beat-unit>%s</beat-unit>%s<per-minute>%d</per-minute></metronome></direction-type></direction>\n",
        beatUnit.replace("dotted ", ""),
        dot,
        perMinute);
  }
}

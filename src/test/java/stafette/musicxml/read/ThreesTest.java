package stafette.musicxml.read;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static stafette.musicxml.read.Xml.score;

import java.util.List;
import java.util.function.IntFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import stafette.check.ShownTechnique;
import stafette.check.alone.LineTrial;
import stafette.limits.Assurance;
import stafette.limits.Instrument;
import stafette.limits.Technique;
import stafette.musicxml.text.UnreadableScore;
import stafette.score.Line;
import stafette.score.Part;
import stafette.score.Score;
import stafette.score.ToneChoice;
import stafette.score.Voice;
import stafette.tables.LimitTables;

/**
 * Triple tonguing is for triplets, with their accent; double for everything even (common practice,
 * no source).
 */
class ThreesTest {
  private static final String ACCENT =
      "<notations><articulations><accent/></articulations></notations>";

  private static String attributes(int beats, int beatType, int perMinute) {
    return "<attributes><divisions>12</divisions><time><beats>%d</beats><beat-type>%d</beat-type></time></attributes><sound tempo=\"%d\"/>"
        .formatted(beats, beatType, perMinute);
  }

  private static String notes(int count, int duration, String tuplet, IntFunction<String> more) {
    return IntStream.range(0, count)
        .mapToObj(i -> Xml.note("A", 4, duration, "<type>16th</type>" + tuplet + more.apply(i)))
        .collect(Collectors.joining());
  }

  private static String tuplet(int actual, int normal) {
    return "<time-modification><actual-notes>%d</actual-notes><normal-notes>%d</normal-notes></time-modification>"
        .formatted(actual, normal);
  }

  private static String beams(int i, int group) {
    String first = i % 6 == 0 ? "begin" : i % 6 == 5 ? "end" : "continue";
    String second = i % group == 0 ? "begin" : i % group == group - 1 ? "end" : "continue";
    return "<beam number=\"1\">" + first + "</beam><beam number=\"2\">" + second + "</beam>";
  }

  private static String bar(int actual, int normal, int perMinute, IntFunction<String> more) {
    return attributes(4, 4, perMinute) + notes(24, 2, tuplet(actual, normal), more);
  }

  private static Line line(String... measures) throws UnreadableScore {
    Score score = Xml.read(score(measures)).score();
    Part part = score.parts().get(0);
    Voice voice = part.voices().get(0);
    return score.line(part, voice, voice.strokes(), new ToneChoice.All());
  }

  private static String tongued(String instrument, String... measures) throws UnreadableScore {
    Line line = line(measures);
    Instrument found = LimitTables.builtIn().catalogue().find(instrument).orElseThrow();
    List<Technique> all = found.techniques().stream().filter(Technique::expected).toList();
    return ShownTechnique.inWords(LineTrial.of(line, found, Assurance.DEFAULT, all).techniques())
        .toString();
  }

  @Test
  void a_bare_sextuplet_is_double_tongued() throws UnreadableScore {
    String bare = bar(6, 4, 104, i -> "");
    assertEquals("double tonguing", tongued("flute", bare));
    assertEquals("double tonguing", tongued("trumpet in B-flat", bare));
    assertEquals("double tonguing", tongued("flute", bar(6, 4, 104, i -> beams(i, 6))));
    assertEquals("double tonguing", tongued("flute", bar(6, 4, 104, i -> beams(i, 2))));
    assertEquals(
        "double tonguing", tongued("flute", bar(6, 4, 104, i -> i % 6 == 0 ? ACCENT : "")));
  }

  @Test
  void a_sextuplet_that_is_beamed_or_accented_in_threes_is_triple_tongued() throws UnreadableScore {
    assertEquals("triple tonguing", tongued("flute", bar(6, 4, 104, i -> beams(i, 3))));
    assertEquals(
        "triple tonguing",
        tongued("trumpet in B-flat", bar(6, 4, 104, i -> i % 3 == 0 ? ACCENT : "")));
  }

  @Test
  void triplets_are_triple_tongued_where_a_single_tongue_would_not_hold() throws UnreadableScore {
    assertEquals("triple tonguing", tongued("flute", bar(3, 2, 104, i -> "")));
    assertEquals("triple tonguing", tongued("trombone", bar(3, 2, 104, i -> "")));
    assertEquals("single tonguing", tongued("flute", bar(3, 2, 60, i -> "")));
  }

  @Test
  void an_oboe_has_no_triple_tongue_for_triplets() throws UnreadableScore {
    assertEquals("single tonguing", tongued("oboe", bar(3, 2, 80, i -> "")));
  }

  @Test
  void sixteenths_in_six_eight_go_in_twos_and_eighths_in_threes() throws UnreadableScore {
    assertEquals(
        "double tonguing",
        tongued("trumpet in B-flat", attributes(6, 8, 150) + notes(12, 3, "", i -> "")));
    assertEquals(true, line(attributes(6, 8, 300) + notes(6, 6, "", i -> "")).goesInThrees(0));
  }

  @Test
  void a_sextuplet_can_be_thinned_in_threes_though_it_is_tongued_in_twos() throws UnreadableScore {
    Line line = line(bar(6, 4, 104, i -> ""));
    assertEquals(
        List.of(0, 1, 2, 0, 1, 2), IntStream.range(0, 6).map(line::placeInThree).boxed().toList());
    assertEquals(false, line.goesInThrees(0));
  }
}

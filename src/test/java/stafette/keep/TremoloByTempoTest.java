package stafette.keep;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stafette.musicxml.read.Xml;
import stafette.score.Stroke;
import stafette.score.Tremolo;
import stafette.score.TremoloRun;

/** Slashes are counted or not as the tempo has it, when a score is opened. */
class TremoloByTempoTest {
  private static final int ADAGIO = 50;
  private static final int PRESTO = 184;

  @TempDir private Path folder = Path.of("");

  private OpenScore open(String part, Tremolo tremolo, String... bars) throws Exception {
    Path file = folder.resolve("score.musicxml");
    Files.writeString(file, Xml.scoreOf("<part-name>" + part + "</part-name>", bars));
    return OpenScore.open(file, tremolo, false, LimitsInForce.load(Optional.empty()));
  }

  private OpenScore open(String part, int tempo, String... bars) throws Exception {
    String[] marked = bars.clone();
    marked[0] = Xml.ATTRIBUTES + tempo(tempo) + bars[0];
    return open(part, Tremolo.AS_WRITTEN, marked);
  }

  private static String tempo(int perMinute) {
    return "<sound tempo=\"" + perMinute + "\"/>";
  }

  /** A full bar of slashed quarters. */
  private static String bar(int slashes) {
    return note("A", "quarter", 12, slashes).repeat(4);
  }

  private static String note(String step, String type, int duration, int slashes) {
    return Xml.note(step, 4, duration, "<type>" + type + "</type>" + slashed("single", slashes));
  }

  private static String slashed(String type, int slashes) {
    return "<notations><ornaments><tremolo type=\"%s\">%d</tremolo></ornaments></notations>"
        .formatted(type, slashes);
  }

  private static List<Stroke> strokes(OpenScore score) {
    return score.score().parts().get(0).voices().get(0).strokes();
  }

  /** Each run with its bars: "1-2 OUTRUNS_THE_BOW". */
  private static List<String> told(OpenScore score) {
    return score.document().tremolos().stream()
        .map(run -> bars(score, run) + " " + run.reading())
        .toList();
  }

  private static String bars(OpenScore score, TremoloRun run) {
    return IntStream.of(run.firstBar(), run.lastBar())
        .distinct()
        .mapToObj(bar -> score.score().bars().get(bar).number())
        .collect(Collectors.joining("-"));
  }

  @Test
  void in_an_adagio_three_slashes_are_counted_and_in_doubt() throws Exception {
    OpenScore adagio = open("Violin I", ADAGIO, bar(3), bar(3));
    assertEquals(64, strokes(adagio).size());
    assertEquals(List.of("1-2 IN_DOUBT"), told(adagio));
  }

  @Test
  void at_quarter_132_three_slashes_are_not_counted() throws Exception {
    OpenScore allegro = open("Violin I", 132, bar(3), bar(3));
    assertEquals(8, strokes(allegro).size());
    assertEquals(List.of("1-2 THREE_SLASHES"), told(allegro));
  }

  @Test
  void sixteenth_slashes_at_presto_outrun_the_violin_and_are_counted_on_the_flute()
      throws Exception {
    OpenScore violin = open("Violin I", PRESTO, bar(2), bar(2));
    assertEquals(8, strokes(violin).size());
    assertEquals(List.of("1-2 OUTRUNS_THE_BOW"), told(violin));
    OpenScore flute = open("Flute", PRESTO, bar(2), bar(2));
    assertEquals(32, strokes(flute).size());
    assertEquals(List.of(), told(flute));
  }

  @Test
  void sixteenth_slashes_at_a_moderate_tempo_are_counted_and_nothing_is_said() throws Exception {
    OpenScore viola = open("Viola", 120, bar(2), bar(2));
    assertEquals(32, strokes(viola).size());
    assertEquals(List.of(), told(viola));
  }

  @Test
  void sticks_are_outrun_too() throws Exception {
    assertEquals(List.of("1 OUTRUNS_THE_STICKS"), told(open("Timpani", 220, bar(2))));
  }

  @Test
  void beams_count_with_the_slashes() throws Exception {
    String eighths = note("A", "eighth", 6, 2).repeat(8);
    assertEquals(List.of("1 THREE_SLASHES"), told(open("Violin", 132, eighths)));
    assertEquals(List.of("1 IN_DOUBT"), told(open("Violin", ADAGIO, eighths)));
  }

  @Test
  void each_tempo_is_a_question_of_its_own() throws Exception {
    OpenScore score =
        open("Violin", ADAGIO, bar(3), tempo(PRESTO) + bar(3), tempo(ADAGIO) + bar(2));
    assertEquals(List.of("1 IN_DOUBT", "2 THREE_SLASHES"), told(score));
    assertEquals(32 + 4 + 16, strokes(score).size());
  }

  @Test
  void notes_that_are_written_out_are_no_part_of_a_run() throws Exception {
    String mixed = note("A", "quarter", 12, 2) + Xml.note("B", 4, 36, "");
    assertEquals(
        List.of("1 OUTRUNS_THE_BOW", "3 OUTRUNS_THE_BOW"),
        told(open("Violin", 230, bar(2), Xml.note("B", 4, 48, ""), bar(2))));
    assertEquals(5, strokes(open("Violin", 120, mixed)).size());
  }

  @ParameterizedTest
  @CsvSource({"MEASURED,32,''", "UNMEASURED,4,1 ASKED_FOR"})
  void the_user_may_decide_otherwise(Tremolo tremolo, int strokes, String told) throws Exception {
    OpenScore score = open("Violin", tremolo, Xml.ATTRIBUTES + tempo(PRESTO) + bar(3));
    assertEquals(strokes, strokes(score).size());
    assertEquals(told, String.join(", ", told(score)));
  }

  @Test
  void two_notes_that_alternate_too_fast_for_the_bow_are_two_notes() throws Exception {
    String half =
        "<type>half</type><time-modification><actual-notes>2</actual-notes>"
            + "<normal-notes>1</normal-notes></time-modification>";
    String pair =
        Xml.note("A", 4, 12, half + slashed("start", 2))
            + Xml.note("C", 5, 12, half + slashed("stop", 2));
    OpenScore presto = open("Violin", PRESTO, pair + pair);
    assertEquals(List.of("1 OUTRUNS_THE_BOW"), told(presto));
    assertEquals(4, strokes(presto).size());
    assertEquals(16, strokes(open("Violin", 60, pair + pair)).size());
  }

  @Test
  void an_instrument_that_nobody_knows_goes_by_the_number_of_slashes() throws Exception {
    assertEquals(List.of("1 THREE_SLASHES"), told(open("Streicherchen", ADAGIO, bar(3))));
    assertEquals(16, strokes(open("Streicherchen", PRESTO, bar(2))).size());
  }

  @Test
  void what_words_say_stands_at_any_tempo() throws Exception {
    String words = "<direction><direction-type><words>%s</words></direction-type></direction>";
    assertEquals(
        List.of("1 WORD"), told(open("Violin", ADAGIO, words.formatted("trem.") + bar(2))));
    assertEquals(
        List.of("1 FLUTTER"), told(open("Flute", ADAGIO, words.formatted("frull.") + bar(3))));
  }

  @Test
  void another_edition_of_the_score_is_read_alike() throws Exception {
    OpenScore adagio = open("Violin", ADAGIO, bar(3));
    assertEquals(
        adagio.score().parts(), adagio.edition(adagio.document().container().bytes()).parts());
  }
}

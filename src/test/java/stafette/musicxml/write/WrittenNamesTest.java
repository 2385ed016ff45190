package stafette.musicxml.write;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import stafette.Invented;
import stafette.musicxml.make.UnwritablePlan;
import stafette.musicxml.read.Document;
import stafette.musicxml.read.MusicXmlReader;
import stafette.musicxml.text.UnreadableScore;
import stafette.plan.Brief;
import stafette.plan.Plan;
import stafette.plan.Player;
import stafette.plan.Segment;
import stafette.plan.SourceTreatment;
import stafette.score.Line;

/** The names of players as they stand in the score. */
class WrittenNamesTest {
  private static Document before() throws UnreadableScore {
    return TwoParts.read(TwoParts.score("", ""));
  }

  private static Plan plan(Document score, String... names) throws Exception {
    Line line = ByHand.line(score.score(), "P1", "1");
    List<Player> players =
        List.of(names).stream().map(name -> ByHand.player(name, "flute", score.score())).toList();
    List<Segment> segments =
        IntStream.range(0, names.length).mapToObj(i -> new Segment(i, 0, i, i + 1)).toList();
    return new Plan(new Brief(line, players, Invented.rules()), segments);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "A & B <C> \"D\" 'E' ]]>",
        "Søren & Žofie 1",
        "Flute \ud83c\udfb6",
        "&amp;",
        "Flute  9",
        "<!-- Flute",
        "$1 \\ %s {0}",
      })
  void a_name_is_read_again_and_its_part_found(String name) throws Exception {
    Document score = before();
    WrittenScore written = TwoParts.write(score, plan(score, name, "Flute"));
    assertEquals(List.of(), OfficialSchema.errors(written.bytes()));
    Document after = MusicXmlReader.read(written.bytes());
    assertEquals(name.replaceAll("\\s+", " "), after.score().part(name).orElseThrow().name());
    assertEquals(List.of(), TwoParts.write(after, plan(after, name, "Flute")).replacements());
  }

  /** The first new part could be given the id P3. */
  @Test
  void no_new_part_gets_an_id_that_is_another_players_name() throws Exception {
    Document score = before();
    Document after =
        MusicXmlReader.read(TwoParts.write(score, plan(score, "Anna", "P3", "P4")).bytes());
    for (String name : List.of("Anna", "P3", "P4")) {
      assertEquals(name, after.score().part(name).orElseThrow().name());
    }
  }

  @Test
  void a_name_that_no_score_can_hold_is_refused_where_it_would_be_written() throws Exception {
    Document score = before();
    for (String name : List.of("Fl\u0007ute", "Fl\ud800ute")) {
      UnwritablePlan refused =
          assertThrows(
              UnwritablePlan.class,
              () ->
                  ScoreWriter.write(
                      score, plan(score, name), SourceTreatment.KEEP, p -> Optional.empty()));
      assertEquals(
          "\""
              + name
              + "\" holds the character "
              + (name.contains("\u0007") ? "U+0007" : "U+D800")
              + ", which no score can hold; give it another name",
          refused.getMessage());
    }
  }
}

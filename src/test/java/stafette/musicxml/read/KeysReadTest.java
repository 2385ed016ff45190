package stafette.musicxml.read;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static stafette.musicxml.read.Xml.ATTRIBUTES;
import static stafette.musicxml.read.Xml.note;
import static stafette.musicxml.read.Xml.read;
import static stafette.musicxml.read.Xml.score;

import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import stafette.musicxml.text.UnreadableScore;
import stafette.score.Keys;
import stafette.score.Line;
import stafette.score.LineChoice;
import stafette.score.NoSuchLine;
import stafette.score.Score;
import stafette.time.Position;

/** Key signatures, as parts and lines have them. */
class KeysReadTest {
  private static final String BAR = note("A", 4, 48, "");

  @Test
  void keys_are_read_with_their_places_and_a_bar_without_one_keeps_it() throws UnreadableScore {
    Keys keys = keys(ATTRIBUTES + key(-2, "") + BAR, BAR, key(3, "") + BAR);
    assertEquals(-2, keys.at(Position.START));
    assertEquals(-2, keys.at(Position.ofQuarters(7, 1)));
    assertEquals(3, keys.at(Position.ofQuarters(8, 1)));
  }

  @Test
  void the_key_of_a_transposing_part_is_told_as_it_sounds() throws UnreadableScore {
    String inB = "<transpose><diatonic>-1</diatonic><chromatic>-2</chromatic></transpose>";
    assertEquals(-1, keys(ATTRIBUTES + key(1, inB) + BAR).at(Position.START));
  }

  @Test
  void a_line_has_the_keys_of_its_part_and_keeps_them_at_other_tempi()
      throws UnreadableScore, NoSuchLine {
    Score score = read(score(ATTRIBUTES + key(4, "") + BAR)).score();
    Line line =
        new LineChoice(
                "P1", Optional.empty(), OptionalInt.empty(), Optional.empty(), Optional.empty())
            .take(score);
    assertEquals(4, line.keys().at(Position.START));
    assertEquals(line.keys(), line.at(score.tempo()).keys());
    assertEquals(line.keys(), line.withClockFrom(Position.ofQuarters(1, 1)).keys());
  }

  private static String key(int fifths, String more) {
    return "<attributes><key><fifths>" + fifths + "</fifths></key>" + more + "</attributes>";
  }

  private static Keys keys(String... measures) throws UnreadableScore {
    return read(score(measures)).score().parts().get(0).keys();
  }
}

package stafette.musicxml.write;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static stafette.musicxml.read.Xml.ATTRIBUTES;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import stafette.musicxml.read.Xml;
import stafette.score.Attack;
import stafette.score.Contact;
import stafette.score.Manner;
import stafette.score.Stroke;

/** Words for ways of playing, as they are written and as they are read. */
class MannerWordsTest {
  /** All that can be said in words. */
  private static List<Manner> manners() {
    return Arrays.stream(Attack.values())
        .filter(attack -> attack != Attack.TRILLED)
        .flatMap(attack -> Arrays.stream(Contact.values()).map(Manner.PLAIN.with(attack)::with))
        .flatMap(manner -> Stream.of(manner, manner.withMute(true)))
        .toList();
  }

  @Test
  void whatever_is_written_is_read_as_it_was_meant() throws Exception {
    List<Manner> meant = new ArrayList<>();
    List<String> measures = new ArrayList<>();
    Manner before = Manner.PLAIN;
    for (Manner from : manners()) {
      StringBuilder measure = new StringBuilder(measures.isEmpty() ? ATTRIBUTES : "");
      for (Manner to : manners()) {
        for (Manner each : List.of(from, to)) {
          measure.append(direction(MannerWords.between(before, each)));
          measure.append(Xml.note("A", 4, 12, ""));
          meant.add(each);
          before = each;
        }
      }
      measures.add(measure.toString());
    }
    String text = Xml.score(measures.toArray(String[]::new));
    assertEquals(meant, Xml.strokes(text).stream().map(Stroke::manner).toList());
  }

  private static String direction(Optional<String> words) {
    return words
        .map(text -> "<direction><direction-type><words>" + text + "</words></direction-type>")
        .map(text -> text + "</direction>")
        .orElse("");
  }

  @Test
  void nothing_is_said_where_nothing_changes() {
    manners().forEach(same -> assertEquals(Optional.empty(), MannerWords.between(same, same)));
  }

  @Test
  void a_player_is_told_in_the_usual_words() {
    Manner muted = Manner.PLAIN.withMute(true);
    assertEquals(
        Optional.of("pizz. con sord."),
        MannerWords.between(Manner.PLAIN, muted.with(Attack.PLUCKED)));
    assertEquals(
        Optional.of("arco senza sord."),
        MannerWords.between(muted.with(Attack.STRUCK_WITH_WOOD), Manner.PLAIN));
    assertEquals(
        Optional.of("ord."),
        MannerWords.between(Manner.PLAIN.with(Contact.AT_THE_BRIDGE), Manner.PLAIN));
    assertEquals(
        Optional.of("ord."),
        MannerWords.between(Manner.PLAIN.with(Attack.FLUTTERED), Manner.PLAIN));
  }
}

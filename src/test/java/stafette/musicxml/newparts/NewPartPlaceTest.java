package stafette.musicxml.newparts;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static stafette.musicxml.write.TwoParts.SIXTEENTHS;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import stafette.musicxml.read.Document;
import stafette.musicxml.read.MusicXmlReader;
import stafette.musicxml.text.Origin;
import stafette.musicxml.write.ByHand;
import stafette.musicxml.write.ScoreWriter;
import stafette.musicxml.write.TwoParts;
import stafette.musicxml.write.WrittenScore;
import stafette.plan.SourceTreatment;

/** Where new parts stand among the others and their brackets. */
class NewPartPlaceTest {
  private static final Pattern LISTED =
      Pattern.compile("<part-group type=\"(\\w+)\"|<part-name>([^<]*)<");

  @Test
  void a_part_without_a_neighbour_stands_outside_the_last_bracket() throws Exception {
    List<String> listed = listed(Optional.empty());
    assertEquals(
        List.of("Double Bass", "stop", "Trumpet 2"),
        listed.subList(listed.size() - 3, listed.size()));
  }

  @Test
  void a_part_after_the_last_of_its_bracket_stands_inside_it() throws Exception {
    List<String> listed = listed(Optional.of("P8"));
    int at = listed.indexOf("Trumpet 2");
    assertEquals(List.of("Trumpet 1", "Trumpet 2", "stop"), listed.subList(at - 1, at + 2));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"", "<part-list/>", "<part-list></part-list>", "<part-list>\n</part-list>"})
  void a_part_list_without_parts_lists_the_new_one(String list) throws Exception {
    String score =
        TwoParts.score(SIXTEENTHS)
            .replaceFirst("(?s)<part-list>.*</part-list>", list)
            .replaceFirst("(?s)<part id=\"P2\">.*</part>", "");
    Document before = TwoParts.read(score);
    byte[] written = TwoParts.write(before, TwoParts.plan(before, 0, 15)).bytes();
    Document after = MusicXmlReader.read(written);
    assertEquals("Flute", after.score().parts().get(1).name());
    assertArrayEquals(written, TwoParts.write(after, TwoParts.plan(after, 0, 15)).bytes());
  }

  /**
   * The part list of a sample in which Trumpet 2 is new: names, and brackets that start and stop.
   */
  private static List<String> listed(Optional<String> neighbour) throws Exception {
    Document before = ByHand.sample("signal-hill");
    WrittenScore written =
        ScoreWriter.write(
            before,
            ByHand.planFor("signal-hill", before.score()),
            SourceTreatment.KEEP,
            player -> neighbour.map(PartPlace::below));
    Origin after = MusicXmlReader.read(written.bytes()).origin();
    Matcher found = LISTED.matcher(after.partList().in(after.text()));
    List<String> listed = new ArrayList<>();
    while (found.find()) {
      listed.add(found.group(1) == null ? found.group(2) : found.group(1));
    }
    assertEquals(
        listed.stream().filter(s -> !s.equals("start") && !s.equals("stop")).count(),
        after.parts().size());
    return listed;
  }
}

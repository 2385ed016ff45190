package stafette.work;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stafette.musicxml.read.Document;
import stafette.musicxml.read.Xml;
import stafette.score.Part;

/** Where new parts stand. Invented scores: all parts but the last have a bar of rest. */
class ScoreSeatingTest {
  private static final String ORCHESTRA =
      "[bracket; Flute 1; Flute 2; Clarinet 1; Bassoon; ]; [bracket; Horn 1; Trombone; ];"
          + " Timpani; Harp; [bracket; [brace; Violin I; Violin II; ]; Cello; ]";
  private static final Pattern LISTED =
      Pattern.compile("<part-group type=\"(\\w+)\"|<part-name>([^<]*)<");

  @ParameterizedTest(name = "{0} stands after {1}")
  @CsvSource({
    "Flute 3, Flute 2",
    "Piccolo, [",
    "Oboe 1, Flute 2",
    "Clarinet in A, Clarinet 1",
    "Contrabassoon, Bassoon",
    "Horn 2, Horn 1",
    "Trumpet 1, Horn 1",
    "Tuba, Trombone",
    "Snare drum, Timpani",
    "Celesta, Harp",
    "Viola, ]",
    "Double bass, Cello"
  })
  void in_an_orchestra_it_stands_in_its_family(String name, String after) throws Exception {
    List<String> listed = listed(ORCHESTRA, name);
    assertEquals(after, listed.get(listed.indexOf(name) - 1), listed.toString());
  }

  @Test
  void what_follows_the_violins_stands_outside_their_brace_and_inside_the_bracket()
      throws Exception {
    List<String> listed = listed(ORCHESTRA, "Viola");
    assertEquals(
        List.of("[", "[", "Violin I", "Violin II", "]", "Viola", "Cello", "]"),
        listed.subList(listed.size() - 8, listed.size()));
  }

  @Test
  void what_has_no_family_there_stands_between_the_brackets() throws Exception {
    assertEquals(
        List.of("[", "Flute", "Oboe", "]", "Horn", "Timpani", "[", "Violin", "Cello", "]"),
        listed("[bracket; Flute; Oboe; ]; [bracket; Violin; Cello; ]", "Timpani", "Horn"));
  }

  @Test
  void above_a_piano_alone_all_stand_in_score_order() throws Exception {
    assertEquals(
        List.of("Piccolo", "Flute 1", "Flute 2", "Clarinet", "Horn", "Violin", "Piano"),
        listed("Piano", "Violin", "Clarinet", "Flute 2", "Piccolo", "Horn", "Flute 1"));
  }

  @Test
  void below_a_singer_and_above_the_piano_they_stand_as_well() throws Exception {
    assertEquals(List.of("Soprano", "Flute", "Piano"), listed("Soprano; Piano", "Flute"));
  }

  @Test
  void above_keyboards_that_are_bracketed_at_the_foot_they_stand_outside_all_their_brackets()
      throws Exception {
    assertEquals(
        List.of("[", "Flute", "]", "Timpani", "[", "[", "Piano", "]", "Celesta", "]"),
        listed("[bracket; Flute; ]; [bracket; [brace; Piano; ]; Celesta; ]", "Timpani"));
    assertEquals(
        List.of("Flute", "Harp", "[", "[", "Piano", "Celesta", "]", "]"),
        listed("[bracket; [brace; Piano; Celesta; ]; ]", "Harp", "Flute"));
  }

  @Test
  void beside_nested_brackets_each_stands_in_those_that_hold_its_like() throws Exception {
    assertEquals(
        List.of(
            "[", "[", "Piccolo", "[", "Flute 1", "Flute 2", "Flute 3", "]", "Oboe 1", "Oboe 2", "]",
            "]", "Horn", "Piano"),
        listed(
            "[line; [bracket; [square; Flute 1; Flute 2; ]; Oboe 1; ]; ]; Piano",
            "Horn",
            "Oboe 2",
            "Flute 3",
            "Piccolo"));
  }

  @Test
  void a_second_piano_stands_below_the_first() throws Exception {
    assertEquals(List.of("Violin", "Piano 1", "Piano 2"), listed("Violin; Piano 1", "Piano 2"));
  }

  @Test
  void a_first_flute_stands_above_the_second() throws Exception {
    assertEquals(
        List.of("Flute 1", "Flute 2", "Oboe", "Piano"), listed("Flute 2; Oboe; Piano", "Flute 1"));
  }

  @Test
  void where_the_order_is_another_list_and_parts_still_agree() throws Exception {
    assertEquals(
        List.of("[", "Timpani 1", "Timpani 2", "]", "[", "Horn", "Trumpet", "]", "Piano"),
        listed("[bracket; Timpani 1; ]; [bracket; Trumpet; ]; Piano", "Horn", "Timpani 2"));
  }

  /** The part list once there are new parts: names, and where brackets start and stop. */
  private static List<String> listed(String parts, String... names) throws Exception {
    Document after = NewPlayers.in(score(parts), names);
    List<String> listed = new ArrayList<>();
    Matcher found = LISTED.matcher(after.origin().partList().in(after.origin().text()));
    while (found.find()) {
      String group = "start".equals(found.group(1)) ? "[" : "]";
      listed.add(found.group(2) == null ? group : found.group(2));
    }
    assertEquals(
        listed.stream().filter(text -> !text.equals("[") && !text.equals("]")).toList(),
        after.score().parts().stream().map(Part::name).toList());
    return listed;
  }

  /** Names of parts, and groups between a symbol after "[" and "]". */
  private static String score(String list) {
    StringBuilder entries = new StringBuilder();
    StringBuilder parts = new StringBuilder();
    int number = 0;
    int depth = 0;
    for (String item : list.split(";\\s*", -1)) {
      if (item.startsWith("[")) {
        depth++;
        entries.append("<part-group type=\"start\" number=\"" + depth + "\"><group-symbol>");
        entries.append(item.substring(1) + "</group-symbol></part-group>\n");
      } else if (item.equals("]")) {
        entries.append("<part-group type=\"stop\" number=\"" + depth + "\"/>\n");
        depth--;
      } else {
        number++;
        String id = "\"P" + number + "\">";
        entries.append(
            "<score-part id=" + id + "<part-name>" + item + "</part-name></score-part>\n");
        parts.append("<part id=" + id + "<measure number=\"1\">" + Xml.ATTRIBUTES);
        parts.append(number == 1 ? Xml.note("A", 4, 3, "").repeat(16) : Xml.rest(48));
        parts.append("</measure></part>\n");
      }
    }
    return "<score-partwise version=\"4.0\">\n<part-list>\n"
        + entries
        + "</part-list>\n"
        + parts
        + "</score-partwise>\n";
  }
}

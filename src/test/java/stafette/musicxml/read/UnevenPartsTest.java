package stafette.musicxml.read;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static stafette.musicxml.read.Xml.ATTRIBUTES;
import static stafette.musicxml.read.Xml.note;
import static stafette.musicxml.read.Xml.rest;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import stafette.musicxml.make.UnwritablePlan;
import stafette.musicxml.text.Origin;
import stafette.musicxml.write.TwoParts;
import stafette.musicxml.write.WrittenScore;
import stafette.plan.Plan;

/** Scores whose parts have not all the same number of measures. */
class UnevenPartsTest {
  private static final String BAR = note("A", 4, 12, "") + note("B", 4, 12, "") + rest(24);

  @Test
  void a_part_that_ends_before_the_line_is_refused_in_words() throws Exception {
    Document before =
        TwoParts.read(TwoParts.of(List.of(ATTRIBUTES + BAR, BAR), List.of(ATTRIBUTES + rest(48))));
    Plan plan = TwoParts.plan(before, 0, 3);
    UnwritablePlan refused = assertThrows(UnwritablePlan.class, () -> TwoParts.write(before, plan));
    assertTrue(
        String.valueOf(refused.getMessage())
            .contains("Flute, bar 2: this part ends before that bar"));
  }

  @Test
  void a_new_part_is_as_long_as_the_longest_part() throws Exception {
    Document before =
        TwoParts.read(
            TwoParts.of(
                List.of(ATTRIBUTES + BAR), List.of(ATTRIBUTES + rest(48), rest(48), rest(48))));
    WrittenScore written = TwoParts.write(before, TwoParts.plan(before, "Piccolo", 0, 1));
    Origin after = MusicXmlReader.read(written.bytes()).origin();
    assertEquals(3, after.parts().get(2).measures().size());
  }

  @Test
  void a_barline_that_is_copied_leaves_its_id_behind() throws Exception {
    String barline =
        "<barline location=\"right\" id=\"b7\"><bar-style>light-heavy</bar-style></barline>";
    Document before =
        TwoParts.read(
            TwoParts.of(List.of(ATTRIBUTES + BAR + barline), List.of(ATTRIBUTES + rest(48))));
    String written =
        new String(
            TwoParts.write(before, TwoParts.plan(before, "Piccolo", 0, 1)).bytes(),
            StandardCharsets.UTF_8);
    assertEquals(2, written.split("light-heavy", -1).length - 1);
    assertFalse(written.indexOf("id=\"b7\"") < written.lastIndexOf("id=\"b7\""), written);
  }
}

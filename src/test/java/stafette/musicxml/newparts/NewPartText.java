package stafette.musicxml.newparts;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertIterableEquals;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Pattern;
import stafette.Invented;
import stafette.musicxml.read.Document;
import stafette.musicxml.read.MusicXmlReader;
import stafette.musicxml.read.Xml;
import stafette.musicxml.text.Origin;
import stafette.musicxml.write.ByHand;
import stafette.musicxml.write.OfficialSchema;
import stafette.musicxml.write.ScoreWriter;
import stafette.musicxml.write.TwoParts;
import stafette.plan.Brief;
import stafette.plan.Plan;
import stafette.plan.Segment;
import stafette.plan.SourceTreatment;
import stafette.score.BarChoice;
import stafette.score.Line;
import stafette.score.LineChoice;

/**
 * The text of a new part that has all of a line. It is valid, and writing it again changes nothing.
 */
final class NewPartText {
  /** On top of the score, where its tempi and rehearsal marks stand. */
  private static final PartPlace ABOVE =
      new PartPlace("P1", PartPlace.Side.ABOVE, PartPlace.Kinship.NONE, 0);

  private NewPartText() {}

  /**
   * The measures of a new part.
   *
   * @param model the measures of the part with the line, as they stand between their tags
   */
  static List<String> measures(String instrument, String... model) throws Exception {
    Document before = Xml.read(Xml.score(model));
    int last = TwoParts.strokes(before, "P1").size() - 1;
    Document after = turn(before, instrument, 0, last);
    assertEquals(TwoParts.strokes(before, "P1"), TwoParts.strokes(after, "New"));
    Origin.PartText part = after.origin().parts().get(0);
    return part.measures().stream()
        .map(measure -> measure.whole().in(after.origin().text()).replaceAll(">\\s+<", "><"))
        .toList();
  }

  /** A score with a new part that has some strokes of its line. */
  static Document turn(Document before, String instrument, int first, int last) throws Exception {
    Document after = written(before, instrument, first, last);
    assertIterableEquals(before.score().bars(), after.score().bars());
    assertArrayEquals(
        after.container().bytes(),
        written(after, instrument, first, last).container().bytes(),
        "again");
    return after;
  }

  private static Document written(Document document, String instrument, int first, int last)
      throws Exception {
    int bars = document.score().bars().count();
    Line line =
        new LineChoice(
                "P1",
                Optional.of(new BarChoice("#1-#" + bars)),
                OptionalInt.empty(),
                Optional.empty(),
                Optional.empty())
            .take(document.score());
    Plan plan =
        new Plan(
            new Brief(
                line,
                List.of(ByHand.player("New", instrument, document.score())),
                Invented.rules()),
            List.of(new Segment(0, 0, first, last)));
    byte[] bytes =
        ScoreWriter.write(document, plan, SourceTreatment.KEEP, any -> Optional.of(ABOVE)).bytes();
    assertEquals(List.of(), OfficialSchema.errors(bytes));
    return MusicXmlReader.read(bytes);
  }

  /** All that a pattern finds in a text, or its group. */
  static List<String> all(String pattern, String text) {
    return Pattern.compile(pattern)
        .matcher(text)
        .results()
        .map(found -> found.group(found.groupCount() == 0 ? 0 : 1))
        .toList();
  }
}

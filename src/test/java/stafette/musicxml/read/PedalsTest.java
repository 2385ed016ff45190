package stafette.musicxml.read;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stafette.musicxml.text.UnreadableScore;

/** Where the right pedal is down, in each of the forms that the format has for it. */
class PedalsTest {
  /** Signs before six quarters of two bars; one that nobody lifts stays down to the end. */
  @ParameterizedTest
  @CsvSource({
    "s . . x . .      , 0-3",
    "s . c . . x      , 0-2 2-5",
    "s . . . . .      , 0-8",
    ". s . x s .      , 1-3 4-8",
    "s x s x . .      , 0-1 2-3",
    "s . s . x .      , 0-2 2-4",
    ". . . x . .      , ''",
    ". . c . x .      , 2-4",
    "s . d . r x      , 0-5",
    "s . d . . x      , 0-2",
    "s . d . s x      , 0-2 4-5",
    ". r . . x .      , 1-4",
    "s . k . . x      , 0-5",
    "m . . x . .      , ''",
    "m . c . x .      , ''",
    "m s c . x x      , 1-2 2-4",
    "y . . n . .      , 0-3"
  })
  void each_form_is_read(String signs, String down) throws UnreadableScore {
    assertEquals(down, pedals(signs.trim().split("\\s+", -1)));
  }

  private static String pedals(String... signs) throws UnreadableScore {
    String[] measures = {Xml.ATTRIBUTES, ""};
    for (int i = 0; i < signs.length; i++) {
      measures[i / 4] += sign(signs[i]) + Xml.note("C", 4, 12, "");
    }
    measures[1] += Xml.rest(24);
    List<String> spans =
        Xml.read(Xml.score(measures)).score().parts().get(0).marks().pedal().stream()
            .map(span -> span.start().quarters() + "-" + span.end().quarters())
            .toList();
    return String.join(" ", spans);
  }

  private static String sign(String letter) {
    return switch (letter) {
      case "s" -> pedal("start\" line=\"yes");
      case "x" -> pedal("stop\" sign=\"yes");
      case "c" -> pedal("change");
      case "d" -> pedal("discontinue");
      case "r" -> pedal("resume");
      case "k" -> pedal("continue");
      case "m" -> pedal("sostenuto");
      case "y" -> "<sound damper-pedal=\"yes\"/>";
      case "n" -> "<sound damper-pedal=\"no\"/>";
      default -> "";
    };
  }

  private static String pedal(String type) {
    return "<direction><direction-type><pedal type=\"" + type + "\"/></direction-type></direction>";
  }
}

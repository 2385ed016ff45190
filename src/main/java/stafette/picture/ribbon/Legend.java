package stafette.picture.ribbon;

import java.util.ArrayList;
import java.util.List;
import stafette.picture.ink.Box;
import stafette.picture.ink.Face;
import stafette.picture.ink.Hatching;
import stafette.picture.ink.Ink;
import stafette.picture.ink.Mark;
import stafette.words.Sentence;

/** What the inks and shapes of a picture mean, at its foot. */
final class Legend {
  static final double HEIGHT = 34;

  private static final double SIZE = 7.4;
  private static final double SAMPLE = 30;
  private static final double HALF = 4.6;
  private static final double APART = 14;

  private Legend() {}

  static List<Mark> of(RelayContent relay, double left, double right, double top) {
    List<Mark> marks = new ArrayList<>();
    double y = top + 8;
    given(relay, together(relay, strains(relay, left, y, marks), y, marks), y, marks);
    Sentence care =
        Sentence.of(
            "Limits differ from player to player; playing at one's limit can injure. Ask the"
                + " players.");
    List<String> idle = relay.idle();
    Sentence foot =
        idle.isEmpty() ? care : Sentence.of("Not needed: {0}.  {1}", Sentence.list(idle), care);
    marks.add(words(Face.PLAIN.fitted(relay.say(foot), SIZE, right - left), left, top + 27));
    return marks;
  }

  /** The samples alone, in two rows. */
  static List<Mark> inTwoRows(RelayContent relay, double left, double top) {
    List<Mark> marks = new ArrayList<>();
    strains(relay, left, top + 8, marks);
    given(relay, together(relay, left, top + 24, marks), top + 24, marks);
    return marks;
  }

  private static double strains(RelayContent relay, double left, double y, List<Mark> marks) {
    double x = strain(0.55, relay.say(Sentence.of("to 70 % of a limit")), left, y, marks);
    x = strain(0.85, relay.say(Sentence.of("to 90 %")), x, y, marks);
    return strain(0.99, relay.say(Sentence.of("to 100 %")), x, y, marks);
  }

  private static double strain(double share, String text, double x, double y, List<Mark> marks) {
    double darkness = Ribbon.darkness(share);
    Ribbon ribbon =
        new Ribbon(
            y,
            HALF,
            List.of(new Ribbon.Knot(x, darkness), new Ribbon.Knot(x + SAMPLE, darkness)),
            Ribbon.RibbonEnd.TIP,
            Ribbon.RibbonEnd.TIP);
    marks.add(new Mark.Fill(ribbon.path(), Ink.FULL));
    return labelled(text, x, y, marks);
  }

  private static double together(RelayContent relay, double x, double y, List<Mark> marks) {
    double from = x + SAMPLE * 0.4;
    double to = x + SAMPLE * 0.6;
    double half = HALF * 0.55;
    double upper = y - HALF;
    double lower = y + HALF;
    Bridge bridge = new Bridge(from, to, upper, lower, half, Bridge.ROUND, Bridge.ROUND);
    marks.addAll(bridge.marks());
    double thin = Ribbon.darkness(0.8);
    marks.add(
        new Mark.Fill(
            new Ribbon(
                    upper,
                    half,
                    List.of(
                        new Ribbon.Knot(x, thin),
                        new Ribbon.Knot(from, thin),
                        new Ribbon.Knot(from + 0.01, Ribbon.SOLID),
                        new Ribbon.Knot(to, Ribbon.SOLID)),
                    Ribbon.RibbonEnd.TIP,
                    Ribbon.RibbonEnd.DOWN)
                .path(),
            Ink.FULL));
    marks.add(
        new Mark.Fill(
            new Ribbon(
                    lower,
                    half,
                    List.of(
                        new Ribbon.Knot(from, Ribbon.SOLID),
                        new Ribbon.Knot(to, Ribbon.SOLID),
                        new Ribbon.Knot(to + 0.01, thin),
                        new Ribbon.Knot(x + SAMPLE, thin)),
                    Ribbon.RibbonEnd.UP,
                    Ribbon.RibbonEnd.TIP)
                .path(),
            Ink.FULL));
    return labelled(relay.say(Sentence.of("both play: the handoff")), x, y, marks);
  }

  private static void given(RelayContent relay, double x, double y, List<Mark> marks) {
    marks.addAll(Hatching.of(new Box(x, y - HALF * 0.8, x + SAMPLE, y + HALF * 0.8)));
    labelled(relay.say(Sentence.of("plays something else in the score")), x, y, marks);
  }

  private static double labelled(String text, double x, double y, List<Mark> marks) {
    Mark.Lettering words = words(text, x + SAMPLE + 5, y + SIZE * 0.36);
    marks.add(words);
    return words.x() + words.width() + APART;
  }

  private static Mark.Lettering words(String text, double x, double y) {
    return new Mark.Lettering(text, x, y, SIZE, Face.PLAIN, Ink.SOFT);
  }
}

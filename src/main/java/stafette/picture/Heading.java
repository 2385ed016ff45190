package stafette.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stafette.check.TempoWindow;
import stafette.limits.Demand;
import stafette.score.Line;
import stafette.time.Bar;
import stafette.time.TempoMark;

/** What stands above a picture: which line, and between which tempi the plan holds. */
final class Heading {
  static final double HEIGHT = 58;

  private static final double TITLE_SIZE = 15;
  private static final double TEXT_SIZE = 8;
  private static final double GAUGE = 190;

  private Heading() {}

  static String title(Relay relay) {
    Line line = relay.line();
    List<Bar> bars = relay.bars();
    String first = bars.get(0).number();
    String last = bars.get(bars.size() - 1).number();
    return line.source().partName()
        + (bars.size() == 1 ? ", bar " + first : ", bars " + first + "–" + last);
  }

  static List<Mark> of(Relay relay, double left, double right, double top) {
    List<Mark> marks = new ArrayList<>();
    Line line = relay.line();
    double room = right - left - GAUGE - 40;
    marks.add(
        new Mark.Words(
            fitted(title(relay), Face.BOLD, TITLE_SIZE, room),
            left,
            top + 13,
            TITLE_SIZE,
            Face.BOLD,
            Ink.FULL));
    marks.add(soft(fitted(figures(line), Face.PLAIN, TEXT_SIZE, room), left, top + 26));
    marks.add(soft(fitted(outcome(relay), Face.PLAIN, TEXT_SIZE, room), left, top + 37));
    relay.window().ifPresent(window -> addGauge(line, window, right, top, marks));
    return marks;
  }

  private static String figures(Line line) {
    return line.count()
        + " notes in "
        + Relay.oneDecimal(line.endMicros(line.count() - 1) / 1e6)
        + " s, "
        + Relay.oneDecimal(Demand.usualRatePerSecond(line))
        + " a second";
  }

  private static String outcome(Relay relay) {
    if (!relay.verdict().holds()) {
      return "This plan does not hold: " + relay.verdict().findings().get(0).message();
    }
    int players = relay.playing().size();
    int handoffs = relay.plan().handoffs().size();
    return (players == 1 ? "1 player, " : players + " players, ")
        + (handoffs == 1 ? "1 handoff" : handoffs + " handoffs");
  }

  /** A line from the slowest tempo to the fastest, with a drop at the present one. */
  private static void addGauge(
      Line line, TempoWindow window, double right, double top, List<Mark> marks) {
    double left = right - GAUGE;
    double y = top + 22;
    double from = Math.max(window.slowestFactor(), 0.25);
    double to = Math.min(window.fastestFactor(), 4);
    double share = to > from ? Math.log(1 / from) / Math.log(to / from) : 0.5;
    double now = left + GAUGE * Math.min(1, Math.max(0, share));
    Path wedge =
        new Path.Pen()
            .move(left, y - 0.4)
            .line(right, y - 2.2)
            .line(right, y + 2.2)
            .line(left, y + 0.4)
            .close()
            .path();
    marks.add(new Mark.Fill(wedge, Ink.SOFT));
    Path drop =
        new Path.Pen()
            .move(now, y - 1)
            .curve(now + 2, y + 3, now + 3.4, y + 4.4, now + 3.4, y + 6.4)
            .curve(now + 3.4, y + 10.6, now - 3.4, y + 10.6, now - 3.4, y + 6.4)
            .curve(now - 3.4, y + 4.4, now - 2, y + 3, now, y - 1)
            .close()
            .path();
    marks.add(new Mark.Fill(drop, Ink.JOIN));
    marks.add(soft(slowest(window), left, y - 6));
    String fastest = fastest(window);
    marks.add(soft(fastest, right - Face.PLAIN.width(fastest, TEXT_SIZE), y - 6));
    TempoMark present = line.tempo().at(line.stroke(0).onset());
    addPresent("now " + present, now, left, right, y + 7.5, marks);
  }

  private static void addPresent(
      String text, double now, double left, double right, double y, List<Mark> marks) {
    double width = Face.BOLD.width(text, TEXT_SIZE);
    double x = now + 7 + width <= right ? now + 7 : now - 7 - width;
    marks.add(new Mark.Words(text, Math.max(left, x), y + 2, TEXT_SIZE, Face.BOLD, Ink.FULL));
  }

  private static String slowest(TempoWindow window) {
    return window.slowestFactor() == 0 ? "any slower" : "from " + window.slowestText();
  }

  private static String fastest(TempoWindow window) {
    return Double.isInfinite(window.fastestFactor())
        ? "any faster"
        : "to " + Optional.of(window.fastestText()).map(Heading::number).orElseThrow();
  }

  /** The number of a mark, "108" of "quarter = 108". */
  private static String number(String mark) {
    return mark.substring(mark.indexOf('=') + 1).trim();
  }

  private static Mark soft(String text, double x, double y) {
    return new Mark.Words(text, x, y, TEXT_SIZE, Face.PLAIN, Ink.SOFT);
  }

  private static String fitted(String text, Face face, double size, double room) {
    String shown = text;
    while (shown.length() > 1 && face.width(shown, size) > room) {
      shown = shown.substring(0, shown.length() - 2).stripTrailing() + "…";
    }
    return shown;
  }
}

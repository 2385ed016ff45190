package stafette.picture;

import java.util.ArrayList;
import java.util.List;
import stafette.check.TempoWindow;
import stafette.limits.Demand;
import stafette.score.Line;
import stafette.time.Bar;

/** What stands above a picture: which line, and between which tempi the plan holds. */
final class Heading {
  static final double HEIGHT = 56;

  private static final double TITLE_SIZE = 15;
  private static final double TEXT_SIZE = 8;
  private static final double GAUGE = 180;

  /** How wide the drop is at the present tempo; it may stand at the very end of the gauge. */
  private static final double DROP = 6.4;

  private static final double APART = 40;

  private final Relay relay;
  private final double left;
  private final double right;
  private final double top;
  private final List<Mark> marks = new ArrayList<>();

  private Heading(Relay relay, double left, double right, double top) {
    this.relay = relay;
    this.left = left;
    this.right = right;
    this.top = top;
  }

  static List<Mark> of(Relay relay, double left, double right, double top) {
    return new Heading(relay, left, right, top).all();
  }

  static String title(Relay relay) {
    List<Bar> bars = relay.bars();
    String first = bars.get(0).number();
    String last = bars.get(bars.size() - 1).number();
    return relay.line().source().partName()
        + (bars.size() == 1 ? ", bar " + first : ", bars " + first + "–" + last);
  }

  private List<Mark> all() {
    double room = right - left - (relay.window().isPresent() ? GAUGE + APART : 0);
    String title = Face.BOLD.fitted(title(relay), TITLE_SIZE, room);
    marks.add(new Mark.Words(title, left, top + 13, TITLE_SIZE, Face.BOLD, Ink.FULL));
    addSoft(Face.PLAIN.fitted(figures(), TEXT_SIZE, room), left, 26);
    addSoft(Face.PLAIN.fitted(outcome(), TEXT_SIZE, room), left, 37);
    relay.window().ifPresent(this::addGauge);
    return marks;
  }

  private String figures() {
    Line line = relay.line();
    int players = relay.playing().size();
    int handoffs = relay.plan().handoffs().size();
    return line.count()
        + " notes in "
        + Relay.oneDecimal(line.endMicros(line.count() - 1) / 1e6)
        + " s, "
        + Relay.oneDecimal(Demand.usualRatePerSecond(line))
        + " a second; "
        + (players == 1 ? "1 player, " : players + " players, ")
        + (handoffs == 1 ? "1 handoff" : handoffs + " handoffs");
  }

  private String outcome() {
    if (!relay.verdict().holds()) {
      return "This plan does not hold. " + relay.verdict().findings().get(0).message();
    }
    return relay.window().map(Heading::limits).orElse("");
  }

  private static String limits(TempoWindow window) {
    List<String> limits = new ArrayList<>();
    if (window.slowestFactor() > 0) {
      limits.add("slower, " + window.slowestLimit() + " ends it");
    }
    if (!Double.isInfinite(window.fastestFactor())) {
      limits.add("faster, " + window.fastestLimit() + " ends it");
    }
    String text = String.join("; ", limits);
    return text.isEmpty()
        ? ""
        : text.substring(0, 1).toUpperCase(java.util.Locale.ROOT) + text.substring(1);
  }

  /** A wedge from the slowest tempo to the fastest, with a drop at the present one. */
  private void addGauge(TempoWindow window) {
    double from = right - GAUGE;
    double y = top + 20;
    double slowest = Math.max(window.slowestFactor(), 0.25);
    double fastest = Math.min(window.fastestFactor(), 4);
    double share = fastest > slowest ? Math.log(1 / slowest) / Math.log(fastest / slowest) : 0.5;
    double to = right - DROP / 2;
    double now = from + (to - from) * Math.min(1, Math.max(0, share));
    marks.add(new Mark.Fill(wedge(from, to, y), Ink.SOFT));
    marks.add(new Mark.Fill(drop(now, y), Ink.JOIN));
    addSoft(window.slowestFactor() == 0 ? "any slower" : window.slowestText(), from, 13);
    String end =
        Double.isInfinite(window.fastestFactor()) ? "any faster" : number(window.fastestText());
    addSoft(end, right - Face.PLAIN.width(end, TEXT_SIZE), 13);
    Line line = relay.line();
    String present = line.tempo().at(line.stroke(0).onset()).toString();
    double width = Face.BOLD.width(present, TEXT_SIZE);
    double x = Math.max(from, Math.min(right - width, now - width / 2));
    marks.add(new Mark.Words(present, x, y + 21, TEXT_SIZE, Face.BOLD, Ink.FULL));
  }

  private static Path wedge(double from, double to, double y) {
    return new Path.Pen()
        .move(from, y - 0.4)
        .line(to, y - 2)
        .line(to, y + 2)
        .line(from, y + 0.4)
        .close()
        .path();
  }

  private static Path drop(double x, double y) {
    double half = DROP / 2;
    return new Path.Pen()
        .move(x, y - 1)
        .curve(x + 2, y + 3, x + half, y + 4.4, x + half, y + 6.4)
        .curve(x + half, y + 10.4, x - half, y + 10.4, x - half, y + 6.4)
        .curve(x - half, y + 4.4, x - 2, y + 3, x, y - 1)
        .close()
        .path();
  }

  /** The number of a mark, "108" of "quarter = 108". */
  private static String number(String mark) {
    return mark.substring(mark.indexOf('=') + 1).trim();
  }

  private void addSoft(String text, double x, double down) {
    marks.add(new Mark.Words(text, x, top + down, TEXT_SIZE, Face.PLAIN, Ink.SOFT));
  }
}

package stafette.picture.ribbon;

import java.util.ArrayList;
import java.util.List;
import stafette.check.TempoWindow;
import stafette.limits.Demand;
import stafette.picture.ink.Face;
import stafette.picture.ink.Ink;
import stafette.picture.ink.Mark;
import stafette.score.Line;
import stafette.time.Bar;

/** What stands above a picture: which line, and between which tempi the plan holds. */
final class Heading {
  static final double HEIGHT = 56;

  private static final double TITLE_SIZE = 15;
  private static final double TEXT_SIZE = 8;
  private static final double APART = 40;

  private final RelayContent relay;
  private final double left;
  private final double right;
  private final double top;
  private final List<Mark> marks = new ArrayList<>();

  private Heading(RelayContent relay, double left, double right, double top) {
    this.relay = relay;
    this.left = left;
    this.right = right;
    this.top = top;
  }

  static List<Mark> of(RelayContent relay, double left, double right, double top) {
    return new Heading(relay, left, right, top).all();
  }

  static String title(RelayContent relay) {
    List<Bar> bars = relay.bars();
    String first = bars.get(0).number();
    String last = bars.get(bars.size() - 1).number();
    return relay.line().source().partName()
        + (bars.size() == 1 ? ", bar " + first : ", bars " + first + "–" + last);
  }

  private List<Mark> all() {
    double room = right - left - (relay.window().isPresent() ? TempoGauge.WIDTH + APART : 0);
    String title = Face.BOLD.fitted(title(relay), TITLE_SIZE, room);
    marks.add(new Mark.Lettering(title, left, top + 13, TITLE_SIZE, Face.BOLD, Ink.FULL));
    addSoft(Face.PLAIN.fitted(figures(), TEXT_SIZE, room), left, 26);
    addSoft(Face.PLAIN.fitted(outcome(), TEXT_SIZE, room), left, 37);
    relay
        .window()
        .ifPresent(
            w ->
                marks.addAll(
                    TempoGauge.of(w, relay.line(), relay.speech(), right - TempoGauge.WIDTH, top)));
    return marks;
  }

  private String figures() {
    Line line = relay.line();
    int players = relay.playing().size();
    int handoffs = relay.plan().handoffs().size();
    return line.count()
        + " notes in "
        + RelayContent.oneDecimal(line.endMicros(line.count() - 1) / 1e6)
        + " s, "
        + RelayContent.oneDecimal(Demand.usualRatePerSecond(line))
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

  private void addSoft(String text, double x, double down) {
    marks.add(new Mark.Lettering(text, x, top + down, TEXT_SIZE, Face.PLAIN, Ink.SOFT));
  }
}

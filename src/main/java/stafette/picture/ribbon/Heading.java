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
import stafette.words.Sentence;

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
    String part = relay.line().source().partName();
    return relay.say(
        bars.size() == 1
            ? Sentence.of("{0}, bar {1}", part, first)
            : Sentence.of("{0}, bars {1}–{2}", part, first, last));
  }

  private List<Mark> all() {
    double room = right - left - (relay.window().isPresent() ? TempoGauge.WIDTH + APART : 0);
    String title = Face.BOLD.fitted(title(relay), TITLE_SIZE, room);
    marks.add(new Mark.Lettering(title, left, top + 13, TITLE_SIZE, Face.BOLD, Ink.FULL));
    addSoft(Face.PLAIN.fitted(relay.say(figures()), TEXT_SIZE, room), left, 26);
    addSoft(Face.PLAIN.fitted(relay.say(outcome()), TEXT_SIZE, room), left, 37);
    relay
        .window()
        .ifPresent(
            w ->
                marks.addAll(
                    TempoGauge.of(w, relay.line(), relay.speech(), right - TempoGauge.WIDTH, top)));
    return marks;
  }

  private Sentence figures() {
    Line line = relay.line();
    int players = relay.playing().size();
    int handoffs = relay.plan().handoffs().size();
    return Sentence.of(
        "{0} notes in {1} s, {2} a second; {3}, {4}",
        line.count(),
        Sentence.decimal(line.endMicros(line.count() - 1) / 1e6, 1),
        Sentence.decimal(Demand.usualRatePerSecond(line), 1),
        players == 1 ? Sentence.of("1 player") : Sentence.of("{0} players", players),
        handoffs == 1 ? Sentence.of("1 handoff") : Sentence.of("{0} handoffs", handoffs));
  }

  private Sentence outcome() {
    if (!relay.verdict().holds()) {
      return Sentence.of(
          "This plan does not hold. {0}", relay.verdict().findings().get(0).message());
    }
    return relay.window().map(Heading::limits).orElse(Sentence.NONE);
  }

  private static Sentence limits(TempoWindow window) {
    boolean slower = window.slowestFactor() > 0;
    boolean faster = !Double.isInfinite(window.fastestFactor());
    if (slower && faster) {
      return Sentence.of(
          "Slower, {0} ends it; faster, {1} ends it", window.slowestLimit(), window.fastestLimit());
    }
    if (slower) {
      return Sentence.of("Slower, {0} ends it", window.slowestLimit());
    }
    return faster ? Sentence.of("Faster, {0} ends it", window.fastestLimit()) : Sentence.NONE;
  }

  private void addSoft(String text, double x, double down) {
    marks.add(new Mark.Lettering(text, x, top + down, TEXT_SIZE, Face.PLAIN, Ink.SOFT));
  }
}

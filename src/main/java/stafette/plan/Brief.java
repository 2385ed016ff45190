package stafette.plan;

import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import stafette.limits.Assurance;
import stafette.score.Line;
import stafette.time.Bar;
import stafette.time.TempoMap;

/**
 * What is asked: these lines, each split among the players in a relay of its own, under these
 * rules.
 *
 * @param lines one for each relay: one line; the same one several times where always several play;
 *     a line for each tone of chords. All with the same clock
 * @param players the first ones preferred where costs are equal; at least one, names unlike
 */
public record Brief(List<Line> lines, List<Player> players, Rules rules) {
  /**
   * @throws IllegalArgumentException if there is no line or no player, lines have clocks that begin
   *     apart, or two players have the same name
   */
  public Brief {
    lines = List.copyOf(lines);
    if (lines.stream().map(Line::clockStart).distinct().count() != 1) {
      throw new IllegalArgumentException("the lines of a brief need one clock");
    }
    players = List.copyOf(players);
    if (players.isEmpty()
        || players.stream().map(Player::name).distinct().count() < players.size()) {
      throw new IllegalArgumentException(
          "a brief needs players with different names: "
              + players.stream().map(Player::name).toList());
    }
  }

  /** One line, one relay. */
  public Brief(Line line, List<Player> players, Rules rules) {
    this(List.of(line), players, rules);
  }

  /** The line of the first relay. */
  public Line line() {
    return lines.get(0);
  }

  public Line line(int relay) {
    return lines.get(relay);
  }

  /** All bars in which a line has a stroke, and those between. */
  public List<Bar> bars() {
    List<Bar> ends =
        lines.stream()
            .flatMap(line -> Stream.of(line.stroke(0), line.stroke(line.count() - 1)))
            .map(stroke -> line().bars().at(stroke.onset()))
            .sorted(Comparator.comparingInt(Bar::index))
            .toList();
    return IntStream.rangeClosed(ends.get(0).index(), ends.get(ends.size() - 1).index())
        .mapToObj(line().bars()::get)
        .toList();
  }

  /** Whether the lines of another brief have the same strokes at the same moments. */
  public boolean hasNotesOf(Brief other) {
    return lines.stream()
        .map(Brief::notes)
        .toList()
        .equals(other.lines().stream().map(Brief::notes).toList());
  }

  private static List<Object> notes(Line line) {
    List<Long> onsets = IntStream.range(0, line.count()).mapToObj(line::onsetMicros).toList();
    return List.of(line.strokes(), onsets);
  }

  /** How a relay's line is dealt out in hockets. */
  public Halves halves(int relay) {
    return Halves.of(line(relay), rules.hocket());
  }

  /** The lines at other tempi; relays of one line stay relays of one line. */
  public List<Line> linesAt(TempoMap tempi) {
    Map<Line, Line> scaled = new HashMap<>();
    return lines.stream()
        .map(line -> scaled.computeIfAbsent(line, before -> before.at(tempi)))
        .toList();
  }

  /** Whether two relays play the same strokes, so that their overlaps must not meet. */
  public boolean doubled(int one, int other) {
    return one != other && line(one).equals(line(other));
  }

  /**
   * The brief of which every plan holds within the margin of this one: with players for whom the
   * written tempo is as hard as any within it is for these, and rests before entries as long.
   */
  public Brief withinMargin() {
    Margin margin = rules.margin();
    return margin.isNone() || margin.isReckoned()
        ? this
        : new Brief(
            lines,
            players.stream().map(player -> player.within(margin)).toList(),
            rules.withReady(rules.readySeconds() / margin.shortened()).with(margin.reckoned()));
  }

  /** A brief for which another share of the population should manage each part. */
  public Brief at(Assurance share) {
    Assurance planned = rules.assurance();
    return new Brief(
        lines,
        players.stream().map(player -> player.at(planned, share)).toList(),
        rules.with(share));
  }

  /** A brief for other players. */
  public Brief with(List<Player> others) {
    return new Brief(lines, others, rules);
  }

  /** A brief under other rules. */
  public Brief with(Rules others) {
    return new Brief(lines, players, others);
  }
}

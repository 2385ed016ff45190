package stafette.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import stafette.limits.Way;
import stafette.score.Line;
import stafette.words.Sentence;

/**
 * Who plays which stretch of which line.
 *
 * @param brief what was asked
 * @param segments relay by relay, in each by first stroke, the two of a hocket pair side by side;
 *     at least one for each relay
 */
public record Plan(Brief brief, List<Segment> segments) {
  /**
   * @throws IllegalArgumentException if a relay has no segment, one names a player, a way or a
   *     stroke that does not exist, or a hocket lacks one of its two players
   */
  public Plan {
    segments = List.copyOf(segments);
    for (Segment segment : segments) {
      if (segment.relay() >= brief.lines().size()
          || segment.player() >= brief.players().size()
          || segment.way() >= brief.players().get(segment.player()).ways().size()
          || segment.last() >= brief.line(segment.relay()).count()) {
        throw new IllegalArgumentException(
            "the brief has no such player, way or stroke: " + segment);
      }
    }
    for (int relay = 0; relay < brief.lines().size(); relay++) {
      int number = relay;
      List<Segment> own = segments.stream().filter(s -> s.relay() == number).toList();
      if (own.isEmpty()) {
        throw new IllegalArgumentException("a plan needs a segment for each relay");
      }
      checkHockets(turns(own), brief, relay);
    }
  }

  private static void checkHockets(List<Turn> turns, Brief brief, int relay) {
    for (Turn turn : turns) {
      if (turn.isHocket() && !brief.halves(relay).bothPlay(turn.first(), turn.last())) {
        throw new IllegalArgumentException("one of a hocket pair has nothing to play: " + turn);
      }
    }
  }

  /** The line of the first relay. */
  public Line line() {
    return brief.line();
  }

  public Player player(Segment segment) {
    return brief.players().get(segment.player());
  }

  /** Who plays a stroke in a turn: of a hocket pair, the one whose unit it is in. */
  public Player player(Turn turn, int stroke) {
    if (!turn.isHocket()) {
      return player(turn.segments().get(0));
    }
    Halves halves = brief.halves(turn.relay());
    boolean odd = halves.halfOf(stroke) == halves.halfOf(turn.first());
    return player(turn.segments().get(odd ? 0 : 1));
  }

  public Way way(Segment segment) {
    return player(segment).ways().get(segment.way());
  }

  public Line line(Segment segment) {
    return brief.line(segment.relay());
  }

  /** The strokes that the player of a segment really plays. */
  public Played played(Segment segment) {
    return segment.pattern() == Pattern.ALL
        ? new Played(line(segment), segment.first(), segment.last())
        : brief.halves(segment.relay()).of(segment);
  }

  /** The turns of each relay, in order. */
  public List<List<Turn>> relays() {
    return IntStream.range(0, brief.lines().size())
        .mapToObj(relay -> turns(segments.stream().filter(s -> s.relay() == relay).toList()))
        .toList();
  }

  private static List<Turn> turns(List<Segment> segments) {
    List<Turn> turns = new ArrayList<>();
    for (int i = 0; i < segments.size(); i++) {
      boolean pair = segments.get(i).pattern() != Pattern.ALL && i + 1 < segments.size();
      turns.add(new Turn(segments.subList(i, pair ? i + 2 : i + 1)));
      i += pair ? 1 : 0;
    }
    return turns;
  }

  /** All turns, relay by relay. */
  public List<Turn> turns() {
    return relays().stream().flatMap(List::stream).toList();
  }

  /** All handoffs, relay by relay. */
  public List<Handoff> handoffs() {
    return relays().stream()
        .flatMap(
            turns ->
                IntStream.range(1, turns.size())
                    .mapToObj(i -> new Handoff(turns.get(i - 1), turns.get(i))))
        .toList();
  }

  /** Who plays a turn: "Flute 1", or "Flute 1 and Flute 2". */
  public String names(Turn turn) {
    return who(turn).toString();
  }

  /** Who plays a turn, to be said in any language. */
  public Sentence who(Turn turn) {
    return turn.segments().stream()
        .map(segment -> Sentence.list(List.of(player(segment).name())))
        .reduce((one, other) -> Sentence.of("{0} and {1}", one, other))
        .orElse(Sentence.NONE);
  }

  /**
   * This plan changed by hand.
   *
   * @return empty if the plan has no place for the edit, or would lose its shape
   */
  public Optional<Plan> with(PlanEdit edit) {
    return Edits.edited(this, edit);
  }

  /** The names of those who play, in the order listed. */
  public List<String> playing() {
    return segments.stream()
        .map(Segment::player)
        .distinct()
        .sorted()
        .map(player -> brief.players().get(player).name())
        .toList();
  }

  /** The segments of one player, in order. */
  public List<Segment> segmentsOf(int player) {
    return segments.stream()
        .filter(segment -> segment.player() == player)
        .sorted(Comparator.comparingLong(s -> line(s).onsetMicros(s.first())))
        .toList();
  }
}

package stafette.plan;

import java.util.List;
import java.util.stream.IntStream;
import stafette.score.Line;

/**
 * Who plays which stretch of the line.
 *
 * @param brief what was asked
 * @param segments by first stroke, at least one
 */
public record Plan(Brief brief, List<Segment> segments) {
  /**
   * @throws IllegalArgumentException if there is no segment, or one names a player, a skill or a
   *     stroke that does not exist
   */
  public Plan {
    segments = List.copyOf(segments);
    if (segments.isEmpty()) {
      throw new IllegalArgumentException("a plan needs a segment");
    }
    for (Segment segment : segments) {
      if (segment.player() >= brief.players().size()
          || segment.skill() >= brief.players().get(segment.player()).skills().size()
          || segment.last() >= brief.line().count()) {
        throw new IllegalArgumentException(
            "the brief has no such player, skill or stroke: " + segment);
      }
    }
  }

  public Line line() {
    return brief.line();
  }

  public Player player(Segment segment) {
    return brief.players().get(segment.player());
  }

  public Skill skill(Segment segment) {
    return player(segment).skills().get(segment.skill());
  }

  public List<Handoff> handoffs() {
    return IntStream.range(1, segments.size())
        .mapToObj(i -> new Handoff(segments.get(i - 1), segments.get(i)))
        .toList();
  }

  /** The segments of one player, in order. */
  public List<Segment> segmentsOf(int player) {
    return segments.stream().filter(segment -> segment.player() == player).toList();
  }
}

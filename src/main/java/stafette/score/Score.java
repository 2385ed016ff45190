package stafette.score;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import stafette.time.Bars;
import stafette.time.Position;
import stafette.time.Span;
import stafette.time.TempoMap;

/**
 * A score.
 *
 * @param title as printed
 * @param parts from top to bottom
 * @param bars one list for all parts
 * @param tempo all marks
 * @param tempoStated whether the score states a tempo; if not, quarter = 120 is assumed
 */
public record Score(
    Optional<String> title, List<Part> parts, Bars bars, TempoMap tempo, boolean tempoStated) {
  /** Points of cover that an attack of another part gives; twice as many with an accent. */
  public static final int COVER = 2;

  /** The most points of cover. */
  public static final int MOST_COVER = 8;

  private static final int ACCENTED_COVER = 2 * COVER;

  public Score {
    parts = List.copyOf(parts);
  }

  /** The part with that id, else the first with that name, whatever its case and its blanks. */
  public Optional<Part> part(String idOrName) {
    String name = oneBlank(idOrName);
    return parts.stream()
        .filter(part -> part.id().equals(idOrName))
        .findFirst()
        .or(
            () ->
                parts.stream()
                    .filter(part -> oneBlank(part.name()).equalsIgnoreCase(name))
                    .findFirst());
  }

  private static String oneBlank(String text) {
    return text.trim().replaceAll("\\s+", " ");
  }

  /**
   * A line of strokes of one voice, or of several that share it, with the cover that attacks in
   * other parts give it: 2 points for each other part that attacks at a stroke, 4 if with an
   * accent, 8 at the most (a model choice). What another part plays with the line's own tones is no
   * cover: it is the line.
   *
   * @param strands the voices that have it
   * @param strokes of these voices, at least one, tones already chosen
   * @param tone which tones they were
   */
  public Line line(Part part, Strands strands, List<Stroke> strokes, ToneChoice tone) {
    Map<Position, Stroke> byOnset =
        strokes.stream().collect(Collectors.toMap(Stroke::onset, Function.identity()));
    Span span = new Span(strokes.get(0).onset(), strokes.get(strokes.size() - 1).span().end());
    Map<Position, Integer> points = new HashMap<>();
    for (Part other : parts) {
      if (!other.id().equals(part.id())) {
        attacksBeside(other, byOnset, span)
            .forEach((onset, cover) -> points.merge(onset, cover, Integer::sum));
      }
    }
    List<Integer> cover = new ArrayList<>();
    for (Stroke stroke : strokes) {
      cover.add(Math.min(MOST_COVER, points.getOrDefault(stroke.onset(), 0)));
    }
    LineSource source =
        new LineSource(
            part.id(),
            part.name(),
            strands,
            tone,
            bars.at(strokes.get(0).onset()).index(),
            bars.at(strokes.get(strokes.size() - 1).onset()).index());
    return new Line(source, strokes, cover, bars, tempo, part.keys())
        .expressed(Expression.of(part, strands, span, bars));
  }

  /** A line of strokes of one voice. */
  public Line line(Part part, Voice voice, List<Stroke> strokes, ToneChoice tone) {
    return line(part, Strands.of(voice.staff(), voice.name()), strokes, tone);
  }

  /** The points of cover that one part gives at each of the line's onsets at which it attacks. */
  private static Map<Position, Integer> attacksBeside(
      Part part, Map<Position, Stroke> line, Span span) {
    Map<Position, Integer> points = new HashMap<>();
    for (Voice voice : part.voices()) {
      for (Stroke attack : voice.within(span)) {
        Stroke beside = line.get(attack.onset());
        if (beside != null && !attack.tones().stream().allMatch(beside::sounds)) {
          points.merge(attack.onset(), attack.accented() ? ACCENTED_COVER : COVER, Math::max);
        }
      }
    }
    return points;
  }
}

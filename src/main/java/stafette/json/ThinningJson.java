package stafette.json;

import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import stafette.check.SegmentReport;
import stafette.check.ShownTechnique;
import stafette.check.alone.ThinnedPart;
import stafette.check.alone.Thinning;
import stafette.json.Means.Items;
import stafette.json.Means.Least;
import stafette.plan.Plan;
import stafette.score.Line;

/** What players keep of a line in the background. */
@Edition(format = "stafette-thinning", version = 1)
@Means("What players who colour a line in the background keep of it.")
public record ThinningJson(
    @Means("The score.") ScoreFile score,
    @Means("The line that is thinned.") LineJson line,
    @Means("One for each player asked for.") List<ThinnedPartJson> players) {
  /**
   * @param parts of that line, one for each player
   */
  public static ThinningJson of(ScoreFile score, Line line, List<ThinnedPart> parts) {
    return new ThinningJson(
        score, LineJson.of(line), parts.stream().map(ThinnedPartJson::of).toList());
  }

  /** The text of the document. */
  public String text() {
    return Documents.text(this);
  }

  /** A background part. */
  @Means("One player's background part.")
  record ThinnedPartJson(
      @Means("The player's name.") String name,
      @Means("What it plays.") String instrument,
      @Means("Id of the player's part, null if the score has none.") Optional<String> part,
      @Means("How all of it is played; null if nothing is kept.") Optional<String> technique,
      @Means("How many the line has.") @Least(1) int strokes,
      @Means("How many the player keeps.") @Least(0) int kept,
      @Means("The largest share of a peak or moving limit.") @Least(0) double use,
      @Means("The highest, 1 being spent.") @Least(0) double tiredness,
      @Means("The largest share of the air spent; 0 for instruments without breath.") @Least(0)
          double breath,
      @Means("The whole line, stretch by stretch, neighbours with different patterns.")
          @Items(least = 1)
          List<StretchJson> stretches) {
    static ThinnedPartJson of(ThinnedPart part) {
      return new ThinnedPartJson(
          part.player().name(),
          part.player().instrument().name(),
          part.player().part(),
          part.kept().map(ThinnedPartJson::technique),
          part.whole().count(),
          part.strokes(),
          highest(part, SegmentReport::use),
          highest(part, SegmentReport::tiredness),
          highest(part, SegmentReport::breath),
          part.stretches().stream().map(stretch -> StretchJson.of(part.whole(), stretch)).toList());
    }

    private static String technique(Plan plan) {
      return plan.segments().stream()
          .flatMap(segment -> ShownTechnique.of(plan, segment).stream())
          .map(shown -> shown.technique().name())
          .distinct()
          .collect(Collectors.joining(", "));
    }

    private static double highest(ThinnedPart part, ToDoubleFunction<SegmentReport> figure) {
      return part.effort().stream().mapToDouble(figure).max().orElse(0);
    }
  }

  /** A stretch with one pattern. */
  @Means("A stretch with one pattern; the next one begins with the stroke after its last.")
  record StretchJson(
      @Means("What is left of it, from full to empty.") Thinning pattern,
      @Means("Index of its first stroke in the line.") @Least(0) int first,
      @Means("Index of its last stroke, included.") @Least(0) int last,
      @Means("Where its first stroke stands.") PlaceJson from,
      @Means("Where its last stroke stands.") PlaceJson to,
      @Means("How many the line has there.") @Least(1) int strokes,
      @Means("How many are kept.") @Least(0) int kept) {
    static StretchJson of(Line line, ThinnedPart.ThinnedStretch stretch) {
      return new StretchJson(
          stretch.pattern(),
          stretch.first(),
          stretch.last(),
          PlaceJson.of(line, stretch.first()),
          PlaceJson.of(line, stretch.last()),
          stretch.strokes(),
          stretch.kept());
    }
  }
}

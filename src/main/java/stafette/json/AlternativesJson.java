package stafette.json;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import stafette.check.JudgedPlan;
import stafette.check.Traits;
import stafette.json.Means.Flat;
import stafette.json.Means.Items;
import stafette.json.Means.Least;
import stafette.json.Means.Missing;
import stafette.json.Means.Most;
import stafette.json.Means.Only;
import stafette.plan.Brief;
import stafette.plan.Favour;
import stafette.plan.Seat;
import stafette.split.Alternatives;
import stafette.split.SplitResult;
import stafette.words.Sentence;

/** Other plans beside a plan. */
@Means("Other plans beside a plan.")
public record AlternativesJson(
    @Means(
            "Only where asked for: other plans, each the best for what it favours, none nearly the same as another.")
        List<AlternativeJson> alternatives,
    @Means(
            "Only where alternatives are asked for: what else was favoured, and why that gives no alternative.")
        List<DroppedJson> noAlternatives,
    @Means("Which alternative is written and kept instead of the plan; absent if it is the plan.")
        @Least(1)
        @Missing
        Optional<Integer> taken) {
  /** Beside a plan; {@code taken} is the number of the one that is taken instead of it. */
  public static AlternativesJson of(
      List<AlternativeJson> alternatives,
      List<Alternatives.Dropped> dropped,
      Optional<Integer> taken) {
    return new AlternativesJson(
        alternatives, dropped.stream().map(DroppedJson::of).toList(), taken);
  }

  /** One of them. */
  @Means("An alternative.")
  public record AlternativeJson(
      @Means("Counted from 1; --take names it.") @Least(1) int number,
      @Means("What it favours.") Favour favour,
      @Means("What things cost for this alternative, in points.") WeightsJson weights,
      @Means(
              "Whether no plan costs less under these weights (of regular rotations, no other rotation), or the search was stopped.")
          @Only({"optimal", "stopped"})
          PlanJson.Result result,
      @Means("Under its own weights.") int cost,
      @Means("No plan (of regular rotations, no rotation) costs less under its own weights.")
          int bound,
      @Means("Under the weights of the plan.") int costByPlan,
      @Means("That all players manage, 0 to 1.") @Least(0) @Most(1) double odds,
      @Means("How long the search took.") @Least(0) double searchSeconds,
      @Means("Names of the players who play.") @Items(least = 1) List<String> players,
      @Means("Of all segments.") @Least(0) double highestStrain,
      @Means("Of all segments, each counted by its strokes.") @Least(0) double meanStrain,
      @Means("Who has the segment of the highest strain, and where it begins.")
          TightestJson tightest,
      @Means("Points for the distances of instruments, under the weights of the plan.") @Least(0)
          int blend,
      @Means("What is different from the plan, in words.") @Items(least = 1) List<String> differs,
      @Means("As in the plan; costs are under these weights.") List<SegmentJson> segments,
      @Means("As in the plan; costs are under these weights.") List<HandoffJson> handoffs,
      @Means("Tempi between which it holds.") Optional<WindowJson> tempoWindow) {
    /**
     * An alternative with its own weights.
     *
     * @param traits compared by the weights of the main plan
     * @param differs what is different from the main plan
     */
    public static AlternativeJson of(
        int number,
        SplitResult result,
        JudgedPlan judged,
        double searchSeconds,
        Map<String, Seat> seats,
        Traits traits,
        List<Sentence> differs) {
      Brief brief = judged.plan().brief();
      return new AlternativeJson(
          number,
          brief.rules().favour(),
          WeightsJson.of(brief.rules().weights()),
          PlanJson.Result.of(result),
          judged.verdict().cost().total(),
          PlanJson.bound(result).orElseThrow(),
          traits.cost(),
          traits.odds(),
          searchSeconds,
          judged.plan().playing(),
          traits.highestStrain(),
          traits.meanStrain(),
          new TightestJson(traits.tightest().part(), PlaceJson.of(traits.tightest().at())),
          traits.blend(),
          differs.stream().map(Sentence::toString).toList(),
          SegmentJson.of(judged),
          HandoffJson.of(judged, seats),
          judged.window().map(WindowJson::of));
    }
  }

  /** Where it is tightest. */
  @Means("A player, and where a segment of that player begins.")
  record TightestJson(@Means("Name of the player.") String player, @Flat PlaceJson from) {}

  /** What gives no alternative. */
  @Means("What was favoured in vain.")
  record DroppedJson(
      @Means("What was favoured.") Favour favour, @Means("A sentence for people.") String message) {
    static DroppedJson of(Alternatives.Dropped dropped) {
      return new DroppedJson(dropped.favour(), dropped.why().toString());
    }
  }
}

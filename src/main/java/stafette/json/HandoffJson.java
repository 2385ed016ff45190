package stafette.json;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import stafette.check.HandoffCost;
import stafette.check.HandoffReasons;
import stafette.check.JudgedPlan;
import stafette.check.ear.Ear;
import stafette.check.ear.HandoffEar;
import stafette.check.join.JoinReport;
import stafette.json.Means.Flat;
import stafette.json.Means.Items;
import stafette.json.Means.Least;
import stafette.plan.Handoff;
import stafette.plan.Plan;
import stafette.plan.Seat;

/** A handoff, and what it costs and does to the ear. */
@Means("Where one segment takes over from another.")
record HandoffJson(
    @Means("Who leaves.") String leaves,
    @Means("Who enters.") String enters,
    @Means("First stroke of who enters.") @Least(0) int first,
    @Means(
            "Last stroke of who leaves: the landing note. Over a silence nothing is shared, and it is before first.")
        @Least(0)
        int last,
    @Means("Which relay.") @Least(0) int relay,
    @Flat PlaceJson landing,
    @Means("Points of cost.") HandoffCostJson cost,
    @Means("A few words for each part of the cost.") WhyJson why,
    @Means("What the handoff may do to the ear: an estimate, outside the cost.") EarJson ear,
    @Means("What a master would see to: advice, outside the cost.") JoinJson join) {
  static List<HandoffJson> of(JudgedPlan judged, Map<String, Seat> seats) {
    List<HandoffEar> ears = Ear.of(judged.plan(), seats);
    return IntStream.range(0, ears.size())
        .mapToObj(
            i ->
                of(
                    judged.plan(),
                    ears.get(i),
                    HandoffCostJson.of(judged.verdict().cost().handoffs().get(i))))
        .toList();
  }

  private static HandoffJson of(Plan plan, HandoffEar ear, HandoffCostJson cost) {
    Handoff handoff = ear.handoff();
    int relay = handoff.enters().relay();
    return new HandoffJson(
        plan.names(handoff.leaves()),
        plan.names(handoff.enters()),
        handoff.enters().first(),
        handoff.leaves().last(),
        relay,
        PlaceJson.of(plan.brief().line(relay), handoff.leaves().last()),
        cost,
        WhyJson.of(HandoffReasons.of(plan.brief(), handoff)),
        EarJson.of(ear),
        JoinJson.of(JoinReport.of(plan, handoff)));
  }

  /** What a handoff costs. */
  @Means("Points that a handoff costs.")
  record HandoffCostJson(
      @Means("For being one, less cover.") int handoff,
      @Means("For the rank of the entry.") int entry,
      @Means("For the rank of the landing.") int landing,
      @Means("For where in the phrase it lands, or a slur that it cuts.") int phrase,
      @Means("For strokes shared beside the target.") int overlap,
      @Means("For the distance of the instruments.") int blend) {
    static HandoffCostJson of(HandoffCost cost) {
      return new HandoffCostJson(
          cost.handoff(),
          cost.entry(),
          cost.landing(),
          cost.phrase(),
          cost.overlap(),
          cost.blend());
    }
  }

  /** Why it costs that. */
  @Means("A few words for each part of a handoff's cost.")
  record WhyJson(
      @Means("Its price, and what covers it.") String handoff,
      @Means("Where in the bar who enters begins.") String entry,
      @Means("Where in the bar who leaves ends.") String landing,
      @Means("Where in the phrase it lands, or what it cuts.") String phrase,
      @Means("How much they share beside what was aimed at.") String overlap,
      @Means("From what instrument to what.") String blend) {
    static WhyJson of(HandoffReasons why) {
      return new WhyJson(
          why.handoff().toString(),
          why.entry().toString(),
          why.landing().toString(),
          why.phrase().toString(),
          why.overlap().toString(),
          why.blend().toString());
    }
  }

  /** What it may do to the ear; times in seconds as everywhere in our JSON. */
  @Means("An estimate of what a handoff does to the ear.")
  record EarJson(
      @Means("How much louder who enters is than who leaves, each alone, decibels.") double then,
      @Means("While both play; null where they share nothing.") Optional<TogetherJson> together,
      @Means("On the stage; null unless both seats are known.") Optional<DistanceJson> distance) {
    static EarJson of(HandoffEar ear) {
      return new EarJson(
          ear.thenDecibel(),
          ear.together().map(TogetherJson::of),
          ear.distance()
              .map(apart -> new DistanceJson(apart.metres(), apart.delayMillis() / 1000)));
    }
  }

  /** While both play. */
  @Means("While both play.")
  record TogetherJson(
      @Means("How much louder than who leaves alone, decibels.") @Least(0) double aboveLeaving,
      @Means("How much louder than the louder of the two alone, decibels.") @Least(0)
          double aboveLouder,
      @Means(
              "Standard deviation of the difference of their onsets, the smaller and the larger published figure, seconds.")
          @Items(least = 2, most = 2)
          @Least(0)
          List<Double> onsetsApart,
      @Means("Displacement of one onset that is just noticed at this rate, seconds.") @Least(0)
          double noticeable) {
    static TogetherJson of(HandoffEar.Together together) {
      return new TogetherJson(
          together.aboveLeavingDecibel(),
          together.aboveLouderDecibel(),
          List.of(together.spread().leastMillis() / 1000, together.spread().mostMillis() / 1000),
          together.noticeableMillis() / 1000);
    }
  }

  /** On the stage. */
  @Means("From seat to seat.")
  record DistanceJson(
      @Means("From seat to seat.") @Least(0) double metres,
      @Means("How late each hears the other, seconds.") @Least(0) double delay) {}
}

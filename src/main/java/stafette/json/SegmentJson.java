package stafette.json;

import com.google.gson.annotations.SerializedName;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import stafette.check.Costing;
import stafette.check.Effort;
import stafette.check.JudgedPlan;
import stafette.check.SegmentCost;
import stafette.check.SegmentReport;
import stafette.check.ShownTechnique;
import stafette.json.Means.Flat;
import stafette.json.Means.Least;
import stafette.json.Means.Missing;
import stafette.json.Means.Told;
import stafette.plan.Brief;
import stafette.plan.HarpTurn;
import stafette.plan.Pattern;
import stafette.plan.Plan;
import stafette.plan.Segment;

/** A segment by names, and what the judge says of it. */
@Means("A stretch of the line for one player.")
record SegmentJson(
    @Means("Name of the player.") String player,
    @Means("On single strings, or on twin strings of the harp.") WayJson way,
    @Means("What the player is told to use, stretch by stretch.") @Told
        List<ShownTechniqueJson> techniques,
    @Means("How a harp sets its pedals, change by change; missing for others.") @Missing @Told
        Optional<List<PedalsJson>> pedals,
    @Means("Which relay.") @Least(0) int relay,
    @Means(
            "Which strokes the player takes: all, or in a hocket the first, third and further units (odd) or the others (even). A hocket pair has two entries with the same ends.")
        Pattern pattern,
    @Means("First stroke, counted from 0.") @Least(0) int first,
    @Means("Last stroke, included.") @Least(0) int last,
    @Means("How many strokes should be shared where this player leaves.") @Least(1) @Told
        int overlapTarget,
    @Means("Where the first stroke stands.") @Told PlaceJson from,
    @Means("Where the last stroke stands.") @Told PlaceJson to,
    @Means("How many strokes the player plays, overlaps included.") @Least(1) @Told int strokes,
    @Means("Highest rate from stroke to stroke, a second; 0 for a single stroke.") @Least(0) @Told
        double rate,
    @Means("Largest share of a peak or moving limit; 1 is the whole.") @Least(0) @Told double use,
    @Means("Highest tiredness, from 0 fresh to 1 spent, what came before included.") @Least(0) @Told
        double tiredness,
    @Means("Largest share of the air spent; 0 for instruments without breath.") @Least(0) @Told
        double breath,
    @Means("The largest of use, tiredness and breath.") @Least(0) @Told double strain,
    @Means("Points of cost.") @Told SegmentCostJson cost,
    @Means("What the points of strain are made of, before they are rounded together.") @Told
        EffortJson strainOf) {
  static List<SegmentJson> of(JudgedPlan judged) {
    Map<Segment, HarpTurn> harps = HarpTurn.of(judged.plan());
    return IntStream.range(0, judged.plan().segments().size())
        .mapToObj(index -> of(judged, index, harps))
        .toList();
  }

  private static SegmentJson of(JudgedPlan judged, int index, Map<Segment, HarpTurn> harps) {
    Plan plan = judged.plan();
    Segment segment = plan.segments().get(index);
    SegmentReport report = judged.verdict().segments().get(index);
    return new SegmentJson(
        plan.player(segment).name(),
        WayJson.of(plan.way(segment)),
        ShownTechnique.of(plan, segment).stream().map(ShownTechniqueJson::of).toList(),
        Optional.ofNullable(harps.get(segment)).map(PedalsJson::of),
        segment.relay(),
        segment.pattern(),
        segment.first(),
        segment.last(),
        plan.brief().rules().weights().overlapTarget(plan.player(segment).instrument()),
        PlaceJson.of(plan.line(segment), segment.first()),
        PlaceJson.of(plan.line(segment), segment.last()),
        plan.played(segment).strokes(),
        report.ratePerSecond(),
        report.use(),
        report.tiredness(),
        report.breath(),
        report.strain(),
        SegmentCostJson.of(judged.verdict().cost().segments().get(index)),
        EffortJson.of(Costing.effort(plan.brief(), segment)));
  }

  /** The segment in a brief; empty if it names a player, way or stroke not there. */
  Optional<Segment> in(Brief brief) {
    OptionalInt who = PlayerJson.called(player, brief.players());
    OptionalInt how = who.isEmpty() ? who : way.of(brief.players().get(who.getAsInt()));
    return how.isEmpty()
            || last < first
            || relay >= brief.lines().size()
            || last >= brief.line(relay).count()
        ? Optional.empty()
        : Optional.of(new Segment(relay, who.getAsInt(), how.getAsInt(), first, last, pattern));
  }

  /** A setting of the pedals, and from where it holds. */
  @Means("A setting of the pedals of a harp.")
  record PedalsJson(
      @Flat PlaceJson from,
      @Means("Left foot, then right: \"D C# B | E F G Ab\".") String setting) {
    static List<PedalsJson> of(HarpTurn turn) {
      return turn.setups().stream()
          .map(
              setup ->
                  new PedalsJson(
                      PlaceJson.of(turn.played().line(), setup.stroke()),
                      setup.setting().toString()))
          .toList();
    }
  }

  /** What a segment costs. */
  @Means("Points that a segment costs.")
  record SegmentCostJson(
      @Means("For effort, as if the player came fresh.") int strain,
      @SerializedName("short") @Means("For being shorter than a bar, or than two seconds.")
          int shortTurn,
      @Means("For strokes outside the comfortable range.") int register) {
    static SegmentCostJson of(SegmentCost cost) {
      return new SegmentCostJson(cost.strain(), cost.shortTurn(), cost.register());
    }
  }

  /** What the points of strain are made of. */
  @Means("What points of strain are made of.")
  record EffortJson(
      @Means("For notes near the limit of their rate.") @Least(0) double fast,
      @Means("For tiredness or breath at the segment's end, as if the player came fresh.") @Least(0)
          double spent) {
    static EffortJson of(Effort effort) {
      return new EffortJson(effort.fastPoints(), effort.spentPoints());
    }
  }
}

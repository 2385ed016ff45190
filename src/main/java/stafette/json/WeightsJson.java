package stafette.json;

import com.google.gson.annotations.SerializedName;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import stafette.json.Means.Below;
import stafette.json.Means.Items;
import stafette.json.Means.Least;
import stafette.plan.Weights;

/** What things cost. */
@Means("What things cost, in points.")
record WeightsJson(
    @Means("For each handoff, before cover is taken off.") @Least(0) int handoff,
    @Means("The most that cover takes off a handoff.") @Least(0) int coverMost,
    @Means("By the rank of the entering segment's first stroke.")
        @Items(least = 4, most = 4)
        @Least(0)
        List<Integer> entry,
    @Means("By the rank of the leaving segment's last stroke.")
        @Items(least = 4, most = 4)
        @Least(0)
        List<Integer> landing,
    @Means("For each stroke that an overlap differs from its target.") @Least(0) int overlap,
    @Means("Target by the name of the leaving instrument; 1 for all others.") @Least(1)
        Map<String, Integer> overlapTargets,
    @Means(
            "For each stroke but the first at u = use of the peak above the knee: strain * ((u - knee) / (1 - knee))^2.")
        @Least(0)
        double strain,
    @Means("The share of the peak from which strain counts.") @Least(0) @Below(1) double knee,
    @Means(
            "At the end of a segment, the player having come fresh: spent * s^2, s the largest of 0, (tiredness - tiredKnee) / (1 - tiredKnee) and (breath - breathKnee) / (1 - breathKnee). Summed with strain for a segment and rounded half up once.")
        @Least(0)
        double spent,
    @Means("The tiredness from which it counts.") @Least(0) @Below(1) double tiredKnee,
    @Means("The share of breath from which it counts.") @Least(0) @Below(1) double breathKnee,
    @Means(
            "For a handoff: where it lands on the first of a bar whose number in its phrase 4 divides; 2 divides; elsewhere; and instead, where it cuts a slur.")
        @Items(least = 4, most = 4)
        @Least(0)
        List<Integer> phrase,
    @SerializedName("short")
        @Means(
            "For a turn of length L below U, the smaller of a bar and two seconds, in microseconds: floor((2 * short * (U - L) + U) / (2 * U)).")
        @Least(0)
        int shortTurn,
    @Means("For each decibel of difference between two levels beyond decibelFree, rounded half up.")
        @Least(0)
        double decibel,
    @Means("A difference in decibels that costs nothing.") @Least(0) double decibelFree,
    @Means("For each stroke outside the comfortable range.") @Least(0) int register,
    @Means("For each stretch that a hocket pair plays.") @Least(0) int hocket,
    @Means("For each player used whom the program proposed.") @Least(0) int player,
    @Means("For each player used, named or proposed.") @Least(0) int used,
    @Means("For each player who was named, is able, and is not used.") @Least(0) int idle,
    @Means(
            "How much more than the cheapest plan a regular rotation may cost that is preferred to it; 1 for each of its handoffs if that is more.")
        @Least(0)
        int rotation,
    @Means("In a thinned part, for each change of pattern.") @Least(0) int patternChange,
    @Means(
            "Distance of two different instruments by their names in alphabetical order with a bar between them; if they are not there, by their families. The same instrument costs nothing.")
        @Least(0)
        Map<String, Integer> blend,
    @Means("Distance where neither names nor families are in blend.") @Least(0) int blendOther) {
  static WeightsJson of(Weights weights) {
    return new WeightsJson(
        weights.handoff(),
        weights.coverMost(),
        weights.entry(),
        weights.landing(),
        weights.overlap(),
        new TreeMap<>(weights.overlapTargets()),
        weights.strain(),
        weights.knee(),
        weights.spent(),
        weights.tiredKnee(),
        weights.breathKnee(),
        weights.phrase(),
        weights.shortTurn(),
        weights.decibel(),
        weights.decibelFree(),
        weights.register(),
        weights.hocket(),
        weights.player(),
        weights.used(),
        weights.idle(),
        weights.rotation(),
        weights.patternChange(),
        new TreeMap<>(weights.blend()),
        weights.blendOther());
  }

  Weights weights() {
    return new Weights(
        handoff,
        coverMost,
        entry,
        landing,
        overlap,
        overlapTargets,
        strain,
        knee,
        spent,
        tiredKnee,
        breathKnee,
        phrase,
        shortTurn,
        decibel,
        decibelFree,
        register,
        hocket,
        player,
        used,
        idle,
        rotation,
        patternChange,
        blend,
        blendOther);
  }
}

package stafette.plan;

import java.util.List;
import java.util.Map;
import stafette.limits.Instrument;

/**
 * What a plan costs, in whole points.
 *
 * @param handoff for each handoff
 * @param coverMost the most that cover takes off a handoff
 * @param entry by the rank of the entering segment's first stroke, four figures
 * @param landing by the rank of the leaving segment's last stroke, four figures
 * @param overlap for each stroke that an overlap differs from its target
 * @param overlapTargets the target by leaving instrument's name; 1 where nothing is said
 * @param strain at full rate, for each stroke: strain · ((u − knee)/(1 − knee))²
 * @param knee the share of the peak from which strain counts
 * @param spent at a segment's end: spent · s², s the larger of (f − tiredKnee)/(1 − tiredKnee) for
 *     tiredness f and (b − breathKnee)/(1 − breathKnee) for the share b of breath spent, or 0
 * @param tiredKnee the tiredness from which it counts
 * @param breathKnee the share of breath from which it counts
 * @param phrase for a handoff whose landing is on the first of a bar of its phrase that 4 divides,
 *     or 2; elsewhere; and where it cuts a slur: four figures
 * @param shortTurn for a turn of no length at all; less the nearer it comes to a bar, or two
 *     seconds
 * @param decibel for each decibel of difference beyond {@code decibelFree}
 * @param decibelFree a difference in level that costs nothing
 * @param register for each stroke outside the comfortable range
 * @param hocket for each hocket pair's stretch
 * @param player for each player used whom the program proposed
 * @param used for each player used, named or proposed
 * @param idle for each player who was named, is able, and is not used
 * @param rotation how much more than the cheapest plan a regular rotation may cost that is
 *     preferred to it; 1 for each of its handoffs where that is more
 * @param patternChange in a thinned part, for each change of pattern
 * @param blend distance of two different instruments, by {@link #pair} of names, else of families,
 *     else {@code blendOther}
 * @param blendOther distance of instruments that the table does not name
 */
public record Weights(
    int handoff,
    int coverMost,
    List<Integer> entry,
    List<Integer> landing,
    int overlap,
    Map<String, Integer> overlapTargets,
    double strain,
    double knee,
    double spent,
    double tiredKnee,
    double breathKnee,
    List<Integer> phrase,
    int shortTurn,
    double decibel,
    double decibelFree,
    int register,
    int hocket,
    int player,
    int used,
    int idle,
    int rotation,
    int patternChange,
    Map<String, Integer> blend,
    int blendOther) {
  public Weights {
    entry = List.copyOf(entry);
    landing = List.copyOf(landing);
    phrase = List.copyOf(phrase);
    overlapTargets = Map.copyOf(overlapTargets);
    blend = Map.copyOf(blend);
  }

  /** The key of two names in the blend table, the same in either order. */
  public static String pair(String one, String other) {
    return one.compareTo(other) <= 0 ? one + "|" + other : other + "|" + one;
  }

  /** The target of an overlap that {@code leaving} leaves. */
  public int overlapTarget(Instrument leaving) {
    return overlapTargets.getOrDefault(leaving.name(), 1);
  }

  /**
   * What it costs to hand from one instrument to the other, in whole points; the same both ways.
   */
  public int blend(Instrument one, Instrument other) {
    if (one.name().equals(other.name())) {
      return 0;
    }
    Integer byName = blend.get(pair(one.name(), other.name()));
    int distance =
        byName != null
            ? byName
            : blend.getOrDefault(pair(one.family(), other.family()), blendOther);
    double beyond = Math.abs(one.levelDecibel() - other.levelDecibel()) - decibelFree;
    return distance + (int) Math.floor(Math.max(0, beyond) * decibel + 0.5);
  }

  /** What using a player costs. */
  public int price(Player player) {
    return used + (player.isNamed() ? 0 : this.player);
  }

  /** These weights changed to favour something. */
  public Weights favouring(Favour favour) {
    return switch (favour) {
      case BALANCE, REGULAR -> this;
      case HANDOFFS -> with(60, strain, spent, decibel, player, used, idle, blend, blendOther);
      case STRAIN ->
          with(handoff, strain * 3, spent * 3, decibel, player, used, idle, blend, blendOther);
      case BLEND ->
          with(
              handoff,
              strain,
              spent,
              decibel * 4,
              player,
              used,
              idle,
              blend.entrySet().stream()
                  .collect(
                      java.util.stream.Collectors.toMap(
                          Map.Entry::getKey, entry -> entry.getValue() * 4)),
              blendOther * 4);
      case PLAYERS -> withPlayers(0, 200, 0);
    };
  }

  /**
   * These weights with other prices for players.
   *
   * @param proposed for each player used whom the program proposed
   * @param each for each player used
   * @param unused for each player who was named, is able, and is not used
   */
  public Weights withPlayers(int proposed, int each, int unused) {
    return with(handoff, strain, spent, decibel, proposed, each, unused, blend, blendOther);
  }

  private Weights with(
      int newHandoff,
      double newStrain,
      double newSpent,
      double newDecibel,
      int newPlayer,
      int newUsed,
      int newIdle,
      Map<String, Integer> newBlend,
      int newBlendOther) {
    return new Weights(
        newHandoff,
        coverMost,
        entry,
        landing,
        overlap,
        overlapTargets,
        newStrain,
        knee,
        newSpent,
        tiredKnee,
        breathKnee,
        phrase,
        shortTurn,
        newDecibel,
        decibelFree,
        register,
        hocket,
        newPlayer,
        newUsed,
        newIdle,
        rotation,
        patternChange,
        newBlend,
        newBlendOther);
  }
}

package stafette.json;

import com.google.gson.JsonNull;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.IntFunction;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;
import stafette.json.Means.Items;
import stafette.json.Means.Told;
import stafette.limits.Demand;
import stafette.limits.Way;
import stafette.plan.Brief;
import stafette.plan.Halves;
import stafette.plan.Hocket;
import stafette.plan.Player;
import stafette.score.Line;
import stafette.words.Sentence;

/** What each stroke of the line asks of a player in one way of playing. */
@Means(
    "What each stroke of the line asks of a player, an entry for each; null where the player has no part in it or no technique for it.")
@Told
record WayFiguresJson(
    @Means(
            "Seconds that a stroke of tongue, bow, finger or key needs, 1/peak; null for a slurred note.")
        @Items(least = 1)
        List<FigureJson> needs,
    @Means(
            "Seconds that a changing note needs after the one before, 1/moving; null where it sets none.")
        @Items(least = 1)
        List<FigureJson> moving,
    @Means(
            "Strokes of equal number form a chain, whose gaps are held against needs; null where needs is.")
        @Items(least = 1)
        List<FigureJson> chain,
    @Means("How many strokes of tiredness it is: 0, 1, or more with grace notes.") @Items(least = 1)
        List<FigureJson> loads,
    @Means("The rate that can go on there, strokes a second.") @Items(least = 1)
        List<FigureJson> sustained,
    @Means("Strokes beyond sustained from fresh to spent.") @Items(least = 1)
        List<FigureJson> stamina,
    @Means("Rest from spent to fresh, seconds.") @Items(least = 1) List<FigureJson> recovery,
    @Means("How many hands, fingers or syllables alternate.") @Items(least = 1)
        List<FigureJson> takers,
    @Means("What it is reckoned with: an index into techniques.") @Items(least = 1)
        List<FigureJson> technique) {
  /** A number, or null. */
  record FigureJson(OptionalDouble figure) {
    static Form<FigureJson> form() {
      return new Form<>(
          own ->
              own.figure.isPresent()
                  ? Adapters.number(own.figure.getAsDouble())
                  : JsonNull.INSTANCE,
          found -> Optional.of(new FigureJson(OptionalDouble.empty())),
          Sentence.NONE,
          JsonNull.INSTANCE);
    }
  }

  /**
   * By way: "plain" and "twins" for all strokes, "odd" and "even" for the two shares of a hocket.
   */
  static Map<String, WayFiguresJson> of(Player player, Brief brief) {
    Map<String, WayFiguresJson> ways = new LinkedHashMap<>();
    Line line = brief.line();
    for (Way way : player.ways()) {
      String name = way.twinStrings() ? "twins" : "plain";
      ways.put(name, of(player, way, line, line));
      if (brief.rules().hocket() != Hocket.NO) {
        Halves halves = brief.halves(0);
        String more = way.twinStrings() ? "twins, " : "";
        ways.put(more + "odd", of(player, way, halves.line(0), line));
        ways.put(more + "even", of(player, way, halves.line(1), line));
      }
    }
    return ways;
  }

  private static WayFiguresJson of(Player player, Way way, Line played, Line whole) {
    Demand demand = Demand.of(player.instrument(), way, played);
    int[] own = places(played, whole);
    IntPredicate covered = demand::covered;
    IntPredicate strikes = j -> demand.covered(j) && demand.articulated(j);
    return new WayFiguresJson(
        each(own, strikes, j -> demand.peakNeedNanos(j) / 1e9),
        each(own, j -> demand.covered(j) && demand.moves(j), j -> demand.movingNeedNanos(j) / 1e9),
        chains(own, strikes, demand),
        each(own, covered, j -> demand.loads(-1, j) ? 1.0 + graces(played, j) : 0.0),
        each(own, covered, j -> demand.sustainedMilli(j) / 1e3),
        each(own, covered, j -> demand.capability(j).staminaStrokes()),
        each(own, covered, j -> demand.capability(j).recoverySeconds()),
        each(own, covered, j -> (double) demand.takers(j)),
        each(
            own,
            covered,
            j -> (double) player.skills().indexOf(way.skills().get(demand.skill(j)))));
  }

  private static int graces(Line line, int j) {
    return line.stroke(j).graces().size();
  }

  /** For each stroke of the whole line its number in the played one; -1 if it is not there. */
  private static int[] places(Line played, Line whole) {
    int[] places = new int[whole.count()];
    int next = 0;
    for (int j = 0; j < places.length; j++) {
      boolean own =
          next < played.count() && played.stroke(next).onset().equals(whole.stroke(j).onset());
      places[j] = own ? next++ : -1;
    }
    return places;
  }

  private static List<FigureJson> each(int[] own, IntPredicate told, IntFunction<Double> figure) {
    return IntStream.of(own)
        .mapToObj(
            j ->
                new FigureJson(
                    j >= 0 && told.test(j)
                        ? OptionalDouble.of(figure.apply(j))
                        : OptionalDouble.empty()))
        .toList();
  }

  private static List<FigureJson> chains(int[] own, IntPredicate strikes, Demand demand) {
    List<Integer> chains = new ArrayList<>();
    int known = 0;
    for (int j = 0; j < demand.count(); j++) {
      int before = strikes.test(j) && j > 0 ? demand.peakFrom(0, j) : -1;
      boolean goesOn = before >= 0 && strikes.test(before);
      chains.add(goesOn ? chains.get(before) : known);
      known += goesOn ? 0 : 1;
    }
    return each(own, strikes, j -> (double) chains.get(j));
  }
}

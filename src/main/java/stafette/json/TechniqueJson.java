package stafette.json;

import java.util.List;
import java.util.Optional;
import stafette.json.Means.Above;
import stafette.json.Means.Items;
import stafette.json.Means.Least;
import stafette.json.Means.Only;
import stafette.json.Means.Told;
import stafette.limits.Act;
import stafette.limits.Capability;
import stafette.limits.Catalogue;
import stafette.limits.Demand;
import stafette.limits.Grade;
import stafette.limits.Instrument;
import stafette.limits.Limit;
import stafette.limits.Skill;
import stafette.limits.Technique;
import stafette.limits.Way;
import stafette.plan.Player;
import stafette.score.Line;
import stafette.words.Sentence;

/** A technique in the hands of one player. */
@Means(
    "A technique in the hands of this player. At a stroke, rates are multiplied by its factor and rounded down to thousandths.")
record TechniqueJson(
    @Means("As in the tables of limits.") String name,
    @Means(
            "Highest rate in a burst, strokes a second, from stroke to stroke of the tongue, bow or finger; where repeats is \"key\", from the last stroke on that same set of keys.")
        @Above(0)
        double peak,
    @Means(
            "The rate that can go on, strokes a second. Where repeats is \"key\" and the stroke does not repeat the one before, it is sustained * moving / peak.")
        @Least(0)
        double sustained,
    @Means("Strokes beyond sustained from fresh to spent.") @Above(0) double stamina,
    @Means("Rest from spent to fresh, seconds.") @Above(0) double recovery,
    @Means(
            "Highest rate of changing notes, notes a second, slurred ones too; null if the technique sets no limit to them.")
        @Above(0)
        Optional<Double> moving,
    @Means(
            "What multiplies peak, sustained and moving: one number for each stroke, or a single one for all.")
        @Items(least = 1)
        @Above(0)
        @Told
        List<Double> factors,
    @Means("What makes the stroke.") @Told Act act,
    @Means(
            "From where the gap of a repeated note counts: the last stroke at all, or the last on that string, key or bar.")
        @Only({"stroke", "key"})
        @Told
        String repeats,
    @Means("Whether slurred strokes are finger changes.") @Told boolean slurs,
    @Means("Strokes in a group; 3 plays only threes that are felt as such.")
        @Only({"1", "2", "3"})
        @Told
        int groups,
    @Means(
            "Repeated notes take two strings of the harp in turn; one setting of the pedals must serve the whole segment.")
        @Told
        boolean twinStrings,
    @Means("How many hands, fingers or syllables alternate.") @Least(1) @Told int takers,
    @Means("Where strokes follow more slowly it is not used, strokes a second.") @Least(0) @Told
        double lowest,
    @Means("What the rates were reckoned from.") @Told PopulationJson population,
    @Means("Where the peak comes from.") @Told String source,
    @Means(
            "How far to trust the figure: A measured and published, B stated by an expert and seen, C secondary or from memory, D no source.")
        @Told
        Grade grade) {
  static TechniqueJson of(Player player, Skill skill, Line line) {
    Technique technique = skill.technique();
    Capability capability = skill.capability();
    Demand demand =
        Demand.of(player.instrument(), new Way(technique.twinStrings(), List.of(skill)), line);
    return new TechniqueJson(
        technique.name(),
        capability.peakPerSecond(),
        capability.sustainedPerSecond(),
        capability.staminaStrokes(),
        capability.recoverySeconds(),
        Optional.of(capability.movingMilli())
            .filter(moving -> moving != Capability.UNLIMITED)
            .map(moving -> moving / 1000.0),
        PlayerJson.oneOrEach(line, demand::factor),
        technique.act(),
        technique.act().repeatsByKey() ? "key" : "stroke",
        technique.act().slurs(),
        technique.groups().size(),
        technique.twinStrings(),
        technique.takers(),
        technique.lowestPerSecond(),
        PopulationJson.of(technique.limit()),
        technique.source().text(),
        technique.source().grade());
  }

  /** The skill of a player of that instrument, with the file's own figures. */
  Optional<Skill> skill(Instrument instrument, Spot spot) {
    Optional<Technique> technique = Catalogue.technique(instrument, name);
    if (technique.isEmpty()) {
      spot.tell(Sentence.of("{0} has no '{1}' in these tables", instrument, Sentence.name(name)));
    }
    return technique.map(known -> new Skill(known, capability()));
  }

  private Capability capability() {
    return new Capability(
        milli(peak),
        milli(sustained),
        milli(stamina),
        milli(recovery),
        moving.map(TechniqueJson::milli).orElse(Capability.UNLIMITED));
  }

  private static int milli(double value) {
    return (int) Math.round(value * 1000);
  }

  /** How fast professional players are with it. */
  @Means("How fast professional players are with it.")
  record PopulationJson(
      @Means(
              "Mean peak of professional players, strokes a second; 0 deviation for a player's own figure.")
          double peak,
      @Means("Standard deviation between players.") @Least(0) double deviation) {
    static PopulationJson of(Limit limit) {
      return new PopulationJson(limit.peakPerSecond(), limit.deviationPerSecond());
    }
  }
}

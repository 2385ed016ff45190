package stafette.tables;

import com.google.gson.JsonElement;
import com.google.gson.JsonNull;
import com.google.gson.JsonObject;
import com.google.gson.JsonPrimitive;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import stafette.limits.Breath;
import stafette.limits.Capability;
import stafette.limits.Condition;
import stafette.limits.Demand;
import stafette.limits.Instrument;
import stafette.limits.Technique;
import stafette.plan.Busy;
import stafette.plan.Player;
import stafette.plan.Seat;
import stafette.plan.Skill;
import stafette.score.Line;

/** Writes a player with every figure on which a plan for a line rests. */
final class PlayerJson {
  private PlayerJson() {}

  static JsonObject of(Player player, Optional<Seat> seat, boolean freed, Line line) {
    Instrument instrument = player.instrument();
    JsonObject json = new JsonObject();
    json.addProperty("name", player.name());
    json.addProperty("instrument", instrument.name());
    json.addProperty("family", instrument.family());
    json.add("part", Json.orNull(player.part(), JsonPrimitive::new));
    if (freed) {
      json.addProperty("freed", true);
    }
    json.add("busy", Json.array(player.busy(), PlayerJson::busy));
    json.add("techniques", Json.array(player.skills(), skill -> skill(player, skill, line)));
    json.add("recovery", Json.milli(longestRecovery(player.skills())));
    json.add("range", Json.orNull(instrument.range(), Json::range));
    json.add("comfortable", Json.orNull(instrument.comfortable(), Json::range));
    json.add("level", Json.number(instrument.levelDecibel()));
    json.add("breath", Json.orNull(instrument.breath(), b -> breath(b, instrument, line)));
    json.add(EarJson.SEAT, Json.orNull(seat, EarJson::seat));
    return json;
  }

  private static int longestRecovery(List<Skill> skills) {
    return skills.stream().mapToInt(skill -> skill.capability().recoveryMillis()).max().orElse(0);
  }

  private static JsonElement busy(Busy busy) {
    JsonObject json = new JsonObject();
    json.add("from", Json.seconds(busy.fromMicros()));
    json.add("to", Json.seconds(busy.toMicros()));
    json.add("strokes", Json.array(busy.strokeMicros(), Json::seconds));
    return json;
  }

  private static JsonElement skill(Player player, Skill skill, Line line) {
    Technique technique = skill.technique();
    Capability capability = skill.capability();
    JsonObject json = new JsonObject();
    json.addProperty("name", technique.name());
    json.add("peak", Json.milli(capability.peakMilli()));
    json.add("sustained", Json.milli(capability.sustainedMilli()));
    json.add("stamina", Json.milli(capability.staminaMilli()));
    json.add("recovery", Json.milli(capability.recoveryMillis()));
    json.add(
        "moving",
        capability.movingMilli() == Capability.UNLIMITED
            ? JsonNull.INSTANCE
            : Json.milli(capability.movingMilli()));
    Demand demand = Demand.of(player.instrument(), technique, capability, line);
    json.add("factors", Json.array(oneOrEach(line, demand::factor), Json::number));
    addKind(json, technique);
    JsonObject population = new JsonObject();
    population.add("peak", Json.number(technique.limit().peakPerSecond()));
    population.add("deviation", Json.number(technique.limit().deviationPerSecond()));
    json.add("population", population);
    json.addProperty("source", technique.source().text());
    json.addProperty("grade", technique.source().grade().name());
    return json;
  }

  private static void addKind(JsonObject to, Technique technique) {
    to.addProperty("act", word(technique.act()));
    to.addProperty("repeats", technique.act().repeatsByKey() ? "key" : "stroke");
    to.addProperty("slurs", technique.act().slurs());
    to.addProperty("groups", technique.groups().size());
    to.addProperty("twinStrings", technique.twinStrings());
    to.add("lowest", Json.number(technique.lowestPerSecond()));
  }

  private static JsonElement breath(Breath breath, Instrument instrument, Line line) {
    JsonObject json = new JsonObject();
    json.add("capacity", Json.number(breath.capacitySeconds()));
    json.add("catch", Json.number(breath.catchSeconds()));
    json.add("full", Json.number(breath.fullSeconds()));
    List<Double> use = oneOrEach(line, j -> use(breath.use(), instrument, line, j));
    json.add("use", use.size() == 1 ? Json.number(use.get(0)) : Json.array(use, Json::number));
    return json;
  }

  private static double use(
      Map<Condition, Double> factors, Instrument instrument, Line line, int j) {
    return Demand.conditionsAt(instrument, line, j).stream()
        .sorted()
        .mapToDouble(condition -> factors.getOrDefault(condition, 1.0))
        .reduce(1, (a, b) -> a * b);
  }

  /** A figure for each stroke, or a single one if they are all the same. */
  private static List<Double> oneOrEach(Line line, IntToDoubleFunction figure) {
    List<Double> each = IntStream.range(0, line.count()).mapToDouble(figure).boxed().toList();
    return each.stream().distinct().count() == 1 ? each.subList(0, 1) : each;
  }

  private static String word(Enum<?> value) {
    return value.name().toLowerCase(Locale.ROOT);
  }
}

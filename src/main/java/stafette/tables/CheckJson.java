package stafette.tables;

import com.google.gson.JsonElement;
import com.google.gson.JsonNull;
import com.google.gson.JsonObject;
import com.google.gson.JsonPrimitive;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import stafette.check.Judged;
import stafette.limits.Demand;
import stafette.score.Line;
import stafette.time.Movement;

/**
 * Writes what became of the fast passages of a score. The project's JSON Schema of checks documents
 * each member.
 */
public final class CheckJson {
  private static final Comparator<Judged> EASIEST =
      Comparator.comparing(Judged::ease).thenComparing(Judged::strain);

  private CheckJson() {}

  /**
   * A passage.
   *
   * @param line its notes
   * @param judged one for each technique that applies, of one instrument or several
   * @param command that splits it, if there is one
   */
  public record Passage(Line line, List<Judged> judged, Optional<String> command) {
    public Passage {
      judged = List.copyOf(judged);
    }

    /** The best that each instrument can do, in the order in which they were judged. */
    public Collection<Judged> bestOfEach() {
      Map<String, Judged> best = new LinkedHashMap<>();
      judged.forEach(
          row ->
              best.merge(
                  row.instrument().name(), row, (a, b) -> EASIEST.compare(b, a) < 0 ? b : a));
      return List.copyOf(best.values());
    }
  }

  public static String write(List<Passage> passages) {
    JsonObject json = new JsonObject();
    json.addProperty("format", "stafette-check");
    json.addProperty("version", 1);
    json.add("passages", Json.array(passages, CheckJson::passage));
    return Json.text(json);
  }

  private static JsonElement passage(Passage passage) {
    Line line = passage.line();
    JsonObject json = new JsonObject();
    json.addProperty("part", line.source().part());
    json.addProperty("name", line.source().partName());
    json.addProperty("staff", line.source().staff());
    json.addProperty("voice", line.source().voice());
    json.add("bars", LineJson.bars(line));
    json.add("counted", LineJson.counted(line));
    json.add("movement", Json.orNull(movement(line), name -> new JsonPrimitive(name.toString())));
    json.add("from", Json.place(line.placeOf(0).at()));
    json.add("to", Json.place(line.placeOf(line.count() - 1).at()));
    json.addProperty("strokes", line.count());
    json.add("seconds", Json.seconds(line.endMicros(line.count() - 1)));
    JsonObject rate = new JsonObject();
    rate.add("highest", Json.number(highestPerSecond(line)));
    rate.add("usual", Json.number(Demand.usualRatePerSecond(line)));
    json.add("rate", rate);
    json.addProperty("tempo", line.tempo().at(line.stroke(0).onset()).toString());
    json.add("command", Json.orNull(passage.command(), JsonPrimitive::new));
    json.add("judged", Json.array(passage.judged(), CheckJson::judged));
    json.add("instruments", Json.array(passage.bestOfEach(), CheckJson::best));
    return json;
  }

  private static Optional<Movement> movement(Line line) {
    return line.bars().movementOf(line.bars().get(line.source().firstBar()));
  }

  private static double highestPerSecond(Line line) {
    return IntStream.range(1, line.count())
        .mapToLong(j -> line.onsetMicros(j) - line.onsetMicros(j - 1))
        .min()
        .stream()
        .mapToDouble(gap -> 1e6 / Math.max(1, gap))
        .findFirst()
        .orElse(0);
  }

  private static JsonElement judged(Judged judged) {
    JsonObject json = new JsonObject();
    json.addProperty("instrument", judged.instrument().name());
    json.addProperty("technique", judged.technique().name());
    json.add("peak", Json.milli(judged.capability().peakMilli()));
    json.add("use", Json.number(judged.use()));
    json.add("tiredness", Json.number(judged.tiredness()));
    json.add("breath", Json.number(judged.breath()));
    json.add(
        "lastsSeconds",
        judged.lastsSeconds().isPresent()
            ? Json.number(judged.lastsSeconds().getAsDouble())
            : JsonNull.INSTANCE);
    json.addProperty("verdict", judged.ease().text());
    json.add(
        "fastestTempo",
        Json.orNull(judged.fastestTempo(), mark -> new JsonPrimitive(mark.toString())));
    json.addProperty("thinning", judged.thinning().text());
    json.addProperty("source", judged.technique().source().text());
    json.addProperty("grade", judged.technique().source().grade().name());
    return json;
  }

  private static JsonElement best(Judged judged) {
    JsonObject json = new JsonObject();
    json.addProperty("instrument", judged.instrument().name());
    json.addProperty("verdict", judged.ease().text());
    json.addProperty("technique", judged.technique().name());
    return json;
  }
}

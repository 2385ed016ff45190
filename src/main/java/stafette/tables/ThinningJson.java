package stafette.tables;

import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonPrimitive;
import java.util.List;
import java.util.function.ToDoubleFunction;
import stafette.check.SegmentReport;
import stafette.check.ThinnedPart;
import stafette.plan.Plan;
import stafette.score.Line;

/**
 * Writes what players keep of a line in the background. The project's JSON Schema of thinnings
 * documents each member.
 */
public final class ThinningJson {
  private ThinningJson() {}

  /**
   * The text.
   *
   * @param parts of that line, one for each player
   */
  public static String write(ScoreFile score, Line line, List<ThinnedPart> parts) {
    JsonObject json = new JsonObject();
    json.addProperty("format", "stafette-thinning");
    json.addProperty("version", 1);
    JsonObject file = new JsonObject();
    file.addProperty("file", score.file());
    file.addProperty("sha256", score.sha256());
    json.add("score", file);
    json.add("line", LineJson.of(line));
    json.add("players", Json.array(parts, ThinningJson::part));
    return Json.text(json);
  }

  private static JsonElement part(ThinnedPart part) {
    JsonObject json = new JsonObject();
    json.addProperty("name", part.player().name());
    json.addProperty("instrument", part.player().instrument().name());
    json.add("part", Json.orNull(part.player().part(), JsonPrimitive::new));
    json.add("technique", Json.orNull(part.kept(), plan -> new JsonPrimitive(technique(plan))));
    json.addProperty("strokes", part.whole().count());
    json.addProperty("kept", part.strokes());
    json.add("use", highest(part, SegmentReport::use));
    json.add("tiredness", highest(part, SegmentReport::tiredness));
    json.add("breath", highest(part, SegmentReport::breath));
    json.add("stretches", Json.array(part.stretches(), stretch -> stretch(part.whole(), stretch)));
    return json;
  }

  private static String technique(Plan plan) {
    return plan.skill(plan.segments().get(0)).technique().name();
  }

  private static JsonElement highest(ThinnedPart part, ToDoubleFunction<SegmentReport> figure) {
    return Json.number(part.effort().stream().mapToDouble(figure).max().orElse(0));
  }

  private static JsonElement stretch(Line line, ThinnedPart.Stretch stretch) {
    JsonObject json = new JsonObject();
    json.addProperty("pattern", stretch.pattern().text());
    json.addProperty("first", stretch.first());
    json.addProperty("last", stretch.last());
    json.add("from", Json.place(line.placeOf(stretch.first()).at()));
    json.add("to", Json.place(line.placeOf(stretch.last()).at()));
    json.addProperty("strokes", stretch.strokes());
    json.addProperty("kept", stretch.kept());
    return json;
  }
}

package stafette.tables;

import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonPrimitive;
import java.util.List;
import java.util.Optional;
import java.util.function.IntFunction;
import java.util.stream.IntStream;
import stafette.check.SegmentReport;
import stafette.check.Verdict;
import stafette.plan.Plan;
import stafette.plan.Player;
import stafette.score.Line;
import stafette.score.LineSource;

/**
 * Writes a table of tempi against numbers of players. The project's JSON Schema of tempo tables
 * documents each member.
 */
public final class TempoJson {
  private TempoJson() {}

  public static String write(TempoReport report) {
    JsonObject json = new JsonObject();
    json.addProperty("format", "stafette-tempo");
    json.addProperty("version", 1);
    JsonObject score = new JsonObject();
    score.addProperty("file", report.score().file());
    score.addProperty("sha256", report.score().sha256());
    json.add("score", score);
    json.add("line", line(report.brief().line()));
    json.add("players", Json.array(report.brief().players(), TempoJson::player));
    json.addProperty("present", report.present().toString());
    json.add("rows", Json.array(report.rows(), TempoJson::row));
    json.add(
        "fastest", numbered(report.fastest().size(), i -> edge(i + 1, report.fastest().get(i))));
    JsonObject fewest = new JsonObject();
    fewest.add("players", Json.orNull(report.fewest().players(), JsonPrimitive::new));
    fewest.addProperty("proven", report.fewest().proven());
    json.add("fewest", fewest);
    json.add("odds", Json.orNull(report.verdict(), verdict -> Json.number(verdict.odds())));
    json.add(
        "oddsAtHeadroom",
        Json.orNull(report.verdict(), verdict -> Json.number(verdict.oddsAtHeadroom())));
    json.add("searchSeconds", Json.number(report.searchSeconds()));
    json.add("findings", Json.words(report.remarks()));
    return Json.text(json);
  }

  private static JsonElement numbered(int count, IntFunction<JsonElement> one) {
    return Json.array(IntStream.range(0, count).mapToObj(one).toList(), element -> element);
  }

  private static JsonElement line(Line line) {
    LineSource source = line.source();
    JsonObject json = new JsonObject();
    json.addProperty("part", source.part());
    json.addProperty("name", source.partName());
    json.addProperty("staff", source.staff());
    json.addProperty("voice", source.voice());
    json.addProperty("tone", source.tone().text());
    json.add("bars", LineJson.bars(line));
    json.addProperty("strokes", line.count());
    return json;
  }

  private static JsonElement player(Player player) {
    JsonObject json = new JsonObject();
    json.addProperty("name", player.name());
    json.addProperty("instrument", player.instrument().name());
    return json;
  }

  private static JsonElement row(TempoReport.Row row) {
    JsonObject json = new JsonObject();
    json.addProperty("tempo", row.tempo().toString());
    json.add("cells", numbered(row.cells().size(), i -> cell(i + 1, row.cells().get(i))));
    return json;
  }

  private static JsonElement cell(int players, TempoReport.Cell cell) {
    Optional<Verdict> verdict = cell.plan().map(PlanReport.Judged::verdict);
    JsonObject json = new JsonObject();
    json.addProperty("players", players);
    json.addProperty("result", cell.result());
    json.add("strain", Json.orNull(verdict, found -> Json.number(highestStrain(found))));
    json.add("cost", Json.orNull(verdict, found -> new JsonPrimitive(found.cost().total())));
    json.add("playing", playing(cell.plan().map(PlanReport.Judged::plan)));
    return json;
  }

  private static JsonElement edge(int players, TempoReport.Edge edge) {
    JsonObject json = new JsonObject();
    json.addProperty("players", players);
    json.add("tempo", Json.orNull(edge.tempo(), mark -> new JsonPrimitive(mark.toString())));
    json.addProperty("proven", edge.proven());
    json.add("playing", playing(edge.plan()));
    return json;
  }

  private static double highestStrain(Verdict verdict) {
    return verdict.segments().stream().mapToDouble(SegmentReport::strain).max().orElse(0);
  }

  /** Those who play, in the order in which they are listed. */
  private static JsonElement playing(Optional<Plan> plan) {
    return Json.words(plan.map(Plan::playing).orElse(List.of()));
  }
}

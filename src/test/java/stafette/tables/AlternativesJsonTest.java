package stafette.tables;

import stafette.words.UnreadableFile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.junit.jupiter.api.Test;
import stafette.Invented;
import stafette.check.Judge;
import stafette.check.Traits;
import stafette.limits.Instrument;
import stafette.plan.Brief;
import stafette.plan.Favour;
import stafette.plan.Plan;
import stafette.plan.Segment;
import stafette.words.Sentence;

class AlternativesJsonTest {
  private static final Instrument PIPE = Invented.instrument("pipe");
  private static final Brief BRIEF =
      Invented.brief(
          Invented.line(2, 4, 120),
          Invented.player("One", PIPE, 12, 11, 9, 8),
          Invented.player("Two", PIPE, 12, 11, 9, 8));
  private static final Plan MAIN =
      new Plan(BRIEF, List.of(new Segment(0, 0, 0, 16), new Segment(1, 0, 16, 31)));
  private static final Plan OTHER =
      new Plan(
          BRIEF.with(BRIEF.rules().favouring(Favour.HANDOFFS, Invented.WEIGHTS)),
          List.of(new Segment(0, 0, 0, 31)));

  @Test
  void a_plan_with_alternatives_is_valid_by_its_schema_and_can_be_opened_as_a_plan()
      throws UnreadableFile {
    String json = write(OptionalInt.of(1));
    Schemas.assertValid("plan", json);
    assertEquals(2, PlanFile.read("invented.json", json).segments().size());
  }

  @Test
  void the_schema_refuses_what_is_spoilt() {
    JsonObject json = json(OptionalInt.empty());
    JsonObject one = json.getAsJsonArray("alternatives").get(0).getAsJsonObject();
    one.remove("costByPlan");
    one.addProperty("favour", "luck");
    json.addProperty("taken", 0);
    assertEquals(3, Schemas.problems("plan", json.toString()).size());
  }

  @Test
  void an_alternative_has_its_own_weights_and_its_cost_under_both() {
    JsonObject one =
        json(OptionalInt.empty()).getAsJsonArray("alternatives").get(0).getAsJsonObject();
    assertEquals(60, one.getAsJsonObject("weights").get("handoff").getAsInt());
    assertEquals("handoffs", one.get("favour").getAsString());
    assertEquals("[\"One\"]", one.get("players").toString());
    assertEquals(one.get("cost"), one.get("costByPlan"));
    assertEquals("[\"1 handoff fewer\",\"Two not needed\"]", one.get("differs").toString());
  }

  @Test
  void what_is_taken_is_said_only_where_something_is() {
    assertEquals(1, json(OptionalInt.of(1)).get("taken").getAsInt());
    assertFalse(json(OptionalInt.empty()).has("taken"));
  }

  private static JsonObject json(OptionalInt taken) {
    return JsonParser.parseString(write(taken)).getAsJsonObject();
  }

  private static String write(OptionalInt taken) {
    Traits traits = Traits.of(OTHER, BRIEF.rules());
    return AlternativesJson.write(
        report(MAIN),
        List.of(
            new AlternativesJson.Alternative(
                report(OTHER),
                traits,
                traits.against(Traits.of(MAIN, BRIEF.rules())).subList(0, 2))),
        List.of(
            new AlternativesJson.Dropped(Favour.BLEND, Sentence.of("nearly the same as the plan"))),
        taken);
  }

  private static PlanReport report(Plan plan) {
    return new PlanReport(
        new ScoreFile("invented.musicxml", "0".repeat(64)),
        plan.brief(),
        Map.of(),
        Set.of(),
        "optimal",
        Optional.of(new PlanReport.Judged(plan, Judge.judge(plan))),
        Optional.of(1),
        0.1,
        Optional.empty(),
        List.of(),
        List.of());
  }
}

package stafette.json;

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
import stafette.check.JudgedPlan;
import stafette.check.Traits;
import stafette.limits.Instrument;
import stafette.plan.Brief;
import stafette.plan.Favour;
import stafette.plan.Plan;
import stafette.plan.Segment;
import stafette.score.Tremolo;
import stafette.split.Alternatives;
import stafette.split.SplitResult;
import stafette.words.Sentence;
import stafette.words.UnreadableFile;

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
    assertEquals(
        2, PlanFile.read("invented.json", json).plan(BRIEF).orElseThrow().segments().size());
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
    AlternativesJson.AlternativeJson other =
        AlternativesJson.AlternativeJson.of(
            1,
            new SplitResult.Best(OTHER, 1),
            judged(OTHER),
            0.1,
            Map.of(),
            traits,
            traits.against(Traits.of(MAIN, BRIEF.rules())).subList(0, 2));
    return PlanJson.of(
            "Stafette 1",
            ScoreFile.of("invented.musicxml", "0".repeat(64), Tremolo.AS_WRITTEN, false),
            Optional.empty(),
            MAIN.brief(),
            MAIN.brief(),
            new SplitResult.Best(MAIN, 1),
            Optional.of(judged(MAIN)),
            0.1,
            Map.of(),
            Set.of(),
            List.of(),
            List.of(),
            Optional.of(
                AlternativesJson.of(
                    List.of(other),
                    List.of(
                        new Alternatives.Dropped(
                            Favour.BLEND, Sentence.of("nearly the same as the plan"))),
                    taken.stream().boxed().findFirst())))
        .text();
  }

  private static JudgedPlan judged(Plan plan) {
    return new JudgedPlan(plan, Judge.judge(plan), Optional.empty());
  }
}

package stafette.tables;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.gson.JsonArray;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import stafette.Invented;
import stafette.check.Judge;
import stafette.limits.Instrument;
import stafette.plan.Brief;
import stafette.plan.Plan;
import stafette.plan.Segment;
import stafette.time.BeatUnit;
import stafette.time.Rational;
import stafette.time.TempoMark;

class TempoJsonTest {
  private static final Instrument PIPE = Invented.instrument("pipe");

  @Test
  void a_tempo_table_is_valid_by_its_schema() {
    Schemas.assertValid("tempo", TempoJson.write(report()));
  }

  @Test
  void the_schema_refuses_what_is_spoilt() {
    JsonObject json = json();
    json.remove("present");
    json.addProperty("odds", 2);
    json.getAsJsonArray("rows").get(0).getAsJsonObject().addProperty("mood", "calm");
    assertEquals(3, Schemas.problems("tempo", json.toString()).size());
  }

  @Test
  void cells_tell_the_plan_and_who_plays_it_or_that_there_is_none() {
    JsonArray cells =
        json().getAsJsonArray("rows").get(1).getAsJsonObject().getAsJsonArray("cells");
    JsonObject none = cells.get(0).getAsJsonObject();
    JsonObject two = cells.get(1).getAsJsonObject();
    assertEquals("none", none.get("result").getAsString());
    assertTrue(none.get("strain").isJsonNull() && none.get("cost").isJsonNull());
    assertEquals(0, none.getAsJsonArray("playing").size());
    assertEquals(2, two.get("players").getAsInt());
    assertEquals(8 / 12.0, two.get("strain").getAsDouble(), 1e-6);
    assertEquals("[\"One\",\"Two\"]", two.get("playing").toString());
  }

  @Test
  void without_a_plan_there_are_no_odds_and_the_reasons_stand_there() {
    TempoReport with = report();
    JsonObject json =
        JsonParser.parseString(
                TempoJson.write(
                    new TempoReport(
                        with.score(),
                        with.brief(),
                        with.present(),
                        with.rows(),
                        List.of(new TempoReport.Edge(Optional.empty(), true, Optional.empty())),
                        new TempoReport.Fewest(Optional.empty(), true),
                        Optional.empty(),
                        0.5,
                        List.of("the line is too fast for everybody"))))
            .getAsJsonObject();
    Schemas.assertValid("tempo", json.toString());
    assertTrue(json.get("odds").isJsonNull() && json.get("oddsAtHeadroom").isJsonNull());
    assertEquals("[\"the line is too fast for everybody\"]", json.get("findings").toString());
  }

  private static JsonObject json() {
    return JsonParser.parseString(TempoJson.write(report())).getAsJsonObject();
  }

  private static TempoReport report() {
    Brief brief =
        Invented.brief(
            Invented.line(1, 4, 120),
            Invented.player("One", PIPE, 12, 11, 9, 8),
            Invented.player("Two", PIPE, 12, 11, 9, 8));
    Plan plan = new Plan(brief, List.of(new Segment(1, 0, 0, 8), new Segment(0, 0, 8, 15)));
    TempoReport.Cell two =
        new TempoReport.Cell(
            "optimal", Optional.of(new PlanReport.Judged(plan, Judge.judge(plan))));
    return new TempoReport(
        new ScoreFile("invented.musicxml", "0".repeat(64)),
        brief,
        quarters(120),
        List.of(
            new TempoReport.Row(
                quarters(110), List.of(new TempoReport.Cell("stopped", Optional.empty()), two)),
            new TempoReport.Row(
                quarters(120), List.of(new TempoReport.Cell("none", Optional.empty()), two))),
        List.of(
            new TempoReport.Edge(Optional.empty(), false, Optional.empty()),
            new TempoReport.Edge(Optional.of(quarters(131)), true, Optional.of(plan))),
        new TempoReport.Fewest(Optional.of(2), true),
        Optional.of(Judge.judge(plan)),
        0.25,
        List.of());
  }

  private static TempoMark quarters(long perMinute) {
    return new TempoMark(BeatUnit.QUARTER, Rational.of(perMinute));
  }
}

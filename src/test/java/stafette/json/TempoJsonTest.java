package stafette.json;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.gson.JsonArray;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import stafette.Invented;
import stafette.check.Judge;
import stafette.limits.Instrument;
import stafette.plan.Brief;
import stafette.plan.Plan;
import stafette.plan.Segment;
import stafette.score.Tremolo;
import stafette.split.Reason;
import stafette.split.tempo.FastestTempo;
import stafette.split.tempo.TempoCell;
import stafette.split.tempo.TempoRow;
import stafette.split.tempo.TempoTable;
import stafette.time.BeatUnit;
import stafette.time.Rational;
import stafette.time.TempoMark;
import stafette.words.Sentence;

class TempoJsonTest {
  private static final Instrument PIPE = Invented.instrument("pipe");
  private static final Brief BRIEF =
      Invented.brief(
          Invented.line(1, 4, 120),
          Invented.player("One", PIPE, 12, 11, 9, 8),
          Invented.player("Two", PIPE, 12, 11, 9, 8));
  private static final Plan PLAN =
      new Plan(BRIEF, List.of(new Segment(1, 0, 0, 8), new Segment(0, 0, 8, 15)));
  private static final TempoCell NO_PLAN = new TempoCell(Optional.empty(), true);

  @Test
  void a_tempo_table_is_valid_by_its_schema() {
    Schemas.assertValid("tempo", text());
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
    Reason reason = new Reason(Optional.empty(), Sentence.of("the line is too fast for everybody"));
    TempoTable table =
        new TempoTable(
            List.of(new TempoRow(quarters(120), List.of(NO_PLAN, NO_PLAN), List.of(reason))),
            0,
            List.of(new FastestTempo(1, Optional.empty(), Optional.empty(), true)));
    JsonObject json = JsonParser.parseString(text(table)).getAsJsonObject();
    Schemas.assertValid("tempo", json.toString());
    assertTrue(json.get("odds").isJsonNull() && json.get("oddsAtHeadroom").isJsonNull());
    assertEquals("[\"the line is too fast for everybody\"]", json.get("findings").toString());
  }

  private static JsonObject json() {
    return JsonParser.parseString(text()).getAsJsonObject();
  }

  private static String text() {
    TempoCell stopped = new TempoCell(Optional.empty(), false);
    TempoCell two = new TempoCell(Optional.of(PLAN), true);
    return text(
        new TempoTable(
            List.of(
                new TempoRow(quarters(110), List.of(stopped, two), List.of()),
                new TempoRow(quarters(120), List.of(NO_PLAN, two), List.of())),
            1,
            List.of(
                new FastestTempo(1, Optional.empty(), Optional.empty(), false),
                new FastestTempo(2, Optional.of(quarters(131)), Optional.of(PLAN), true))));
  }

  private static String text(TempoTable table) {
    return TempoJson.of(
            ScoreFile.of("invented.musicxml", "0".repeat(64), Tremolo.AS_WRITTEN, false),
            BRIEF,
            table,
            Map.of(PLAN, Judge.judge(PLAN)),
            0.25)
        .text();
  }

  private static TempoMark quarters(long perMinute) {
    return new TempoMark(BeatUnit.QUARTER, Rational.of(perMinute));
  }
}

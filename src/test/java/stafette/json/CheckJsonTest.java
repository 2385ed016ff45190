package stafette.json;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.gson.JsonArray;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import stafette.Invented;
import stafette.check.ShownTechnique;
import stafette.check.alone.Ease;
import stafette.check.alone.Limiting;
import stafette.check.alone.LineVerdict;
import stafette.check.alone.Thinning;
import stafette.limits.Assurance;
import stafette.limits.Burst;
import stafette.limits.Instrument;
import stafette.score.Part;
import stafette.score.TremoloReading;
import stafette.score.TremoloRun;
import stafette.time.Bars;
import stafette.time.Meter;
import stafette.time.TempoMark;
import stafette.words.Sentence;

/** Verdicts on passages written down. */
class CheckJsonTest {
  private static final Instrument REED = Invented.instrument("reed");
  private static final Instrument PIPE = Invented.instrument("pipe");

  @Test
  void a_check_is_valid_by_its_schema() {
    Schemas.assertValid("check", json(passage()).text());
    Schemas.assertValid("check", json().text());
  }

  @Test
  void each_instrument_has_its_verdict_with_the_share_and_what_decides() {
    JsonArray judged = passageJson().getAsJsonArray("judged");
    assertEquals(2, judged.size());
    JsonObject reed = judged.get(0).getAsJsonObject();
    assertEquals("reed", reed.get("instrument").getAsString());
    assertEquals("demanding", reed.get("verdict").getAsString());
    assertEquals(90, reed.get("share").getAsInt());
    assertEquals("burst", reed.get("limitedBy").getAsString());
    assertEquals("1+1/2", reed.getAsJsonObject("at").get("beat").getAsString());
    assertEquals(
        "[{\"name\":\"tonguing\",\"first\":0,\"last\":3}]", reed.get("techniques").toString());
    assertEquals("beyond", judged.get(1).getAsJsonObject().get("verdict").getAsString());
  }

  @Test
  void a_passage_tells_its_rates_and_places() {
    JsonObject passage = passageJson();
    assertEquals(16, passage.get("strokes").getAsInt());
    assertEquals(2, passage.get("seconds").getAsDouble());
    assertEquals(8, passage.getAsJsonObject("rate").get("highest").getAsDouble());
    assertEquals(8, passage.getAsJsonObject("rate").get("usual").getAsDouble());
    assertEquals("quarter = 120", passage.getAsJsonObject("tempo").get("mark").getAsString());
    assertFalse(passage.getAsJsonObject("tempo").get("assumed").getAsBoolean());
    assertEquals("4+3/4", passage.getAsJsonObject("to").get("beat").getAsString());
  }

  @Test
  void what_can_go_on_has_no_end() {
    JsonArray judged = passageJson().getAsJsonArray("judged");
    assertTrue(judged.get(0).getAsJsonObject().get("lastsSeconds").isJsonNull());
    assertTrue(judged.get(1).getAsJsonObject().get("fastestTempo").isJsonNull());
  }

  @Test
  void what_is_left_aside_stands_apart() {
    JsonObject check =
        JsonParser.parseString(
                CheckJson.of(
                        List.of(),
                        List.of(
                            run(0, TremoloReading.OUTRUNS_THE_BOW),
                            run(2, TremoloReading.IN_DOUBT)),
                        List.of(
                            new Part("P5", "Whirligig", List.of(), List.of()),
                            new Part("P6", "Tenor Solo", List.of(), List.of())),
                        Bars.regular(Meter.COMMON, 4),
                        List.of(Sentence.of("the tempo may be wrong")))
                    .text())
            .getAsJsonObject();
    JsonObject unmeasured = only(check, "unmeasured");
    assertEquals("P4", unmeasured.get("part").getAsString());
    assertEquals("[\"1\",\"2\"]", unmeasured.get("bars").toString());
    assertEquals("[1,2]", unmeasured.get("counted").toString());
    assertEquals("slashes that outrun the bow", unmeasured.get("why").getAsString());
    assertEquals("[\"3\",\"4\"]", only(check, "doubtful").get("bars").toString());
    assertEquals(
        "[{\"part\":\"P5\",\"name\":\"Whirligig\",\"sings\":false},"
            + "{\"part\":\"P6\",\"name\":\"Tenor Solo\",\"sings\":true}]",
        check.get("notJudged").toString());
    assertEquals("[\"the tempo may be wrong\"]", check.get("suspicions").toString());
    Schemas.assertValid("check", check.toString());
  }

  private static JsonObject only(JsonObject check, String list) {
    assertEquals(1, check.getAsJsonArray(list).size());
    return check.getAsJsonArray(list).get(0).getAsJsonObject();
  }

  private static TremoloRun run(int bar, TremoloReading reading) {
    return new TremoloRun("P4", "Violin I", 1, "1", bar, bar + 1, reading);
  }

  private static CheckJson json(CheckJson.PassageJson... passages) {
    return CheckJson.of(
        List.of(passages), List.of(), List.of(), Bars.regular(Meter.COMMON, 1), List.of());
  }

  private static JsonObject passageJson() {
    return JsonParser.parseString(json(passage()).text())
        .getAsJsonObject()
        .getAsJsonArray("passages")
        .get(0)
        .getAsJsonObject();
  }

  private static CheckJson.PassageJson passage() {
    return CheckJson.PassageJson.of(
        Invented.line(1, 4, 120),
        List.of(judged(REED, 0.8, Ease.DEMANDING), judged(PIPE, 1.1, Ease.BEYOND)),
        true,
        Optional.of("split score.musicxml --part P1 --bars \"#1-#1\" --players \"Reed 1\""));
  }

  private static LineVerdict judged(Instrument instrument, double use, Ease ease) {
    boolean plays = ease.plays();
    return new LineVerdict(
        instrument,
        List.of(new ShownTechnique(instrument.techniques().get(0), 0, 3)),
        8,
        plays ? 90 : 2.5,
        ease,
        Limiting.BURST,
        2,
        Assurance.DEFAULT,
        use,
        Optional.of(new Burst.Tightest(5, 8 * use, 8)),
        0.2,
        0,
        plays ? OptionalDouble.empty() : OptionalDouble.of(1.5),
        plays ? Optional.of(TempoMark.QUARTER_120) : Optional.empty(),
        Thinning.HALF,
        instrument.techniques().get(0).source(),
        Optional.empty());
  }
}

package stafette.json;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stafette.Invented;
import stafette.check.Judge;
import stafette.check.JudgedPlan;
import stafette.check.TempoWindow;
import stafette.limits.Assurance;
import stafette.limits.Catalogue;
import stafette.limits.Instrument;
import stafette.limits.Skill;
import stafette.plan.Brief;
import stafette.plan.Favour;
import stafette.plan.GivenStretch;
import stafette.plan.OverlapRule;
import stafette.plan.Plan;
import stafette.plan.Player;
import stafette.plan.Rules;
import stafette.plan.Seat;
import stafette.plan.Segment;
import stafette.score.Dynamic;
import stafette.score.Grace;
import stafette.score.Line;
import stafette.score.Manner;
import stafette.score.Pitch;
import stafette.score.Step;
import stafette.score.Stroke;
import stafette.score.Tremolo;
import stafette.split.Reason;
import stafette.split.SplitResult;
import stafette.tables.LimitTables;
import stafette.time.BeatUnit;
import stafette.time.Rational;
import stafette.time.TempoMap;
import stafette.time.TempoMark;
import stafette.words.Sentence;
import stafette.words.UnreadableFile;

/** Plans written down, read by the schema, and opened again. */
class PlanJsonTest {
  private static final LimitTables TABLES = LimitTables.builtIn();
  private static final ScoreFile SCORE =
      ScoreFile.of("invented.musicxml", "0".repeat(64), Tremolo.AS_WRITTEN, false);

  @Test
  void a_plan_is_valid_by_its_schema() {
    Schemas.assertValid("plan", text(plan(line())));
  }

  @Test
  void the_schema_refuses_what_is_spoilt() {
    JsonObject json = json(plan(line()));
    json.remove("cost");
    json.addProperty("result", "perfect");
    json.getAsJsonArray("segments").get(0).getAsJsonObject().addProperty("first", -1);
    assertEquals(3, Schemas.problems("plan", json.toString()).size());
  }

  @Test
  void a_search_without_a_plan_is_written_too() {
    Reason reason = new Reason(Optional.empty(), Sentence.of("three flutes would do"));
    String text =
        PlanJson.of(
                "Stafette 1",
                SCORE,
                Optional.empty(),
                plan(line()).brief(),
                plan(line()).brief(),
                new SplitResult.None(List.of(reason)),
                Optional.empty(),
                0.5,
                Map.of(),
                Set.of(),
                List.of(),
                List.of(new PlanJson.RemedyJson("add \"Flute 3\"", "with one more flute", true)),
                Optional.empty())
            .text();
    Schemas.assertValid("plan", text);
    JsonObject json = JsonParser.parseString(text).getAsJsonObject();
    assertTrue(json.get("cost").isJsonNull());
    assertEquals(0, json.getAsJsonArray("segments").size());
    assertEquals(
        "three flutes would do",
        json.getAsJsonArray("findings").get(0).getAsJsonObject().get("message").getAsString());
    JsonObject remedy = json.getAsJsonArray("remedies").get(0).getAsJsonObject();
    assertEquals("add \"Flute 3\"", remedy.get("option").getAsString());
    assertTrue(remedy.get("verified").getAsBoolean());
  }

  @Test
  void numbers_are_written_alike_in_every_locale() {
    Locale before = Locale.getDefault();
    String text = text(plan(line()));
    try {
      Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
      assertEquals(text, text(plan(line())));
    } finally {
      Locale.setDefault(before);
    }
    assertTrue(
        text.contains("\"peak\": 11.445,"),
        "12.5 less 0.99446 times 1.06, the normal quantile of 16 %");
  }

  @Test
  void what_is_written_can_be_opened_again() throws Exception {
    Plan plan = plan(line());
    PlanFile file = PlanFile.read("plan.json", text(plan));
    assertEquals(SCORE, file.score());
    assertEquals(plan.line().source().part(), file.source().part());
    assertEquals(plan.line().source().tone(), file.source().tone());
    assertEquals(plan.line().source().lastBar(), file.source().lastBar());
    assertEquals(plan.brief().rules(), file.rules(TABLES.weights()));
    Brief brief = file.brief(List.of(plan.line()), TABLES.catalogue(), TABLES.weights());
    assertEquals(plan.brief().players(), brief.players());
    assertEquals(Optional.of(plan), file.plan(brief));
  }

  @Test
  void seats_that_are_known_are_kept() throws Exception {
    PlanFile file = PlanFile.read("plan.json", text(plan(line())));
    assertEquals(Map.of("Harp", new Seat(-4.5, 6)), file.seats());
    assertTrue(player(0).get("seat").isJsonNull());
  }

  @Test
  void a_plan_opened_again_is_judged_the_same() throws Exception {
    Plan plan = plan(line());
    PlanFile file = PlanFile.read("plan.json", text(plan));
    Brief brief = file.brief(List.of(plan.line()), TABLES.catalogue(), TABLES.weights());
    assertEquals(Judge.judge(plan), Judge.judge(file.plan(brief).orElseThrow()));
  }

  @Test
  void an_odd_tempo_is_kept_exactly() throws Exception {
    TempoMark odd = new TempoMark(BeatUnit.of("quarter", 1).orElseThrow(), Rational.of(277, 3));
    Plan plan = plan(line().at(TempoMap.constant(odd)));
    assertEquals(odd, PlanFile.read("plan.json", text(plan)).tempo());
  }

  @Test
  void a_changed_line_or_table_is_told() throws Exception {
    PlanFile file = PlanFile.read("plan.json", text(plan(line())));
    UnreadableFile unreadable =
        assertThrows(
            UnreadableFile.class,
            () ->
                file.brief(
                    List.of(Invented.line(1, 2, 120)), new Catalogue(List.of()), TABLES.weights()));
    assertEquals(
        List.of(
            "invented.musicxml: the line has 8 notes, the plan was made for 64; split it again",
            "Flute 1: no instrument is called 'flute'; add it to instruments.csv",
            "Harp: no instrument is called 'harp'; add it to instruments.csv"),
        unreadable.problems());
  }

  @Test
  void strokes_tell_what_another_program_needs() {
    Stroke plain = line().stroke(1);
    List<Stroke> strokes = new ArrayList<>(line().strokes());
    strokes.set(
        1,
        new Stroke(
            plain.onset(),
            plain.tones(),
            plain.values(),
            List.of(new Grace(plain.tones(), true)),
            true,
            false,
            true,
            Set.of(),
            Dynamic.FF,
            Manner.PLAIN));
    JsonObject stroke =
        json(plan(Invented.lineOf(strokes, 120)))
            .getAsJsonObject("line")
            .getAsJsonArray("strokes")
            .get(1)
            .getAsJsonObject();
    assertEquals("1/4", stroke.get("onset").getAsString());
    assertEquals("1+1/4", stroke.get("beat").getAsString());
    assertEquals(0.125, stroke.get("seconds").getAsDouble());
    assertEquals(0.125, stroke.get("sounds").getAsDouble());
    assertEquals(0.5, stroke.get("beatSeconds").getAsDouble());
    assertEquals(3, stroke.get("rank").getAsInt());
    assertEquals(1, stroke.get("graces").getAsInt());
    assertEquals("ff", stroke.get("dynamic").getAsString());
    assertTrue(stroke.get("slurred").getAsBoolean());
    assertEquals(-1, stroke.get("inThree").getAsInt());
  }

  @Test
  void techniques_tell_where_repeats_count_from() {
    JsonObject flute = player(0);
    JsonObject harp = player(1);
    assertEquals("stroke", technique(flute).get("repeats").getAsString());
    assertEquals("key", technique(harp).get("repeats").getAsString());
    assertTrue(harp.get("breath").isJsonNull());
    assertEquals(12, flute.getAsJsonObject("breath").get("capacity").getAsDouble());
    assertFalse(technique(flute).get("moving").isJsonNull());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '§',
      value = {
        "\"favour\": \"balance\"§\"favour\": \"luck\"§plan.json, settings: favour must be balance,"
            + " handoffs, strain, blend, players, regular, found \"luck\"",
        "\"assurance\": 84§\"assurance\": 100§plan.json, settings: assurance must be above 0 and"
            + " below 100, found 100",
        "\"staff\": 1§\"staff\": 0§plan.json, line: staff must be a whole number from 1 to 1000000, found 0",
        "\"format\": \"stafette-plan\"§\"format\": \"x\"§plan.json: format must be"
            + " \"stafette-plan\"",
        "\"version\": 2§\"version\": 3§plan.json: is of a later version; open it with a newer"
            + " release of this program",
        "\"tone\": \"all\"§\"tone\": \"some\"§plan.json, line: tone must be top, bottom, all or a"
            + " number, found \"some\"",
        "\"perMinute\": \"120\"§\"perMinute\": \"1/0\"§plan.json, line, tempo 1: perMinute must be"
            + " a number or fraction above 0, as text, found \"1/0\"",
      })
  void a_spoilt_file_is_told_with_its_place(String sound, String spoilt, String message) {
    String text = text(plan(line()));
    assertTrue(text.contains(sound), sound);
    UnreadableFile unreadable =
        assertThrows(
            UnreadableFile.class, () -> PlanFile.read("plan.json", text.replace(sound, spoilt)));
    assertEquals(List.of(message), unreadable.problems());
  }

  @Test
  void a_segment_of_nobody_is_told() throws Exception {
    Plan plan = plan(line());
    String text = text(plan).replace("\"player\": \"Harp\"", "\"player\": \"Lute\"");
    PlanFile file = PlanFile.read("plan.json", text);
    Brief brief = file.brief(List.of(plan.line()), TABLES.catalogue(), TABLES.weights());
    assertThrows(UnreadableFile.class, () -> file.plan(brief));
  }

  @Test
  void two_players_of_one_name_are_told() throws Exception {
    Plan plan = plan(line());
    String text = text(plan).replace("\"name\": \"Harp\"", "\"name\": \"Flute 1\"");
    PlanFile file = PlanFile.read("plan.json", text);
    assertEquals(
        List.of("invented.musicxml: the plan needs players, each with a name of its own"),
        assertThrows(
                UnreadableFile.class,
                () -> file.brief(List.of(plan.line()), TABLES.catalogue(), TABLES.weights()))
            .problems());
  }

  @Test
  void text_that_is_no_json_is_told() {
    for (String text : List.of("", "{", "[]", "{} {}", "{'a': 1}")) {
      assertThrows(UnreadableFile.class, () -> PlanFile.read("plan.json", text), text);
    }
  }

  @Test
  void an_overlap_of_so_many_notes_is_kept() throws Exception {
    Plan plan = plan(line());
    Rules rules =
        new Rules(
            new Assurance(70),
            new OverlapRule(2, OptionalInt.of(3)),
            0.25,
            Favour.STRAIN,
            TABLES.weights().favouring(Favour.STRAIN));
    Plan other = new Plan(new Brief(plan.line(), plan.brief().players(), rules), plan.segments());
    String text = text(other);
    Schemas.assertValid("plan", text);
    assertEquals(rules, PlanFile.read("plan.json", text).rules(TABLES.weights()));
  }

  private static JsonObject player(int index) {
    return json(plan(line())).getAsJsonArray("players").get(index).getAsJsonObject();
  }

  private static JsonObject technique(JsonObject player) {
    return player.getAsJsonArray("techniques").get(0).getAsJsonObject();
  }

  private static JsonObject json(Plan plan) {
    return JsonParser.parseString(text(plan)).getAsJsonObject();
  }

  private static String text(Plan plan) {
    TempoWindow window =
        new TempoWindow(
            0,
            1.1,
            Sentence.of("any slower tempo"),
            Sentence.of("quarter = 130"),
            Sentence.of("nothing"),
            Sentence.of("the rate of Flute 1"));
    return PlanJson.of(
            "Stafette 1",
            SCORE,
            Optional.empty(),
            plan.brief(),
            plan.brief(),
            new SplitResult.Best(plan, 0),
            Optional.of(new JudgedPlan(plan, Judge.judge(plan), Optional.of(window))),
            0.012,
            Map.of("Harp", new Seat(-4.5, 6)),
            Set.of(),
            List.of(),
            List.of(),
            Optional.empty())
        .text();
  }

  /** Four bars of eight strokes a second, up and down between A and E. */
  private static Line line() {
    return Invented.line(64, 4, 120, i -> i % 2 == 0 ? Invented.A4 : new Pitch(Step.E, 0, 5));
  }

  private static Plan plan(Line line) {
    Player flute =
        player(
            "Flute 1",
            "flute",
            List.of(new GivenStretch(-3_000_000, -1_500_000, List.of(-3_000_000L))));
    Player harp = player("Harp", "harp", List.of());
    Rules rules =
        new Rules(
            Assurance.DEFAULT,
            OverlapRule.DEFAULT,
            Rules.DEFAULT_READY_SECONDS,
            Favour.BALANCE,
            TABLES.weights());
    return new Plan(
        new Brief(line, List.of(flute, harp), rules),
        List.of(
            new Segment(0, 0, 0, 16),
            new Segment(1, 0, 16, 32),
            new Segment(0, 0, 32, line.count() - 1)));
  }

  private static Player player(String name, String instrument, List<GivenStretch> busy) {
    Instrument known = TABLES.catalogue().find(instrument).orElseThrow();
    List<Skill> skills =
        known.techniques().stream()
            .map(t -> new Skill(t, t.limit().at(Assurance.DEFAULT)))
            .toList();
    return new Player(name, known, Optional.of("P2"), skills, busy);
  }
}

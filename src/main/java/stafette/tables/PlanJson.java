package stafette.tables;

import com.google.gson.JsonElement;
import com.google.gson.JsonNull;
import com.google.gson.JsonObject;
import com.google.gson.JsonPrimitive;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import stafette.check.Costing;
import stafette.check.Ear;
import stafette.check.Finding;
import stafette.check.HandoffEar;
import stafette.check.HandoffReasons;
import stafette.check.SegmentReport;
import stafette.check.Verdict;
import stafette.plan.Brief;
import stafette.plan.Handoff;
import stafette.plan.OverlapRule;
import stafette.plan.Plan;
import stafette.plan.Rules;
import stafette.plan.Seat;
import stafette.plan.Segment;
import stafette.plan.Weights;
import stafette.score.Line;
import stafette.score.Tremolo;

/**
 * Writes a plan with all it rests on, so that another program can verify constraints and cost
 * without this one, and {@link PlanFile} can open it again. The project's JSON Schema of plans
 * documents each member. The same report gives the same text, in every locale.
 */
public final class PlanJson {
  static final String FORMAT = "stafette-plan";
  static final int VERSION = 1;

  private PlanJson() {}

  public static String write(PlanReport report) {
    return Json.text(of(report));
  }

  static JsonObject of(PlanReport report) {
    JsonObject json = new JsonObject();
    json.addProperty("format", FORMAT);
    json.addProperty("version", VERSION);
    json.addProperty("program", report.program());
    JsonObject score = new JsonObject();
    score.addProperty("file", report.score().file());
    score.addProperty("sha256", report.score().sha256());
    if (report.score().tremolo() != Tremolo.AS_WRITTEN) {
      score.addProperty("tremolo", report.score().tremolo().name().toLowerCase(Locale.ROOT));
    }
    json.add("score", score);
    Line line = report.brief().line();
    json.add("line", LineJson.of(line));
    json.add("relays", Json.array(report.brief().lines(), each -> relay(report.brief(), each)));
    json.add("settings", settings(report.brief().rules()));
    json.add(
        "locks", Json.array(report.brief().rules().locks(), l -> LockJson.of(l, report.brief())));
    json.add(
        "players",
        Json.array(
            report.brief().players(),
            p ->
                PlayerJson.of(
                    p,
                    Optional.ofNullable(report.seats().get(p.name())),
                    report.freed().contains(p.name()),
                    line)));
    json.addProperty("result", report.result());
    json.add(
        "cost", Json.orNull(report.judged(), j -> new JsonPrimitive(j.verdict().cost().total())));
    json.add(
        "playersCost",
        Json.orNull(report.judged(), j -> new JsonPrimitive(j.verdict().cost().players())));
    json.add(
        "hocketsCost",
        Json.orNull(report.judged(), j -> new JsonPrimitive(j.verdict().cost().hockets())));
    json.add("bound", Json.orNull(report.bound(), JsonPrimitive::new));
    json.add("odds", Json.orNull(report.judged(), j -> Json.number(j.verdict().odds())));
    json.add(
        "oddsAtHeadroom",
        Json.orNull(report.judged(), j -> Json.number(j.verdict().oddsAtHeadroom())));
    json.add("searchSeconds", Json.number(report.searchSeconds()));
    json.add("segments", Json.array(segments(report), entry -> entry));
    json.add("handoffs", Json.array(handoffs(report), entry -> entry));
    json.add("ear", EarJson.basis());
    json.add("tempoWindow", Json.orNull(report.window(), PlanJson::window));
    json.add("findings", Json.array(findings(report), entry -> entry));
    json.add("remedies", Json.array(report.remedies(), PlanJson::remedy));
    return json;
  }

  /** A relay with its line, if that is another one than the first. */
  private static JsonElement relay(Brief brief, Line line) {
    JsonObject json = new JsonObject();
    boolean same = line.equals(brief.line());
    json.addProperty("same", same);
    json.add("line", same ? JsonNull.INSTANCE : LineJson.of(line));
    return json;
  }

  private static JsonObject settings(Rules rules) {
    JsonObject json = new JsonObject();
    json.add("assurance", Json.number(rules.assurance().percent()));
    json.add("overlap", overlap(rules.overlap()));
    json.add("ready", Json.number(rules.readySeconds()));
    json.addProperty("favour", rules.favour().name().toLowerCase(Locale.ROOT));
    json.addProperty("hocket", rules.hocket().name().toLowerCase(Locale.ROOT));
    json.add("weights", weights(rules.weights()));
    return json;
  }

  private static JsonObject overlap(OverlapRule rule) {
    JsonObject json = new JsonObject();
    json.addProperty("min", rule.min());
    if (rule.max().isPresent()) {
      json.addProperty("max", rule.max().getAsInt());
    } else {
      json.addProperty("max", "beat");
    }
    return json;
  }

  static JsonObject weights(Weights weights) {
    JsonObject json = new JsonObject();
    json.addProperty("handoff", weights.handoff());
    json.addProperty("coverMost", weights.coverMost());
    json.add("entry", Json.numbers(weights.entry()));
    json.add("landing", Json.numbers(weights.landing()));
    json.addProperty("overlap", weights.overlap());
    json.add("overlapTargets", sorted(weights.overlapTargets()));
    json.add("strain", Json.number(weights.strain()));
    json.add("knee", Json.number(weights.knee()));
    json.add("end", Json.number(weights.end()));
    json.add("decibel", Json.number(weights.decibel()));
    json.add("decibelFree", Json.number(weights.decibelFree()));
    json.addProperty("register", weights.register());
    json.addProperty("hocket", weights.hocket());
    json.addProperty("player", weights.player());
    json.add("blend", sorted(weights.blend()));
    json.addProperty("blendOther", weights.blendOther());
    return json;
  }

  private static JsonObject sorted(Map<String, Integer> points) {
    JsonObject json = new JsonObject();
    new TreeMap<>(points).forEach(json::addProperty);
    return json;
  }

  static List<JsonElement> segments(PlanReport report) {
    return report.judged().stream()
        .flatMap(
            judged ->
                IntStream.range(0, judged.plan().segments().size())
                    .mapToObj(i -> segment(judged.plan(), judged.verdict(), i)))
        .toList();
  }

  private static JsonElement segment(Plan plan, Verdict verdict, int index) {
    Segment segment = plan.segments().get(index);
    SegmentReport report = verdict.segments().get(index);
    JsonObject json = new JsonObject();
    json.addProperty("player", plan.player(segment).name());
    json.addProperty("technique", plan.skill(segment).technique().name());
    json.addProperty("relay", segment.relay());
    json.addProperty("pattern", segment.pattern().name().toLowerCase(Locale.ROOT));
    json.addProperty("first", segment.first());
    json.addProperty("last", segment.last());
    json.addProperty(
        "overlapTarget",
        plan.brief().rules().weights().overlapTarget(plan.player(segment).instrument()));
    json.add("from", Json.place(plan.line(segment).placeOf(segment.first()).at()));
    json.add("to", Json.place(plan.line(segment).placeOf(segment.last()).at()));
    json.addProperty("strokes", plan.played(segment).strokes());
    json.add("rate", Json.number(report.ratePerSecond()));
    json.add("use", Json.number(report.use()));
    json.add("tiredness", Json.number(report.tiredness()));
    json.add("breath", Json.number(report.breath()));
    json.add("strain", Json.number(report.strain()));
    json.add("cost", CostJson.of(verdict.cost().segments().get(index)));
    json.add("strainOf", CostJson.of(Costing.effort(plan.brief(), segment)));
    return json;
  }

  static List<JsonElement> handoffs(PlanReport report) {
    return report.judged().stream().flatMap(judged -> handoffs(judged, report.seats())).toList();
  }

  private static Stream<JsonElement> handoffs(PlanReport.Judged judged, Map<String, Seat> seats) {
    List<HandoffEar> ears = Ear.of(judged.plan(), seats);
    return IntStream.range(0, ears.size())
        .mapToObj(i -> handoff(judged.plan(), judged.verdict(), ears.get(i), i));
  }

  private static JsonElement handoff(Plan plan, Verdict verdict, HandoffEar ear, int index) {
    Handoff handoff = ear.handoff();
    JsonObject json = new JsonObject();
    json.addProperty("leaves", plan.names(handoff.leaves()));
    json.addProperty("enters", plan.names(handoff.enters()));
    json.addProperty("first", handoff.enters().first());
    json.addProperty("last", handoff.leaves().last());
    json.addProperty("relay", handoff.enters().relay());
    Json.addPlace(
        json, plan.brief().line(handoff.enters().relay()).placeOf(handoff.leaves().last()).at());
    json.add("cost", CostJson.of(verdict.cost().handoffs().get(index)));
    json.add("why", CostJson.of(HandoffReasons.of(plan.brief(), handoff)));
    json.add("ear", EarJson.of(ear));
    return json;
  }

  static JsonElement window(PlanReport.Window window) {
    JsonObject limitedBy = new JsonObject();
    limitedBy.add("slowest", Json.orNull(window.slowestLimit(), JsonPrimitive::new));
    limitedBy.addProperty("fastest", window.fastestLimit());
    JsonObject json = new JsonObject();
    json.add("slowest", Json.orNull(window.slowest(), JsonPrimitive::new));
    json.addProperty("fastest", window.fastest());
    json.add("limitedBy", limitedBy);
    return json;
  }

  private static List<JsonElement> findings(PlanReport report) {
    List<JsonElement> findings = new ArrayList<>();
    report
        .judged()
        .ifPresent(judged -> judged.verdict().findings().forEach(f -> findings.add(finding(f))));
    for (String remark : report.remarks()) {
      JsonObject json = new JsonObject();
      json.add("kind", JsonNull.INSTANCE);
      json.addProperty("message", remark);
      findings.add(json);
    }
    return findings;
  }

  private static JsonElement remedy(PlanReport.Remedy remedy) {
    JsonObject json = new JsonObject();
    json.addProperty("option", remedy.option());
    json.addProperty("sentence", remedy.sentence());
    json.addProperty("verified", true);
    return json;
  }

  private static JsonElement finding(Finding finding) {
    JsonObject json = new JsonObject();
    json.addProperty("kind", finding.kind().name().toLowerCase(Locale.ROOT));
    json.addProperty("part", finding.place().part());
    Json.addPlace(json, finding.place().at());
    json.addProperty("message", finding.message().toString());
    return json;
  }
}

package stafette.tables;

import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonPrimitive;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalInt;
import stafette.check.Traits;
import stafette.plan.Favour;
import stafette.words.Sentence;

/**
 * Writes a plan as {@link PlanJson} does, with its alternatives: of each its own weights and all
 * that can't be told from the rest of the document.
 */
public final class AlternativesJson {
  private AlternativesJson() {}

  /**
   * An alternative.
   *
   * @param report what was asked and what came of it, under its own weights
   * @param traits compared by the weights of the main plan
   * @param differs what is different from the main plan, in words
   */
  public record Alternative(PlanReport report, Traits traits, List<Sentence> differs) {
    public Alternative {
      differs = List.copyOf(differs);
    }
  }

  /**
   * What was searched and gives no alternative.
   *
   * @param favour what was favoured
   * @param why in words
   */
  public record Dropped(Favour favour, Sentence why) {}

  /**
   * The text of the document.
   *
   * @param main the main plan
   * @param alternatives numbered from 1
   * @param taken which of them is taken instead of the main plan, if one is
   */
  public static String write(
      PlanReport main, List<Alternative> alternatives, List<Dropped> dropped, OptionalInt taken) {
    JsonObject json = PlanJson.of(main);
    List<JsonElement> entries = new ArrayList<>();
    for (Alternative alternative : alternatives) {
      entries.add(alternative(entries.size() + 1, alternative));
    }
    json.add("alternatives", Json.array(entries, entry -> entry));
    json.add("noAlternatives", Json.array(dropped, AlternativesJson::dropped));
    taken.ifPresent(number -> json.addProperty("taken", number));
    return Json.text(json);
  }

  private static JsonElement alternative(int number, Alternative alternative) {
    PlanReport report = alternative.report();
    Traits traits = alternative.traits();
    JsonObject json = new JsonObject();
    json.addProperty("number", number);
    json.addProperty("favour", name(report.brief().rules().favour()));
    json.add("weights", PlanJson.weights(report.brief().rules().weights()));
    json.addProperty("result", report.result());
    json.add(
        "cost", Json.orNull(report.judged(), j -> new JsonPrimitive(j.verdict().cost().total())));
    json.add("bound", Json.orNull(report.bound(), JsonPrimitive::new));
    json.addProperty("costByPlan", traits.cost());
    json.add("odds", Json.number(traits.odds()));
    json.add("searchSeconds", Json.number(report.searchSeconds()));
    json.add(
        "players",
        Json.words(
            traits.turns().stream()
                .filter(turns -> turns.segments() > 0)
                .map(Traits.Turns::player)
                .toList()));
    json.add("highestStrain", Json.number(traits.highestStrain()));
    json.add("meanStrain", Json.number(traits.meanStrain()));
    json.add("tightest", tightest(traits));
    json.addProperty("blend", traits.blend());
    json.add(
        "differs", Json.words(alternative.differs().stream().map(Sentence::toString).toList()));
    json.add("segments", Json.array(PlanJson.segments(report), entry -> entry));
    json.add("handoffs", Json.array(PlanJson.handoffs(report), entry -> entry));
    json.add("tempoWindow", Json.orNull(report.window(), PlanJson::window));
    return json;
  }

  private static JsonElement tightest(Traits traits) {
    JsonObject json = new JsonObject();
    json.addProperty("player", traits.tightest().part());
    Json.addPlace(json, traits.tightest().at());
    return json;
  }

  private static JsonElement dropped(Dropped dropped) {
    JsonObject json = new JsonObject();
    json.addProperty("favour", name(dropped.favour()));
    json.addProperty("message", dropped.why().toString());
    return json;
  }

  private static String name(Favour favour) {
    return favour.name().toLowerCase(Locale.ROOT);
  }
}

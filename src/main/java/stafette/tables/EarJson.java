package stafette.tables;

import com.google.gson.JsonArray;
import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import java.util.List;
import stafette.check.Ear;
import stafette.check.HandoffEar;
import stafette.check.OnsetSpread;
import stafette.plan.Seat;

/** Seats, and what handoffs may do to the ear; times in seconds as everywhere in our JSON. */
final class EarJson {
  static final String SEAT = "seat";

  private EarJson() {}

  /** What all estimates have in common. */
  static JsonObject basis() {
    JsonObject json = new JsonObject();
    json.addProperty("note", "an estimate; no cost and no finding rests on it");
    json.add("sources", Json.words(Ear.SOURCES));
    return json;
  }

  static JsonElement of(HandoffEar ear) {
    JsonObject json = new JsonObject();
    json.add("then", Json.number(ear.thenDecibel()));
    json.add("together", Json.orNull(ear.together(), EarJson::together));
    json.add("distance", Json.orNull(ear.distance(), EarJson::distance));
    return json;
  }

  private static JsonElement together(HandoffEar.Together together) {
    JsonObject json = new JsonObject();
    json.add("aboveLeaving", Json.number(together.aboveLeavingDecibel()));
    json.add("aboveLouder", Json.number(together.aboveLouderDecibel()));
    json.add("onsetsApart", spread(together.spread()));
    json.add("noticeable", seconds(together.noticeableMillis()));
    return json;
  }

  private static JsonElement spread(OnsetSpread spread) {
    JsonArray range = new JsonArray();
    range.add(seconds(spread.leastMillis()));
    range.add(seconds(spread.mostMillis()));
    return range;
  }

  private static JsonElement distance(HandoffEar.Distance distance) {
    JsonObject json = new JsonObject();
    json.add("metres", Json.number(distance.metres()));
    json.add("delay", seconds(distance.delayMillis()));
    return json;
  }

  private static JsonElement seconds(double millis) {
    return Json.number(millis / 1000);
  }

  static JsonElement seat(Seat seat) {
    JsonObject json = new JsonObject();
    json.add("across", Json.number(seat.acrossMetres()));
    json.add("back", Json.number(seat.backMetres()));
    return json;
  }

  static Seat seat(Entry seat) {
    seat.refuseOthers(List.of("across", "back"));
    return new Seat(
        seat.demanded("across", seat.number("across")), seat.demanded("back", seat.number("back")));
  }
}

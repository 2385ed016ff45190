package stafette.tables;

import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import stafette.check.Effort;
import stafette.check.HandoffCost;
import stafette.check.HandoffReasons;
import stafette.check.SegmentCost;

/** The parts of a plan's cost, and why they are as they are. */
final class CostJson {
  private CostJson() {}

  static JsonElement of(SegmentCost cost) {
    JsonObject parts = new JsonObject();
    parts.addProperty("strain", cost.strain());
    parts.addProperty("register", cost.register());
    return parts;
  }

  static JsonElement of(Effort effort) {
    JsonObject parts = new JsonObject();
    parts.add("fast", Json.number(effort.fastPoints()));
    parts.add("tired", Json.number(effort.tiredPoints()));
    return parts;
  }

  static JsonElement of(HandoffCost cost) {
    JsonObject parts = new JsonObject();
    parts.addProperty("handoff", cost.handoff());
    parts.addProperty("entry", cost.entry());
    parts.addProperty("landing", cost.landing());
    parts.addProperty("overlap", cost.overlap());
    parts.addProperty("blend", cost.blend());
    return parts;
  }

  static JsonElement of(HandoffReasons why) {
    JsonObject words = new JsonObject();
    words.addProperty("handoff", why.handoff().toString());
    words.addProperty("entry", why.entry().toString());
    words.addProperty("landing", why.landing().toString());
    words.addProperty("overlap", why.overlap().toString());
    words.addProperty("blend", why.blend().toString());
    return words;
  }
}

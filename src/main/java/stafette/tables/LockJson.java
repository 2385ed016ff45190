package stafette.tables;

import com.google.gson.JsonObject;
import java.util.OptionalInt;
import stafette.plan.Brief;
import stafette.plan.Lock;

/** Writes what was locked. */
final class LockJson {
  private LockJson() {}

  static JsonObject of(Lock lock, Brief brief) {
    JsonObject json = new JsonObject();
    json.addProperty("keep", kind(lock));
    json.addProperty("relay", lock.relay());
    json.addProperty("first", lock.first());
    json.addProperty("last", lock.last());
    Lock.player(lock)
        .ifPresent(player -> json.addProperty("player", brief.players().get(player).name()));
    return lock.match(
        at -> json, exactly -> withTechnique(exactly, brief, json), in -> json, out -> json);
  }

  private static JsonObject withTechnique(Lock.Exactly exactly, Brief brief, JsonObject json) {
    OptionalInt skill = exactly.skill();
    if (skill.isPresent()) {
      json.addProperty(
          "technique",
          brief.players().get(exactly.player()).skills().get(skill.getAsInt()).technique().name());
    }
    return json;
  }

  static String kind(Lock lock) {
    return lock.match(at -> "handoff", exactly -> "segment", in -> "in", out -> "out");
  }
}

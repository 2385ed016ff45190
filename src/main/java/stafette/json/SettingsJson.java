package stafette.json;

import com.google.gson.JsonElement;
import com.google.gson.JsonPrimitive;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import stafette.json.Means.Above;
import stafette.json.Means.Below;
import stafette.json.Means.Least;
import stafette.json.Means.Most;
import stafette.limits.Assurance;
import stafette.plan.Favour;
import stafette.plan.Hocket;
import stafette.plan.Margin;
import stafette.plan.OverlapRule;
import stafette.plan.Rules;
import stafette.words.Sentence;

/** The rules of a plan but for its locks. */
@Means("The rules of the plan.")
record SettingsJson(
    @Means("Share of professional players who should manage each part, in per cent.")
        @Above(0)
        @Below(100)
        double assurance,
    @Means("Strokes that two players share at a handoff.") OverlapJson overlap,
    @Means(
            "Least rest in seconds from the end of a player's last sound to its next entry; for winds never less than their catch.")
        @Least(0)
        double ready,
    @Means(
            "What is favoured; weights already show it. regular: only rotations in a fixed order, of a beat, half a bar, one, two or four bars each; under the weights of balance.")
        Favour favour,
    @Means(
            "Per cent that the tempo may drift either way: gaps, rests and silences hold by so much shorter, sounds by so much longer; 0 where no such plan was found.")
        @Least(0)
        @Most(25)
        double margin,
    @Means("In what turns a pair of players may share a stretch.") Hocket hocket,
    @Means("What things cost, in points; changed already by what is favoured.")
        WeightsJson weights) {
  static SettingsJson of(Rules rules) {
    return new SettingsJson(
        rules.assurance().percent(),
        new OverlapJson(rules.overlap().min(), new CountOrBeat(rules.overlap().max())),
        rules.readySeconds(),
        rules.favour(),
        rules.margin().percent(),
        rules.hocket(),
        WeightsJson.of(rules.weights()));
  }

  Rules rules() {
    return new Rules(
        new Assurance(assurance),
        new OverlapRule(overlap.min, overlap.max.count),
        ready,
        favour,
        weights.weights(),
        hocket,
        List.of(),
        new Margin(margin));
  }

  void check(Spot spot) {
    if (overlap.max.isBelow(overlap.min)) {
      spot.in("overlap").refuse("max", CountOrBeat.WANTED, overlap.max.written());
    }
  }

  /** How much two players share. */
  @Means("Strokes that two players share at a handoff.")
  record OverlapJson(
      @Means("At least so many.") @Least(1) int min,
      @Means(
              "At most so many; or \"beat\": the time from the first to the last shared onset is at most beatSeconds of the landing note.")
          @Least(1)
          CountOrBeat max) {}

  /** So many strokes, or as many as a beat has. */
  record CountOrBeat(OptionalInt count) {
    private static final JsonPrimitive BEAT = new JsonPrimitive("beat");
    private static final Sentence WANTED = Sentence.of("beat or a number not below min");

    static Form<CountOrBeat> form() {
      return new Form<>(CountOrBeat::written, CountOrBeat::read, WANTED, BEAT);
    }

    private JsonElement written() {
      return count.isPresent() ? new JsonPrimitive(count.getAsInt()) : BEAT;
    }

    private static Optional<CountOrBeat> read(JsonElement found) {
      if (found.equals(BEAT)) {
        return Optional.of(new CountOrBeat(OptionalInt.empty()));
      }
      return Wanted.isWhole(found, 1)
          ? Optional.of(new CountOrBeat(OptionalInt.of(found.getAsInt())))
          : Optional.empty();
    }

    boolean isBelow(int min) {
      return count.isPresent() && count.getAsInt() < min;
    }
  }
}

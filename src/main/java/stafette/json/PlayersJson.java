package stafette.json;

import com.google.gson.annotations.SerializedName;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import stafette.json.Means.Above;
import stafette.json.Means.Least;
import stafette.json.Means.Like;
import stafette.json.Means.Missing;
import stafette.json.Means.Most;
import stafette.json.Means.Told;
import stafette.limits.Breath;
import stafette.limits.Catalogue;
import stafette.limits.Grade;
import stafette.limits.Instrument;
import stafette.limits.Limit;
import stafette.limits.OwnTechniques;
import stafette.limits.Saying;
import stafette.limits.Source;
import stafette.limits.Technique;
import stafette.words.Refusal;
import stafette.words.Sentence;

/** Players whose limits were measured, as a user writes them down. */
@Edition(format = "stafette-players", version = 1, byHand = true)
@Means(
    "Players whose limits were measured, or said in words. What is not given is taken from the tables; rates in proportion to the peak.")
record PlayersJson(
    @Means("For people.") @Missing @Told Optional<String> comment,
    @Means("Players.") List<MeasuredPlayerJson> players) {

  /** A player. */
  @Means("One player.")
  record MeasuredPlayerJson(
      @Means("As in the score or on the command line; case and accents do not matter.") @Like(".")
          String name,
      @Means("As in the tables of limits; if left out, taken from the name.") @Missing
          Optional<String> instrument,
      @Means("For people.") @Missing @Told Optional<String> comment,
      @Means("Only those that were measured.") List<MeasuredTechniqueJson> techniques,
      @Means("Loudness in decibels, to compare players.") @Missing Optional<Double> level,
      @Means("For winds.") @Missing Optional<MeasuredBreathJson> breath,
      @Means("Where the player sits.") @Missing Optional<PlayerJson.SeatJson> seat) {
    /** What the player plays, with its own figures. */
    Optional<Instrument> instrument(Catalogue catalogue, Spot spot) {
      Optional<Instrument> base = catalogue.find(instrument.orElse(name));
      if (base.isEmpty()) {
        Sentence unknown = catalogue.unknown(instrument.orElse(name));
        spot.tell(
            instrument.isPresent()
                ? unknown
                : Sentence.of("{0}, or name one with \"instrument\"", unknown));
      }
      return base.map(known -> measured(known, spot));
    }

    private Instrument measured(Instrument base, Spot spot) {
      List<Technique> all = new ArrayList<>(base.techniques());
      List<Technique> said = new ArrayList<>();
      Set<Technique> seen = new HashSet<>();
      for (int i = 0; i < techniques.size(); i++) {
        Spot at = spot.in("techniques", i);
        MeasuredTechniqueJson own = techniques.get(i);
        Optional<Technique> known = own.among(base, at);
        if (!known.stream().allMatch(seen::add)) {
          at.tell(Sentence.of("'{0}' is there twice; keep one of them", known.get()));
        }
        known
            .filter(one -> own.isWhole(one, at))
            .ifPresent(
                one ->
                    own.said(one, at)
                        .ifPresentOrElse(
                            said::add,
                            () -> all.set(base.techniques().indexOf(one), own.measured(one, at))));
      }
      if (breath.isPresent() && base.breath().isEmpty()) {
        spot.tell(Sentence.of("breath means nothing to {0}; take it out", base));
      }
      Instrument measured =
          base.with(
              level.orElse(base.levelDecibel()),
              base.breath().map(of -> breath.map(own -> own.beside(of)).orElse(of)),
              all);
      return OwnTechniques.in(measured, said);
    }
  }

  /** A technique with a player's own figures. */
  @Means("A technique that this player is known to have.")
  record MeasuredTechniqueJson(
      @Means("As in the tables of limits, with or without accents.") String name,
      @Means("Highest clean rate for a moment, strokes a second. Either this or says.")
          @Above(0)
          @Most(1e6)
          @Missing
          Optional<Double> peak,
      @Means(
              "What the player just manages, in words: notes, tempo and how long, such as"
                  + " \"sixteenths at 132 for 4 bars\"; several with a semicolon between. Stands for"
                  + " peak, sustained and stamina; what else the same tongue, bow or hand does moves"
                  + " with it.")
          @Like(".")
          @Missing
          Optional<String> says,
      @Means("The rate that can go on, strokes a second, not above the peak.") @Least(0) @Missing
          Optional<Double> sustained,
      @Means("Strokes beyond sustained from fresh to spent.") @Above(0) @Missing
          Optional<Double> stamina,
      @Means("Rest from spent to fresh, seconds.") @Above(0) @Missing Optional<Double> recovery,
      @Means("Highest rate of changing notes, notes a second.") @Above(0) @Missing
          Optional<Double> moving,
      @Means("For people.") @Missing @Told Optional<String> comment) {
    Optional<Technique> among(Instrument instrument, Spot spot) {
      Optional<Technique> known = Catalogue.technique(instrument, name);
      if (known.isEmpty()) {
        spot.tell(
            Sentence.of(
                "{0} has no '{1}'; use one of {2}",
                instrument, name, Sentence.list(instrument.techniques())));
      }
      return known;
    }

    /** Whether there is a figure or a saying, and not both; tells it otherwise. */
    boolean isWhole(Technique base, Spot spot) {
      boolean either = peak.isPresent() != says.isPresent();
      if (!either) {
        spot.tell(
            Sentence.of(
                "{0} needs either \"peak\", a figure, or \"says\", such as \"sixteenths at 132 for 4"
                    + " bars\"",
                base));
      }
      if (says.isPresent() && base.isSlurred()) {
        spot.tell(
            Sentence.of(
                "{0}: \"says\" is about strokes of tongue or bow, and these notes are made by the"
                    + " fingers; give \"peak\" and \"moving\"",
                base));
      }
      if (either && says.isPresent() && (sustained.isPresent() || stamina.isPresent())) {
        spot.tell(Sentence.of("\"says\" stands for sustained and stamina; take those out"));
      }
      return either;
    }

    /** The technique as it is said, if it is. */
    Optional<Technique> said(Technique base, Spot spot) {
      return says.map(
          text -> {
            try {
              return own(base, Saying.parse(text).on(base), spot);
            } catch (Refusal e) {
              spot.in("says").tell(e.inWords());
              return base;
            }
          });
    }

    /**
     * The technique without spread. What was not measured is taken from the population, rates in
     * proportion to the peak.
     */
    Technique measured(Technique base, Spot spot) {
      double most = peak.orElseThrow();
      if (sustained.orElse(0.0) > most) {
        spot.tell(Sentence.of("sustained is above peak; correct one of them"));
      }
      Limit inProportion = base.limit().times(most / base.limit().peakPerSecond());
      Limit limit =
          new Limit(
              most,
              0,
              sustained.orElse(inProportion.sustainedPerSecond()),
              stamina.map(OptionalDouble::of).orElse(base.limit().staminaStrokes()),
              base.limit().recoverySeconds(),
              inProportion.movingPerSecond());
      return own(base, limit, spot);
    }

    private Technique own(Technique base, Limit limit, Spot spot) {
      return base.with(
          completed(limit), true, new Source("the player's own figure, from " + spot, Grade.D));
    }

    /** With what was measured beside rates and stamina. */
    private Limit completed(Limit own) {
      return new Limit(
          own.peakPerSecond(),
          own.deviationPerSecond(),
          own.sustainedPerSecond(),
          own.staminaStrokes(),
          recovery.orElse(own.recoverySeconds()),
          moving.map(OptionalDouble::of).orElse(own.movingPerSecond()));
    }
  }

  /** How a player breathes. */
  @Means("How a wind player breathes.")
  record MeasuredBreathJson(
      @Means("How long a planned breath lasts, seconds.") @Above(0) @Missing
          Optional<Double> capacity,
      @SerializedName("catch")
          @Means("Shortest silence in which air can be taken, seconds.")
          @Above(0)
          @Missing
          Optional<Double> least,
      @Means("Silence that fills an empty player, seconds.") @Above(0) @Missing
          Optional<Double> full) {
    Breath beside(Breath base) {
      return new Breath(
          capacity.orElse(base.capacitySeconds()),
          least.orElse(base.catchSeconds()),
          full.orElse(base.fullSeconds()),
          capacity.isPresent() ? 0 : base.spread(),
          base.use());
    }
  }
}

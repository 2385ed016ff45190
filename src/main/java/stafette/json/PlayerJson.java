package stafette.json;

import com.google.gson.JsonArray;
import com.google.gson.JsonElement;
import com.google.gson.annotations.SerializedName;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import stafette.check.PartTrial;
import stafette.json.Means.Above;
import stafette.json.Means.Items;
import stafette.json.Means.Least;
import stafette.json.Means.Missing;
import stafette.json.Means.Only;
import stafette.json.Means.Told;
import stafette.limits.Assurance;
import stafette.limits.Breath;
import stafette.limits.Capability;
import stafette.limits.Catalogue;
import stafette.limits.Condition;
import stafette.limits.Demand;
import stafette.limits.Instrument;
import stafette.limits.Range;
import stafette.limits.Skill;
import stafette.plan.Brief;
import stafette.plan.GivenStretch;
import stafette.plan.Player;
import stafette.plan.Seat;
import stafette.score.Line;
import stafette.words.Sentence;

/** A player, with every figure on which a plan rests. */
@Means("A chair or desk, with every figure the plan rests on.")
record PlayerJson(
    @Means("As in the score or as given.") String name,
    @Means("As in the tables of limits.") String instrument,
    @Means("For blend.")
        @Only({"woodwind", "brass", "strings", "harp", "keyboard", "percussion"})
        @Told
        String family,
    @Means("The id of the player's part; null for one that is new to the score.")
        Optional<String> part,
    @Means(
            "The player's place among those who share that part, counted from 1 from above; missing if it has the part alone, or none.")
        @Least(1)
        @Missing
        Optional<Integer> chair,
    @Means("Whether the player leaves out for the line what the score gives it; missing if not.")
        @Missing
        Optional<Boolean> freed,
    @Means(
            "Whether the user named the player; else the program proposed it. Of an earlier release all are named.")
        boolean named,
    @Means(
            "Whether the player could play some bar of a line, first stroke to last, the player's own passages left aside.")
        @Told
        boolean able,
    @Means("What the score already gives the player, in order: stretches without silence.")
        List<BusyJson> busy,
    @Means("What the player can choose from, the first preferred.") List<TechniqueJson> techniques,
    @Means(
            "By way of playing, plain or twins, and in hockets odd and even: what each stroke of the first line asks.")
        @Told
        Map<String, WayFiguresJson> ways,
    @Means("Least rest before an entry, seconds.") @Least(0) @Told double ready,
    @Means("The longest of the techniques' recoveries, seconds; each technique's own decides.")
        @Told
        double recovery,
    @Means("Lowest and highest sounding MIDI number; null without pitch.")
        @Items(least = 2, most = 2)
        @Told
        Optional<List<Integer>> range,
    @Means("The comfortable part of the range.") @Items(least = 2, most = 2)
        Optional<List<Integer>> comfortable,
    @Means("Loudness in decibels, to compare players.") double level,
    @Means("How a wind player breathes; null for others.") Optional<BreathJson> breath,
    @Means("Where the player sits; null if that is not known.") Optional<SeatJson> seat) {
  static PlayerJson of(Player player, Brief brief, Map<String, Seat> seats, Set<String> freed) {
    Instrument instrument = player.instrument();
    Line line = brief.line();
    return new PlayerJson(
        player.name(),
        instrument.name(),
        instrument.family(),
        player.part(),
        player.chair().stream().boxed().findFirst(),
        Optional.of(true).filter(free -> freed.contains(player.name())),
        player.isNamed(),
        PartTrial.isAble(brief, brief.players().indexOf(player)),
        player.busy().stream().map(busy -> BusyJson.of(busy, player)).toList(),
        player.skills().stream().map(skill -> TechniqueJson.of(player, skill, line)).toList(),
        WayFiguresJson.of(player, brief),
        LineJson.ofMicros(brief.rules().readyMicros(player)),
        player.skills().stream()
            .mapToDouble(skill -> skill.capability().recoverySeconds())
            .max()
            .orElse(0),
        instrument.range().map(PlayerJson::ends),
        instrument.comfortable().map(PlayerJson::ends),
        instrument.levelDecibel(),
        instrument.breath().map(breath -> BreathJson.of(breath, instrument, line)),
        Optional.ofNullable(seats.get(player.name())).map(SeatJson::of));
  }

  private static List<Integer> ends(Range range) {
    return List.of(range.low(), range.high());
  }

  /** Which of the players has this name. */
  static OptionalInt called(String name, List<Player> players) {
    return IntStream.range(0, players.size())
        .filter(i -> players.get(i).name().equals(name))
        .findFirst();
  }

  boolean isFreed() {
    return freed.orElse(false);
  }

  /** The player among these instruments, with the file's own figures. */
  Optional<Player> player(Catalogue catalogue, Assurance assurance, Spot spot) {
    Optional<Instrument> base = catalogue.find(instrument).map(known -> known.breathing(assurance));
    if (base.isEmpty()) {
      spot.tell(catalogue.unknown(instrument));
    }
    return base.map(
        known ->
            new Player(
                name,
                seated(known.with(level, breath.map(own -> own.breath(known)), known.techniques())),
                part,
                chair.map(OptionalInt::of).orElse(OptionalInt.empty()),
                techniques.stream().flatMap(own -> own.skill(known, spot).stream()).toList(),
                busy.stream().map(BusyJson::busy).toList(),
                named));
  }

  /** With where the player is at home, which depends on the chair. */
  private Instrument seated(Instrument known) {
    return comfortable
        .filter(ends -> known.comfortable().isPresent() && ends.get(0) <= ends.get(1))
        .map(ends -> known.comfortableIn(new Range(ends.get(0), ends.get(1))))
        .orElse(known);
  }

  /** What the score gives. */
  @Means("A stretch without silence.")
  record BusyJson(
      @Means("Onset of its first stroke, seconds from the line's first stroke; may be negative.")
          double from,
      @Means("End of its last sound, seconds.") double to,
      @Means("Onsets of its strokes, seconds; slurred ones left out.") List<Double> strokes,
      @Means(
              "Least rest after it before the player may play the line, seconds, where the line is played in another manner; missing if none.")
          @Least(0)
          @Missing
          Optional<Double> readyAfter,
      @Means("The rate that can go on there, strokes a second; 0 without a technique.")
          @Least(0)
          @Told
          double sustained,
      @Means("Strokes beyond sustained from fresh to spent; 0 without a technique.") @Least(0) @Told
          double stamina,
      @Means("Rest from spent to fresh, seconds; 0 without a technique.") @Least(0) @Told
          double recovery) {
    static BusyJson of(GivenStretch busy, Player player) {
      Optional<Capability> able = player.leastTiringSkill().map(Skill::capability);
      return new BusyJson(
          LineJson.ofMicros(busy.fromMicros()),
          LineJson.ofMicros(busy.toMicros()),
          busy.strokeMicros().stream().map(LineJson::ofMicros).toList(),
          Optional.of(busy.changeMicros()).filter(most -> most > 0).map(LineJson::ofMicros),
          able.map(Capability::sustainedPerSecond).orElse(0.0),
          able.map(Capability::staminaStrokes).orElse(0.0),
          able.map(Capability::recoverySeconds).orElse(0.0));
    }

    GivenStretch busy() {
      return new GivenStretch(
          micros(from),
          micros(to),
          strokes.stream().map(BusyJson::micros).toList(),
          readyAfter.map(BusyJson::micros).orElse(0L));
    }

    private static long micros(double seconds) {
      return Math.round(seconds * 1e6);
    }
  }

  /** How a player breathes. */
  @Means("How a wind player breathes.")
  record BreathJson(
      @Means("How long the planned share of a full breath lasts, seconds.") @Above(0)
          double capacity,
      @SerializedName("catch")
          @Means("Shortest silence in which air can be taken, seconds.")
          @Above(0)
          double least,
      @Means("Silence that fills an empty player, seconds.") @Above(0) double full,
      @Means("What multiplies the use of air: one number for each stroke, or a single one for all.")
          @Above(0)
          @Told
          OneOrEach use) {
    static BreathJson of(Breath breath, Instrument instrument, Line line) {
      return new BreathJson(
          breath.capacitySeconds(),
          breath.catchSeconds(),
          breath.fullSeconds(),
          new OneOrEach(oneOrEach(line, j -> use(breath.use(), instrument, line, j))));
    }

    private static double use(
        Map<Condition, Double> factors, Instrument instrument, Line line, int j) {
      return Demand.conditionsAt(instrument, line, j).stream()
          .sorted()
          .mapToDouble(condition -> factors.getOrDefault(condition, 1.0))
          .reduce(1, (a, b) -> a * b);
    }

    Breath breath(Instrument base) {
      double spread =
          base.breath()
              .filter(known -> known.capacitySeconds() == capacity)
              .map(Breath::spread)
              .orElse(0.0);
      return new Breath(
          capacity, least, full, spread, base.breath().map(Breath::use).orElse(Map.of()));
    }
  }

  /** A figure for each stroke, or a single one if they are all the same. */
  static List<Double> oneOrEach(Line line, IntToDoubleFunction figure) {
    List<Double> each = IntStream.range(0, line.count()).mapToDouble(figure).boxed().toList();
    return each.stream().distinct().count() == 1 ? each.subList(0, 1) : each;
  }

  /** Figures that are written without a list if there is one alone. */
  record OneOrEach(List<Double> figures) {
    static Form<OneOrEach> form() {
      return new Form<>(
          OneOrEach::written,
          found -> Optional.of(new OneOrEach(List.of())),
          Sentence.NONE,
          new JsonArray());
    }

    private JsonElement written() {
      JsonArray each = new JsonArray();
      figures.forEach(figure -> each.add(Adapters.number(figure)));
      return figures.size() == 1 ? each.get(0) : each;
    }
  }

  /** Where a player sits. */
  @Means("Where a player sits, in metres.")
  record SeatJson(
      @Means("From the middle of the stage; to the left, as the hall sees it, below 0.")
          double across,
      @Means("Back from the front of the stage.") double back) {
    static SeatJson of(Seat seat) {
      return new SeatJson(seat.acrossMetres(), seat.backMetres());
    }

    Seat seat() {
      return new Seat(across, back);
    }
  }
}

package stafette.json;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import stafette.check.alone.Ease;
import stafette.check.alone.LineVerdict;
import stafette.check.alone.Thinning;
import stafette.json.Means.Above;
import stafette.json.Means.Items;
import stafette.json.Means.Least;
import stafette.limits.Demand;
import stafette.limits.Grade;
import stafette.score.Line;
import stafette.time.Movement;
import stafette.time.TempoMark;

/** What became of the fast passages of a score. */
@Edition(format = "stafette-check", version = 1)
@Means("Fast passages of a score against the limits of instruments.")
public record CheckJson(@Means("Passages.") List<PassageJson> passages) {
  /** The text of the document. */
  public String text() {
    return Documents.text(this);
  }

  /** A passage. */
  @Means("One passage.")
  public record PassageJson(
      @Means("The part's id.") String part,
      @Means("The part's name.") String name,
      @Means("Counted from 1.") @Least(1) int staff,
      @Means("The voice's name.") String voice,
      @Means("First and last bar as printed.") @Items(least = 2, most = 2) List<String> bars,
      @Means("First and last bar counted from 1 through the whole score.")
          @Items(least = 2, most = 2)
          @Least(1)
          List<Integer> counted,
      @Means(
              "The movement in which it begins, by its title or as \"movement 2\"; null if the bars of the score are numbered only once.")
          Optional<String> movement,
      @Means("Where the first stroke stands.") PlaceJson from,
      @Means("Where the last stroke stands.") PlaceJson to,
      @Means("How many strokes.") @Least(1) int strokes,
      @Means("From the first onset to the end of the last sound.") @Least(0) double seconds,
      @Means("Strokes a second.") RateJson rate,
      @Means("Metronome mark at the first stroke.") String tempo,
      @Means(
              "What to give the program to have the passage split among players who are proposed, quoted for a shell; null if the part can't be told from another.")
          Optional<String> command,
      @Means("One for each technique that applies.") List<JudgedJson> judged,
      @Means("The best that each instrument can do.") List<BestJson> instruments) {
    /**
     * A passage.
     *
     * @param judged one for each technique that applies, of one instrument or several
     * @param command that splits it, if there is one
     */
    public static PassageJson of(Line line, List<LineVerdict> judged, Optional<String> command) {
      int last = line.count() - 1;
      return new PassageJson(
          line.source().part(),
          line.source().partName(),
          line.source().staff(),
          line.source().voice(),
          LineJson.bars(line),
          LineJson.barsCounted(line),
          line.bars().movementOf(line.bars().get(line.source().firstBar())).map(Movement::toString),
          PlaceJson.of(line, 0),
          PlaceJson.of(line, last),
          line.count(),
          LineJson.ofMicros(line.endMicros(last)),
          RateJson.of(line),
          line.tempo().at(line.stroke(0).onset()).toString(),
          command,
          judged.stream().map(JudgedJson::of).toList(),
          BestJson.ofEach(judged));
    }
  }

  /** How fast a passage is. */
  @Means("Strokes a second.")
  record RateJson(
      @Means("From one stroke to the next.") @Least(0) double highest,
      @Means("The median, rests of a beat or more left out.") @Least(0) double usual) {
    static RateJson of(Line line) {
      double highest =
          IntStream.range(1, line.count())
              .mapToLong(j -> line.onsetMicros(j) - line.onsetMicros(j - 1))
              .mapToDouble(gap -> 1e6 / Math.max(1, gap))
              .max()
              .orElse(0);
      return new RateJson(highest, Demand.usualRatePerSecond(line));
    }
  }

  /** A passage with one technique. */
  @Means("The passage with one technique, in the hands of one fresh player.")
  record JudgedJson(
      @Means("As in the tables of limits.") String instrument,
      @Means("As in the tables of limits.") String technique,
      @Means("Highest rate that is planned with, strokes a second.") @Above(0) double peak,
      @Means("Largest share of a peak or moving limit; 1 is the whole.") @Least(0) double use,
      @Means("Highest tiredness, 1 for spent.") @Least(0) double tiredness,
      @Means("Largest share of the air spent.") @Least(0) double breath,
      @Means("How long the player can play on from the first onset; null if it can go on.")
          @Least(0)
          Optional<Double> lastsSeconds,
      @Means(
              "By the largest of use, tiredness and breath: up to 70, 90, 100 per cent, or beyond; or out of range.")
          Ease verdict,
      @Means("Fastest metronome mark at the start at which it goes; null if no tempo will do.")
          Optional<String> fastestTempo,
      @Means("The fullest pattern that can be played.") Thinning thinning,
      @Means("Where the peak comes from.") String source,
      @Means(
              "How far to trust the figure: A measured and published, B stated by an expert and seen, C secondary or from memory, D no source.")
          Grade grade) {
    static JudgedJson of(LineVerdict judged) {
      OptionalDouble lasts = judged.lastsSeconds();
      return new JudgedJson(
          judged.instrument().name(),
          judged.technique().name(),
          judged.capability().peakPerSecond(),
          judged.use(),
          judged.tiredness(),
          judged.breath(),
          lasts.isPresent() ? Optional.of(lasts.getAsDouble()) : Optional.empty(),
          judged.ease(),
          judged.fastestTempo().map(TempoMark::toString),
          judged.thinning(),
          judged.technique().source().text(),
          judged.technique().source().grade());
    }
  }

  /** The best that an instrument can do. */
  @Means("An instrument.")
  record BestJson(
      @Means("As in the tables of limits.") String instrument,
      @Means("Of its best technique.") Ease verdict,
      @Means("Its best technique.") String technique) {
    private static final Comparator<LineVerdict> EASIEST =
        Comparator.comparing(LineVerdict::ease).thenComparing(LineVerdict::strain);

    /** In the order in which they were judged. */
    static List<BestJson> ofEach(List<LineVerdict> judged) {
      Map<String, LineVerdict> best = new LinkedHashMap<>();
      judged.forEach(
          row ->
              best.merge(
                  row.instrument().name(), row, (a, b) -> EASIEST.compare(b, a) < 0 ? b : a));
      return best.values().stream()
          .map(row -> new BestJson(row.instrument().name(), row.ease(), row.technique().name()))
          .toList();
    }
  }
}

package stafette.json;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import stafette.check.alone.Ease;
import stafette.check.alone.Limiting;
import stafette.check.alone.LineVerdict;
import stafette.check.alone.Thinning;
import stafette.json.Means.Items;
import stafette.json.Means.Least;
import stafette.limits.Demand;
import stafette.limits.Grade;
import stafette.limits.Singers;
import stafette.limits.Stroking;
import stafette.score.Line;
import stafette.score.Part;
import stafette.score.TremoloRun;
import stafette.time.Bars;
import stafette.time.Movement;
import stafette.time.TempoMark;
import stafette.words.Sentence;

/** What became of the fast passages of a score. */
@Edition(format = "stafette-check", version = 2)
@Means("Fast passages of a score against the limits of instruments.")
public record CheckJson(
    @Means("Passages, worst first.") List<PassageJson> passages,
    @Means(
            "Tremolo that is not measured, and so not judged: an entry for each run of it in a voice.")
        List<TremoloJson> unmeasured,
    @Means("Tremolo that is read as measured, though such slashes mostly are not.")
        List<TremoloJson> doubtful,
    @Means(
            "Parts with fast passages that are not judged, as they sing or their instrument is unknown: each once.")
        List<NotJudgedJson> notJudged,
    @Means("What may be wrong with the tempi of the score, in sentences.")
        List<String> suspicions) {
  /**
   * A document.
   *
   * @param tremolos those that are not measured, or in doubt
   * @param notJudged parts that sing, or whose instrument is unknown
   */
  public static CheckJson of(
      List<PassageJson> passages,
      List<TremoloRun> tremolos,
      List<Part> notJudged,
      Bars bars,
      List<Sentence> suspicions) {
    return new CheckJson(
        passages,
        tremolos(tremolos, run -> !run.reading().counts(), bars),
        tremolos(tremolos, run -> run.reading().counts(), bars),
        notJudged.stream().map(NotJudgedJson::of).toList(),
        suspicions.stream().map(Sentence::toString).toList());
  }

  private static List<TremoloJson> tremolos(
      List<TremoloRun> tremolos, Predicate<TremoloRun> which, Bars bars) {
    return tremolos.stream().filter(which).map(run -> TremoloJson.of(run, bars)).toList();
  }

  /** The text of the document. */
  public String text() {
    return Documents.text(this);
  }

  /** A passage. */
  @Means("One passage.")
  public record PassageJson(
      @Means("The part's id.") String part,
      @Means("The part's name.") String name,
      @Means("Staff, counted from 1; \"1+2\" where hands share the line.") String staff,
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
      @Means("At the first stroke.") PassageTempoJson tempo,
      @Means(
              "What to give the program to have the passage split among players who are proposed, quoted for a shell; null if the part can't be told from another.")
          Optional<String> command,
      @Means("One for each instrument asked for, or the part's own; none if that is unknown.")
          List<JudgedJson> judged) {
    /**
     * A passage.
     *
     * @param judged one for each instrument
     * @param tempoStated whether the score states a tempo
     * @param command that splits it, if there is one
     */
    public static PassageJson of(
        Line line, List<LineVerdict> judged, boolean tempoStated, Optional<String> command) {
      int last = line.count() - 1;
      return new PassageJson(
          line.source().part(),
          line.source().partName(),
          line.source().strands().staffText(),
          line.source().strands().voiceText(),
          LineJson.bars(line),
          LineJson.barsCounted(line),
          line.bars().movementOf(line.bars().get(line.source().firstBar())).map(Movement::toString),
          PlaceJson.of(line, 0),
          PlaceJson.of(line, last),
          line.count(),
          LineJson.ofMicros(line.endMicros(last)),
          RateJson.of(line),
          new PassageTempoJson(line.tempo().at(line.stroke(0).onset()).toString(), !tempoStated),
          command,
          judged.stream().map(verdict -> JudgedJson.of(verdict, line)).toList());
    }
  }

  /** A run of tremolo. */
  @Means("Notes of one voice in a row that are tremolo, read alike.")
  record TremoloJson(
      @Means("The part's id.") String part,
      @Means("The part's name.") String name,
      @Means("First and last bar as printed.") @Items(least = 2, most = 2) List<String> bars,
      @Means("First and last bar counted from 1 through the whole score.")
          @Items(least = 2, most = 2)
          @Least(1)
          List<Integer> counted,
      @Means("Why it is read so.") String why) {
    static TremoloJson of(TremoloRun run, Bars bars) {
      return new TremoloJson(
          run.part(),
          run.partName(),
          List.of(bars.get(run.firstBar()).number(), bars.get(run.lastBar()).number()),
          List.of(run.firstBar() + 1, run.lastBar() + 1),
          run.reading().text());
    }
  }

  /** A part that is left aside. */
  @Means("A part that is not judged.")
  record NotJudgedJson(
      @Means("The part's id.") String part,
      @Means("The part's name.") String name,
      @Means("Whether it sings; else its instrument is unknown.") boolean sings) {
    static NotJudgedJson of(Part part) {
      return new NotJudgedJson(part.id(), part.name(), Singers.sing(part));
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

  /** At which tempo a passage begins. */
  @Means("The tempo of a passage.")
  record PassageTempoJson(
      @Means("Metronome mark at the first stroke.") String mark,
      @Means("Whether it is assumed, as the score states none.") boolean assumed) {}

  /** What would help. */
  @Means("A technique that not everybody has.")
  record HelpingJson(
      @Means("As in the tables of limits.") String technique,
      @Means("How many of 100 of those who have it would manage.") @Least(0) int share) {}

  /** How a passage stands among those of the repertoire. */
  @Means("Fast passages of one kind for the instrument that were counted in open scores.")
  record AskedJson(
      @Means("Of 100 such passages so many are slower.") @Least(1) int fasterThan,
      @Means("Of what kind they are.") Stroking stroking,
      @Means("How many were found.") @Least(1) int passages,
      @Means("How many scores with a part for the instrument were read.") @Least(1) int scores) {
    static Optional<AskedJson> of(LineVerdict judged, Line line) {
      return judged
          .instrument()
          .repertoire()
          .outrun(line)
          .map(row -> new AskedJson(row.of100(), row.stroking(), row.passages(), row.scores()));
    }
  }

  /** A passage on one instrument. */
  @Means("The passage in the hands of one fresh player of an instrument.")
  record JudgedJson(
      @Means("As in the tables of limits.") String instrument,
      @Means("How many of 100 professional players manage it.") @Least(0) int share,
      @Means(
              "The word for the share: 98 and more comfortable, 84 demanding, 50 at the edge, 16 for the few, else beyond; or out of range.")
          Ease verdict,
      @Means("What decides.") Limiting limitedBy,
      @Means("Where it takes most.") PlaceJson at,
      @Means(
              "Largest share of a rate, for a player at the assurance asked for; 1 is the whole limit.")
          @Least(0)
          double use,
      @Means("Highest tiredness, for that player; 1 for spent.") @Least(0) double tiredness,
      @Means("Largest share of the air spent, for that player.") @Least(0) double breath,
      @Means("What the player uses, stretch by stretch.") List<ShownTechniqueJson> techniques,
      @Means(
              "How long that player can play on from the first onset; null if it can go on, or if nothing can be played.")
          @Least(0)
          Optional<Double> lastsSeconds,
      @Means(
              "Fastest metronome mark at the start at which that player manages; null if no tempo will do.")
          Optional<String> fastestTempo,
      @Means("The fullest pattern that that player manages.") Thinning thinning,
      @Means("Where the figure that decides comes from.") String source,
      @Means(
              "How far to trust the figure: A measured and published, B stated by an expert and seen, C secondary or from memory, D no source.")
          Grade grade,
      @Means(
              "A technique that not everybody has, where clearly more would manage with it; null if none.")
          Optional<HelpingJson> helping,
      @Means(
              "How it stands among the fast passages that open scores have for the instrument; null if too few were counted, or half of them are faster.")
          Optional<AskedJson> asked) {
    static JudgedJson of(LineVerdict judged, Line line) {
      OptionalDouble lasts = judged.lastsSeconds();
      return new JudgedJson(
          judged.instrument().name(),
          (int) Math.floor(judged.share()),
          judged.ease(),
          judged.limiting(),
          PlaceJson.of(line, judged.stroke()),
          judged.use(),
          judged.tiredness(),
          judged.breath(),
          judged.techniques().stream().map(ShownTechniqueJson::of).toList(),
          lasts.isPresent() ? Optional.of(lasts.getAsDouble()) : Optional.empty(),
          judged.fastestTempo().map(TempoMark::toString),
          judged.thinning(),
          judged.source().text(),
          judged.source().grade(),
          judged
              .helping()
              .map(help -> new HelpingJson(help.technique().name(), (int) help.share())),
          AskedJson.of(judged, line));
    }
  }
}

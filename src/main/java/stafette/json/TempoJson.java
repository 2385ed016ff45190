package stafette.json;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import stafette.check.SegmentReport;
import stafette.check.Verdict;
import stafette.json.Means.Items;
import stafette.json.Means.Least;
import stafette.json.Means.Most;
import stafette.plan.Brief;
import stafette.plan.Plan;
import stafette.plan.Player;
import stafette.score.Line;
import stafette.split.tempo.FastestTempo;
import stafette.split.tempo.TempoCell;
import stafette.split.tempo.TempoRow;
import stafette.split.tempo.TempoTable;
import stafette.time.TempoMark;

/** Tempo against number of players. */
@Edition(format = "stafette-tempo", version = 1)
@Means(
    "Tempo against number of players: which combinations hold, with what strain. So many players are the best so many of those listed: a plan may use fewer.")
public record TempoJson(
    @Means("Where the line stands.") ScoreFile score,
    @Means("The line.") ShortLineJson line,
    @Means("Who may play, those preferred first.") @Items(least = 1)
        List<InstrumentalistJson> players,
    @Means("The tempo asked for, at the line's start; one of the rows.") String present,
    @Means("One for each tempo, slowest first.") @Items(least = 1) List<RowJson> rows,
    @Means(
            "The fastest tempo of one player, of two, and so on: the top of the tempi that hold, from the fastest row with a plan upwards.")
        @Items(least = 1)
        List<FastestJson> fastest,
    @Means("The fewest players at the present tempo.") FewestJson fewest,
    @Means(
            "Odds that all players manage the plan of all at the present tempo; null without a plan.")
        @Least(0)
        @Most(1)
        Optional<Double> odds,
    @Means("Odds that they manage the same plan at a tempo 5 % faster, never more than odds.")
        @Least(0)
        @Most(1)
        Optional<Double> oddsAtHeadroom,
    @Means("How long all searches took.") @Least(0) double searchSeconds,
    @Means("Why there is no plan at the present tempo, and what would help.")
        List<String> findings) {
  /**
   * A table with all that is known of its plans.
   *
   * @param brief what was asked, at the present tempo
   * @param verdicts on every plan of the table
   * @param searchSeconds how long all searches took
   */
  public static TempoJson of(
      ScoreFile score,
      Brief brief,
      TempoTable table,
      Map<Plan, Verdict> verdicts,
      double searchSeconds) {
    TempoRow present = table.presentRow();
    Optional<Verdict> verdict = present.plan().map(verdicts::get);
    return new TempoJson(
        score,
        ShortLineJson.of(brief.line()),
        brief.players().stream().map(InstrumentalistJson::of).toList(),
        present.mark().toString(),
        table.rows().stream().map(row -> RowJson.of(row, verdicts)).toList(),
        IntStream.range(0, table.fastest().size())
            .mapToObj(i -> FastestJson.of(i + 1, table.fastest().get(i)))
            .toList(),
        FewestJson.of(present),
        verdict.map(Verdict::odds),
        verdict.map(Verdict::oddsAtHeadroom),
        searchSeconds,
        present.reasons().stream().map(reason -> reason.text().toString()).toList());
  }

  /** The text of the document. */
  public String text() {
    return Documents.text(this);
  }

  private static List<String> playing(Optional<Plan> plan) {
    return plan.map(Plan::playing).orElse(List.of());
  }

  /** Which line. */
  @Means("The line.")
  record ShortLineJson(
      @Means("The part's id.") String part,
      @Means("The part's name.") String name,
      @Means("Staff, counted from 1; \"1+2\" where hands share the line.") String staff,
      @Means("The voice's name.") String voice,
      @Means("Of chords: top, bottom, all, or a number from the top.") String tone,
      @Means("Printed numbers of the first and the last bar.") @Items(least = 2, most = 2)
          List<String> bars,
      @Means("How many.") @Least(1) int strokes) {
    static ShortLineJson of(Line line) {
      return new ShortLineJson(
          line.source().part(),
          line.source().partName(),
          line.source().strands().staffText(),
          line.source().strands().voiceText(),
          line.source().tone().text(),
          LineJson.bars(line),
          line.count());
    }
  }

  /** Who may play. */
  @Means("A player.")
  record InstrumentalistJson(
      @Means("As in the score or as given.") String name,
      @Means("As the limits name it.") String instrument) {
    static InstrumentalistJson of(Player player) {
      return new InstrumentalistJson(player.name(), player.instrument().name());
    }
  }

  /** One tempo. */
  @Means("One tempo.")
  record RowJson(
      @Means("The mark at the line's start; later tempi scale with it.") String tempo,
      @Means("For one player, for two, and so on.") @Items(least = 1) List<CellJson> cells) {
    static RowJson of(TempoRow row, Map<Plan, Verdict> verdicts) {
      return new RowJson(
          row.mark().toString(),
          IntStream.range(0, row.cells().size())
              .mapToObj(i -> CellJson.of(i + 1, row.cells().get(i), verdicts))
              .toList());
    }
  }

  /** A tempo with so many players. */
  @Means("What at most so many players can do.")
  record CellJson(
      @Means("At most so many.") @Least(1) int players,
      @Means("The cheapest plan; proof that there is none; or what was found when time ran out.")
          PlanJson.Result result,
      @Means("The highest strain of the plan, 1 at the limit; null without a plan.") @Least(0)
          Optional<Double> strain,
      @Means("Points of the plan; null without one.") Optional<Integer> cost,
      @Means("Who plays, in the order listed; empty without a plan.") List<String> playing) {
    static CellJson of(int players, TempoCell cell, Map<Plan, Verdict> verdicts) {
      Optional<Verdict> verdict = cell.plan().map(verdicts::get);
      return new CellJson(
          players,
          cell.proven()
              ? cell.plan().isPresent() ? PlanJson.Result.OPTIMAL : PlanJson.Result.NONE
              : PlanJson.Result.STOPPED,
          verdict.map(CellJson::highestStrain),
          verdict.map(found -> found.cost().total()),
          TempoJson.playing(cell.plan()));
    }

    private static double highestStrain(Verdict verdict) {
      return verdict.segments().stream().mapToDouble(SegmentReport::strain).max().orElse(0);
    }
  }

  /** The fastest tempo of so many. */
  @Means("The fastest tempo of at most so many players.")
  record FastestJson(
      @Means("At most so many.") @Least(1) int players,
      @Means("The fastest mark; null if no row has a plan.") Optional<String> tempo,
      @Means(
              "Whether the next mark up is proven to have no plan; without a tempo, whether every row is.")
          boolean proven,
      @Means("Who plays, in the order listed; empty without a plan.") List<String> playing) {
    static FastestJson of(int players, FastestTempo fastest) {
      return new FastestJson(
          players,
          fastest.mark().map(TempoMark::toString),
          fastest.proven(),
          TempoJson.playing(fastest.plan()));
    }
  }

  /** How few are enough. */
  @Means("The fewest players.")
  record FewestJson(
      @Means("How many; null if all together have no plan.") @Least(1) Optional<Integer> players,
      @Means("Whether fewer are proven to be too few.") boolean proven) {
    static FewestJson of(TempoRow row) {
      OptionalInt fewest = row.fewest();
      return new FewestJson(
          fewest.isPresent() ? Optional.of(fewest.getAsInt()) : Optional.empty(),
          row.fewestIsProven());
    }
  }
}

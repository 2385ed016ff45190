package stafette.limits;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import stafette.score.Line;
import stafette.words.Sentence;

/**
 * What open scores ask of one instrument: how fast its fast passages are.
 *
 * @param rows by stroking and share, as counted
 */
public record Repertoire(List<Row> rows) {
  /** Of what nothing was counted. */
  public static final Repertoire NONE = new Repertoire(List.of());

  /** What so many of a hundred passages do not exceed is what an instrument is asked for. */
  private static final int USUAL_SHARE = 90;

  /** The figures are rounded to hundredths. */
  private static final double ROUNDING = 0.005;

  /** From fewer passages nothing is told. */
  private static final int LEAST_PASSAGES = 30;

  public Repertoire {
    rows = List.copyOf(rows);
  }

  /**
   * What so many of a hundred passages of one stroking do not exceed, each figure by itself.
   *
   * @param scores how many scores with a part for the instrument were read
   * @param passages how many such passages were found in them
   * @param of100 the share of these, in per cent
   * @param ratePerSecond the usual rate of a passage, its median from note to note
   * @param seconds how long it goes on
   * @param strokes how many notes it has
   */
  public record Row(
      Stroking stroking,
      int scores,
      int passages,
      int of100,
      double ratePerSecond,
      double seconds,
      int strokes) {}

  /**
   * The largest share of passages of its stroking that a line outruns; empty where too few were
   * found, or it outruns none of the shares.
   */
  public Optional<Row> outrun(Line line) {
    Stroking stroking = Stroking.of(line);
    double rate = Demand.usualRatePerSecond(line);
    return rows.stream()
        .filter(row -> row.stroking == stroking && row.passages >= LEAST_PASSAGES)
        .filter(row -> rate > row.ratePerSecond + ROUNDING)
        .max(Comparator.comparingInt(Row::of100));
  }

  /** That nine of ten passages of a stroking are within reach. */
  public List<Statement> statements(Instrument instrument) {
    return rows.stream()
        .filter(row -> row.of100 == USUAL_SHARE && row.passages >= LEAST_PASSAGES)
        .map(row -> statement(row, instrument))
        .filter(statement -> !statement.techniques().isEmpty())
        .toList();
  }

  private static Statement statement(Row row, Instrument instrument) {
    List<Technique> techniques =
        instrument.techniques().stream().filter(row.stroking::takes).toList();
    boolean fingers =
        row.stroking == Stroking.SLURRED
            || (row.stroking == Stroking.SEPARATE
                && techniques.stream().anyMatch(each -> each.act().repeatsByKey()));
    return new Statement(
        List.of(instrument.name()),
        techniques.stream().map(Technique::name).toList(),
        StatementKind.ASKED,
        fingers ? Statement.Figure.MOVING : Statement.Figure.PEAK,
        row.ratePerSecond,
        row.ratePerSecond,
        OptionalDouble.empty(),
        row.stroking.inWords() + ": nine of ten of " + row.passages + " fast passages",
        new Source("counted in " + row.scores + " open scores", Grade.B),
        Optional.empty());
  }

  /** "faster than 97 of 100 fast passages of repeated notes for the clarinet in 38 scores". */
  public Optional<Sentence> inWords(Line line, Instrument instrument) {
    return outrun(line)
        .map(
            row ->
                Sentence.of(
                    "faster than {0} of 100 fast passages of {1} for the {2} in {3} scores",
                    row.of100, row.stroking, instrument, row.scores));
  }
}

package stafette.desktop.passages;

import java.util.Comparator;
import java.util.Optional;
import stafette.check.alone.Ease;
import stafette.check.alone.LineVerdict;
import stafette.check.alone.VerdictWords;
import stafette.score.Line;
import stafette.words.Sentence;
import stafette.work.CheckScore;

/**
 * A fast passage as the list shows it.
 *
 * @param part the name of its part
 * @param best with its best technique; empty if the instrument is unknown
 * @param rate the highest, in strokes per second
 */
record PassageItem(
    String part,
    String firstBar,
    String lastBar,
    int strokes,
    double rate,
    Optional<BestVerdict> best) {
  /**
   * What the part's own instrument makes of it.
   *
   * @param asked how it stands among what open scores ask of the instrument
   */
  record BestVerdict(Sentence share, Optional<Sentence> asked, double strain, Ease ease) {
    static BestVerdict of(LineVerdict verdict, Line line) {
      return new BestVerdict(
          VerdictWords.share(verdict),
          VerdictWords.asked(verdict, line),
          verdict.strain(),
          verdict.ease());
    }
  }

  static PassageItem of(CheckScore.PassageVerdicts report) {
    Line line = report.line();
    Optional<LineVerdict> best =
        report.answers().stream().min(Comparator.comparing(LineVerdict::ease));
    return new PassageItem(
        line.placeOf(0).part(),
        line.placeOf(0).at().bar(),
        line.placeOf(line.count() - 1).at().bar(),
        line.count(),
        highestRate(line),
        best.map(row -> BestVerdict.of(row, line)));
  }

  private static double highestRate(Line line) {
    long least = Long.MAX_VALUE;
    for (int j = 1; j < line.count(); j++) {
      least = Math.min(least, line.onsetMicros(j) - line.onsetMicros(j - 1));
    }
    return least == Long.MAX_VALUE || least == 0 ? 0 : 1e6 / least;
  }
}

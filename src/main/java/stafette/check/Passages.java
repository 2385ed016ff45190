package stafette.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import stafette.limits.Assurance;
import stafette.limits.Instrument;
import stafette.limits.Technique;
import stafette.score.Part;
import stafette.score.Score;
import stafette.score.Stroke;
import stafette.score.ToneChoice;
import stafette.score.Voice;

/**
 * Finds the fast passages of a score: maximal runs of at least eight strokes in one staff and
 * voice, every gap of them shorter than 1/(0.7 · peak). A chord is one stroke; unmeasured strokes
 * break a run.
 *
 * <p>The peak is the highest, at an assurance, among the techniques expected of everybody that are
 * used at that very stroke; it can't be asked of the run as a whole, since the run is what is
 * sought. Where repeated notes count by key, string or bar, a changing note is held against the
 * moving rate instead. Factors by register, dynamic and motion are left to the judgement of the
 * passage.
 */
public final class Passages {
  private static final int FEWEST_STROKES = 8;
  private static final double FAST_SHARE_OF_PEAK = 0.7;

  private final Score score;
  private final Assurance assurance;
  private final double unknownPeakPerSecond;

  private Passages(Score score, Assurance assurance, double unknownPeakPerSecond) {
    this.score = score;
    this.assurance = assurance;
    this.unknownPeakPerSecond = unknownPeakPerSecond;
  }

  /**
   * The fast passages of a score, part by part, voice by voice, then in order of time.
   *
   * @param instrumentOf what plays a part, if that is known
   * @param assurance the share of players for whom a peak holds
   * @param unknownPeakPerSecond the peak, in strokes a second, where the instrument is unknown or
   *     none of its techniques is used: that of single tonguing on the slowest usual wind
   */
  public static List<Passage> in(
      Score score,
      Function<Part, Optional<Instrument>> instrumentOf,
      Assurance assurance,
      double unknownPeakPerSecond) {
    Passages passages = new Passages(score, assurance, unknownPeakPerSecond);
    return score.parts().stream()
        .flatMap(part -> passages.in(part, expected(instrumentOf.apply(part))))
        .toList();
  }

  private static List<Technique> expected(Optional<Instrument> instrument) {
    return instrument.map(Instrument::techniques).orElse(List.of()).stream()
        .filter(Technique::expected)
        .toList();
  }

  private Stream<Passage> in(Part part, List<Technique> techniques) {
    return part.voices().stream()
        .filter(voice -> voice.strokes().size() >= FEWEST_STROKES)
        .flatMap(voice -> in(part, voice, techniques));
  }

  private Stream<Passage> in(Part part, Voice voice, List<Technique> techniques) {
    ToneChoice all = new ToneChoice.All();
    Pace pace =
        new Pace(
            score.line(part, voice, voice.strokes(), all),
            techniques,
            assurance,
            unknownPeakPerSecond);
    return runs(voice.strokes(), pace).stream()
        .map(run -> new Passage(part, voice, score.line(part, voice, run, all)));
  }

  private static List<List<Stroke>> runs(List<Stroke> strokes, Pace pace) {
    List<List<Stroke>> result = new ArrayList<>();
    int first = 0;
    for (int j = 1; j <= strokes.size(); j++) {
      boolean goesOn =
          j < strokes.size()
              && strokes.get(j - 1).measured()
              && strokes.get(j).measured()
              && pace.exceeds(FAST_SHARE_OF_PEAK, j);
      if (!goesOn) {
        if (j - first >= FEWEST_STROKES) {
          result.add(strokes.subList(first, j));
        }
        first = j;
      }
    }
    return result;
  }
}

package stafette.work.who;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import stafette.ask.PlayerWish;
import stafette.chairs.Chair;
import stafette.json.WhoJson;
import stafette.keep.OpenScore;
import stafette.words.Sentence;
import stafette.work.Reports;

/** Who could play a line, as JSON. */
public final class WhoReport {
  private WhoReport() {}

  /**
   * The text of the document.
   *
   * @param command what to type for a crew
   */
  public static String json(WhoCouldPlay who, Function<SolvedCrew, Optional<String>> command) {
    OpenScore score = who.found().score();
    return WhoJson.of(
            Reports.scoreFile(score),
            who.found().line(),
            who.candidates().stream().map(WhoReport::candidate).toList(),
            who.crews().stream().map(crew -> crew(crew, command.apply(crew))).toList())
        .text();
  }

  private static WhoJson.CandidateJson candidate(Candidate one) {
    return new WhoJson.CandidateJson(
        one.player().name(),
        one.player().instrument().name(),
        one.chair().map(Chair::part),
        one.stretches().stream()
            .map(
                stretch ->
                    new WhoJson.StretchShareJson(
                        stretch.bars(), stretch.share(), stretch.inRange()))
            .toList(),
        one.within().cardinality(),
        one.free().cardinality(),
        one.register().toString(),
        one.busy().map(Sentence::toString),
        one.before().map(Sentence::toString),
        one.after().map(Sentence::toString),
        one.levelDecibel(),
        one.blend(),
        one.written().map(Sentence::toString));
  }

  private static WhoJson.CrewJson crew(SolvedCrew crew, Optional<String> command) {
    List<String> names = crew.players().stream().map(PlayerWish::name).toList();
    return WhoJson.CrewJson.of(
        names,
        crew.inWords().toString(),
        crew.judged(),
        crew.holds(),
        crew.keepsMargin(),
        command.orElse(""));
  }
}

package stafette.json;

import java.util.List;
import java.util.Optional;
import stafette.check.JudgedPlan;
import stafette.json.Means.Items;
import stafette.json.Means.Least;
import stafette.json.Means.Most;
import stafette.plan.TurnsInWords;
import stafette.score.Line;

/** Who could play a line. */
@Edition(format = "stafette-who", version = 1)
@Means("Who could play a line, and the best few crews.")
public record WhoJson(
    @Means("The score.") ScoreFile score,
    @Means("The line.") LineJson line,
    @Means("Every player of the score whose instrument is known, then the usual neighbours.")
        List<CandidateJson> players,
    @Means("The best few crews, unlike each other, the best first; none where nothing holds.")
        List<CrewJson> crews) {
  public static WhoJson of(
      ScoreFile score, Line line, List<CandidateJson> players, List<CrewJson> crews) {
    return new WhoJson(score, LineJson.of(line), players, crews);
  }

  /** The text of the document. */
  public String text() {
    return Documents.text(this);
  }

  /** One who might play. */
  @Means("A player of the score, or one who is not in it.")
  public record CandidateJson(
      @Means("The player's name.") String name,
      @Means("What it would play.") String instrument,
      @Means("Id of the part from which it reads, null if the score has none.")
          Optional<String> part,
      @Means("How many of 100 manage each stretch of the line, in order.") @Items(least = 1)
          List<StretchShareJson> manages,
      @Means("Strokes within its range.") @Least(0) int within,
      @Means("Strokes of these at which it has nothing else to play.") @Least(0) int free,
      @Means("Where in its range the line lies, and how it sounds there.") String register,
      @Means("What it has to play in the bars of the line, null if nothing.") Optional<String> busy,
      @Means("What comes right before for it, null if nothing that matters.")
          Optional<String> before,
      @Means("What comes right after for it, null if nothing that matters.") Optional<String> after,
      @Means("How much louder it is than the instrument that has the line, dB; null if not known.")
          Optional<Double> louder,
      @Means("How far its sound is from that of the instrument that has the line, in points.")
          @Least(0)
          int blend,
      @Means("How it is written, null if as it sounds.") Optional<String> written) {}

  /** A stretch of the line. */
  @Means("A stretch of the line in one player's hands.")
  public record StretchShareJson(
      @Means("First and last bar as printed.") String bars,
      @Means("How many of 100 manage those of its notes that are within the range.")
          @Least(0)
          @Most(100)
          int share,
      @Means("Whether all of its notes are within the range.") boolean inRange) {}

  /** Several who take turns. */
  @Means("Players who together play the line.")
  public record CrewJson(
      @Means("Their names.") @Items(least = 1) List<String> players,
      @Means("In one line of words.") String words,
      @Means("Who takes turns of what length.") String turns,
      @Means("Whether the plan holds for the share of players asked for.") boolean holds,
      @Means("Whether it holds with the margin of tempo asked for.") boolean margin,
      @Means("How many of 100 manage the hardest part.") @Least(0) @Most(100) double share,
      @Means("What the plan costs.") int cost,
      @Means("What to type to have it written, but for the file to write.") String command) {
    /** A crew with its plan. */
    public static CrewJson of(
        List<String> players,
        String words,
        JudgedPlan judged,
        boolean holds,
        boolean margin,
        String command) {
      return new CrewJson(
          players,
          words,
          TurnsInWords.of(judged.plan()).toString(),
          holds,
          margin,
          judged.verdict().hardest() * 100,
          judged.verdict().cost().total(),
          command);
    }
  }
}

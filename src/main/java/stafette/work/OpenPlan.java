package stafette.work;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import stafette.ask.Reopening;
import stafette.ask.Seats;
import stafette.check.JudgedPlan;
import stafette.json.LineJson;
import stafette.json.PlanFile;
import stafette.json.PlanJson;
import stafette.keep.KeptPlan;
import stafette.keep.LimitsInForce;
import stafette.keep.OpenScore;
import stafette.plan.Brief;
import stafette.plan.Plan;
import stafette.plan.Seat;
import stafette.score.BarChoice;
import stafette.score.Line;
import stafette.score.LineChoice;
import stafette.score.NoSuchLine;
import stafette.split.Reason;
import stafette.split.SplitResult;
import stafette.words.Refusal;
import stafette.words.Sentence;
import stafette.words.UnreadableFile;

/** Opens a plan that was kept in a file, with its score, and has it judged anew. */
public final class OpenPlan {
  private OpenPlan() {}

  /**
   * A plan opened again.
   *
   * @param score its score
   * @param judged the plan and the verdict
   * @param seats of players whose seats are known, by name
   * @param freed players who leave out for the line what the score gives them
   * @param scoreChanged whether the score is no longer the one that the plan was made for
   * @param earlier whether an earlier release kept it: figures and weights are those in force
   * @param search what was proven when the plan was kept
   */
  public record Opened(
      OpenScore score,
      JudgedPlan judged,
      Map<String, Seat> seats,
      Set<String> freed,
      boolean scoreChanged,
      boolean earlier,
      PlanFile.Search search) {}

  /**
   * Opens a plan; its score is looked for beside it.
   *
   * @param seats where players sit, by name, before what the plan says
   * @throws Refusal if either can't be read, or the score no longer has the line, or there is no
   *     such player to sit anywhere
   */
  public static Opened open(Path file, Map<String, Seat> seats, LimitsInForce limits)
      throws Refusal {
    Read read = read(file, Optional.empty(), seats, true, limits);
    Plan plan =
        read.plan()
            .orElseThrow(
                () ->
                    Refusal.wrongUse(
                        Sentence.of(
                            "{0}: holds no plan, only the reasons why there is none", file)));
    return new Opened(
        read.score(),
        JudgedPlan.of(plan),
        read.seats(),
        read.freed(),
        read.scoreChanged(),
        read.file().isOfEarlierRelease(),
        read.search());
  }

  /**
   * A plan to be worked on, or what was asked if there is none.
   *
   * @param line the line with all that was asked for it
   * @param judged the plan and the verdict
   * @param found what the search said that found the plan, if that still holds
   * @param score what became of the score
   */
  public record OnDesk(
      OpenLine line,
      Optional<JudgedPlan> judged,
      Optional<SplitLine.SplitOutcome> found,
      ScoreNow score) {}

  /** What became of the score since the plan was kept. */
  public enum ScoreNow {
    /** It is as it was. */
    SAME,
    /** It is as it was; figures and weights are those in force, as an earlier release kept it. */
    EARLIER,
    /** It has changed, but the plan still fits the line. */
    CHANGED,
    /** It has changed, or the limits have, and the plan and its locks fit no longer. */
    UNFIT
  }

  /**
   * Opens a plan to be worked on. If the score has changed so that the plan doesn't fit the line
   * any more, players and rules are there without it.
   *
   * @param score where the score is now; where the plan says if empty
   * @throws Refusal as {@link #open} does, but for a file that holds no plan
   */
  public static OnDesk onDesk(Path file, Optional<Path> score, LimitsInForce limits)
      throws Refusal {
    Read read = read(file, score, Map.of(), false, limits);
    OpenLine line =
        OpenLine.of(new Reopening(read.score(), read.brief(), read.seats(), read.freed()), limits);
    Optional<JudgedPlan> judged = read.plan().flatMap(line::adopted).map(JudgedPlan::of);
    boolean unfit = !read.fits() || judged.isPresent() != read.plan().isPresent();
    ScoreNow same = read.file().isOfEarlierRelease() ? ScoreNow.EARLIER : ScoreNow.SAME;
    ScoreNow now = unfit ? ScoreNow.UNFIT : read.scoreChanged() ? ScoreNow.CHANGED : same;
    Optional<SplitLine.SplitOutcome> found =
        now == ScoreNow.SAME
            ? result(read.search(), judged)
                .map(result -> line.found(result, judged, read.search().seconds()))
            : Optional.empty();
    return new OnDesk(line, judged, found, now);
  }

  /** What the search had said, if the judge says nothing else today. */
  private static Optional<SplitResult> result(PlanFile.Search search, Optional<JudgedPlan> judged) {
    if (!search.happened()) {
      return Optional.empty();
    }
    int bound = search.bound().orElse(0);
    if (search.result() == PlanJson.Result.NONE) {
      return Optional.of(
          new SplitResult.None(
              search.remarks().stream()
                  .map(text -> new Reason(Optional.empty(), Sentence.name(text)))
                  .toList()));
    }
    OptionalInt cost = judged.stream().mapToInt(j -> j.verdict().cost().total()).findFirst();
    if (!search.optimal()) {
      return Optional.of(
          new SplitResult.Stopped(
              judged.map(JudgedPlan::plan),
              cost,
              bound,
              bound > 0 ? search.rotation() : Optional.empty()));
    }
    return judged
        .filter(best -> best.verdict().holds() && search.proves(best.verdict().cost().total()))
        .map(
            best ->
                new SplitResult.Best(
                    best.plan(), best.verdict().cost().total(), search.rotation()));
  }

  private record Read(
      OpenScore score,
      PlanFile file,
      Brief brief,
      Optional<Plan> plan,
      Map<String, Seat> seats,
      boolean fits) {
    boolean scoreChanged() {
      return !score.document().container().sha256().equals(file.score().sha256());
    }

    Set<String> freed() {
      return file.freed();
    }

    PlanFile.Search search() {
      return file.search();
    }
  }

  /**
   * @param asked where the score is now; where the plan says if empty
   * @param mustFit whether the plan is refused if its line is no longer as it was
   */
  private static Read read(
      Path file,
      Optional<Path> asked,
      Map<String, Seat> seats,
      boolean mustFit,
      LimitsInForce limits)
      throws Refusal {
    PlanFile plan = KeptPlan.parsed(file);
    try {
      Path scoreFile = asked.orElseGet(() -> KeptPlan.scoreOf(file, plan));
      OpenScore score = OpenScore.open(scoreFile, plan.score().reading(), false, limits);
      List<Line> lines = lines(plan, score);
      boolean fits = mustFit || plan.fits(lines);
      Brief brief =
          fits
              ? plan.brief(lines, limits.catalogue(), limits.weights())
              : plan.withoutLocks(lines, limits.catalogue(), limits.weights());
      return new Read(
          score,
          plan,
          brief,
          fits ? plan.plan(brief) : Optional.empty(),
          Seats.of(brief.players(), seats, plan.seats()),
          fits);
    } catch (UnreadableFile e) {
      throw Refusal.ofFile(Sentence.of("{0}: {1}", file, e.inWords()));
    } catch (NoSuchLine e) {
      throw Refusal.ofFile(Sentence.of("{0}: the score has changed: {1}", file, e.inWords()));
    }
  }

  private static List<Line> lines(PlanFile plan, OpenScore score) throws NoSuchLine {
    Line asWritten = line(plan.source(), score);
    Line first = asWritten.at(asWritten.tempo().scaledTo(asWritten.clockStart(), plan.tempo()));
    Map<LineJson, Line> others = new HashMap<>();
    List<Line> lines = new ArrayList<>();
    for (Optional<LineJson> other : plan.relays()) {
      if (other.isPresent() && !others.containsKey(other.get())) {
        Line line = line(other.get(), score);
        others.put(other.get(), line.at(first.tempo()).withClockFrom(first.clockStart()));
      }
      lines.add(other.map(others::get).orElse(first));
    }
    return lines;
  }

  private static Line line(LineJson source, OpenScore score) throws NoSuchLine {
    LineChoice choice =
        new LineChoice(
            source.part(),
            Optional.of(
                new BarChoice("#" + (source.firstBar() + 1) + "-#" + (source.lastBar() + 1))),
            source.onStaves(),
            source.inVoices(),
            Optional.of(source.tone()),
            source.read());
    return source.slurs().of(choice.take(score.score()));
  }
}

package stafette.work;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import stafette.plan.Brief;
import stafette.plan.Plan;
import stafette.plan.Seat;
import stafette.score.BarChoice;
import stafette.score.Line;
import stafette.score.LineChoice;
import stafette.score.NoSuchLine;
import stafette.score.Tremolo;
import stafette.tables.PlanFile;
import stafette.tables.UnreadableFile;
import stafette.words.Sentence;

/** Opens a plan that was kept in a file, with its score, and has it judged anew. */
public final class OpenPlan {
  private OpenPlan() {}

  /**
   * A plan opened again.
   *
   * @param score its score
   * @param judged the plan and the verdict
   * @param seats of players whose seats are known, by name
   * @param scoreChanged whether the score is no longer the one that the plan was made for
   * @param search what was proven when the plan was kept
   */
  public record Opened(
      OpenScore score,
      JudgedPlan judged,
      Map<String, Seat> seats,
      boolean scoreChanged,
      PlanFile.Search search) {}

  /** Whether a file looks like a plan rather than a score. */
  public static boolean isPlan(Path file) throws Refusal {
    return new String(FileDoor.read(file), StandardCharsets.UTF_8).stripLeading().startsWith("{");
  }

  /**
   * Opens a plan; its score is looked for beside it.
   *
   * @param seats where players sit, by name, before what the plan says
   * @throws Refusal if either can't be read, or the score no longer has the line, or there is no
   *     such player to sit anywhere
   */
  public static Opened open(Path file, Map<String, Seat> seats, LimitsInForce limits)
      throws Refusal {
    Read read = read(file, seats, limits);
    Plan plan =
        read.plan()
            .orElseThrow(
                () ->
                    Refusal.wrongUse(
                        Sentence.of(
                            "{0}: holds no plan, only the reasons why there is none", file)));
    return new Opened(
        read.score(), JudgedPlan.of(plan), read.seats(), read.scoreChanged(), read.search());
  }

  /**
   * A plan to be worked on, or what was asked if there is none.
   *
   * @param line the line with all that was asked for it
   * @param judged the plan and the verdict
   * @param scoreChanged whether the score is no longer the one that the plan was made for
   */
  public record OnDesk(OpenLine line, Optional<JudgedPlan> judged, boolean scoreChanged) {}

  /**
   * Opens a plan to be worked on.
   *
   * @throws Refusal as {@link #open} does, but for a file that holds no plan
   */
  public static OnDesk onDesk(Path file, LimitsInForce limits) throws Refusal {
    Read read = read(file, Map.of(), limits);
    OpenLine line = OpenLine.of(read.score(), read.brief(), read.seats(), limits);
    return new OnDesk(
        line, read.plan().flatMap(line::adopted).map(JudgedPlan::of), read.scoreChanged());
  }

  private record Read(
      OpenScore score,
      Brief brief,
      Optional<Plan> plan,
      Map<String, Seat> seats,
      boolean scoreChanged,
      PlanFile.Search search) {}

  private static Read read(Path file, Map<String, Seat> seats, LimitsInForce limits)
      throws Refusal {
    try {
      PlanFile plan = PlanFile.read(file);
      Path scoreFile = file.toAbsolutePath().resolveSibling(plan.score().file()).normalize();
      OpenScore score = OpenScore.open(scoreFile, Tremolo.AS_WRITTEN, false);
      Brief brief = plan.brief(lines(plan, score), limits.catalogue());
      boolean changed =
          !Reports.sha256(score.document().container().bytes()).equals(plan.score().sha256());
      return new Read(
          score,
          brief,
          plan.plan(brief),
          Seats.of(brief.players(), seats, plan.seats()),
          changed,
          plan.search());
    } catch (UnreadableFile e) {
      throw Refusal.ofFile(Sentence.of("{0}: {1}", file, e.inWords()));
    } catch (NoSuchLine e) {
      throw Refusal.ofFile(Sentence.of("{0}: the score has changed: {1}", file, e.inWords()));
    }
  }

  private static List<Line> lines(PlanFile plan, OpenScore score) throws NoSuchLine {
    Line asWritten = line(plan.source(), score);
    Line first = asWritten.at(asWritten.tempo().scaledTo(asWritten.clockStart(), plan.tempo()));
    List<Line> lines = new ArrayList<>();
    for (Optional<PlanFile.Source> other : plan.relays()) {
      lines.add(
          other.isEmpty()
              ? first
              : line(other.get(), score).at(first.tempo()).withClockFrom(first.clockStart()));
    }
    return lines;
  }

  private static Line line(PlanFile.Source source, OpenScore score) throws NoSuchLine {
    LineChoice choice =
        new LineChoice(
            source.part(),
            Optional.of(
                new BarChoice("#" + (source.firstBar() + 1) + "-#" + (source.lastBar() + 1))),
            OptionalInt.of(source.staff()),
            Optional.of(source.voice()),
            Optional.of(source.tone()));
    return choice.take(score.score());
  }
}

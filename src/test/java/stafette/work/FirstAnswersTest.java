package stafette.work;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import stafette.ask.LineRequest;
import stafette.ask.SplitRequest;
import stafette.ask.TempoWish;
import stafette.keep.LimitsInForce;
import stafette.limits.Assurance;
import stafette.score.Line;
import stafette.score.LineChoice;
import stafette.score.Tremolo;
import stafette.time.Rational;
import stafette.time.TempoMark;
import stafette.words.Refusal;
import stafette.work.who.WhoCouldPlay;

/**
 * The first thing that a user asks of a sample: to split a fast passage as its check says, with the
 * players proposed. At their own tempo all have a plan, the nearest at least; hurried, not all
 * have.
 */
class FirstAnswersTest {
  private static final double HOUR_SECONDS = 3600;
  private static final LimitsInForce LIMITS = limits();

  /** How many times as fast as written. */
  private static final List<Rational> HURRIED =
      List.of(Rational.ONE, Rational.of(5, 4), Rational.of(3, 2));

  /** A passage with the players proposed for it at its tempo. */
  private record Asked(SplitRequest request, Rational faster, String passage) {
    @Override
    public String toString() {
      return passage;
    }
  }

  static Stream<Asked> asked() throws IOException, Refusal {
    List<Asked> all = new ArrayList<>();
    for (Path sample : samples()) {
      CheckScore.CheckedScore checked =
          CheckScore.passages(
              sample, Tremolo.AS_WRITTEN, Optional.empty(), Assurance.DEFAULT, List.of(), LIMITS);
      for (CheckScore.PassageVerdicts report : checked.reports()) {
        for (Rational faster : HURRIED) {
          all.add(asked(sample, checked, report, faster));
        }
      }
    }
    return all.stream();
  }

  private static LimitsInForce limits() {
    try {
      return LimitsInForce.load(Optional.empty());
    } catch (Refusal e) {
      throw new IllegalStateException(e);
    }
  }

  private static List<Path> samples() throws IOException {
    try (Stream<Path> files = Files.list(Path.of("samples"))) {
      return files.filter(file -> file.toString().endsWith(".musicxml")).sorted().toList();
    }
  }

  private static Asked asked(
      Path sample,
      CheckScore.CheckedScore checked,
      CheckScore.PassageVerdicts report,
      Rational faster)
      throws Refusal {
    LineChoice choice = checked.toSplit(report).orElseThrow().line();
    Line line = report.line();
    TempoMark mark = line.tempo().at(line.stroke(0).onset());
    TempoWish wish = new TempoWish(Optional.of(mark.unit()), mark.perMinute().times(faster));
    SplitRequest request =
        SplitRequest.usual(LineRequest.whole(sample).with(choice).with(wish)).within(HOUR_SECONDS);
    return new Asked(
        WhoCouldPlay.in(request, checked.score(), LIMITS).into(request),
        faster,
        sample.getFileName() + ": " + line.where("to") + " at " + faster + " times its tempo");
  }

  @ParameterizedTest
  @MethodSource("asked")
  void every_passage_has_a_plan_or_the_nearest_one_or_is_told_what_would_help(Asked asked)
      throws Refusal {
    SplitLine.SplitOutcome outcome = SplitLine.split(asked.request(), LIMITS);
    if (outcome.plan().isEmpty()) {
      assertNotEquals(Rational.ONE, asked.faster(), "it has no plan at its own tempo");
      assertTrue(outcome.result().isNone(), "stopped before it knew");
      assertFalse(outcome.reasons().isEmpty());
      assertFalse(outcome.remedies().isEmpty());
    }
  }
}

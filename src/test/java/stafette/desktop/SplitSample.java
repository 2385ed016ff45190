package stafette.desktop;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import stafette.ask.LineRequest;
import stafette.ask.PlayerWish;
import stafette.ask.SplitRequest;
import stafette.keep.LimitsInForce;
import stafette.keep.OpenScore;
import stafette.plan.Plan;
import stafette.plan.SourceTreatment;
import stafette.plan.WrittenAs;
import stafette.score.BarChoice;
import stafette.score.LineChoice;
import stafette.score.Tremolo;
import stafette.words.Refusal;
import stafette.work.ChangedPart;
import stafette.work.OpenLine;
import stafette.work.ScoreChanges;
import stafette.work.SideBySide;

/** Bars 5 to 16 of the piano of a sample, split among three players. */
public final class SplitSample {
  public static final Path SCORE = Path.of("samples", "lantern-run.musicxml");

  private SplitSample() {}

  /** With so many alternatives. */
  public static SideBySide plans(int alternatives) throws Refusal {
    return SideBySide.split(request(), limits(), alternatives, progress -> {});
  }

  /** The line alone, not yet split. */
  public static OpenLine line() throws Refusal {
    OpenScore score = OpenScore.open(SCORE, Tremolo.AS_WRITTEN, false, limits());
    return OpenLine.in(score, request(), limits());
  }

  /** What writing the plan would change. */
  public static List<ChangedPart> changed(SourceTreatment treatment) throws Refusal {
    SideBySide plans = plans(0);
    Plan plan = plans.main().plan().orElseThrow().plan();
    return ScoreChanges.of(plans.main().score(), plan, WrittenAs.plain(treatment), limits())
        .parts();
  }

  private static LimitsInForce limits() throws Refusal {
    return LimitsInForce.load(Optional.empty());
  }

  private static SplitRequest request() throws Refusal {
    LineChoice piano =
        new LineChoice(
            "Piano",
            Optional.of(new BarChoice("5-16")),
            OptionalInt.of(1),
            Optional.empty(),
            Optional.empty());
    return SplitRequest.usual(LineRequest.whole(SCORE).with(piano))
        .with(PlayerWish.parse("Flute 1, Flute 2, Clarinet 1"), List.of());
  }
}

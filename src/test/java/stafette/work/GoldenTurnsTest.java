package stafette.work;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import stafette.ask.LineRequest;
import stafette.ask.PlayerWish;
import stafette.ask.SplitRequest;
import stafette.check.Costing;
import stafette.check.JudgedPlan;
import stafette.keep.LimitsInForce;
import stafette.score.BarChoice;
import stafette.score.LineChoice;
import stafette.words.Refusal;
import stafette.work.GoldenLines.GoldenLine;

/**
 * Lines with the turns that an experienced orchestrator would write, beside those of the program:
 * {@code golden-turns.txt}. What was found is kept in {@code target/golden-turns.txt}.
 */
class GoldenTurnsTest {
  private static final Path GOLDEN =
      Path.of("src", "test", "resources", "stafette", "golden-turns.txt");

  @TempDir private static Path folder;

  static List<GoldenLine> lines() {
    return GoldenLines.all();
  }

  @ParameterizedTest
  @MethodSource("lines")
  void turns(GoldenLine golden) throws Refusal, IOException {
    SplitLine.SplitOutcome outcome = split(golden);
    System.out.println("== " + golden.title() + " [" + golden.players() + "]");
    if (outcome.plan().isEmpty()) {
      outcome.reasons().forEach(reason -> System.out.println("   " + reason.text()));
      System.out.println("   " + outcome.result());
      return;
    }
    JudgedPlan judged = outcome.plan().get();
    System.out.println("   " + TurnsOnALine.turns(judged.plan()));
    System.out.println("   " + TurnsOnALine.effort(judged));
    System.out.println(
        "   "
            + outcome.brief().rules().assurance()
            + " "
            + outcome.brief().rules().margin()
            + " cost "
            + judged.verdict().cost().total()
            + " "
            + outcome
                .result()
                .rotation()
                .map(
                    r ->
                        r.unit()
                            + " cheapest "
                            + r.cheapestCost()
                            + " limit "
                            + r.limit()
                            + " "
                            + TurnsOnALine.turns(r.cheapest()))
                .orElse("-")
            + " "
            + outcome.result().isBest());
    System.out.println("   " + judged.verdict().cost());
    System.out.println(
        "   idle "
            + IntStream.range(0, outcome.brief().players().size())
                .mapToObj(i -> Costing.idle(outcome.brief(), i))
                .toList());
  }

  private static SplitLine.SplitOutcome split(GoldenLine golden) throws Refusal, IOException {
    Path file = folder.resolve(golden.title().replace(' ', '-') + ".musicxml");
    Files.writeString(file, golden.score().text());
    LineChoice choice =
        new LineChoice(
            golden.part(),
            Optional.of(new BarChoice("1-" + golden.bars())),
            OptionalInt.empty(),
            Optional.empty(),
            Optional.empty());
    SplitRequest request =
        SplitRequest.usual(LineRequest.whole(file).with(choice))
            .with(PlayerWish.parse(golden.players()), List.of())
            .within(600);
    return SplitLine.split(request, LimitsInForce.load(Optional.empty()));
  }
}

package stafette.cli;

import stafette.ask.LineRemarks;
import stafette.ask.SplitRequest;
import stafette.work.SplitLine;

/** Says on the error stream what a line may not be any more, and how it can't be shared. */
final class Remarks {
  private Remarks() {}

  static void print(SplitLine.SplitOutcome outcome, SplitRequest request, Output output) {
    LineRemarks.on(outcome.score(), outcome.brief().line(), request.line())
        .forEach(remark -> output.err().println(remark));
    outcome.brief().lines().stream()
        .distinct()
        .flatMap(line -> request.relaying().tooFast(line).stream())
        .forEach(remark -> output.err().println(Options.say(remark)));
  }
}

package stafette.cli;

import java.io.OutputStream;
import java.nio.charset.Charset;
import java.util.function.LongSupplier;
import stafette.ask.LineRemarks;
import stafette.ask.SplitRequest;
import stafette.work.SplitLine;

/**
 * Where a command prints.
 *
 * @param out data and reports
 * @param err talk
 * @param charset of both
 * @param nanoClock says how long a command has been at work, in nanoseconds from any beginning
 */
record Output(CleanPrint out, CleanPrint err, Charset charset, LongSupplier nanoClock) {
  static Output of(OutputStream out, OutputStream err, Charset charset, LongSupplier nanoClock) {
    return new Output(
        new CleanPrint(new Sink(out), false, charset),
        new CleanPrint(new Sink(err), true, charset),
        charset,
        nanoClock);
  }

  /** An output with all on the error stream: beside data, talk goes there. */
  Output toErrors() {
    return new Output(err, err, charset, nanoClock);
  }

  /** Says on the error stream what a line may not be any more, and how it can't be shared. */
  void remark(SplitLine.SplitOutcome outcome, SplitRequest request) {
    LineRemarks.on(outcome.score(), outcome.brief().line(), request.line()).forEach(err::println);
    outcome.brief().lines().stream()
        .distinct()
        .flatMap(line -> request.relaying().tooFast(line).stream())
        .forEach(remark -> err.println(Options.say(remark)));
  }

  /** Whether the terminal can show block characters. */
  TimelineText.Shade ink() {
    return charset.newEncoder().canEncode("░▒▓█╱·")
        ? TimelineText.Shade.BLOCKS
        : TimelineText.Shade.ASCII;
  }
}

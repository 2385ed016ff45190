package stafette.cli;

import java.io.PrintStream;
import java.nio.charset.Charset;

/**
 * Where a command prints.
 *
 * @param out data and reports
 * @param err talk
 * @param charset of both
 */
record Output(PrintStream out, PrintStream err, Charset charset) {
  /** Whether the terminal can show block characters. */
  TimelineText.Ink ink() {
    return charset.newEncoder().canEncode("░▒▓█╱·")
        ? TimelineText.Ink.BLOCKS
        : TimelineText.Ink.ASCII;
  }
}

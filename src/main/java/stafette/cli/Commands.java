package stafette.cli;

import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.nio.charset.Charset;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import stafette.keep.Release;
import stafette.words.Refusal;

/** The command line as a whole: which commands there are, and what becomes of errors. */
@Command(
    name = "stafette",
    description =
        "Checks fast lines against the limits of their players, and dovetails them over several.",
    footer = {"", "stafette COMMAND --help tells more."},
    synopsisSubcommandLabel = "COMMAND",
    mixinStandardHelpOptions = true,
    subcommands = {
      CheckCommand.class,
      SplitCommand.class,
      PreviewCommand.class,
      ThinCommand.class,
      TempoCommand.class,
      WhoCommand.class,
      LimitsCommand.class,
      AppCommand.class
    })
public final class Commands implements Runnable {
  /** Nothing to complain of. */
  static final int FINE = 0;

  /** A passage is beyond its player, no plan was found, or a limit contradicts what is known. */
  static final int FINDINGS = 1;

  /** An option, part, bar, tone or instrument that does not exist. */
  static final int WRONG_USE = 2;

  /** A file that can't be read or written. */
  static final int FILE = 3;

  /** A fault of the program's own. */
  static final int OUR_FAULT = 70;

  private static final Map<String, String> EXIT_CODES = new LinkedHashMap<>();

  static {
    EXIT_CODES.put(" " + FINE, "fine");
    EXIT_CODES.put(
        " " + FINDINGS,
        "something is beyond an instrument, there is no plan, or a limit contradicts a source");
    EXIT_CODES.put(" " + WRONG_USE, "wrong use");
    EXIT_CODES.put(" " + FILE, "a file can't be read or written");
    EXIT_CODES.put(Integer.toString(OUR_FAULT), "a fault of the program");
  }

  @Spec private CommandSpec spec = CommandSpec.create();

  private Commands() {}

  /**
   * Runs one command.
   *
   * @param out where data and reports go
   * @param err where talk and errors go
   * @param charset of both
   * @param desktop what opens the window
   * @return the exit code
   */
  public static int run(
      OutputStream out, OutputStream err, Charset charset, WindowDoor desktop, String... args) {
    return run(Output.of(out, err, charset, System::nanoTime), desktop, args);
  }

  static int run(Output output, WindowDoor desktop, String... args) {
    return arrived(output, executed(output, desktop, args));
  }

  /** Whatever goes wrong becomes words and an exit code, also where the memory does not do. */
  private static int executed(Output output, WindowDoor desktop, String... args) {
    CommandLine line = line(output, desktop, args);
    try {
      return line.execute(args);
    } catch (RuntimeException | Error e) {
      return atFault(e, line, output, args);
    }
  }

  private static CommandLine line(Output output, WindowDoor desktop, String... args) {
    PrintStream err = output.err();
    CommandLine line = new CommandLine(new Commands(), new OutputFactory(output, desktop));
    line.setOut(new PrintWriter(new OutputStreamWriter(output.out(), output.charset()), true));
    line.setErr(new PrintWriter(new OutputStreamWriter(err, output.charset()), true));
    Conversions.teach(line);
    line.setUsageHelpAutoWidth(false);
    line.setExpandAtFiles(false);
    line.setParameterExceptionHandler((exception, arguments) -> misused(exception, err));
    line.setExecutionExceptionHandler(
        (exception, command, result) ->
            exception instanceof Refusal refusal
                ? refused(refusal, err)
                : atFault(exception, line, output, args));
    everywhere(line);
    line.getSubcommands().values().forEach(Commands::everywhere);
    return line;
  }

  private static void everywhere(CommandLine command) {
    command.getCommandSpec().versionProvider(() -> new String[] {Release.text()});
    command
        .getCommandSpec()
        .usageMessage()
        .exitCodeListHeading("%nExit codes:%n")
        .exitCodeList(EXIT_CODES);
  }

  /** A disk that is full under standard output is told; a reader who has gone away is not. */
  private static int arrived(Output output, int exitCode) {
    Optional<String> failure = output.out().failure().filter(why -> !Sink.isGone(why));
    failure.ifPresent(
        why ->
            output
                .err()
                .println("what is printed can't be written (" + why + "); is the disk full?"));
    return failure.isPresent() && exitCode != OUR_FAULT ? FILE : exitCode;
  }

  @Override
  public void run() {
    spec.commandLine().usage(spec.commandLine().getOut());
  }

  private static int misused(ParameterException exception, PrintStream err) {
    err.println(Conversions.said(exception));
    err.println("Try: " + exception.getCommandLine().getCommandSpec().qualifiedName() + " --help");
    return WRONG_USE;
  }

  private static int refused(Refusal refusal, PrintStream err) {
    err.println(Options.say(refusal));
    return refusal.cause() == Refusal.Cause.FILE ? FILE : WRONG_USE;
  }

  private static int atFault(Throwable fault, CommandLine line, Output output, String... args) {
    Optional<String> file =
        Optional.ofNullable(line.getParseResult())
            .flatMap(all -> Optional.ofNullable(all.subcommand()))
            .flatMap(command -> command.matchedPositionals().stream().findFirst())
            .flatMap(named -> named.stringValues().stream().findFirst());
    output.err().println(Faults.words(fault, file, args));
    return OUR_FAULT;
  }

  /** Whatever opens the window; the command line doesn't know it. */
  public interface WindowDoor {
    /**
     * Shows the window until it is closed.
     *
     * @param file a score or a plan to open
     * @return why it can't be opened; empty if it could
     */
    Optional<String> open(Optional<Path> file);
  }

  /** Hands the streams, or the desktop, to the commands that ask for them. */
  private record OutputFactory(Output output, WindowDoor desktop) implements CommandLine.IFactory {
    @Override
    public <K> K create(Class<K> type) throws Exception {
      if (type == AppCommand.class) {
        return type.cast(new AppCommand(output, desktop));
      }
      try {
        return type.getDeclaredConstructor(Output.class).newInstance(output);
      } catch (NoSuchMethodException e) {
        return CommandLine.defaultFactory().create(type);
      }
    }
  }
}

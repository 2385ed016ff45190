package stafette.cli;

import java.io.OutputStreamWriter;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.nio.charset.Charset;
import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import stafette.work.Refusal;

/** The command line as a whole: which commands there are, and what becomes of errors. */
@Command(
    name = "stafette",
    description =
        "Checks fast lines against the limits of their players, and dovetails them over several.",
    footer = {"", "stafette COMMAND --help tells more."},
    synopsisSubcommandLabel = "COMMAND",
    mixinStandardHelpOptions = true,
    version = "Stafette 0.1",
    subcommands = {
      CheckCommand.class,
      SplitCommand.class,
      PreviewCommand.class,
      ThinCommand.class,
      TempoCommand.class,
      LimitsCommand.class,
      AppCommand.class
    })
public final class Commands implements Runnable {
  /** Nothing to complain of. */
  static final int FINE = 0;

  /** A passage is beyond its player, or no plan was found. */
  static final int FINDINGS = 1;

  /** An option, part, bar, tone or instrument that does not exist. */
  static final int WRONG_USE = 2;

  /** A file that can't be read or written. */
  static final int FILE = 3;

  /** A fault of the program's own. */
  static final int OUR_FAULT = 70;

  @Spec private CommandSpec spec = CommandSpec.create();

  private Commands() {}

  /**
   * Runs one command.
   *
   * @param out data and reports
   * @param err talk and errors
   * @param charset of both
   * @param desktop what opens the window
   * @return the exit code
   */
  public static int run(
      PrintStream out, PrintStream err, Charset charset, Desktop desktop, String... args) {
    return run(new Output(out, err, charset, System::nanoTime), desktop, args);
  }

  static int run(Output output, Desktop desktop, String... args) {
    PrintStream err = output.err();
    CommandLine line = new CommandLine(new Commands(), new OutputFactory(output, desktop));
    line.setOut(new PrintWriter(new OutputStreamWriter(output.out(), output.charset()), true));
    line.setErr(new PrintWriter(new OutputStreamWriter(err, output.charset()), true));
    line.setCaseInsensitiveEnumValuesAllowed(true);
    line.setUsageHelpAutoWidth(false);
    line.setParameterExceptionHandler((exception, arguments) -> misused(exception, err));
    line.setExecutionExceptionHandler((exception, command, result) -> failed(exception, err));
    return line.execute(args);
  }

  @Override
  public void run() {
    spec.commandLine().usage(spec.commandLine().getOut());
  }

  private static int misused(ParameterException exception, PrintStream err) {
    err.println(exception.getMessage());
    err.println("Try: " + exception.getCommandLine().getCommandSpec().qualifiedName() + " --help");
    return WRONG_USE;
  }

  private static int failed(Exception exception, PrintStream err) {
    if (exception instanceof Refusal refusal) {
      err.println(refusal.getMessage());
      return refusal.cause() == Refusal.Cause.FILE ? FILE : WRONG_USE;
    }
    err.println("This is a fault of the program, not of your score: " + exception);
    return OUR_FAULT;
  }

  /** Whatever opens the window; the command line doesn't know it. */
  public interface Desktop {
    /**
     * Shows the window until it is closed.
     *
     * @param file a score or a plan to open
     * @return why it can't be opened; empty if it could
     */
    Optional<String> open(Optional<Path> file);
  }

  /** Hands the streams, or the desktop, to the commands that ask for them. */
  private record OutputFactory(Output output, Desktop desktop) implements CommandLine.IFactory {
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

package stafette.trials;

import com.sun.management.ThreadMXBean;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import stafette.cli.Commands;

/**
 * How a command ended.
 *
 * @param exitCode what it ended with
 * @param out what it printed
 * @param err what it said
 * @param thrown what came out of it instead of an exit code
 * @param megabytes how much memory it asked for in all; the count of its work, the same on any
 *     machine but for what is loaded for the first time
 */
record Ended(int exitCode, String out, String err, Optional<Throwable> thrown, long megabytes) {
  private static final int NO_CODE = -1;

  /** Only marks what would never end; no trial comes near it. */
  private static final long HANGS_AFTER_SECONDS = 120;

  /** Runs a command as the program's own entry does. */
  static Ended of(List<String> args) {
    FutureTask<Ended> task = new FutureTask<>(() -> here(args));
    Thread thread = new Thread(task, "trial");
    thread.setDaemon(true);
    thread.start();
    try {
      return task.get(HANGS_AFTER_SECONDS, TimeUnit.SECONDS);
    } catch (TimeoutException e) {
      return new Ended(NO_CODE, "", "", Optional.of(e), 0);
    } catch (ExecutionException e) {
      return new Ended(NO_CODE, "", "", Optional.ofNullable(e.getCause()), 0);
    } catch (InterruptedException e) {
      throw new IllegalStateException(e);
    }
  }

  private static Ended here(List<String> args) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ByteArrayOutputStream err = new ByteArrayOutputStream();
    long before = allocated();
    int exitCode = NO_CODE;
    Optional<Throwable> thrown = Optional.empty();
    try {
      exitCode =
          Commands.run(
              new PrintStream(out, true, StandardCharsets.UTF_8),
              new PrintStream(err, true, StandardCharsets.UTF_8),
              StandardCharsets.UTF_8,
              file -> Optional.of("no window here"),
              args.toArray(String[]::new));
    } catch (Throwable e) {
      thrown = Optional.of(e);
    }
    return new Ended(
        exitCode,
        out.toString(StandardCharsets.UTF_8),
        err.toString(StandardCharsets.UTF_8),
        thrown,
        (allocated() - before) >> 20);
  }

  private static long allocated() {
    return ((ThreadMXBean) ManagementFactory.getThreadMXBean())
        .getThreadAllocatedBytes(Thread.currentThread().getId());
  }
}

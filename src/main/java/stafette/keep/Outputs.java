package stafette.keep;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import stafette.words.Refusal;
import stafette.words.Sentence;

/**
 * All files that a command writes, declared and tried before anything is reckoned: so no search
 * ends before a shut door, and nothing is written over what is read or over one another.
 */
public final class Outputs {
  private final List<Path> inputs;
  private final List<Destination> declared = new ArrayList<>();

  private Outputs(Collection<Path> inputs) {
    this.inputs = List.copyOf(inputs);
  }

  /** The outputs of a command that reads all of these; none so far. */
  public static Outputs besideAll(List<List<Path>> inputs) {
    return beside(inputs.stream().flatMap(List::stream).toList());
  }

  /**
   * None so far.
   *
   * @param inputs whatever is read, and stays as it is
   */
  public static Outputs beside(Collection<Path> inputs) {
    return new Outputs(inputs);
  }

  /**
   * Declares one, and tries whether it can be written.
   *
   * @param replace whether a file that is there may be replaced
   * @throws Refusal if not, or it is read as well, or was declared before, whatever links say
   */
  public void add(Path file, boolean replace) throws Refusal {
    Destination to = Destination.of(file);
    if (inputs.stream().anyMatch(to::is)) {
      throw Refusal.ofFile(
          Sentence.of("{0}: is read here and must stay as it is; name another file", file));
    }
    declare(to);
    to.refuseToWrite(replace);
    tryOut(to);
  }

  /** Declares that an input is written into. */
  public void addInPlace(Path input) throws Refusal {
    Destination to = Destination.of(input);
    declare(to);
    to.refuseToWrite(true);
    tryOut(to);
  }

  private void declare(Destination to) throws Refusal {
    for (Destination other : declared) {
      if (to.is(other.real())) {
        throw Refusal.ofFile(
            Sentence.of(
                "{0}: is the same file as {1}; give each a file of its own",
                to.named(), other.named()));
      }
    }
    declared.add(to);
  }

  private static void tryOut(Destination to) throws Refusal {
    FileBeside.clean(to.folder());
    try (FileBeside trial = FileBeside.of(to.real())) {
      trial.fill(new byte[0]);
    } catch (IOException e) {
      throw Destination.closed(to.named(), FileTrouble.with(e));
    }
  }

  /** Whether two names lead to the same file. */
  public static boolean same(Path one, Path other) {
    try {
      return Destination.of(one).is(other);
    } catch (Refusal e) {
      return false;
    }
  }
}

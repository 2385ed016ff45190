package stafette.keep;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import stafette.words.Refusal;
import stafette.words.Sentence;

/** The scores that the program brings along to be tried on. */
public final class Samples {
  private static final List<String> TITLES =
      List.of("Lantern Run", "Mill Stairs", "Signal Hill", "Weir Gate");

  private Samples() {}

  /** What they are called. */
  public static List<String> titles() {
    return TITLES;
  }

  /**
   * Puts a sample into a folder, which is made if it is not there.
   *
   * @return the sample as a file of the user's own
   * @throws Refusal if it can't be put there
   * @throws IllegalArgumentException if there is no sample of that title
   */
  public static Path put(String title, Path folder) throws Refusal {
    String name = title.toLowerCase(Locale.ROOT).replace(' ', '-') + ".musicxml";
    Path file = folder.resolve(name);
    try (InputStream sample = open(name)) {
      FileDoor.makeFolderOf(file);
      FileDoor.write(file, sample.readAllBytes(), true, RereadProof.BYTES);
      return file;
    } catch (IOException e) {
      throw Refusal.ofFile(Sentence.of("{0}: can't be read ({1})", file, FileTrouble.with(e)));
    }
  }

  private static InputStream open(String name) {
    return Optional.ofNullable(Samples.class.getResourceAsStream("/stafette/samples/" + name))
        .orElseThrow(() -> new IllegalArgumentException("no sample " + name));
  }
}

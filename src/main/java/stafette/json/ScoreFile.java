package stafette.json;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Optional;
import stafette.json.Means.Like;
import stafette.json.Means.Missing;
import stafette.json.Means.Only;
import stafette.json.Means.Told;
import stafette.score.Tremolo;
import stafette.words.Sentence;

/** The score that a document is about. */
@Means("The score.")
public record ScoreFile(
    @Means("Name of the file, or its path as seen from the plan.") String file,
    @Means("Of its bytes, in hexadecimal.") @Like("^[0-9a-f]{64}$") String sha256,
    @Means("How slashes through stems are read; missing if as usual for the instrument.")
        @Only({"measured", "unmeasured"})
        @Missing
        Optional<Tremolo> tremolo,
    @Means("Whether its tempo is assumed, quarter = 120, as the score states none.") @Told
        boolean tempoAssumed) {
  /** A score whose tremolos are read in that way. */
  public static ScoreFile of(String file, String sha256, Tremolo tremolo, boolean tempoAssumed) {
    return new ScoreFile(
        file, sha256, Optional.of(tremolo).filter(how -> how != Tremolo.AS_WRITTEN), tempoAssumed);
  }

  void check(Spot spot) {
    if (!isName(file)) {
      spot.refuse("file", Sentence.of("the name of a file"), file);
    }
  }

  private static boolean isName(String text) {
    try {
      return Path.of(text).getNameCount() >= 0;
    } catch (InvalidPathException e) {
      return false;
    }
  }

  /** How its tremolos are read. */
  public Tremolo reading() {
    return tremolo.orElse(Tremolo.AS_WRITTEN);
  }
}

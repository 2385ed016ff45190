package stafette.keep;

import java.nio.file.Path;
import java.util.Optional;
import stafette.musicxml.read.Document;
import stafette.musicxml.read.MusicXmlReader;
import stafette.musicxml.text.UnreadableScore;
import stafette.score.Score;
import stafette.score.Tremolo;
import stafette.words.Fault;
import stafette.words.Refusal;
import stafette.words.Sentence;

/**
 * A score that has been opened.
 *
 * @param file where it is
 * @param document what it says, and where
 * @param tremolo how tremolos are read
 */
public record OpenScore(Path file, Document document, Tremolo tremolo) {
  /**
   * Opens a score, plain or compressed.
   *
   * @param tremolo how tremolos are read
   * @param cues whether cue notes count as notes
   * @throws Refusal if the file can't be read or is no score
   */
  public static OpenScore open(Path file, Tremolo tremolo, boolean cues) throws Refusal {
    byte[] bytes = FileDoor.read(file);
    try {
      return Fault.at(
          () -> Sentence.of("{0}", file),
          () -> new OpenScore(file, MusicXmlReader.read(bytes, tremolo, cues), tremolo));
    } catch (UnreadableScore e) {
      throw Refusal.ofFile(Sentence.of("{0}: {1}", file, e.inWords()));
    }
  }

  /** What it says with its cue notes; empty if it has none. */
  public Optional<Score> withCues() {
    if (!document.origin().text().contains("<cue")) {
      return Optional.empty();
    }
    try {
      byte[] bytes = document.container().bytes();
      return Optional.of(MusicXmlReader.read(bytes, tremolo, true).score());
    } catch (UnreadableScore e) {
      throw new IllegalStateException("a score that was read before can't be read again", e);
    }
  }

  public Score score() {
    return document.score();
  }
}

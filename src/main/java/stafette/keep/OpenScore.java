package stafette.keep;

import java.nio.file.Path;
import java.util.Optional;
import stafette.check.alone.TremoloByTempo;
import stafette.musicxml.read.Document;
import stafette.musicxml.read.MusicXmlReader;
import stafette.musicxml.text.UnreadableScore;
import stafette.score.Score;
import stafette.score.Tremolo;
import stafette.score.TremoloTrial;
import stafette.words.Fault;
import stafette.words.Refusal;
import stafette.words.Sentence;

/**
 * A score that has been opened.
 *
 * @param file where it is
 * @param document what it says, and where
 * @param tremolo how tremolos are read
 * @param trial what becomes of slashes about which the tempo decides
 */
public record OpenScore(Path file, Document document, Tremolo tremolo, TremoloTrial trial) {
  /**
   * Opens a score, plain or compressed.
   *
   * @param tremolo how tremolos are read
   * @param cues whether cue notes count as notes
   * @param limits what the instruments of its parts can do
   * @throws Refusal if the file can't be read or is no score
   */
  public static OpenScore open(Path file, Tremolo tremolo, boolean cues, LimitsInForce limits)
      throws Refusal {
    TremoloTrial trial = new TremoloByTempo(limits.catalogue()::of);
    byte[] bytes = FileDoor.read(file);
    try {
      return Fault.at(
          () -> Sentence.of("{0}", file),
          () ->
              new OpenScore(
                  file, MusicXmlReader.read(bytes, tremolo, trial, cues), tremolo, trial));
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
      return Optional.of(read(document.container().bytes(), true));
    } catch (UnreadableScore e) {
      throw new IllegalStateException("a score that was read before can't be read again", e);
    }
  }

  /**
   * What another edition of it says, its tremolos read as here.
   *
   * @throws UnreadableScore if it can't be read
   */
  public Score edition(byte[] bytes) throws UnreadableScore {
    return read(bytes, false);
  }

  private Score read(byte[] bytes, boolean cues) throws UnreadableScore {
    return MusicXmlReader.read(bytes, tremolo, trial, cues).score();
  }

  public Score score() {
    return document.score();
  }
}

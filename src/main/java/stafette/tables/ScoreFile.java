package stafette.tables;

import stafette.score.Tremolo;

/**
 * The score that a plan belongs to.
 *
 * @param file its name, or its path as seen from the plan
 * @param sha256 of the file's bytes, in hexadecimal, so that a changed score is noticed
 * @param tremolo how its tremolos are read
 */
public record ScoreFile(String file, String sha256, Tremolo tremolo) {
  /** A score with its tremolos read as written. */
  ScoreFile(String file, String sha256) {
    this(file, sha256, Tremolo.AS_WRITTEN);
  }
}

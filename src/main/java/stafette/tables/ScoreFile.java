package stafette.tables;

/**
 * The score that a plan belongs to.
 *
 * @param file its name, or its path as seen from the plan
 * @param sha256 of the file's bytes, in hexadecimal, so that a changed score is noticed
 */
public record ScoreFile(String file, String sha256) {}

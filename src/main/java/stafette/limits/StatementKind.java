package stafette.limits;

import java.util.Locale;

/**
 * What a source speaks of when it names a rate. That decides when a row of the tables, which is a
 * judgement, contradicts it.
 */
public enum StatementKind {
  /**
   * The mean of many players who were measured. Contradicted where the row's mean lies more than
   * one deviation away.
   */
  MEAN,
  /**
   * What a professional is expected to do: a goal, the tempo of an audition, a break point.
   * Contradicted where 84 of 100 do not manage it.
   */
  RELIED_ON,
  /** What one player does. Contradicted where not even one of a thousand manages it. */
  ONE_PLAYER,
  /** What the repertoire demands. Contradicted where fewer than 50 of 100 manage it. */
  ASKED,
  /** What most do not reach, says an expert. Contradicted where at least 50 of 100 manage it. */
  BEYOND_MOST,
  /**
   * Where one stroke turns into another: no population. Contradicted where 84 of 100 do not reach
   * it with the one, or the other begins above it.
   */
  BORDER;

  /** As the tables write it: "relied on". */
  public String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }
}

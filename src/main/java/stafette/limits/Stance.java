package stafette.limits;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * How a judgement, which is a technique's row in the tables, stands to a statement.
 *
 * @param statement what a source says
 * @param technique the technique that is held against it: of several the one that serves, or comes
 *     nearest
 * @param judged what the row says of it: "84 of 100 reach 8.5"
 * @param remedy what would make the row agree: "raise peak to 9.6"; empty if it does
 */
public record Stance(
    Statement statement, Technique technique, String judged, Optional<String> remedy) {
  /** How an instrument stands to a statement; empty if it is not about that instrument. */
  static Optional<Stance> of(Statement statement, Instrument instrument) {
    List<Technique> techniques = statement.techniquesOf(instrument);
    if (statement.kind() == StatementKind.BORDER) {
      return techniques.size() == 2
          ? Optional.of(
              new Judgement(statement, techniques.get(0)).stanceAtBorder(techniques.get(1)))
          : Optional.empty();
    }
    Comparator<Stance> agreeing = Comparator.comparing(Stance::contradicts);
    return techniques.stream()
        .map(technique -> new Judgement(statement, technique).stance())
        .min(
            (statement.kind() == StatementKind.BEYOND_MOST ? agreeing.reversed() : agreeing)
                .thenComparing(stance -> stance.contradicts() ? -stance.meanPerSecond() : 0));
  }

  /** Whether the row contradicts the statement. */
  public boolean contradicts() {
    return remedy.isPresent();
  }

  /** Whether it does and nobody has said why. */
  public boolean isOpen() {
    return contradicts() && statement.setAside().isEmpty();
  }

  private double meanPerSecond() {
    return statement.figure().mean(technique.limit());
  }
}

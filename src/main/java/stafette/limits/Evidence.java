package stafette.limits;

import java.util.ArrayList;
import java.util.List;

/**
 * All that sources say of limits.
 *
 * @param statements in the order of the tables
 */
public record Evidence(List<Statement> statements) {
  public Evidence {
    statements = List.copyOf(statements);
  }

  /** What is said of an instrument, and how its limits stand to that. */
  public List<Stance> about(Instrument instrument) {
    return statements.stream()
        .flatMap(statement -> Stance.of(statement, instrument).stream())
        .toList();
  }

  /**
   * Where two sources contradict each other over a technique: no mean agrees with both, spread as
   * the technique's row has it. A statement that another technique could serve as well is left out.
   */
  public List<Dispute> disputes(Instrument instrument) {
    List<Dispute> result = new ArrayList<>();
    for (Technique technique : instrument.techniques()) {
      List<Statement> own =
          statements.stream()
              .filter(statement -> isAbout(statement, instrument, technique))
              .toList();
      for (Statement floor : own) {
        for (Statement ceiling : own) {
          if (floor.figure() == ceiling.figure() && exclude(floor, ceiling, technique)) {
            result.add(new Dispute(technique, floor, ceiling, words(floor, ceiling, technique)));
          }
        }
      }
    }
    return List.copyOf(result);
  }

  private static boolean isAbout(Statement statement, Instrument instrument, Technique technique) {
    List<Technique> techniques = statement.techniquesOf(instrument);
    boolean alone = techniques.size() == 1 || statement.kind() == StatementKind.BORDER;
    return alone
        && techniques.indexOf(technique) == 0
        && statement.figure().limits(technique.limit());
  }

  private static boolean exclude(Statement floor, Statement ceiling, Technique technique) {
    return new Judgement(floor, technique).leastMean()
        >= new Judgement(ceiling, technique).greatestMean();
  }

  private static String words(Statement floor, Statement ceiling, Technique technique) {
    return named(floor)
        + " against "
        + named(ceiling)
        + ": players spread by "
        + Judgement.figure(floor.figure().deviation(technique.limit()))
        + ", so half of them reach "
        + Judgement.figure(new Judgement(floor, technique).leastMean())
        + " or more by the one, "
        + Judgement.figure(new Judgement(ceiling, technique).greatestMean())
        + " or less by the other";
  }

  private static String named(Statement statement) {
    return statement.kind().word()
        + " "
        + Judgement.figure(statement.lowPerSecond())
        + " ("
        + statement.source().text()
        + ")";
  }

  /**
   * Two statements of which the tables can follow one at most.
   *
   * @param technique over what
   * @param floor what is said to be possible
   * @param ceiling what is said not to be
   * @param words the two sources, and why they exclude each other
   */
  public record Dispute(Technique technique, Statement floor, Statement ceiling, String words) {}
}

package stafette.cli;

import java.util.OptionalInt;
import picocli.CommandLine.Option;
import stafette.split.Alternatives;
import stafette.words.Refusal;
import stafette.work.SideBySide;
import stafette.work.SplitLine;

/** Options that ask for other plans beside the best one. */
final class AlternativesOptions {
  private static final int MOST = 99;

  @Option(
      names = "--alternatives",
      paramLabel = "N",
      description =
          "Shows up to N other plans side by side, each the best for what it favours; the time of the search is shared.")
  private int alternatives;

  @Option(
      names = "--take",
      paramLabel = "N",
      description = "Writes and keeps alternative N instead of the plan.")
  private int take;

  /** How many to look for; 0 if nobody asks for one. */
  int wanted() throws Refusal {
    if (alternatives < 0 || alternatives > MOST) {
      throw Refusal.wrongUse("--alternatives lies between 0 and " + MOST);
    }
    boolean beyond = alternatives > 0 && take > alternatives;
    if (take < 0 || beyond || take > Alternatives.mostSearches()) {
      throw Refusal.wrongUse(
          "--take names an alternative by its number, from 1 to "
              + (beyond ? alternatives : Alternatives.mostSearches()));
    }
    return Math.max(alternatives, take);
  }

  OptionalInt taken() {
    return take == 0 ? OptionalInt.empty() : OptionalInt.of(take);
  }

  /** The plan that is taken: the best one, unless an alternative is asked for. */
  SplitLine.SplitOutcome taken(SideBySide plans) throws Refusal {
    if (take == 0 || plans.main().plan().isEmpty()) {
      return plans.main();
    }
    if (take > plans.columns().size()) {
      throw Refusal.wrongUse(
          "there is no alternative "
              + take
              + ": "
              + (plans.columns().isEmpty() ? "none" : "only " + plans.columns().size())
              + " found; nothing was written");
    }
    return plans.columns().get(take - 1).outcome();
  }
}

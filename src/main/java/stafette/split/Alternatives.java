package stafette.split;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import stafette.plan.Brief;
import stafette.plan.Favour;
import stafette.plan.Plan;
import stafette.plan.Weights;
import stafette.words.Sentence;

/**
 * Other plans for the same line and players, each the best for what it favours.
 *
 * <p>What the main plan does not favour is favoured in turn: balance, handoffs, strain, blend,
 * players, regular rotations. A plan that is a near-duplicate of the main one or of an alternative
 * before it is none: the same players (segment by segment the same instruments) hand over within a
 * beat of one another, or both cost the same whatever is favoured.
 *
 * @param kept at most as many as asked for, in that order
 * @param dropped what else was searched, and why it gives no alternative
 */
public record Alternatives(List<Alternative> kept, List<Dropped> dropped) {
  public Alternatives {
    kept = List.copyOf(kept);
    dropped = List.copyOf(dropped);
  }

  /**
   * An alternative.
   *
   * @param favour what it favours
   * @param result what the search says, with its cost under its own weights
   * @param plan the plan of the result, under its own weights
   */
  public record Alternative(Favour favour, SplitResult result, Plan plan) {}

  /**
   * No alternative.
   *
   * @param favour what was favoured
   * @param why in words
   */
  public record Dropped(Favour favour, Sentence why) {}

  /** Searches a brief; {@code left} searches are to come at most, this one included. */
  public interface FavourSearch {
    SplitResult best(Brief brief, int left);
  }

  /** How many searches {@link #to} makes at most; {@link #toAny} makes one more. */
  public static int mostSearches() {
    return Favour.values().length - 1;
  }

  /**
   * The alternatives to a plan.
   *
   * @param base weights that favour nothing
   * @param most how many are wanted; no more searches are made once there are so many
   */
  public static Alternatives to(Plan main, Weights base, int most, FavourSearch search) {
    return to(main, others(main), base, most, search);
  }

  /** Alternatives to a plan that need not be the best: what it favours itself comes first. */
  public static Alternatives toAny(Plan main, Weights base, int most, FavourSearch search) {
    List<Favour> favours = new ArrayList<>();
    favours.add(main.brief().rules().favour());
    favours.addAll(others(main));
    return to(main, favours, base, most, search);
  }

  private static List<Favour> others(Plan main) {
    return Arrays.stream(Favour.values())
        .filter(favour -> favour != main.brief().rules().favour())
        .toList();
  }

  private static Alternatives to(
      Plan main, List<Favour> favours, Weights base, int most, FavourSearch search) {
    List<Alternative> kept = new ArrayList<>();
    List<Dropped> dropped = new ArrayList<>();
    for (int i = 0; i < favours.size() && kept.size() < most; i++) {
      Favour favour = favours.get(i);
      SplitResult result = search.best(favouring(main.brief(), favour, base), favours.size() - i);
      Optional<Plan> plan = result.found();
      Optional<Sentence> why =
          plan.map(found -> duplicate(found, main, kept, base)).orElseGet(() -> missing(result));
      why.ifPresentOrElse(
          text -> dropped.add(new Dropped(favour, text)),
          () -> kept.add(new Alternative(favour, result, plan.orElseThrow())));
    }
    return new Alternatives(kept, dropped);
  }

  /** A brief with something else favoured. */
  private static Brief favouring(Brief brief, Favour favour, Weights base) {
    return brief.with(brief.rules().favouring(favour, base));
  }

  private static Optional<Sentence> duplicate(
      Plan plan, Plan main, List<Alternative> kept, Weights base) {
    if (NearDuplicates.are(plan, main, base)) {
      return Optional.of(Sentence.of("nearly the same as the plan"));
    }
    for (int i = 0; i < kept.size(); i++) {
      if (NearDuplicates.are(plan, kept.get(i).plan(), base)) {
        return Optional.of(Sentence.of("nearly the same as alternative {0}", i + 1));
      }
    }
    return Optional.empty();
  }

  private static Optional<Sentence> missing(SplitResult result) {
    return result.match(
        best -> Optional.empty(),
        none -> Optional.of(none.reasons().get(0).text()),
        stopped -> Optional.of(Sentence.of("none was found in the time set")));
  }
}

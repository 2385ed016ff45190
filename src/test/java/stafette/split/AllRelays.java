package stafette.split;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalInt;
import stafette.check.Costing;
import stafette.check.Finding;
import stafette.check.Judge;
import stafette.check.ManyPlans;
import stafette.plan.Brief;
import stafette.plan.Hocket;
import stafette.plan.Pattern;
import stafette.plan.Plan;
import stafette.plan.Segment;

/**
 * Tries every plan of a tiny brief with hockets, locks and several relays: only the order of
 * segments is taken from the planning model, all else is left to the judge. Shares nothing with the
 * search.
 */
final class AllRelays {
  private static final int MOST = 12_000;

  private final Brief brief;

  private AllRelays(Brief brief) {
    this.brief = brief;
  }

  /** A whole plan with its price. */
  private record Priced(Plan plan, int cost) {}

  /**
   * What the cheapest plan costs that the judge lets pass: -1 if there is none; empty if there are
   * too many to try.
   */
  static OptionalInt cheapest(Brief brief) {
    AllRelays all = new AllRelays(brief);
    List<List<Segment>> whole = List.of(List.of());
    for (int relay = 0; relay < brief.lines().size(); relay++) {
      List<List<Segment>> longer = new ArrayList<>();
      List<List<Segment>> chains = all.chains(relay);
      if ((long) whole.size() * chains.size() > MOST) {
        return OptionalInt.empty();
      }
      for (List<Segment> before : whole) {
        for (List<Segment> chain : chains) {
          List<Segment> both = new ArrayList<>(before);
          both.addAll(chain);
          longer.add(both);
        }
      }
      whole = longer;
    }
    return OptionalInt.of(all.cheapestOf(whole));
  }

  private int cheapestOf(List<List<Segment>> plans) {
    ManyPlans all = new ManyPlans(brief);
    return plans.stream()
        .map(segments -> new Plan(brief, segments))
        .map(plan -> new Priced(plan, Costing.of(plan).total()))
        .sorted(Comparator.comparingInt(Priced::cost))
        .filter(priced -> all.hold(priced.plan()))
        .mapToInt(Priced::cost)
        .findFirst()
        .orElse(-1);
  }

  private List<List<Segment>> chains(int relay) {
    List<List<Segment>> found = new ArrayList<>();
    extend(new ArrayList<>(), turns(relay), brief.line(relay).count() - 1, found);
    return found;
  }

  private static void extend(
      List<List<Segment>> chain, List<List<Segment>> turns, int end, List<List<Segment>> found) {
    if (found.size() > MOST) {
      return;
    }
    if (!chain.isEmpty() && chain.get(chain.size() - 1).get(0).last() == end) {
      found.add(chain.stream().flatMap(List::stream).toList());
      return;
    }
    for (List<Segment> turn : turns) {
      Segment next = turn.get(0);
      boolean follows =
          chain.isEmpty()
              ? next.first() == 0
              : isAfter(next, chain.get(chain.size() - 1).get(0))
                  && (chain.size() == 1
                      || next.first() > chain.get(chain.size() - 2).get(0).last());
      if (follows) {
        chain.add(turn);
        extend(chain, turns, end, found);
        chain.remove(chain.size() - 1);
      }
    }
  }

  private static boolean isAfter(Segment next, Segment last) {
    return next.first() > last.first()
        && next.last() > last.last()
        && next.first() <= last.last() + 1;
  }

  /** All turns that fresh players could take. */
  private List<List<Segment>> turns(int relay) {
    List<List<Segment>> turns = new ArrayList<>();
    int count = brief.line(relay).count();
    for (int first = 0; first < count; first++) {
      for (int last = first; last < count; last++) {
        for (Segment one : segments(relay, first, last, Pattern.ALL)) {
          addIfPossible(List.of(one), relay, turns);
        }
        if (brief.rules().hocket() != Hocket.NO && brief.halves(relay).bothPlay(first, last)) {
          for (Segment odd : segments(relay, first, last, Pattern.ODD)) {
            for (Segment even : segments(relay, first, last, Pattern.EVEN)) {
              if (odd.player() != even.player()) {
                addIfPossible(List.of(odd, even), relay, turns);
              }
            }
          }
        }
      }
    }
    return turns;
  }

  private List<Segment> segments(int relay, int first, int last, Pattern pattern) {
    List<Segment> segments = new ArrayList<>();
    for (int player = 0; player < brief.players().size(); player++) {
      for (int way = 0; way < brief.players().get(player).ways().size(); way++) {
        segments.add(new Segment(relay, player, way, first, last, pattern));
      }
    }
    return segments;
  }

  private void addIfPossible(List<Segment> turn, int relay, List<List<Segment>> turns) {
    Brief alone = new Brief(brief.line(relay), brief.players(), brief.rules().with(List.of()));
    List<Segment> first =
        turn.stream()
            .map(s -> new Segment(0, s.player(), s.way(), s.first(), s.last(), s.pattern()))
            .toList();
    boolean possible =
        Judge.judge(new Plan(alone, first)).findings().stream()
            .allMatch(
                f ->
                    f.kind() == Finding.FindingKind.REST
                        || (f.kind() == Finding.FindingKind.SHAPE
                            && f.message().toString().contains("nobody plays")));
    if (possible) {
      turns.add(turn);
    }
  }
}

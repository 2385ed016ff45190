package stafette.split;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stafette.plan.Pattern;
import stafette.plan.Segment;

/** Reads the segments of a plan out of its labels. */
final class PlanReader {
  private PlanReader() {}

  /** The segments, relay by relay, with those who are listed first coming first among equals. */
  static List<Segment> segments(
      CrewSearch.Goal goal, List<RelayOffers> relays, List<PlayerKind> kinds) {
    List<List<Segment>> found = new ArrayList<>();
    int[] last = new int[relays.size()];
    for (int relay = 0; relay < relays.size(); relay++) {
      found.add(new ArrayList<>());
      last[relay] = relays.get(relay).count() - 1;
    }
    Optional<Label> label = Optional.of(goal.last());
    while (label.isPresent()) {
      Label now = label.get();
      Actor actor = relays.get(now.relay()).actors().get(now.actor());
      for (int member = actor.size() - 1; member >= 0; member--) {
        found.get(now.relay()).add(0, segment(now, actor, member, last[now.relay()]));
      }
      last[now.relay()] = now.before();
      label = now.parent();
    }
    return listedFirst(found.stream().flatMap(List::stream).toList(), relays, kinds);
  }

  private static Segment segment(Label label, Actor actor, int member, int last) {
    Pattern pattern = actor.size() == 1 ? Pattern.ALL : member == 0 ? Pattern.ODD : Pattern.EVEN;
    return new Segment(
        label.relay(), label.player(member), actor.way(member), label.first(), last, pattern);
  }

  /** The same plan with players who are alike renamed, so that those listed first come first. */
  private static List<Segment> listedFirst(
      List<Segment> segments, List<RelayOffers> relays, List<PlayerKind> kinds) {
    List<Segment> inTime =
        segments.stream()
            .sorted(
                Comparator.comparingLong(s -> relays.get(s.relay()).line().onsetMicros(s.first())))
            .toList();
    Map<Integer, Integer> names = new LinkedHashMap<>();
    for (PlayerKind kind : kinds) {
      int next = 0;
      for (Segment segment : inTime) {
        if (kind.members().contains(segment.player()) && !names.containsKey(segment.player())) {
          names.put(segment.player(), kind.members().get(next++));
        }
      }
    }
    return segments.stream().map(s -> s.of(names.getOrDefault(s.player(), s.player()))).toList();
  }
}

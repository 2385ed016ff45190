package stafette.split;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import stafette.limits.Instrument;
import stafette.limits.Skill;
import stafette.plan.GivenStretch;

/**
 * What a search without locks has proven about crews: no lock makes a plan cheaper, so it holds
 * with any locks.
 */
final class KnownBounds {
  private final Map<AlikePlayers, Integer> likes = new HashMap<>();
  private final Map<List<Integer>, Integer> proven = new HashMap<>();

  private record AlikePlayers(
      Instrument instrument, List<Skill> skills, List<GivenStretch> busy, boolean isNamed) {}

  /** Numbers kinds, players who are alike having the same whatever locks say of them. */
  List<Integer> numbers(List<PlayerKind> kinds) {
    return kinds.stream()
        .map(PlayerKind::player)
        .map(
            player ->
                new AlikePlayers(
                    player.instrument(), player.skills(), player.busy(), player.isNamed()))
        .map(like -> likes.computeIfAbsent(like, key -> likes.size()))
        .toList();
  }

  /** No plan of such a crew costs less, in points, the players' price apart. */
  int of(Crew crew, List<Integer> numbers) {
    return proven.getOrDefault(members(crew, numbers), 0);
  }

  /** Takes note of what has been proven without locks. */
  void learn(Crew crew, List<Integer> numbers, int bound) {
    proven.merge(members(crew, numbers), bound, Math::max);
  }

  private static List<Integer> members(Crew crew, List<Integer> numbers) {
    List<Integer> members = new ArrayList<>();
    for (int kind = 0; kind < numbers.size(); kind++) {
      for (int i = 0; i < crew.counts().get(kind); i++) {
        members.add(numbers.get(kind));
      }
    }
    members.sort(null);
    return members;
  }
}

package stafette.split;

import java.util.ArrayList;
import java.util.List;

/**
 * Who may take a stretch: a player of one kind in one way, or an ordered pair of them in a hocket,
 * the one who begins first.
 *
 * @param index among all actors
 * @param members one or two
 */
record Actor(int index, List<ActorMember> members) {
  /**
   * A player of a kind in one of its ways.
   *
   * @param kind index among the kinds
   * @param way index among the kind's ways
   */
  record ActorMember(int kind, int way) {}

  Actor {
    members = List.copyOf(members);
  }

  /** All actors: single players first, then pairs if hockets are allowed. */
  static List<Actor> all(List<PlayerKind> kinds, boolean pairs) {
    List<ActorMember> single = new ArrayList<>();
    for (int kind = 0; kind < kinds.size(); kind++) {
      for (int way = 0; way < kinds.get(kind).player().ways().size(); way++) {
        single.add(new ActorMember(kind, way));
      }
    }
    List<Actor> actors = new ArrayList<>();
    single.forEach(member -> actors.add(new Actor(actors.size(), List.of(member))));
    for (ActorMember first : pairs ? single : List.<ActorMember>of()) {
      for (ActorMember second : single) {
        if (first.kind() != second.kind() || kinds.get(first.kind()).members().size() > 1) {
          actors.add(new Actor(actors.size(), List.of(first, second)));
        }
      }
    }
    return List.copyOf(actors);
  }

  int size() {
    return members.size();
  }

  int kind(int member) {
    return members.get(member).kind();
  }

  int way(int member) {
    return members.get(member).way();
  }

  /** How many players of a kind it takes. */
  int needs(int kind) {
    int needs = 0;
    for (ActorMember member : members) {
      needs += member.kind() == kind ? 1 : 0;
    }
    return needs;
  }
}

package stafette.split;

import java.util.ArrayList;
import java.util.List;

/**
 * Who may take a stretch: a player of one kind with one technique, or an ordered pair of them in a
 * hocket, the one who begins first.
 *
 * @param index among all actors
 * @param members one or two
 */
record Actor(int index, List<ActorMember> members) {
  /**
   * A player of a kind with one of its techniques.
   *
   * @param kind index among the kinds
   * @param skill index among the kind's techniques
   */
  record ActorMember(int kind, int skill) {}

  Actor {
    members = List.copyOf(members);
  }

  /** All actors: single players first, then pairs if hockets are allowed. */
  static List<Actor> all(List<PlayerKind> kinds, boolean pairs) {
    List<ActorMember> single = new ArrayList<>();
    for (int kind = 0; kind < kinds.size(); kind++) {
      for (int skill = 0; skill < kinds.get(kind).player().skills().size(); skill++) {
        single.add(new ActorMember(kind, skill));
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

  int skill(int member) {
    return members.get(member).skill();
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

package stafette.json;

import com.google.gson.JsonObject;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * Verifies a plan from its text alone, by the constraints and the cost of the planning model: reads
 * the tree of JSON and knows nothing of the program. Not from the text: which technique is chosen
 * at a stroke, the pedals of the harp, hockets, lines of several relays.
 */
public final class PlanVerifier {
  private final PlanTree tree;

  private PlanVerifier(PlanTree tree) {
    this.tree = tree;
  }

  public static PlanVerifier of(String text) {
    return new PlanVerifier(PlanTree.of(text));
  }

  /** The rules that the plan breaks and the costs that are told wrong; empty if all is well. */
  public List<String> wrong() {
    Leeway leeway = tree.margin() == 0 ? Leeway.NONE : Leeway.FOR;
    List<String> wrong = new ArrayList<>(broken(leeway, tree.margin()));
    wrong.addAll(new PlanCost(tree).wrong());
    return wrong;
  }

  /** The rules that the plan breaks within a margin of tempo, as a share. */
  List<String> broken(Leeway leeway, double margin) {
    List<String> broken = new ArrayList<>();
    shape(broken);
    locks(broken);
    tree.byPlayer()
        .forEach(
            (player, own) ->
                new PlanPart(tree, player, own, true, margin, leeway)
                    .broken()
                    .forEach(
                        rule -> broken.add(rule + " of " + tree.players.get(player).get("name"))));
    return broken;
  }

  private void shape(List<String> broken) {
    List<PlanTree.PlanStretch> all = tree.stretches;
    if (all.get(0).first() != 0 || all.get(all.size() - 1).last() != tree.count() - 1) {
      broken.add("shape: not the whole line");
    }
    for (int k = 1; k < all.size(); k++) {
      PlanTree.PlanStretch leaves = all.get(k - 1);
      PlanTree.PlanStretch enters = all.get(k);
      if (enters.first() <= leaves.first()
          || enters.last() <= leaves.last()
          || enters.player() == leaves.player()
          || (k > 1 && enters.first() <= all.get(k - 2).last())) {
        broken.add("shape at " + enters.first());
      }
      overlap(leaves.last(), enters.first(), broken);
    }
  }

  private void overlap(int last, int first, List<String> broken) {
    int shared = last - first + 1;
    if (shared < 0) {
      broken.add("shape: nobody at " + (last + 1));
    }
    if (shared == 0 && tree.restsBefore(first)) {
      return;
    }
    JsonObject rule = tree.settings.getAsJsonObject("overlap");
    String most = rule.get("max").getAsString();
    boolean tooLong =
        most.equals("beat")
            ? shared > 0 && tree.onset[last] - tree.onset[first] > tree.beat[last] + 5e-7
            : shared > Integer.parseInt(most);
    if (shared < rule.get("min").getAsInt() || tooLong) {
      broken.add("overlap at " + first);
    }
  }

  private void locks(List<String> broken) {
    for (JsonObject lock : PlanTree.objects(tree.json.getAsJsonArray("locks"))) {
      if (!keeps(lock)) {
        broken.add("lock " + lock);
      }
    }
  }

  private boolean keeps(JsonObject lock) {
    int first = lock.get("first").getAsInt();
    int last = lock.get("last").getAsInt();
    List<PlanTree.PlanStretch> all = tree.stretches;
    String keep = lock.get("keep").getAsString();
    if (keep.equals("handoff")) {
      return IntStream.range(1, all.size())
          .anyMatch(k -> all.get(k).first() == first && all.get(k - 1).last() == last);
    }
    List<PlanTree.PlanStretch> own =
        all.stream().filter(s -> s.json().get("player").equals(lock.get("player"))).toList();
    return switch (keep) {
      case "segment" ->
          own.stream()
              .filter(s -> !lock.has("way") || lock.get("way").getAsString().equals(s.way()))
              .anyMatch(s -> s.first() == first && s.last() == last);
      case "in" -> own.stream().anyMatch(s -> s.first() <= first && last <= s.last());
      case "out" -> own.stream().noneMatch(s -> s.first() <= last && first <= s.last());
      default -> throw new IllegalArgumentException(keep);
    };
  }

  /**
   * Whether a plan that costs more than the least that is proven takes turns in one order, all who
   * were named and are able taking part, and costs hardly more.
   */
  public boolean isCheapestOrRotation() {
    int cost = tree.json.get("cost").getAsInt();
    int bound = tree.json.get("bound").getAsInt();
    int limit = Math.max(tree.weights().get("rotation").getAsInt(), tree.stretches.size() - 1);
    return cost == bound || (cost > bound && cost <= bound + limit && isRotation());
  }

  private boolean isRotation() {
    List<Integer> order = tree.stretches.stream().map(PlanTree.PlanStretch::player).toList();
    int places = new HashSet<>(order).size();
    Set<Integer> able = new HashSet<>();
    for (int i = 0; i < tree.players.size(); i++) {
      JsonObject player = tree.players.get(i);
      if (player.get("named").getAsBoolean() && player.get("able").getAsBoolean()) {
        able.add(i);
      }
    }
    return order.containsAll(able)
        && tree.settings.get("favour").getAsString().equals("balance")
        && tree.json.getAsJsonArray("locks").isEmpty()
        && IntStream.range(places, order.size())
            .allMatch(k -> order.get(k).equals(order.get(k - places)));
  }
}

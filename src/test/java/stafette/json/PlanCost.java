package stafette.json;

import com.google.gson.JsonObject;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** What a plan costs, by the weights in its text, held against the points that stand there. */
final class PlanCost {
  private static final double LONGEST_USUAL = 2;
  private static final double HALF = 1e-4;

  private final PlanTree tree;
  private final JsonObject weights;
  private final List<String> wrong = new ArrayList<>();

  PlanCost(PlanTree tree) {
    this.tree = tree;
    this.weights = tree.weights();
  }

  /** The points that are told wrong. */
  List<String> wrong() {
    int total = players();
    for (PlanTree.PlanStretch stretch : tree.stretches) {
      total += stretch(stretch);
    }
    List<JsonObject> handoffs = PlanTree.objects(tree.json.getAsJsonArray("handoffs"));
    for (int k = 1; k < tree.stretches.size(); k++) {
      total += handoff(tree.stretches.get(k - 1), tree.stretches.get(k), handoffs.get(k - 1));
    }
    same("cost", total, tree.json.get("cost").getAsInt());
    return wrong;
  }

  private void same(String what, int expected, int told) {
    if (expected != told) {
      wrong.add(what + ": " + told + " are told and " + expected + " reckoned");
    }
  }

  private int weight(String name) {
    return weights.get(name).getAsInt();
  }

  private int weight(String name, int index) {
    return weights.getAsJsonArray(name).get(index).getAsInt();
  }

  private int players() {
    Set<Integer> used =
        tree.stretches.stream().map(PlanTree.PlanStretch::player).collect(Collectors.toSet());
    int playing = 0;
    int idle = 0;
    for (int i = 0; i < tree.players.size(); i++) {
      JsonObject player = tree.players.get(i);
      boolean named = player.get("named").getAsBoolean();
      boolean able = isHarp(player) ? player.get("able").getAsBoolean() : isAble(i);
      if (able != player.get("able").getAsBoolean()) {
        wrong.add("able: " + player.get("name"));
      }
      playing += used.contains(i) ? weight("used") + (named ? 0 : weight("player")) : 0;
      idle += !used.contains(i) && named && able ? weight("idle") : 0;
    }
    same("players", playing, tree.json.get("playersCost").getAsInt());
    same("idle", idle, tree.json.get("idleCost").getAsInt());
    return playing + idle;
  }

  /** Whether pedals and twin strings decide as well, which are not verified. */
  private static boolean isHarp(JsonObject player) {
    return PlanTree.objects(player.getAsJsonArray("techniques")).stream()
        .anyMatch(technique -> technique.get("act").getAsString().equalsIgnoreCase("string"));
  }

  /** Some bar from first stroke to last, of those with as many as a burst if there are any. */
  private boolean isAble(int player) {
    int fullest = tree.bars().stream().mapToInt(bar -> bar[1] - bar[0] + 1).max().orElseThrow();
    return tree.bars().stream()
        .filter(bar -> bar[1] - bar[0] + 1 >= Math.min(fullest, 5))
        .anyMatch(bar -> plays(player, bar));
  }

  private boolean plays(int player, int[] bar) {
    return tree.players.get(player).getAsJsonObject("ways").keySet().stream()
        .map(way -> new PlanTree.PlanStretch(player, way, bar[0], bar[1], new JsonObject()))
        .map(s -> new PlanPart(tree, player, List.of(s), false, 0, Leeway.NONE))
        .anyMatch(part -> part.broken().isEmpty());
  }

  private int stretch(PlanTree.PlanStretch stretch) {
    JsonObject told = stretch.json().getAsJsonObject("cost");
    double strain = strain(stretch);
    int points = told.get("strain").getAsInt();
    if (Math.abs(points - strain) > 0.5 + HALF) {
      wrong.add("strain: " + points + " are told and " + strain + " reckoned");
    }
    int shortTurn = shortTurn(stretch.first(), stretch.last());
    same("short", shortTurn, told.get("short").getAsInt());
    int outside = 0;
    for (int j = stretch.first(); j <= stretch.last(); j++) {
      outside += isComfortable(stretch.player(), j) ? 0 : weight("register");
    }
    same("register", outside, told.get("register").getAsInt());
    return points + shortTurn + outside;
  }

  private double strain(PlanTree.PlanStretch stretch) {
    PlanFigures figures = tree.figures(stretch.player(), stretch.way());
    double knee = weights.get("knee").getAsDouble();
    double strain = 0;
    for (int j = stretch.first() + 1; j <= stretch.last(); j++) {
      double beyond = (figures.use(stretch.first(), j, 1, Leeway.NONE) - knee) / (1 - knee);
      strain += beyond > 0 ? weights.get("strain").getAsDouble() * beyond * beyond : 0;
    }
    PlanPart part = new PlanPart(tree, stretch.player(), List.of(stretch), false, 0, Leeway.NONE);
    double spent =
        Math.max(
            beyond(part.tirednessOf(stretch), "tiredKnee"),
            beyond(part.breathOf(stretch), "breathKnee"));
    return strain + weights.get("spent").getAsDouble() * spent * spent;
  }

  private double beyond(double share, String knee) {
    double from = weights.get(knee).getAsDouble();
    return Math.max(0, (share - from) / (1 - from));
  }

  private int shortTurn(int first, int last) {
    long usual = Math.round(Math.min(tree.bar[first], LONGEST_USUAL) * 1e6);
    boolean ends = last == tree.count() - 1 || tree.restsBefore(last + 1);
    double to = ends ? tree.end[last] : tree.onset[last];
    long missing = usual - Math.round((to - tree.onset[first]) * 1e6);
    return missing <= 0 ? 0 : (int) ((2L * weight("short") * missing + usual) / (2 * usual));
  }

  private boolean isComfortable(int player, int stroke) {
    var range = tree.players.get(player).get("comfortable");
    return range.isJsonNull()
        || tree.keys.get(stroke).stream()
            .allMatch(
                key ->
                    key < 0
                        || (range.getAsJsonArray().get(0).getAsInt() <= key
                            && key <= range.getAsJsonArray().get(1).getAsInt()));
  }

  private int handoff(
      PlanTree.PlanStretch leaves, PlanTree.PlanStretch enters, JsonObject handoff) {
    JsonObject told = handoff.getAsJsonObject("cost");
    int last = leaves.last();
    int first = enters.first();
    boolean free = first == last + 1 && tree.restsBefore(first);
    String name = tree.players.get(leaves.player()).get("instrument").getAsString();
    JsonObject targets = weights.getAsJsonObject("overlapTargets");
    int target = targets.has(name) ? targets.get(name).getAsInt() : 1;
    int cover = Math.min(tree.number(last, "cover"), weight("coverMost"));
    int[] parts = {
      Math.max(0, weight("handoff") - cover),
      weight("entry", tree.number(first, "rank")),
      weight("landing", tree.number(last, "rank")),
      phrase(first, last),
      weight("overlap") * Math.abs(last - first + 1 - target),
      blend(tree.players.get(leaves.player()), tree.players.get(enters.player()))
    };
    String[] names = {"handoff", "entry", "landing", "phrase", "overlap", "blend"};
    for (int i = 0; i < parts.length; i++) {
      same(names[i], free ? 0 : parts[i], told.get(names[i]).getAsInt());
    }
    return free ? 0 : IntStream.of(parts).sum();
  }

  private int phrase(int first, int last) {
    boolean cuts =
        (tree.says(first, "slurred") && tree.says(first, "slurContinues"))
            || (tree.says(last, "slurred") && tree.says(last, "slurContinues"));
    if (cuts) {
      return weight("phrase", 3);
    }
    int bar = tree.number(last, "phrase");
    boolean onFirst = tree.number(last, "rank") == 0;
    return weight("phrase", !onFirst || bar % 2 != 0 ? 2 : bar % 4 != 0 ? 1 : 0);
  }

  private int blend(JsonObject leaves, JsonObject enters) {
    if (leaves.get("instrument").equals(enters.get("instrument"))) {
      return 0;
    }
    JsonObject distances = weights.getAsJsonObject("blend");
    String names = pair(leaves, enters, "instrument");
    String families = pair(leaves, enters, "family");
    int distance =
        distances.has(names)
            ? distances.get(names).getAsInt()
            : distances.has(families) ? distances.get(families).getAsInt() : weight("blendOther");
    double apart = leaves.get("level").getAsDouble() - enters.get("level").getAsDouble();
    double beyond = Math.abs(apart) - weights.get("decibelFree").getAsDouble();
    return distance
        + (int) Math.floor(Math.max(0, beyond) * weights.get("decibel").getAsDouble() + 0.5);
  }

  private static String pair(JsonObject one, JsonObject other, String member) {
    String first = one.get(member).getAsString();
    String second = other.get(member).getAsString();
    return first.compareTo(second) <= 0 ? first + "|" + second : second + "|" + first;
  }
}

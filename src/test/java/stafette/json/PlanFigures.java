package stafette.json;

import com.google.gson.JsonElement;
import com.google.gson.JsonObject;

/** What each stroke of the line asks of one player in one way, as the text of the plan has it. */
final class PlanFigures {
  private static final double[][] QUOTIENTS = {{1.5, 1.25, 1.1, 1}, {2, 1.5, 1.2, 1}};
  private static final int BURST = 5;

  private final PlanTree tree;
  private final JsonObject player;
  private final JsonObject figures;
  private final boolean byKey;

  PlanFigures(PlanTree tree, JsonObject player, JsonObject figures) {
    this.tree = tree;
    this.player = player;
    this.figures = figures;
    int first = has("technique", 0) ? (int) at("technique", 0) : 0;
    this.byKey =
        player
            .getAsJsonArray("techniques")
            .get(first)
            .getAsJsonObject()
            .get("repeats")
            .getAsString()
            .equals("key");
  }

  boolean has(String member, int stroke) {
    return !figures.getAsJsonArray(member).get(stroke).isJsonNull();
  }

  double at(String member, int stroke) {
    return figures.getAsJsonArray(member).get(stroke).getAsDouble();
  }

  /** What multiplies the use of air. */
  double useOfAir(int stroke) {
    JsonElement use = player.getAsJsonObject("breath").get("use");
    return use.isJsonArray() ? use.getAsJsonArray().get(stroke).getAsDouble() : use.getAsDouble();
  }

  /**
   * Strokes of tiredness, one for itself, if it is one; the first that a player takes always is.
   */
  double loads(int first, int stroke) {
    return stroke == first ? 1 + tree.number(stroke, "graces") : at("loads", stroke);
  }

  /** The stroke before in the chain of strokes of tongue, bow or key; -1 if there is none. */
  private int strokeBefore(int first, int stroke) {
    if (stroke <= first || !has("needs", stroke)) {
      return -1;
    }
    for (int k = stroke - 1; k > first; k--) {
      if (byKey ? tree.keys.get(k).equals(tree.keys.get(stroke)) : has("needs", k)) {
        return k;
      }
    }
    return !byKey || tree.keys.get(first).equals(tree.keys.get(stroke)) ? first : -1;
  }

  private int before(boolean moving, int first, int stroke) {
    return moving ? (stroke > first ? stroke - 1 : -1) : strokeBefore(first, stroke);
  }

  /** Seconds that a stroke needs after the one before it in the chain. */
  private double need(boolean moving, int stroke, Leeway leeway) {
    String member = moving ? "moving" : "needs";
    return has(member, stroke) ? leeway.need(at(member, stroke)) : 0;
  }

  /**
   * The largest share of the time of one to four gaps that their strokes need.
   *
   * @param shorter what gaps are multiplied with
   */
  double use(int first, int stroke, double shorter, Leeway leeway) {
    double use = 0;
    for (boolean moving : new boolean[] {false, true}) {
      for (int gaps = 1; gaps < BURST; gaps++) {
        double need = 0;
        int at = stroke;
        for (int gap = 0; gap < gaps && at >= 0; gap++) {
          int from = before(moving, first, at);
          if (from >= 0) {
            int takers = (int) at("takers", at);
            need += need(moving, at, leeway) / QUOTIENTS[takers - 1][gaps - 1];
          }
          at = from;
        }
        if (at >= 0) {
          use = Math.max(use, need / ((tree.onset[stroke] - tree.onset[at]) * shorter));
        }
      }
    }
    return use;
  }

  /** The same of the whole chains of a turn of fewer strokes than a burst, without relief. */
  double useOfShortTurn(int first, int last, double shorter, Leeway leeway) {
    boolean joins =
        (first > 0 && !tree.restsBefore(first))
            || (last < tree.count() - 1 && !tree.restsBefore(last + 1));
    double use = 0;
    for (boolean moving : new boolean[] {false, true}) {
      for (int j = first + 1; joins && last - first + 1 < BURST && j <= last; j++) {
        double need = 0;
        int at = j;
        for (int from = before(moving, first, at); from >= 0; from = before(moving, first, at)) {
          need += need(moving, at, leeway);
          at = from;
        }
        if (at < j && isLastOfChain(moving, first, last, j)) {
          use = Math.max(use, need / ((tree.onset[j] - tree.onset[at]) * shorter));
        }
      }
    }
    return use;
  }

  private boolean isLastOfChain(boolean moving, int first, int last, int stroke) {
    for (int later = stroke + 1; later <= last; later++) {
      if (before(moving, first, later) == stroke) {
        return false;
      }
    }
    return true;
  }
}

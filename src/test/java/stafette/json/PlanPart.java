package stafette.json;

import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * All that one player has, stroke by stroke by the rules of the planning model, in plain doubles:
 * bursts, tiredness, breath and rest, with the margin of tempo reckoned in. Gaps, rests and
 * silences are multiplied by one less the margin, sounds by one more, each span by itself.
 */
final class PlanPart {
  private static final double HALF_MICRO = 5e-7;

  private final PlanTree tree;
  private final JsonObject player;
  private final List<PlanTree.PlanStretch> own;
  private final List<JsonObject> given;
  private final double shorter;
  private final double longer;
  private final Leeway leeway;
  private final List<String> broken = new ArrayList<>();

  /** Strokes that tire and sounds, of the line or given, in order of their onset. */
  private record Stint(
      double from, double to, boolean given, List<Load> loads, List<Sound> sounds) {}

  private record Load(
      double onset, double strokes, double sustained, double stamina, double back) {}

  private record Sound(double onset, double end, double use) {}

  PlanPart(
      PlanTree tree,
      int player,
      List<PlanTree.PlanStretch> own,
      boolean withGiven,
      double margin,
      Leeway leeway) {
    this.tree = tree;
    this.player = tree.players.get(player);
    this.own = own;
    this.given = withGiven ? PlanTree.objects(this.player.getAsJsonArray("busy")) : List.of();
    this.shorter = 1 - margin;
    this.longer = 1 + margin;
    this.leeway = leeway;
  }

  private PlanPart(PlanPart other, Leeway leeway) {
    this.tree = other.tree;
    this.player = other.player;
    this.own = other.own;
    this.given = other.given;
    this.shorter = other.shorter;
    this.longer = other.longer;
    this.leeway = leeway;
  }

  /** The rules that the part breaks, by name. */
  List<String> broken() {
    for (PlanTree.PlanStretch stretch : own) {
      alone(stretch);
    }
    List<Stint> stints = stints(true);
    PlanPart alone = new PlanPart(this, leeway.opposite());
    compare("tiredness", tiredness(stints), alone.tiredness(alone.stints(false)), stints);
    if (!player.get("breath").isJsonNull()) {
      compare("breath", breath(stints), alone.breath(alone.stints(false)), stints);
    }
    rests(stints);
    return broken;
  }

  private void alone(PlanTree.PlanStretch stretch) {
    PlanFigures figures = tree.figures(stretch.player(), stretch.way());
    for (int j = stretch.first(); j <= stretch.last(); j++) {
      if (!figures.has("technique", j)) {
        broken.add("technique");
        return;
      }
      JsonElement range = player.get("range");
      if (!range.isJsonNull() && !within(j, range)) {
        broken.add("range");
      }
      if (leeway.isBeyond(figures.use(stretch.first(), j, shorter, leeway))) {
        broken.add("burst at " + j);
      }
    }
    if (leeway.isBeyond(figures.useOfShortTurn(stretch.first(), stretch.last(), shorter, leeway))) {
      broken.add("turn");
    }
  }

  private boolean within(int stroke, JsonElement range) {
    int low = range.getAsJsonArray().get(0).getAsInt();
    int high = range.getAsJsonArray().get(1).getAsInt();
    return tree.keys.get(stroke).stream().allMatch(key -> key < 0 || (low <= key && key <= high));
  }

  private List<Stint> stints(boolean withOwn) {
    List<Stint> stints = new ArrayList<>();
    for (PlanTree.PlanStretch stretch : withOwn ? own : List.<PlanTree.PlanStretch>of()) {
      stints.add(stint(stretch));
    }
    given.forEach(passage -> stints.add(stint(passage)));
    stints.sort(Comparator.comparingDouble(Stint::from));
    return stints;
  }

  private Stint stint(PlanTree.PlanStretch stretch) {
    PlanFigures figures = tree.figures(stretch.player(), stretch.way());
    List<Load> loads = new ArrayList<>();
    List<Sound> sounds = new ArrayList<>();
    boolean blows = !player.get("breath").isJsonNull();
    for (int j = stretch.first(); j <= stretch.last(); j++) {
      if (figures.has("technique", j) && figures.loads(stretch.first(), j) > 0) {
        loads.add(
            new Load(
                tree.onset[j],
                figures.loads(stretch.first(), j),
                leeway.sustained(figures.at("sustained", j)),
                figures.at("stamina", j),
                leeway.recovery(figures.at("recovery", j))));
      }
      double end = j < stretch.last() ? Math.min(tree.end[j], tree.onset[j + 1]) : tree.end[j];
      sounds.add(new Sound(tree.onset[j], end, blows ? figures.useOfAir(j) : 1));
    }
    return new Stint(tree.onset[stretch.first()], tree.end[stretch.last()], false, loads, sounds);
  }

  private Stint stint(JsonObject passage) {
    double from = passage.get("from").getAsDouble();
    double to = passage.get("to").getAsDouble();
    List<Load> loads = new ArrayList<>();
    double stamina = passage.get("stamina").getAsDouble();
    for (JsonElement onset : passage.getAsJsonArray("strokes")) {
      if (stamina > 0) {
        loads.add(
            new Load(
                onset.getAsDouble(),
                1,
                leeway.sustained(passage.get("sustained").getAsDouble()),
                stamina,
                leeway.recovery(passage.get("recovery").getAsDouble())));
      }
    }
    return new Stint(from, to, true, loads, List.of(new Sound(from, to, 1)));
  }

  private List<double[]> tiredness(List<Stint> stints) {
    List<double[]> readings = new ArrayList<>();
    double tired = 0;
    double before = Double.NEGATIVE_INFINITY;
    for (Stint stint : stints) {
      double[] each = new double[stint.loads.size()];
      for (int k = 0; k < each.length; k++) {
        Load load = stint.loads.get(k);
        double gap = Math.max(0, load.onset - before) * shorter;
        double change = Math.max((1 - load.sustained * gap) / load.stamina, -gap / load.back);
        boolean first = before == Double.NEGATIVE_INFINITY;
        tired = (first ? 0 : Math.max(0, tired + change)) + (load.strokes - 1) / load.stamina;
        each[k] = tired;
        tired = stint.given ? Math.min(1, tired) : tired;
        before = load.onset;
      }
      readings.add(each);
    }
    return readings;
  }

  private List<double[]> breath(List<Stint> stints) {
    JsonObject lungs = player.getAsJsonObject("breath");
    double capacity = lungs.get("capacity").getAsDouble();
    double least = lungs.get("catch").getAsDouble();
    double full = lungs.get("full").getAsDouble();
    List<Sound> all = stints.stream().flatMap(stint -> stint.sounds.stream()).toList();
    List<double[]> readings = new ArrayList<>();
    double spent = 0;
    int next = 0;
    for (Stint stint : stints) {
      double[] each = new double[stint.sounds.size()];
      for (int k = 0; k < each.length; k++) {
        Sound sound = stint.sounds.get(k);
        next++;
        double after = next < all.size() ? all.get(next).onset : Double.POSITIVE_INFINITY;
        double end = Math.min(sound.end, Math.max(sound.onset, after));
        spent += (end - sound.onset) * longer * sound.use / capacity;
        each[k] = spent;
        spent = stint.given ? Math.min(1, spent) : spent;
        double silence = Math.max(0, after - end);
        spent =
            leeway.allowsBreath(silence * shorter, least)
                ? Math.max(0, spent - silence * shorter / full)
                : spent + silence * longer * sound.use / capacity;
      }
      readings.add(each);
    }
    return readings;
  }

  /** In given passages nothing counts that would be so without the plan. */
  private void compare(
      String what, List<double[]> readings, List<double[]> without, List<Stint> stints) {
    int passage = 0;
    for (int i = 0; i < readings.size(); i++) {
      boolean isGiven = stints.get(i).given;
      for (int k = 0; k < readings.get(i).length; k++) {
        boolean alone = isGiven && leeway.opposite().isBeyond(without.get(passage)[k]);
        if (leeway.isBeyond(readings.get(i)[k]) && !alone) {
          broken.add(what);
          return;
        }
      }
      passage += isGiven ? 1 : 0;
    }
  }

  private void rests(List<Stint> stints) {
    double ready = player.get("ready").getAsDouble();
    double ended = Double.NEGATIVE_INFINITY;
    double change = 0;
    for (Stint stint : stints) {
      if (!stint.given) {
        double rest = (stint.from - ended) * shorter;
        if (rest < -HALF_MICRO || !leeway.reaches(rest, Math.max(ready, change))) {
          broken.add("rest");
        }
        for (JsonObject passage : given) {
          if (stint.from < passage.get("to").getAsDouble() - HALF_MICRO
              && passage.get("from").getAsDouble() < stint.to - HALF_MICRO) {
            broken.add("busy");
          }
        }
      }
      if (stint.to >= ended) {
        ended = stint.to;
        change = stint.given ? changeAfter(stint) : 0;
      }
    }
  }

  private double changeAfter(Stint stint) {
    for (JsonObject passage : given) {
      if (passage.get("from").getAsDouble() == stint.from && passage.has("readyAfter")) {
        return passage.get("readyAfter").getAsDouble();
      }
    }
    return 0;
  }

  /** Tiredness at the end of one stretch of a player who came fresh. */
  double tirednessOf(PlanTree.PlanStretch stretch) {
    double[] each = tiredness(List.of(stint(stretch))).get(0);
    return each[each.length - 1];
  }

  /** The share of air spent at the end of one stretch of a player who came fresh. */
  double breathOf(PlanTree.PlanStretch stretch) {
    if (player.get("breath").isJsonNull()) {
      return 0;
    }
    double[] each = breath(List.of(stint(stretch))).get(0);
    return each[each.length - 1];
  }
}

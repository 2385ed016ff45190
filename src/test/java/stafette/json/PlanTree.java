package stafette.json;

import com.google.gson.JsonArray;
import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import java.util.stream.StreamSupport;

/** What the text of a plan says of one line, times in seconds; read without the program. */
final class PlanTree {
  final JsonObject json;
  final double[] onset;
  final double[] end;
  final double[] beat;
  final double[] bar;
  final List<JsonObject> strokes;
  final List<Set<Integer>> keys = new ArrayList<>();
  final List<JsonObject> players;
  final List<PlanStretch> stretches;
  final JsonObject settings;

  /**
   * Strokes in a row that one player takes.
   *
   * @param player index
   * @param way plain or twins
   */
  record PlanStretch(int player, String way, int first, int last, JsonObject json) {}

  private PlanTree(JsonObject json) {
    this.json = json;
    settings = json.getAsJsonObject("settings");
    strokes = objects(json.getAsJsonObject("line").getAsJsonArray("strokes"));
    players = objects(json.getAsJsonArray("players"));
    onset = each(stroke -> stroke.get("seconds").getAsDouble());
    end = each(s -> s.get("seconds").getAsDouble() + s.get("sounds").getAsDouble());
    beat = each(stroke -> stroke.get("beatSeconds").getAsDouble());
    bar = each(stroke -> stroke.get("barSeconds").getAsDouble());
    for (JsonObject stroke : strokes) {
      Set<Integer> sounding = new HashSet<>();
      stroke.getAsJsonArray("midi").forEach(key -> sounding.add(key.getAsInt()));
      keys.add(sounding);
    }
    stretches =
        objects(json.getAsJsonArray("segments")).stream()
            .map(this::stretch)
            .sorted(Comparator.comparingInt(PlanStretch::first))
            .toList();
  }

  /**
   * @throws UnsupportedOperationException for more than one relay and for hockets, of which the
   *     text does not say all
   */
  static PlanTree of(String text) {
    return of(JsonParser.parseString(text).getAsJsonObject());
  }

  static PlanTree of(JsonObject json) {
    PlanTree tree = new PlanTree(json);
    boolean pairs =
        tree.stretches.stream()
            .anyMatch(each -> !each.json.get("pattern").getAsString().equals("all"));
    if (json.getAsJsonArray("relays").size() != 1 || pairs) {
      throw new UnsupportedOperationException("one line, each stroke by whoever has it");
    }
    return tree;
  }

  private PlanStretch stretch(JsonObject json) {
    String name = json.get("player").getAsString();
    int player =
        IntStream.range(0, players.size())
            .filter(i -> players.get(i).get("name").getAsString().equals(name))
            .findFirst()
            .orElseThrow();
    return new PlanStretch(
        player,
        json.get("way").getAsString(),
        json.get("first").getAsInt(),
        json.get("last").getAsInt(),
        json);
  }

  private double[] each(ToDoubleFunction<JsonObject> figure) {
    return strokes.stream().mapToDouble(figure).toArray();
  }

  static List<JsonObject> objects(JsonArray array) {
    return StreamSupport.stream(array.spliterator(), false)
        .map(JsonElement::getAsJsonObject)
        .toList();
  }

  /** What each player takes. */
  Map<Integer, List<PlanStretch>> byPlayer() {
    Map<Integer, List<PlanStretch>> byPlayer = new TreeMap<>();
    for (PlanStretch stretch : stretches) {
      byPlayer.computeIfAbsent(stretch.player(), player -> new ArrayList<>()).add(stretch);
    }
    return byPlayer;
  }

  int count() {
    return strokes.size();
  }

  boolean says(int stroke, String member) {
    return strokes.get(stroke).get(member).getAsBoolean();
  }

  int number(int stroke, String member) {
    return strokes.get(stroke).get(member).getAsInt();
  }

  /** Whether the line is silent before a stroke for at least the beat of the stroke before it. */
  boolean restsBefore(int stroke) {
    return stroke > 0 && onset[stroke] - end[stroke - 1] >= beat[stroke - 1] - 3e-6;
  }

  double margin() {
    return settings.get("margin").getAsDouble() / 100;
  }

  JsonObject weights() {
    return settings.getAsJsonObject("weights");
  }

  /** What each stroke asks of a player in a way, and what kind of chains gaps run through. */
  PlanFigures figures(int player, String way) {
    JsonObject who = players.get(player);
    JsonObject ways = who.getAsJsonObject("ways").getAsJsonObject(way);
    return new PlanFigures(this, who, ways);
  }

  /** The first and the last stroke of each bar in which the line has any. */
  List<int[]> bars() {
    List<int[]> bars = new ArrayList<>();
    for (int j = 0; j < count(); j++) {
      JsonElement now = strokes.get(j).get("bar");
      if (j == 0 || !now.equals(strokes.get(j - 1).get("bar"))) {
        bars.add(new int[] {j, j});
      }
      bars.get(bars.size() - 1)[1] = j;
    }
    return bars;
  }
}

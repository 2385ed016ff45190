package stafette.trials;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import stafette.score.Line;
import stafette.time.Bar;
import stafette.time.Position;

/**
 * Round trips: a score is checked, the command of a passage is pasted, what it writes is read, each
 * part has its share and all else is as it was; it is checked, and pasted again nothing changes, or
 * it is said why. With new parts, parts of the score and the line's own, pickups, bar numbers that
 * repeat, and all that can become of the line.
 */
class RoundTripTest {
  private static final List<String> SOURCES = List.of("keep", "cue", "remove");
  private static final int SCORES = Integer.getInteger("roundtrips", 45);

  /** Beyond the first ones only what was not met yet is tried. */
  private static final int MOST_SCORES = 6 * SCORES;

  private static final long SEED = Long.getLong("roundtrips.seed", 1) << 32;

  @TempDir private Path folder = Path.of("");

  @ParameterizedTest
  @ValueSource(strings = {"lantern-run", "signal-hill", "mill-stairs", "weir-gate"})
  void the_passages_of_a_sample(String sample) throws Exception {
    List<String> broken = new ArrayList<>();
    Path score = Path.of("samples", sample + ".musicxml");
    int at = 0;
    for (RoundTrip.Found found : new RoundTrip(folder, score, "keep", broken).check()) {
      if (at < SOURCES.size()) {
        new RoundTrip(folder, score, SOURCES.get(at++), broken)
            .split(found, List.of("--time", "1"));
      }
    }
    assertTrue(at > 0);
    assertEquals(List.of(), broken);
  }

  /** Who is asked to play. */
  private enum Company {
    NEW,
    OF_THE_SCORE,
    OWN_AND_NEW,
    NEW_AND_OWN,
    OWN_AND_OTHERS;

    List<String> of(String own, String other) {
      return switch (this) {
        case NEW -> List.of("Ada", "Bo");
        case OF_THE_SCORE -> List.of(other, "Ada");
        case OWN_AND_NEW -> List.of(own, "Ada");
        case NEW_AND_OWN -> List.of("Ada", own);
        case OWN_AND_OTHERS -> List.of(own, "Bo", other);
      };
    }
  }

  @Test
  void generated_scores() throws Exception {
    Map<String, Integer> met = new TreeMap<>();
    Set<String> broken = new LinkedHashSet<>();
    for (int i = 0; i < MOST_SCORES; i++) {
      String source = SOURCES.get(i % 3);
      Company company = Company.values()[i / 3 % 5];
      if (i >= SCORES && met.containsKey(source + " " + company)) {
        continue;
      }
      long seed = SEED + i;
      Node score = SmallScore.of(new Dice(seed));
      if (i % 4 == 0) {
        repeatNumbers(score);
      }
      List<String> own = new ArrayList<>();
      if (trip(score, source, company, own) == RoundTrip.Came.WRITTEN) {
        traits(score, source, company).forEach(trait -> met.merge(trait, 1, Integer::sum));
      }
      own.forEach(
          what -> broken.add("seed " + seed + ", " + source + ", " + company + ": " + what));
    }
    assertEquals("", broken.stream().limit(5).collect(Collectors.joining("\n\n")));
    for (String trait : List.of("keep", "cue", "remove", "pickup", "numbers repeat")) {
      assertTrue(met.getOrDefault(trait, 0) > 0, trait + " is not in " + met);
    }
    for (Company each : Company.values()) {
      for (String source : SOURCES) {
        assertTrue(
            met.getOrDefault(source + " " + each, 0) > 0,
            source + " " + each + " is not in " + met);
      }
    }
  }

  private RoundTrip.Came trip(Node score, String source, Company company, List<String> broken)
      throws Exception {
    Path file = folder.resolve("score.musicxml");
    Files.write(file, score.document().getBytes(StandardCharsets.UTF_8));
    RoundTrip trip = new RoundTrip(folder, file, source, broken);
    List<RoundTrip.Found> all = trip.check();
    if (all.isEmpty()) {
      return RoundTrip.Came.NOTHING;
    }
    RoundTrip.Found found = all.get(0);
    List<String> players = company.of(found.name(), other(score, found.name()));
    List<String> command = new ArrayList<>(found.command());
    command.addAll(List.of("--players", String.join(", ", players)));
    List<String> more = new ArrayList<>(List.of("--time", "5", "--players-file"));
    more.add(players(found.name(), players));
    more.addAll(locks(trip.line(found), players));
    return trip.split(new RoundTrip.Found(found.passage(), command), more);
  }

  private static String other(Node score, String own) {
    return score.all("part-name").stream()
        .map(Node::text)
        .filter(name -> !name.equals(own))
        .findFirst()
        .orElse("Clo");
  }

  /** The first player in the first third of the line, the last one in the last third. */
  private static List<String> locks(Line line, List<String> players) {
    List<String> locks = new ArrayList<>();
    for (int i = 0; i < players.size() && line.count() > 6; i += players.size() - 1) {
      Position at = line.stroke(i == 0 ? line.count() / 3 : line.count() * 2 / 3).onset();
      Bar bar = line.bars().at(at);
      String place = "#" + (bar.index() + 1) + "." + bar.nameOf(at).beatText();
      locks.addAll(List.of("--lock", players.get(i) + ": " + place + "-" + place));
    }
    return locks;
  }

  /** Players who are fast enough for anything, on what the line's own instrument is like. */
  private String players(String own, List<String> names) throws IOException {
    String instrument = own.contains("Drum") ? "snare drum" : "piano";
    String each =
        names.stream()
            .map(
                name ->
                    """
                    {"name": "%s", "instrument": "%s", "techniques": [{"name": "alternate hands",
                     "peak": 80, "moving": 80, "sustained": 80, "stamina": 80}]}"""
                        .formatted(name, instrument))
            .collect(Collectors.joining(", "));
    Path file = folder.resolve("players.json");
    Files.writeString(
        file, "{\"format\": \"stafette-players\", \"version\": 1, \"players\": [" + each + "]}");
    return file.toString();
  }

  /** As if each two bars were a movement. */
  private static void repeatNumbers(Node score) {
    for (Node part : score.all("part")) {
      int number = 0;
      for (Node measure : part.children()) {
        measure.attributes().removeIf(attribute -> attribute.name().equals("number"));
        measure.with("number", Integer.toString(1 + number++ % 2));
      }
    }
  }

  private static List<String> traits(Node score, String source, Company company) {
    List<String> traits = new ArrayList<>(List.of(source, source + " " + company));
    List<String> numbers =
        score.all("part").get(0).children().stream()
            .flatMap(measure -> measure.attribute("number").stream())
            .toList();
    traits.addAll(numbers.contains("0") ? List.of("pickup") : List.of());
    traits.addAll(
        Set.copyOf(numbers).size() < numbers.size() ? List.of("numbers repeat") : List.of());
    return traits;
  }
}

package stafette.bench;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.zip.CRC32;
import stafette.limits.Capability;
import stafette.limits.Skill;
import stafette.plan.Brief;
import stafette.plan.Player;
import stafette.score.Line;
import stafette.split.MiddleBriefs;

/**
 * Briefs that are hard to search, published as tables in {@code src/test/resources/stafette/
 * instances}, so that another search can be held against the same ones.
 */
final class Instances {
  static final Path FOLDER = Path.of("src", "test", "resources", "stafette", "instances");

  private static final int BARS = 64;
  private static final int MIDDLE = 100;
  private static final List<Double> SHARES = List.of(0.8, 0.85, 0.9, 0.95, 1.0, 1.05);
  private static final List<Double> LOADS =
      List.of(0.8, 0.85, 0.9, 0.95, 1.0, 1.05, 1.1, 1.15, 1.2, 1.25, 1.3, 1.4);

  private Instances() {}

  /**
   * One of them.
   *
   * @param name such as "load 1.15 64 x 3"
   */
  record Instance(String name, Brief brief) {
    @Override
    public String toString() {
      return name;
    }

    /** As it stands in the table of rosters. */
    String row() {
      List<String> columns = new ArrayList<>();
      columns.add(name);
      columns.add(Integer.toString(brief.line().count() / 12));
      columns.add(Integer.toString(brief.lines().size()));
      columns.add(brief.players().get(0).isNamed() ? "named" : "proposed");
      brief.players().forEach(player -> columns.add(figures(player)));
      return String.join(",", columns);
    }

    /** As it stands in the table of middle briefs. */
    String marked() {
      return "%s,%d,%d,%08x"
          .formatted(name, brief.line().count(), brief.players().size(), checksum(brief));
    }
  }

  /** Two, three and four players alike, near what they can do together: 36 by share, 36 by load. */
  static List<Instance> nearCapacity() {
    List<Instance> all = new ArrayList<>();
    for (int players = 2; players <= 4; players++) {
      for (double share : SHARES) {
        for (int stamina : new int[] {20, 60}) {
          String name = "share %s stamina %d %d x %d".formatted(share, stamina, BARS, players);
          all.add(new Instance(name, Rosters.sharing(BARS, players, share, stamina)));
        }
      }
    }
    for (int players = 2; players <= 4; players++) {
      for (double load : LOADS) {
        String name = "load %s %d x %d".formatted(load, BARS, players);
        all.add(new Instance(name, Rosters.atCapacity(BARS, players, load)));
      }
    }
    return all;
  }

  /** Always two of four who are alike, at eight tenths of what they can do. */
  static Instance twoOn() {
    return new Instance("two on 32 x 4", Rosters.alwaysOn(32, 4, 2, 0.8));
  }

  /** Four players, all unlike. */
  static Instance mixed() {
    return new Instance("mixed 64 x 4", Rosters.mixed(BARS, 4));
  }

  /** All whose players and lines a row of figures tells. */
  static List<Instance> ofRosters() {
    List<Instance> all = new ArrayList<>(nearCapacity());
    all.add(twoOn());
    all.add(mixed());
    return all;
  }

  /** The first hundred random briefs of middle size; a name is a seed. */
  static List<Instance> middle() {
    List<Instance> all = new ArrayList<>();
    for (int seed = 1; seed <= MIDDLE; seed++) {
      all.add(new Instance(Integer.toString(seed), MiddleBriefs.of(seed)));
    }
    return all;
  }

  /** The rows of a table without its comments and its head. */
  static List<String> rows(String file) throws IOException {
    return Files.readAllLines(FOLDER.resolve(file)).stream()
        .filter(row -> !row.startsWith("#"))
        .skip(1)
        .toList();
  }

  private static String figures(Player player) {
    Capability own = player.skills().get(0).capability();
    return "%s %d %d %d %d"
        .formatted(
            player.instrument().name(),
            own.peakMilli(),
            own.sustainedMilli(),
            own.staminaMilli(),
            own.recoveryMillis());
  }

  /** Of all that does not depend on the order in which maps are gone through. */
  private static long checksum(Brief brief) {
    StringBuilder text = new StringBuilder();
    Line line = brief.line();
    for (int j = 0; j < line.count(); j++) {
      text.append(line.onsetMicros(j)).append(' ').append(line.endMicros(j)).append(' ');
      text.append(Arrays.toString(line.stroke(j).keys().stream().sorted().toArray()));
      text.append(line.cover(j)).append(line.stroke(j).slurred()).append('\n');
    }
    for (Player player : brief.players()) {
      for (Skill skill : player.skills()) {
        text.append(skill.capability()).append('\n');
      }
      text.append(player.instrument().name()).append(player.isNamed()).append(player.busy());
    }
    text.append(brief.rules().overlap()).append(brief.rules().readySeconds());
    text.append(brief.rules().favour()).append(brief.rules().margin());
    CRC32 crc = new CRC32();
    crc.update(text.toString().getBytes(StandardCharsets.UTF_8));
    return crc.getValue();
  }
}

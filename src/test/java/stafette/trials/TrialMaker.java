package stafette.trials;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Makes trials by their seeds. */
final class TrialMaker {
  private static final String PLAN = "plan.json";
  private static final String PLAYERS =
      """
      {"format": "stafette-players", "version": 1, "comment": "", "players": [
        {"name": "Ada", "instrument": "flute", "level": 90,
         "breath": {"capacity": 10, "catch": 0.5, "full": 1.5},
         "techniques": [{"name": "double tonguing", "peak": 15, "sustained": 14, "stamina": 20,
           "recovery": 5, "moving": 12}]},
        {"name": "Bo", "instrument": "violin", "seat": {"across": -2, "back": 3},
         "techniques": [{"name": "détaché", "peak": 10.5, "sustained": 8}]}]}
      """;

  private final Samples samples = new Samples();
  private final Path folder;

  /** With a folder to prepare trials in. */
  TrialMaker(Path folder) {
    this.folder = folder;
  }

  Trial of(long seed) {
    Dice dice = new Dice(seed);
    int kind = dice.between(0, 99);
    if (kind < 78) {
      return ofScore(dice);
    }
    if (kind < 88) {
      return ofPlan(dice);
    }
    return kind < 94 ? ofTables(dice) : ofPlayers(dice);
  }

  private Trial ofScore(Dice dice) {
    Node score = score(dice);
    ScoreSpoiler.spoil(score, dice.of(0, 0, 1, 1, 2, 3, 6), dice);
    byte[] bytes =
        dice.in100(88)
            ? BytesSpoiler.utf8(score.document())
            : BytesSpoiler.spoilt(score.document(), dice);
    boolean packed = dice.in100(8);
    String file = packed ? "score.mxl" : "score.musicxml";
    return Trial.of(
        Map.of(file, packed ? Packed.of(bytes, dice) : bytes),
        new CommandMaker(dice, score, file).forScore());
  }

  private Node score(Dice dice) {
    return dice.in100(85) ? SmallScore.of(dice) : samples.extract(dice);
  }

  private Trial ofPlan(Dice dice) {
    Node score = SmallScore.of(dice);
    String file = "score.musicxml";
    Trial keeping =
        Trial.of(
            Map.of(file, BytesSpoiler.utf8(score.document())),
            new CommandMaker(dice, score, file).keeping(PLAN));
    keeping.run(folder);
    if (!Files.exists(folder.resolve(PLAN))) {
      return keeping;
    }
    String plan = text(folder.resolve(PLAN));
    if (dice.in100(15)) {
      ScoreSpoiler.spoil(score, 1, dice);
    }
    return Trial.of(
        Map.of(
            file,
            BytesSpoiler.utf8(score.document()),
            PLAN,
            BytesSpoiler.utf8(JsonSpoiler.spoilt(plan, dice.of(0, 1, 1, 2, 4), dice))),
        new CommandMaker(dice, score, file).forPlan(PLAN));
  }

  private Trial ofTables(Dice dice) {
    Map<String, byte[]> files = new TreeMap<>();
    for (String table : List.of("instruments", "techniques", "factors", "blend", "weights")) {
      if (dice.in100(60)) {
        String name = "tables/" + table + ".csv";
        files.put(
            name,
            TableSpoiler.spoilt(
                text(Path.of("limits", table + ".csv")), dice.of(0, 1, 1, 2), dice));
      }
    }
    files.put("tables/note.txt", new byte[0]);
    Node score = SmallScore.of(dice);
    files.put("score.musicxml", BytesSpoiler.utf8(score.document()));
    String folderOfTables = Trial.FOLDER + "/tables";
    List<String> args =
        switch (dice.between(0, 3)) {
          case 0 -> List.of("limits", "--validate", folderOfTables);
          case 1 -> List.of("limits", dice.of("flute", "violin"), "--limits", folderOfTables);
          default -> withTables(dice, score, folderOfTables);
        };
    return Trial.of(files, args);
  }

  private static List<String> withTables(Dice dice, Node score, String tables) {
    List<String> args = new CommandMaker(dice, score, "score.musicxml").forScore();
    args.addAll(List.of("--limits", tables));
    return args;
  }

  private Trial ofPlayers(Dice dice) {
    Node score = SmallScore.of(dice);
    List<String> args = new CommandMaker(dice, score, "score.musicxml").keeping("kept.json");
    if (dice.in100(50)) {
      args.subList(4, 6).clear();
    } else {
      args.set(5, "Ada, " + args.get(5));
    }
    args.addAll(List.of("--players-file", Trial.FOLDER + "/players.json"));
    String players = JsonSpoiler.spoilt(PLAYERS, dice.of(0, 1, 1, 2), dice);
    return Trial.of(
        Map.of(
            "score.musicxml",
            BytesSpoiler.utf8(score.document()),
            "players.json",
            BytesSpoiler.utf8(players)),
        args);
  }

  private static String text(Path file) {
    try {
      return Files.readString(file, StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}

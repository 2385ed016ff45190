package stafette.trials;

import com.google.gson.JsonParseException;
import com.google.gson.JsonParser;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.xml.sax.SAXException;
import stafette.musicxml.read.MusicXmlReader;
import stafette.musicxml.text.UnreadableScore;
import stafette.musicxml.write.OfficialSchema;
import stafette.score.Score;

/** What is asked of the program, whatever it is given. */
final class Demands {
  private static final Pattern JAVA =
      Pattern.compile(
          "\\bjava[.x]|Exception\\b|Error\\b(?=[:\\n])|\\bat stafette\\.|Optional\\[|fault of the program|stafette\\.[a-z]+\\.[A-Z]|\\b[A-Z][A-Za-z]+\\[[a-zA-Z]+=");

  private static final Pattern CONTROL =
      Pattern.compile("[\\x00-\\x09\\x0b-\\x1f\\x7f-\\x9f\\u202a-\\u202e\\u2066-\\u2069]");

  private static final String OPTIMAL = "optimal";
  private static final String NOT_AS_BEFORE = "not taken for the line";
  private static final String OUT_OF_TIME = "within the time";

  /** What a search of some seconds asks for in all; what runs away asks for more. */
  private static final long MOST_MEGABYTES = 16_000;

  private final Trial trial;
  private final Path folder;
  private final List<String> broken = new ArrayList<>();

  private Demands(Trial trial, Path folder) {
    this.trial = trial;
    this.folder = folder;
  }

  /** Runs a trial and says which demands it broke. */
  static List<String> brokenBy(Trial trial, Path folder) {
    try {
      Demands demands = new Demands(trial, folder);
      demands.judge(trial.run(folder));
      return demands.broken;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private void judge(Ended ended) throws IOException {
    ended.thrown().ifPresent(thrown -> broken.add("threw " + thrown));
    demand(
        Set.of(0, 1, 2, 3).contains(ended.exitCode()),
        "ended with " + ended.exitCode() + ": " + ended.err());
    demand(ended.megabytes() <= MOST_MEGABYTES, "took " + ended.megabytes() + " MB of work");
    words(ended);
    for (Map.Entry<String, byte[]> file : trial.files().entrySet()) {
      demand(
          Files.exists(folder.resolve(file.getKey()))
              && Arrays.equals(file.getValue(), Files.readAllBytes(folder.resolve(file.getKey()))),
          "changed its input " + file.getKey());
    }
    files(ended);
  }

  private void words(Ended ended) {
    boolean refused = ended.exitCode() >= 2 || ended.exitCode() < 0;
    boolean validates = trial.says("--validate");
    demand(!refused || validates || !ended.err().isBlank(), "says nothing of what is wrong");
    demand(refused || !ended.out().isBlank(), "says nothing of what it found");
    for (String said : List.of(ended.out(), ended.err())) {
      var java = JAVA.matcher(said);
      if (!trial.says("--help") && java.find()) {
        broken.add(
            "speaks Java: "
                + said.substring(
                    Math.max(0, java.start() - 60), Math.min(said.length(), java.end() + 60)));
      }
      var control = CONTROL.matcher(said);
      if (control.find()) {
        broken.add("prints the control character " + (int) control.group().charAt(0));
      }
    }
    if (trial.says("--json") && !refused) {
      try {
        var unused = JsonParser.parseString(ended.out());
      } catch (JsonParseException e) {
        broken.add("prints no sound JSON: " + e.getMessage());
      }
    }
  }

  private void files(Ended ended) throws IOException {
    Set<String> found = new TreeSet<>();
    try (Stream<Path> paths = Files.walk(folder)) {
      paths.filter(Files::isRegularFile).forEach(p -> found.add(folder.relativize(p).toString()));
    }
    found.removeAll(trial.files().keySet());
    for (String file : found) {
      demand(trial.says(Trial.FOLDER + "/" + file), "left a file that nobody asked for: " + file);
      demand(Files.size(folder.resolve(file)) > 0, "left an empty file: " + file);
    }
    if (found.stream().anyMatch(file -> file.startsWith("out."))) {
      demand(ended.exitCode() <= 1, "wrote a score and ended with " + ended.exitCode());
      written(
          found.stream().filter(file -> file.startsWith("out.")).findFirst().orElseThrow(), ended);
    }
    if (ended.exitCode() == 0 && trial.says("split") && trial.says("-o") && !trial.says("--help")) {
      demand(found.stream().anyMatch(file -> file.startsWith("out.")), "wrote no score");
    }
    for (String file : found) {
      if (file.endsWith(".svg")) {
        try {
          Node.parse(Files.readString(folder.resolve(file)));
        } catch (IllegalArgumentException e) {
          broken.add("drew no sound SVG: " + e.getCause());
        }
      }
    }
  }

  private void written(String file, Ended ended) throws IOException {
    byte[] bytes = Files.readAllBytes(folder.resolve(file));
    try {
      var after = MusicXmlReader.read(bytes).score();
      var before = MusicXmlReader.read(trial.score()).score();
      demand(after.parts().size() >= before.parts().size(), "lost a part");
      demand(after.bars().count() == before.bars().count(), "lost a bar or made one");
      for (int i = 0; i < Math.min(before.bars().count(), after.bars().count()); i++) {
        demand(
            before.bars().get(i).span().equals(after.bars().get(i).span()),
            "changed the length of bar " + (i + 1));
      }
      valid(bytes);
      if (ended.out().contains(OPTIMAL)) {
        again(file, before);
      }
    } catch (UnreadableScore e) {
      broken.add("wrote a score that can't be read: " + e.getMessage());
    }
  }

  /** What was valid stays valid. */
  private void valid(byte[] written) {
    try {
      if (OfficialSchema.errors(trial.score()).isEmpty()) {
        List<String> errors = OfficialSchema.errors(written);
        demand(errors.isEmpty(), "wrote what the schema forbids: " + errors);
      }
    } catch (SAXException | IOException notPlainXml) {
      return;
    }
  }

  /**
   * Splitting a written score again with the same command changes nothing more; unless the line's
   * own player took part, whose part is its share from then on, or it is said that cue notes are
   * not taken for the line.
   */
  private void again(String file, Score before) throws IOException {
    if (!trial.says("split")
        || trial.says("remove")
        || trial.says("--take")
        || isSharedByItsOwnPlayer(before)) {
      return;
    }
    String again = "again" + file.substring("out".length());
    List<String> args = new ArrayList<>(trial.args());
    args.replaceAll(
        arg ->
            arg.startsWith(Trial.FOLDER + "/score.")
                ? Trial.FOLDER + "/" + file
                : arg.equals(Trial.FOLDER + "/" + file) ? Trial.FOLDER + "/" + again : arg);
    if (!trial.says("--force")) {
      args.add("--force");
    }
    Ended second = trial.with(args).again(folder);
    if (second.err().contains(NOT_AS_BEFORE)) {
      return;
    }
    boolean done = second.exitCode() == 0;
    demand(
        done || second.out().contains(OUT_OF_TIME),
        "doing it again ends with "
            + second.exitCode()
            + ": "
            + second.out()
            + second.err()
            + second.thrown());
    demand(
        !done
            || !second.out().contains(OPTIMAL)
            || Arrays.equals(
                Files.readAllBytes(folder.resolve(file)),
                Files.readAllBytes(folder.resolve(again))),
        "doing it again changes more");
  }

  private boolean isSharedByItsOwnPlayer(Score score) {
    List<String> players = List.of(valueOf("--players").split("\\s*,\\s*"));
    String part = valueOf("--part");
    return score.parts().stream()
        .filter(each -> each.id().equals(part) || each.name().equals(part) || part.isEmpty())
        .flatMap(each -> Stream.of(each.id(), each.name()))
        .anyMatch(own -> players.stream().anyMatch(own::equalsIgnoreCase));
  }

  private String valueOf(String option) {
    int at = trial.args().indexOf(option);
    return at < 0 || at + 1 >= trial.args().size() ? "" : trial.args().get(at + 1);
  }

  private void demand(boolean holds, String otherwise) {
    if (!holds) {
      broken.add(otherwise);
    }
  }
}

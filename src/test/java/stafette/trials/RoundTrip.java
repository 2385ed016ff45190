package stafette.trials;

import com.google.gson.JsonArray;
import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import stafette.check.alone.TremoloByTempo;
import stafette.musicxml.read.MusicXmlReader;
import stafette.musicxml.text.UnreadableScore;
import stafette.musicxml.write.OfficialSchema;
import stafette.musicxml.write.WrittenRules;
import stafette.score.BarChoice;
import stafette.score.Line;
import stafette.score.LineChoice;
import stafette.score.NoSuchLine;
import stafette.score.Part;
import stafette.score.Reading;
import stafette.score.Score;
import stafette.score.Stroke;
import stafette.score.Tone;
import stafette.score.ToneChoice;
import stafette.score.Tremolo;
import stafette.tables.LimitTables;
import stafette.time.Rational;

/**
 * A score that is checked; the command of a passage that is pasted, written, checked and pasted
 * again. What is broken on the way is gathered.
 *
 * @param folder in which to work
 * @param score in it
 * @param source what becomes of the line
 */
record RoundTrip(Path folder, Path score, String source, List<String> broken) {
  private static final String SPLIT_BEFORE = "a relay was written here before";
  private static final String NOTHING_LEFT = "there is no line to take";

  /** What came of it. */
  enum Came {
    /** There is nothing to split, or nobody can play it. */
    NOTHING,
    /** A plan was written. */
    WRITTEN
  }

  /** A passage that a check found, with the command that splits it. */
  record Found(JsonObject passage, List<String> command) {
    String part() {
      return passage.get("part").getAsString();
    }

    String name() {
      return passage.get("name").getAsString();
    }
  }

  List<Found> check() {
    List<Found> found = new ArrayList<>();
    for (JsonElement passage : checked(score).getAsJsonArray("passages")) {
      JsonElement command = passage.getAsJsonObject().get("command");
      if (!command.isJsonNull()) {
        found.add(new Found(passage.getAsJsonObject(), words(command.getAsString())));
      }
    }
    return found;
  }

  private JsonObject checked(Path file) {
    Ended ended = Ended.of(List.of("check", file.toString(), "--json"));
    demand(ended.exitCode() == 0 || ended.exitCode() == 1, "a check ended with " + ended);
    return JsonParser.parseString(ended.out()).getAsJsonObject();
  }

  /** The words of a command as a shell reads them. */
  static List<String> words(String command) {
    List<String> words = new ArrayList<>();
    StringBuilder word = new StringBuilder();
    char quote = ' ';
    for (int i = 0; i < command.length(); i++) {
      char letter = command.charAt(i);
      if (quote == ' ' && letter == ' ') {
        words.add(word.toString());
        word.setLength(0);
      } else if (quote == ' ' ? letter == '"' || letter == '\'' : letter == quote) {
        quote = quote == ' ' ? letter : ' ';
      } else {
        word.append(letter == '\\' && quote != '\'' ? command.charAt(++i) : letter);
      }
    }
    words.add(word.toString());
    return words;
  }

  /**
   * Splits a passage, writes it, and does it again on what was written.
   *
   * @param more what is added to the command
   */
  Came split(Found found, List<String> more) throws IOException, UnreadableScore, NoSuchLine {
    Path once = folder.resolve("once.musicxml");
    byte[] before = Files.readAllBytes(score);
    List<String> command = new ArrayList<>(found.command());
    command.addAll(more);
    command.addAll(List.of("--source", source, "--json", "--force", "-o", once.toString()));
    Files.deleteIfExists(once);
    Ended first = Ended.of(command);
    demand(Set.of(0, 1).contains(first.exitCode()), "it ended with " + first);
    demand(Arrays.equals(before, Files.readAllBytes(score)), "it changed its input");
    if (first.out().isBlank()) {
      demand(false, "it printed nothing and ended with " + first + " " + command);
      return Came.NOTHING;
    }
    if (first.exitCode() != 0) {
      System.out.println(
          "NO PLAN "
              + JsonParser.parseString(first.out()).getAsJsonObject().get("findings")
              + command);
      return Came.NOTHING;
    }
    JsonObject plan = JsonParser.parseString(first.out()).getAsJsonObject();
    compare(plan, before, Files.readAllBytes(once));
    checked(once);
    again(command, once, plan);
    return Came.WRITTEN;
  }

  private void compare(JsonObject plan, byte[] before, byte[] after)
      throws IOException, UnreadableScore, NoSuchLine {
    Score then = read(after);
    Score now = read(before);
    new Shares(now, then, plan, line(now, plan), source).differences().forEach(broken::add);
    broken.addAll(WrittenRules.broken(text(before), text(after)));
    for (int i = 0; i < now.bars().count(); i++) {
      demand(
          now.bars().get(i).equals(then.bars().get(i)),
          "bar " + i + " is another one: " + now.bars().get(i) + ", " + then.bars().get(i));
    }
    try {
      if (OfficialSchema.errors(before).isEmpty()) {
        List<String> errors = OfficialSchema.errors(after);
        demand(errors.isEmpty(), "what was written is not valid: " + errors);
      }
    } catch (org.xml.sax.SAXException e) {
      demand(false, "what was written is no XML: " + e);
    }
  }

  private static String text(byte[] bytes) {
    return new String(bytes, StandardCharsets.UTF_8);
  }

  /** The line that a command asks for. */
  Line line(Found found) throws IOException, UnreadableScore, NoSuchLine {
    List<String> command = found.command();
    return new LineChoice(
            found.part(),
            Optional.of(new BarChoice(command.get(command.indexOf("--bars") + 1))),
            Stream.of(command.get(command.indexOf("--staff") + 1).split("\\+"))
                .map(Integer::valueOf)
                .toList(),
            List.of(command.get(command.indexOf("--voice") + 1).split("\\+")),
            Optional.of(new ToneChoice.All()),
            Reading.ALL)
        .take(read(Files.readAllBytes(score)));
  }

  /** As the commands read it: the tempo decides which tremolos are measured. */
  private static Score read(byte[] bytes) throws UnreadableScore {
    return MusicXmlReader.read(
            bytes,
            Tremolo.AS_WRITTEN,
            new TremoloByTempo(LimitTables.builtIn().catalogue()::of),
            false)
        .score();
  }

  private static Line line(Score score, JsonObject plan) throws NoSuchLine {
    JsonObject line = plan.getAsJsonObject("line");
    JsonArray bars = line.getAsJsonArray("barsCounted");
    return new LineChoice(
            line.get("part").getAsString(),
            Optional.of(new BarChoice("#" + bars.get(0) + "-#" + bars.get(1))),
            all(line, "staff", "staves").stream().map(Integer::valueOf).toList(),
            all(line, "voice", "voices"),
            ToneChoice.parse(line.get("tone").getAsString()),
            Reading.ALL)
        .take(score);
  }

  private static String players(JsonObject plan) {
    List<String> names = new ArrayList<>();
    plan.getAsJsonArray("players")
        .forEach(player -> names.add(player.getAsJsonObject().get("name").getAsString()));
    return String.join(", ", names);
  }

  /** What several share, or the only one. */
  private static List<String> all(JsonObject line, String one, String several) {
    List<String> all = new ArrayList<>();
    if (line.has(several)) {
      line.getAsJsonArray(several).forEach(each -> all.add(each.getAsString()));
    } else {
      all.add(line.get(one).getAsString());
    }
    return all;
  }

  /** Once more the same, on what was written: nothing changes, or it is said what is gone. */
  private void again(List<String> command, Path once, JsonObject plan) throws IOException {
    Path twice = folder.resolve("twice.musicxml");
    Files.deleteIfExists(twice);
    List<String> same = new ArrayList<>(command);
    same.set(1, once.toString());
    same.set(same.size() - 1, twice.toString());
    if (!same.contains("--players")) {
      same.addAll(2, List.of("--players", players(plan)));
    }
    Ended second = Ended.of(same);
    boolean gone = source.equals("remove") || (source.equals("keep") && takesPart(plan));
    if (gone && second.err().matches("(?s).*(" + SPLIT_BEFORE + "|" + NOTHING_LEFT + ").*")) {
      return;
    }
    demand(second.exitCode() == 0, "again it ended with " + second);
    boolean proven = plan.get("result").getAsString().equals("optimal");
    if (second.exitCode() == 0 && proven) {
      demand(
          Arrays.equals(Files.readAllBytes(once), Files.readAllBytes(twice)),
          "again it changed more: " + second.err());
    }
  }

  private static boolean takesPart(JsonObject plan) {
    String part = plan.getAsJsonObject("line").get("part").getAsString();
    for (JsonElement player : plan.getAsJsonArray("players")) {
      JsonElement own = player.getAsJsonObject().get("part");
      if (own != null && !own.isJsonNull() && own.getAsString().equals(part)) {
        return true;
      }
    }
    return false;
  }

  private void demand(boolean holds, String otherwise) {
    if (!holds) {
      broken.add(otherwise);
    }
  }

  /** What each part must have, and has. */
  private record Shares(Score now, Score then, JsonObject plan, Line line, String source) {
    List<String> differences() {
      List<String> differences = new ArrayList<>();
      for (Part part : then.parts()) {
        Set<String> expected = expected(part);
        Set<String> found = heard(part);
        for (String landing : landings()) {
          isHeldLonger(landing, expected, found);
        }
        if (!expected.equals(found)) {
          Set<String> missing = new TreeSet<>(expected);
          missing.removeAll(found);
          Set<String> more = new TreeSet<>(found);
          more.removeAll(expected);
          differences.add(part.name() + " lacks " + missing + " and has besides " + more);
        }
      }
      return differences;
    }

    /** Onsets and keys of the notes on which players hand over. */
    private Set<String> landings() {
      Set<String> landings = new TreeSet<>();
      for (JsonElement each : plan.getAsJsonArray("segments")) {
        Stroke last = line.stroke(each.getAsJsonObject().get("last").getAsInt());
        last.tones()
            .forEach(tone -> landings.add(last.onset().quarters() + " " + tone.key() + " "));
      }
      return landings;
    }

    /** A landing note may be written longer, at most as a quarter. */
    private static void isHeldLonger(String landing, Set<String> expected, Set<String> found) {
      Optional<String> asked = lacking(landing, expected, found);
      Optional<String> there = lacking(landing, found, expected);
      if (asked.isPresent() && there.isPresent()) {
        Rational from = length(landing, asked.get());
        Rational to = length(landing, there.get());
        if (from.compareTo(to) < 0 && to.compareTo(Rational.ONE) <= 0) {
          expected.remove(asked.get());
          expected.add(there.get());
        }
      }
    }

    private static Optional<String> lacking(String landing, Set<String> some, Set<String> others) {
      return some.stream()
          .filter(each -> each.startsWith(landing) && !others.contains(each))
          .findFirst();
    }

    private static Rational length(String landing, String heard) {
      return Rational.parse(heard.substring(landing.length()));
    }

    private Set<String> expected(Part part) {
      Set<String> expected = new TreeSet<>();
      now.parts().stream()
          .filter(p -> p.id().equals(part.id()))
          .map(this::heard)
          .forEach(expected::addAll);
      boolean own = part.id().equals(line.source().part());
      boolean asked = false;
      Set<String> share = new TreeSet<>();
      for (JsonElement each : plan.getAsJsonArray("players")) {
        JsonObject player = each.getAsJsonObject();
        JsonElement read = player.get("part");
        boolean named = read == null || read.isJsonNull();
        boolean there =
            named
                ? then.part(player.get("name").getAsString()).filter(part::equals).isPresent()
                : read.getAsString().equals(part.id());
        if (there) {
          asked = true;
          share.addAll(share(player.get("name").getAsString()));
        }
      }
      if (own && (asked || !source.equals("keep"))) {
        line.strokes().forEach(stroke -> expected.removeAll(heard(stroke)));
      }
      expected.addAll(share);
      return expected;
    }

    private Set<String> share(String player) {
      Set<String> share = new TreeSet<>();
      for (JsonElement each : plan.getAsJsonArray("segments")) {
        JsonObject segment = each.getAsJsonObject();
        if (segment.get("player").getAsString().equals(player)) {
          for (int i = segment.get("first").getAsInt(); i <= segment.get("last").getAsInt(); i++) {
            share.addAll(heard(line.stroke(i)));
          }
        }
      }
      return share;
    }

    private Set<String> heard(Part part) {
      Set<String> heard = new TreeSet<>();
      part.voices().stream()
          .flatMap(voice -> voice.strokes().stream())
          .forEach(stroke -> heard.addAll(heard(stroke)));
      return heard;
    }

    private static Set<String> heard(Stroke stroke) {
      Set<String> heard = new TreeSet<>();
      for (Tone tone : stroke.tones()) {
        heard.add(stroke.onset().quarters() + " " + tone.key() + " " + stroke.length().quarters());
      }
      return heard;
    }
  }
}

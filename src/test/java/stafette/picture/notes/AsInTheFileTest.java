package stafette.picture.notes;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stafette.Invented;
import stafette.limits.Instrument;
import stafette.musicxml.newparts.PartPlace;
import stafette.musicxml.read.Document;
import stafette.musicxml.read.MusicXmlReader;
import stafette.musicxml.write.ScoreWriter;
import stafette.picture.ink.Mark;
import stafette.plan.Brief;
import stafette.plan.HarpTurn;
import stafette.plan.Plan;
import stafette.plan.Player;
import stafette.plan.Segment;
import stafette.plan.SourceTreatment;
import stafette.plan.WrittenAs;
import stafette.plan.written.Landings;
import stafette.plan.written.WrittenPassage;
import stafette.score.BarChoice;
import stafette.score.Keys;
import stafette.score.Line;
import stafette.score.LineChoice;
import stafette.tables.LimitTables;
import stafette.time.Bar;

/** What is drawn is what stands in the file that the plan is written into. */
class AsInTheFileTest {
  private static final Pattern MEASURE = Pattern.compile("<measure .*?</measure>", Pattern.DOTALL);
  private static final Pattern NOTE = Pattern.compile("<note>.*?</note>", Pattern.DOTALL);
  private static final int TURN = 7;

  @ParameterizedTest
  @CsvSource({
    "lantern-run, Piano, 5-16, clarinet in B-flat",
    "lantern-run, Piano, 5-16, flute",
    "mill-stairs, Piano, 1-8, horn in F",
    "signal-hill, Violin I, 1-24, clarinet in A"
  })
  void values_rests_tuplets_beams_and_accidentals_are_those_of_the_file(
      String sample, String part, String chosen, String instrument) throws Exception {
    Document score =
        MusicXmlReader.read(Files.readAllBytes(Path.of("samples", sample + ".musicxml")));
    Line line =
        new LineChoice(
                part,
                Optional.of(new BarChoice(chosen)),
                OptionalInt.of(1),
                Optional.of("1"),
                Optional.empty())
            .take(score.score());
    Plan plan = alternating(line, LimitTables.builtIn().catalogue().find(instrument).orElseThrow());
    String text =
        new String(
            ScoreWriter.write(
                    score,
                    plan,
                    SourceTreatment.KEEP,
                    player -> Optional.of(PartPlace.below(partId(score, part))))
                .bytes(),
            StandardCharsets.UTF_8);
    for (int player = 0; player < 2; player++) {
      List<String> measures = found(MEASURE, part(text, "New " + (player + 1)));
      int entries = 0;
      for (Bar bar : line.bars()) {
        String own = withoutCue(measures.get(bar.index()));
        List<String> written =
            found(NOTE, own).stream()
                .filter(note -> !note.contains("<chord"))
                .map(AsInTheFileTest::inFile)
                .toList();
        assertEquals(written, drawn(plan, player, bar), "bar " + bar.number());
        assertEquals(count(own, "<accidental>"), accidentals(plan, player, bar));
        entries += (int) written.stream().filter(note -> !note.startsWith("rest")).count();
      }
      assertTrue(entries > TURN, "a part with notes");
    }
  }

  /** Cues of others stand in a voice of their own, after all else. */
  private static String withoutCue(String measure) {
    int backup = measure.indexOf("<backup");
    return backup < 0 ? measure : measure.substring(0, backup);
  }

  /** The music of the part with a name. */
  private static String part(String text, String name) {
    String id =
        found(
                Pattern.compile("(?<=<score-part id=\")[^\"]*(?=\">\\s*<part-name>" + name + "<)"),
                text)
            .get(0);
    int from = text.indexOf("<part id=\"" + id + "\"");
    return text.substring(from, text.indexOf("</part>", from));
  }

  private static String partId(Document score, String name) {
    return score.score().part(name).orElseThrow().id();
  }

  /** Two players in turn, each with the first note of the next; turns end anywhere. */
  private static Plan alternating(Line line, Instrument instrument) {
    List<Player> players =
        List.of(
            Invented.player("New 1", instrument, 30, 30, 1000, 100),
            Invented.player("New 2", instrument, 30, 30, 1000, 100));
    List<Segment> segments = new ArrayList<>();
    for (int first = 0; first < line.count() - 1; first += TURN) {
      int last = Math.min(line.count() - 1, first + TURN);
      segments.add(new Segment(segments.size() % 2, 0, first, last));
    }
    return new Plan(new Brief(line, players, Invented.rules()), segments);
  }

  private static String inFile(String note) {
    String beams =
        String.join(",", found(Pattern.compile("(?<=<beam number=\"\\d\">)[^<]*"), note));
    String type = found(Pattern.compile("(?<=<type>)[^<]*"), note).stream().findFirst().orElse("");
    String ratio = String.join(":", found(Pattern.compile("(?<=-notes>)\\d+"), note));
    return (note.contains("<rest") ? "rest " : "note ")
        + type
        + ".".repeat(count(note, "<dot"))
        + " "
        + ratio
        + " "
        + beams;
  }

  private static List<String> drawn(Plan plan, int player, Bar bar) {
    return Notation.of(plays(plan, player), List.of(), List.of(bar)).stream()
        .map(
            one ->
                (one.isRest() ? "rest " : "note ")
                    + one.item().shape().map(shape -> shape.type()).orElse("")
                    + ".".repeat(one.form().dots())
                    + " "
                    + one.item().ratio().map(r -> r.actual() + ":" + r.normal()).orElse("")
                    + " "
                    + String.join(",", one.item().beams()))
        .toList();
  }

  private static int accidentals(Plan plan, int player, Bar bar) {
    Instrument instrument = plan.brief().players().get(player).instrument();
    Keys keys = plan.line().keys().writtenBy(instrument.transposition());
    return (int)
        Engraver.notes(
                new Engraver.EngravedMusic(
                    plays(plan, player), List.of(), keys, Optional.empty(), false),
                new Staff(0, 4, Clef.TREBLE, instrument.transposition()),
                new BarRow(List.of(bar), 0, 40, 8))
            .stream()
            .filter(
                mark ->
                    mark instanceof Mark.Lettering sign
                        && "\u266F\u266D\u266E\uD834\uDD2A\uD834\uDD2B".contains(sign.text()))
            .count();
  }

  private static List<WrittenPassage> plays(Plan plan, int player) {
    return WrittenPassage.all(
        plan,
        player,
        Landings.of(plan, player),
        WrittenAs.plain(SourceTreatment.KEEP),
        HarpTurn.of(plan, player));
  }

  private static List<String> found(Pattern pattern, String text) {
    return pattern.matcher(text).results().map(MatchResult::group).toList();
  }

  private static int count(String text, String what) {
    return text.split(Pattern.quote(what), -1).length - 1;
  }
}

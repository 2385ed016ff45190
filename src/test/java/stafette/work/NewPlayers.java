package stafette.work;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Stream;
import stafette.Invented;
import stafette.chairs.Chair;
import stafette.chairs.Chairs;
import stafette.limits.Capability;
import stafette.limits.Catalogue;
import stafette.limits.Instrument;
import stafette.limits.Skill;
import stafette.musicxml.read.Document;
import stafette.musicxml.read.MusicXmlReader;
import stafette.musicxml.write.OfficialSchema;
import stafette.musicxml.write.ScoreWriter;
import stafette.plan.Brief;
import stafette.plan.Plan;
import stafette.plan.Player;
import stafette.plan.Segment;
import stafette.plan.SourceTreatment;
import stafette.score.BarChoice;
import stafette.score.Line;
import stafette.score.LineChoice;
import stafette.score.Score;
import stafette.tables.LimitTables;

/** Puts players into a score whose part P1 has a line; each takes one stroke of it. */
final class NewPlayers {
  private static final Catalogue CATALOGUE = LimitTables.builtIn().catalogue();

  private NewPlayers() {}

  /** The score with them. It is valid, and writing the same again changes nothing. */
  static Document in(String score, String... names) throws Exception {
    byte[] once = write(MusicXmlReader.read(score.getBytes(StandardCharsets.UTF_8)), names);
    assertEquals(List.of(), OfficialSchema.errors(once));
    Document after = MusicXmlReader.read(once);
    assertArrayEquals(once, write(after, names));
    return after;
  }

  private static byte[] write(Document document, String... names) throws Exception {
    Score score = document.score();
    Line line =
        new LineChoice(
                "P1",
                Optional.of(new BarChoice("1")),
                OptionalInt.empty(),
                Optional.empty(),
                Optional.empty())
            .take(score);
    List<Player> players = Stream.of(names).map(name -> player(name, score)).toList();
    List<Segment> segments = new ArrayList<>();
    for (int i = 0; i < players.size(); i++) {
      segments.add(new Segment(i, 0, i, i));
    }
    return ScoreWriter.write(
            document,
            new Plan(new Brief(line, players, Invented.rules()), segments),
            SourceTreatment.KEEP,
            new ScoreSeating(score, CATALOGUE))
        .bytes();
  }

  private static Player player(String name, Score score) {
    Instrument instrument = CATALOGUE.find(name).orElseThrow();
    Optional<String> part = Chairs.of(score, CATALOGUE).named(name).map(Chair::part);
    Capability any = new Capability(20_000, 10_000, 10_000, 1_000, Capability.UNLIMITED);
    Skill skill = new Skill(instrument.techniques().get(0), any);
    return new Player(name, instrument, part, List.of(skill), List.of());
  }
}

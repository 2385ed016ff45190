package stafette.musicxml.write;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.NavigableSet;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.TreeSet;
import stafette.Invented;
import stafette.limits.Capability;
import stafette.limits.Catalogue;
import stafette.limits.Instrument;
import stafette.limits.Skill;
import stafette.musicxml.read.Document;
import stafette.musicxml.read.MusicXmlReader;
import stafette.musicxml.text.UnreadableScore;
import stafette.plan.Brief;
import stafette.plan.Plan;
import stafette.plan.Player;
import stafette.plan.Segment;
import stafette.plan.written.Landings;
import stafette.score.BarChoice;
import stafette.score.Line;
import stafette.score.LineChoice;
import stafette.score.NoSuchLine;
import stafette.score.Part;
import stafette.score.Score;
import stafette.score.Stroke;
import stafette.score.ToneChoice;
import stafette.tables.LimitTables;
import stafette.time.Position;

/** Plans made by hand: who plays which bars, each with the first note of the next as a landing. */
public final class ByHand {
  static final Catalogue CATALOGUE = LimitTables.builtIn().catalogue();

  private ByHand() {}

  /** Bars for one player, by their printed numbers. */
  record Leg(String player, String instrument, int firstBar, int lastBar) {}

  public static Document sample(String name) throws IOException, UnreadableScore {
    return MusicXmlReader.read(Files.readAllBytes(Path.of("samples", name + ".musicxml")));
  }

  public static Line line(Score score, String part, String bars) throws NoSuchLine {
    return line(score, part, bars, Optional.empty());
  }

  static Line line(Score score, String part, String bars, Optional<ToneChoice> tone)
      throws NoSuchLine {
    return new LineChoice(
            part, Optional.of(new BarChoice(bars)), OptionalInt.of(1), Optional.of("1"), tone)
        .take(score);
  }

  /** A player of that name; of the score's part of that name, if there is one. */
  /** The strokes of a segment as its player's part has them, landing notes at a plain length. */
  static List<Stroke> written(Plan plan, Segment segment, Score before) {
    Line line = plan.line();
    NavigableSet<Position> others =
        plan.player(segment)
            .part()
            .flatMap(before::part)
            .map(part -> Landings.others(part, plan))
            .orElseGet(TreeSet::new);
    List<Stroke> strokes = new ArrayList<>(line.strokes().subList(segment.first(), segment.last()));
    strokes.add(Landings.of(plan, List.of(segment.player()), others).written(line, segment.last()));
    return strokes;
  }

  public static Player player(String name, String instrument, Score score) {
    Instrument found = CATALOGUE.find(instrument).orElseThrow();
    Capability any = new Capability(20_000, 10_000, 10_000, 1_000, Capability.UNLIMITED);
    return new Player(
        name,
        found,
        score.part(name).map(Part::id),
        List.of(new Skill(found.techniques().get(0), any)),
        List.of());
  }

  static Plan plan(Score score, Line line, Leg... legs) {
    List<Player> players = new ArrayList<>();
    List<String> names = new ArrayList<>();
    List<Segment> segments = new ArrayList<>();
    for (Leg leg : legs) {
      if (!names.contains(leg.player())) {
        names.add(leg.player());
        players.add(player(leg.player(), leg.instrument(), score));
      }
      int last = Math.min(firstFrom(line, leg.lastBar() + 1), line.count() - 1);
      segments.add(
          new Segment(names.indexOf(leg.player()), 0, firstFrom(line, leg.firstBar()), last));
    }
    return new Plan(new Brief(line, players, Invented.rules()), segments);
  }

  /** The first stroke that begins in a bar or after it. */
  private static int firstFrom(Line line, int bar) {
    int index = 0;
    while (index < line.count()
        && Integer.parseInt(line.bars().at(line.stroke(index).onset()).number()) < bar) {
      index++;
    }
    return index;
  }

  /** The plan that one sample is split by. */
  public static Plan planFor(String sample, Score score) throws NoSuchLine {
    if (sample.equals("lantern-run")) {
      return plan(
          score,
          line(score, "P1", "5-16"),
          new Leg("Flute 1", "flute", 5, 6),
          new Leg("Flute 2", "flute", 7, 8),
          new Leg("Clarinet 1 in B-flat", "clarinet in B-flat", 9, 11),
          new Leg("Flute 1", "flute", 12, 13),
          new Leg("Clarinet 1 in B-flat", "clarinet in B-flat", 14, 16));
    }
    return plan(
        score,
        line(score, "P8", "9-20"),
        new Leg("Flute 1", "flute", 9, 10),
        new Leg("Horn 1", "horn in F", 11, 11),
        new Leg("Flute 2", "flute", 12, 12),
        new Leg("Clarinet 2", "clarinet in B-flat", 13, 13),
        new Leg("Oboe 1", "oboe", 14, 15),
        new Leg("Clarinet 1", "clarinet in B-flat", 16, 17),
        new Leg("Trumpet 2", "trumpet in B-flat", 18, 18),
        new Leg("Flute 1", "flute", 19, 20));
  }

  /** The part in which a player's notes stand once a plan has been written. */
  static Part partOf(Player player, Score after) {
    return after.part(player.name()).orElseThrow();
  }
}

package stafette.tables;

import stafette.words.UnreadableFile;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import stafette.limits.Assurance;
import stafette.limits.Capability;
import stafette.limits.Spelling;
import stafette.plan.Busy;
import stafette.plan.Favour;
import stafette.plan.Hocket;
import stafette.plan.OverlapRule;
import stafette.plan.Pattern;
import stafette.plan.Rules;
import stafette.plan.Weights;
import stafette.score.ToneChoice;
import stafette.score.Tremolo;
import stafette.time.BeatUnit;
import stafette.time.Rational;
import stafette.time.TempoMark;
import stafette.words.Sentence;

/** Reads what {@link PlanJson} writes, as far as it is needed to open the plan again. */
final class PlanFileReader {
  private static final int RANKS = 4;

  private final Problems problems = new Problems();
  private final Entry document;

  PlanFileReader(String file, String text) throws UnreadableFile {
    document = Entry.document(file, text, PlanJson.FORMAT, problems);
  }

  PlanFile read() throws UnreadableFile {
    Entry score = document.entry("score");
    Entry line = document.entry("line");
    Tremolo tremolo =
        score.has("tremolo")
            ? oneOf(score, "tremolo", Tremolo.values(), Tremolo.AS_WRITTEN)
            : Tremolo.AS_WRITTEN;
    ScoreFile scoreFile = new ScoreFile(score.text("file"), score.text("sha256"), tremolo);
    PlanFile.Source source = source(line);
    TempoMark tempo = tempo(line);
    Rules rules = rules(document.entry("settings"));
    List<PlanFile.PlannedPlayer> players =
        document.entries("players", "player").stream().map(PlanFileReader::player).toList();
    List<PlanFile.PlannedSegment> segments =
        document.entries("segments", "segment").stream().map(PlanFileReader::segment).toList();
    List<Optional<PlanFile.Source>> relays =
        document.entries("relays", "relay").stream()
            .map(relay -> relay.optionalEntry("line").map(PlanFileReader::source))
            .toList();
    List<PlanFile.PlannedLock> locks =
        document.entries("locks", "lock").stream().map(PlanFileReader::lock).toList();
    PlanFile.Search search = search();
    problems.throwIfAny();
    return new PlanFile(scoreFile, source, tempo, rules, players, segments, relays, locks, search);
  }

  private PlanFile.Search search() {
    return new PlanFile.Search(
        document.text("result"),
        document.has("bound")
            ? Optional.of((int) document.notNegative("bound").orElse(0))
            : Optional.empty(),
        document.notNegative("searchSeconds").orElse(0),
        document.entries("findings", "finding").stream()
            .filter(finding -> !finding.has("kind"))
            .map(finding -> finding.text("message"))
            .toList());
  }

  private static PlanFile.Source source(Entry line) {
    Optional<ToneChoice> tone = ToneChoice.parse(line.text("tone"));
    if (tone.isEmpty() && line.has("tone")) {
      line.refuse("tone", Sentence.of("top, bottom, all or a number"));
    }
    List<Double> bars = line.numbers("barsCounted");
    if (bars.size() != 2 || bars.get(0) < 1 || bars.get(1) < bars.get(0)) {
      line.problem(Sentence.of("barsCounted must be the first and the last bar, counted from 1"));
      bars = List.of(1.0, 1.0);
    }
    return new PlanFile.Source(
        line.text("part"),
        line.whole("staff", 1),
        line.text("voice"),
        tone.orElse(new ToneChoice.All()),
        bars.get(0).intValue() - 1,
        bars.get(1).intValue() - 1,
        line.entries("strokes", "stroke").size());
  }

  private static TempoMark tempo(Entry line) {
    List<Entry> marks = line.entries("tempo", "tempo");
    if (marks.isEmpty()) {
      line.problem(Sentence.of("tempo needs a mark at the line's start"));
      return TempoMark.QUARTER_120;
    }
    Entry first = marks.get(0);
    Optional<BeatUnit> unit = BeatUnit.parse(first.text("unit"));
    if (unit.isEmpty()) {
      first.refuse("unit", Sentence.of("a note value such as dotted quarter"));
    }
    try {
      return new TempoMark(unit.orElse(BeatUnit.QUARTER), Rational.parse(first.text("perMinute")));
    } catch (IllegalArgumentException e) {
      first.refuse("perMinute", Sentence.of("a number or fraction above 0, as text"));
      return TempoMark.QUARTER_120;
    }
  }

  private static Rules rules(Entry settings) {
    double percent = settings.demanded("assurance", settings.positive("assurance"));
    if (percent >= 100) {
      settings.refuse("assurance", Sentence.of("above 0 and below 100"));
      percent = Assurance.DEFAULT.percent();
    }
    return new Rules(
        new Assurance(percent),
        overlap(settings.entry("overlap")),
        settings.demanded("ready", settings.notNegative("ready")),
        oneOf(settings, "favour", Favour.values(), Favour.BALANCE),
        weights(settings.entry("weights")),
        oneOf(settings, "hocket", Hocket.values(), Hocket.NO),
        List.of());
  }

  private static OverlapRule overlap(Entry overlap) {
    int min = overlap.whole("min", 1);
    if (overlap.isText("max", "beat")) {
      return new OverlapRule(min, OptionalInt.empty());
    }
    int max = overlap.whole("max", 1);
    if (max < min) {
      overlap.refuse("max", Sentence.of("beat or a number not below min"));
      return OverlapRule.DEFAULT;
    }
    return new OverlapRule(min, OptionalInt.of(max));
  }

  private static <E extends Enum<E>> E oneOf(Entry entry, String name, E[] values, E otherwise) {
    String text = entry.text(name);
    for (E value : values) {
      if (Spelling.same(value.name(), text)) {
        return value;
      }
    }
    entry.refuse(
        name,
        Sentence.list(
            Arrays.stream(values).map(value -> value.name().toLowerCase(Locale.ROOT)).toList()));
    return otherwise;
  }

  private static PlanFile.PlannedLock lock(Entry lock) {
    return new PlanFile.PlannedLock(
        lock.text("keep"),
        lock.whole("relay", 0),
        lock.optionalText("player"),
        lock.optionalText("technique"),
        lock.whole("first", 0),
        lock.whole("last", 0));
  }

  private static Weights weights(Entry weights) {
    return new Weights(
        weights.whole("handoff", 0),
        weights.whole("coverMost", 0),
        ranks(weights, "entry"),
        ranks(weights, "landing"),
        weights.whole("overlap", 0),
        points(weights.entry("overlapTargets")),
        figure(weights, "strain"),
        figure(weights, "knee"),
        figure(weights, "end"),
        figure(weights, "decibel"),
        figure(weights, "decibelFree"),
        weights.whole("register", 0),
        weights.whole("hocket", 0),
        weights.whole("player", 0),
        points(weights.entry("blend")),
        weights.whole("blendOther", 0));
  }

  private static double figure(Entry entry, String name) {
    return entry.demanded(name, entry.notNegative(name));
  }

  private static List<Integer> ranks(Entry weights, String name) {
    List<Integer> points = weights.numbers(name).stream().map(Double::intValue).toList();
    if (points.size() != RANKS) {
      weights.refuse(name, Sentence.of("four numbers"));
    }
    return points;
  }

  private static Map<String, Integer> points(Entry entry) {
    Map<String, Integer> result = new LinkedHashMap<>();
    entry.names().forEach(name -> result.put(name, entry.whole(name, 0)));
    return result;
  }

  private static PlanFile.PlannedPlayer player(Entry player) {
    return new PlanFile.PlannedPlayer(
        player.text("name"),
        player.text("instrument"),
        player.optionalText("part"),
        player.entries("techniques", "technique").stream().map(PlanFileReader::skill).toList(),
        player.entries("busy", "busy stretch").stream().map(PlanFileReader::busy).toList(),
        player.demanded("level", player.number("level")),
        player.optionalEntry("breath").map(PlanFileReader::lungs),
        player.optionalEntry(EarJson.SEAT).map(EarJson::seat),
        player.isTrue("freed"));
  }

  private static PlanFile.PlannedSkill skill(Entry technique) {
    OptionalDouble moving = technique.positive("moving");
    return new PlanFile.PlannedSkill(
        technique.text("name"),
        new Capability(
            milli(technique.demanded("peak", technique.positive("peak"))),
            milli(technique.demanded("sustained", technique.notNegative("sustained"))),
            milli(technique.demanded("stamina", technique.positive("stamina"))),
            milli(technique.demanded("recovery", technique.positive("recovery"))),
            moving.isPresent() ? milli(moving.getAsDouble()) : Capability.UNLIMITED));
  }

  private static Busy busy(Entry busy) {
    List<Long> strokes = new ArrayList<>();
    busy.numbers("strokes").forEach(seconds -> strokes.add(micros(seconds)));
    return new Busy(
        micros(busy.demanded("from", busy.number("from"))),
        micros(busy.demanded("to", busy.number("to"))),
        strokes);
  }

  private static PlanFile.Lungs lungs(Entry breath) {
    return new PlanFile.Lungs(
        breath.demanded("capacity", breath.positive("capacity")),
        breath.demanded("catch", breath.positive("catch")),
        breath.demanded("full", breath.positive("full")));
  }

  private static PlanFile.PlannedSegment segment(Entry segment) {
    return new PlanFile.PlannedSegment(
        segment.text("player"),
        segment.text("technique"),
        segment.whole("relay", 0),
        segment.whole("first", 0),
        segment.whole("last", 0),
        oneOf(segment, "pattern", Pattern.values(), Pattern.ALL));
  }

  private static int milli(double value) {
    return (int) Math.round(value * 1000);
  }

  private static long micros(double seconds) {
    return Math.round(seconds * 1e6);
  }
}

package stafette.tables;

import stafette.words.UnreadableFile;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import stafette.limits.Breath;
import stafette.limits.Capability;
import stafette.limits.Catalogue;
import stafette.limits.Instrument;
import stafette.limits.Technique;
import stafette.plan.Brief;
import stafette.plan.Busy;
import stafette.plan.Lock;
import stafette.plan.Pattern;
import stafette.plan.Plan;
import stafette.plan.Player;
import stafette.plan.Rules;
import stafette.plan.Seat;
import stafette.plan.Segment;
import stafette.plan.Skill;
import stafette.score.Line;
import stafette.score.ToneChoice;
import stafette.time.TempoMark;
import stafette.words.Sentence;

/**
 * What is needed to open a plan again that {@link PlanJson} wrote: which line of which score at
 * what tempo, for whom, under which rules, and who plays what.
 *
 * @param score where the line stands
 * @param source which line
 * @param tempo the mark in force at the line's start, exactly
 * @param rules the settings, with the weights as they were
 * @param players in order, the first preferred
 * @param segments by first stroke; empty if there was no plan
 * @param relays for each relay its line, if that is another one than the first
 * @param locks what was locked
 * @param search what the search had proven when the plan was kept
 */
public record PlanFile(
    ScoreFile score,
    Source source,
    TempoMark tempo,
    Rules rules,
    List<PlannedPlayer> players,
    List<PlannedSegment> segments,
    List<Optional<Source>> relays,
    List<PlannedLock> locks,
    Search search) {
  public PlanFile {
    relays = List.copyOf(relays);
    locks = List.copyOf(locks);
    players = List.copyOf(players);
    segments = List.copyOf(segments);
  }

  /**
   * What a search came to.
   *
   * @param result "optimal", "stopped" or "none"
   * @param bound no plan costs less than this; empty if there is no plan
   * @param seconds how long it took
   * @param remarks why there is no plan
   */
  public record Search(
      String result, Optional<Integer> bound, double seconds, List<String> remarks) {
    public Search {
      remarks = List.copyOf(remarks);
    }

    /** Whether no plan costs less. */
    public boolean optimal() {
      return result.equals("optimal");
    }

    /** Whether there was a search at all; a plan made by hand needs none. */
    public boolean happened() {
      return !result.equals("stopped") || seconds > 0 || bound.orElse(0) > 0;
    }
  }

  /**
   * Which line.
   *
   * @param part the part's id
   * @param staff counted from 1
   * @param voice the voice's name
   * @param tone which tones of chords
   * @param firstBar index of the first bar, from 0
   * @param lastBar index of the last bar, included
   * @param strokes how many strokes it has
   */
  public record Source(
      String part,
      int staff,
      String voice,
      ToneChoice tone,
      int firstBar,
      int lastBar,
      int strokes) {}

  /**
   * One player as planned with.
   *
   * @param instrument the instrument's name
   * @param part the id of the player's part, if it has one
   * @param level in decibels
   * @param lungs how it breathes; empty for instruments without breath
   * @param seat where it sits, if that is known
   * @param freed whether it leaves out for the line what the score gives it
   */
  public record PlannedPlayer(
      String name,
      String instrument,
      Optional<String> part,
      List<PlannedSkill> skills,
      List<Busy> busy,
      double level,
      Optional<Lungs> lungs,
      Optional<Seat> seat,
      boolean freed) {
    public PlannedPlayer {
      skills = List.copyOf(skills);
      busy = List.copyOf(busy);
    }
  }

  /** A technique by name, and how fast the player was taken to do it. */
  public record PlannedSkill(String technique, Capability capability) {}

  /** How long a breath lasts, the least silence for one, and the silence that fills, in seconds. */
  public record Lungs(double capacity, double catchSeconds, double full) {}

  /** A segment by names, strokes inclusive. */
  public record PlannedSegment(
      String player, String technique, int relay, int first, int last, Pattern pattern) {}

  /**
   * A lock by names.
   *
   * @param keep "handoff", "segment", "in" or "out"
   * @param player empty for a handoff
   * @param technique empty if any will do
   */
  public record PlannedLock(
      String keep,
      int relay,
      Optional<String> player,
      Optional<String> technique,
      int first,
      int last) {}

  /**
   * @throws UnreadableFile with everything that is wrong in the file
   */
  public static PlanFile read(Path file) throws UnreadableFile {
    Problems problems = new Problems();
    String text = TableFiles.text(file, problems);
    problems.throwIfAny();
    return read(String.valueOf(file.getFileName()), text);
  }

  /**
   * @param file what to call the file in messages
   * @throws UnreadableFile with everything that is wrong in the text
   */
  public static PlanFile read(String file, String text) throws UnreadableFile {
    return new PlanFileReader(file, text).read();
  }

  /**
   * What was asked, for a line taken from the score once more. Techniques are as the catalogue has
   * them, rates, breath and level as the file has them.
   *
   * @throws UnreadableFile if the line has another number of strokes, or an instrument or technique
   *     is not known
   */
  public Brief brief(Line line, Catalogue catalogue) throws UnreadableFile {
    return brief(List.of(line), catalogue);
  }

  /** The same for a line in each relay. */
  public Brief brief(List<Line> lines, Catalogue catalogue) throws UnreadableFile {
    Problems problems = new Problems();
    for (int relay = 0; relay < lines.size(); relay++) {
      if (lines.get(relay).count() != strokes(relay)) {
        problems.add(
            score.file(),
            Sentence.of(
                "the line has {0} notes, the plan was made for {1}; split it again",
                lines.get(relay).count(), strokes(relay)));
      }
    }
    List<Player> found = players(catalogue, problems);
    problems.throwIfAny();
    List<Lock> kept = new ArrayList<>();
    for (PlannedLock planned : locks) {
      lock(planned, found, lines)
          .ifPresentOrElse(
              kept::add,
              () ->
                  problems.add(
                      score.file(),
                      Sentence.of("a lock names a player, technique or stroke not there")));
    }
    problems.throwIfAny();
    return new Brief(lines, found, rules.with(kept));
  }

  /** Whether lines taken from the score once more have as many strokes as they had. */
  public boolean fits(List<Line> lines) {
    return IntStream.range(0, lines.size())
        .allMatch(relay -> lines.get(relay).count() == strokes(relay));
  }

  /**
   * What was asked, but for the locks, for lines that are no longer as they were.
   *
   * @throws UnreadableFile if an instrument or technique is not known
   */
  public Brief withoutLocks(List<Line> lines, Catalogue catalogue) throws UnreadableFile {
    Problems problems = new Problems();
    List<Player> found = players(catalogue, problems);
    problems.throwIfAny();
    return new Brief(lines, found, rules);
  }

  private int strokes(int relay) {
    return relays.get(relay).orElse(source).strokes;
  }

  private List<Player> players(Catalogue catalogue, Problems problems) {
    long names = players.stream().map(PlannedPlayer::name).distinct().count();
    if (names == 0 || names < players.size()) {
      problems.add(
          score.file(), Sentence.of("the plan needs players, each with a name of its own"));
    }
    List<Player> found = new ArrayList<>();
    for (PlannedPlayer planned : players) {
      player(planned, catalogue, problems).ifPresent(found::add);
    }
    return found;
  }

  /**
   * The plan itself for what {@link #brief} gave; empty if the file holds none.
   *
   * @throws UnreadableFile if a segment names a player, technique or stroke that is not there
   */
  public Optional<Plan> plan(Brief brief) throws UnreadableFile {
    Problems problems = new Problems();
    List<Segment> found = new ArrayList<>();
    for (PlannedSegment planned : segments) {
      segment(planned, brief)
          .ifPresentOrElse(
              found::add,
              () ->
                  problems.add(
                      planned.player,
                      Sentence.of(
                          "has no {0} from stroke {1} to {2} in this plan; split it again",
                          Sentence.name(planned.technique), planned.first, planned.last)));
    }
    problems.throwIfAny();
    return found.isEmpty() ? Optional.empty() : Optional.of(new Plan(brief, found));
  }

  /** The seats that are known, by players' names. */
  public Map<String, Seat> seats() {
    Map<String, Seat> seats = new HashMap<>();
    players.forEach(player -> player.seat.ifPresent(seat -> seats.put(player.name, seat)));
    return Map.copyOf(seats);
  }

  /** The players who leave out for the line what the score gives them. */
  public Set<String> freed() {
    return players.stream()
        .filter(PlannedPlayer::freed)
        .map(PlannedPlayer::name)
        .collect(Collectors.toUnmodifiableSet());
  }

  private static Optional<Player> player(
      PlannedPlayer planned, Catalogue catalogue, Problems problems) {
    Optional<Instrument> base = catalogue.find(planned.instrument);
    if (base.isEmpty()) {
      problems.add(planned.name, WeightRows.unknown(planned.instrument, catalogue));
      return Optional.empty();
    }
    List<Skill> skills = new ArrayList<>();
    for (PlannedSkill skill : planned.skills) {
      Optional<Technique> technique = Catalogue.technique(base.get(), skill.technique);
      if (technique.isEmpty()) {
        problems.add(
            planned.name,
            Sentence.of(
                "{0} has no '{1}' in these tables", base.get(), Sentence.name(skill.technique)));
      }
      technique.ifPresent(known -> skills.add(new Skill(known, skill.capability)));
    }
    return Optional.of(
        new Player(
            planned.name, instrument(planned, base.get()), planned.part, skills, planned.busy));
  }

  private static Instrument instrument(PlannedPlayer planned, Instrument base) {
    return InstrumentRows.with(
        base,
        planned.level,
        planned.lungs.map(
            lungs ->
                new Breath(
                    lungs.capacity,
                    lungs.catchSeconds,
                    lungs.full,
                    base.breath().map(Breath::use).orElse(Map.of()))),
        base.techniques());
  }

  private static Optional<Lock> lock(PlannedLock planned, List<Player> players, List<Line> lines) {
    int relay = planned.relay;
    int first = planned.first;
    int last = planned.last;
    if (relay >= lines.size() || Math.max(first, last) >= lines.get(relay).count()) {
      return Optional.empty();
    }
    if (planned.keep.equals("handoff")) {
      return Optional.of(new Lock.At(relay, first, last));
    }
    int player = players.stream().map(Player::name).toList().indexOf(planned.player.orElse(""));
    if (player < 0) {
      return Optional.empty();
    }
    if (planned.keep.equals("segment")) {
      List<String> skills =
          players.get(player).skills().stream().map(s -> s.technique().name()).toList();
      OptionalInt skill =
          planned.technique.isEmpty()
              ? OptionalInt.empty()
              : OptionalInt.of(skills.indexOf(planned.technique.get()));
      return skill.isPresent() && skill.getAsInt() < 0
          ? Optional.empty()
          : Optional.of(new Lock.Exactly(relay, player, skill, first, last));
    }
    return Optional.of(
        planned.keep.equals("in")
            ? new Lock.In(relay, player, first, last)
            : new Lock.Out(relay, player, first, last));
  }

  private static Optional<Segment> segment(PlannedSegment planned, Brief brief) {
    List<String> names = brief.players().stream().map(Player::name).toList();
    int player = names.indexOf(planned.player);
    if (player < 0
        || planned.relay >= brief.lines().size()
        || planned.last < planned.first
        || planned.last >= brief.line(planned.relay).count()) {
      return Optional.empty();
    }
    List<String> skills =
        brief.players().get(player).skills().stream().map(s -> s.technique().name()).toList();
    int skill = skills.indexOf(planned.technique);
    return skill < 0
        ? Optional.empty()
        : Optional.of(
            new Segment(
                planned.relay, player, skill, planned.first, planned.last, planned.pattern));
  }
}

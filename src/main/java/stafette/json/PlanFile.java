package stafette.json;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import stafette.limits.Assurance;
import stafette.limits.Catalogue;
import stafette.limits.Skill;
import stafette.limits.Technique;
import stafette.plan.Brief;
import stafette.plan.Lock;
import stafette.plan.Plan;
import stafette.plan.Player;
import stafette.plan.Rules;
import stafette.plan.Seat;
import stafette.plan.Segment;
import stafette.plan.Weights;
import stafette.score.Line;
import stafette.split.SplitResult;
import stafette.time.TempoMark;
import stafette.words.Sentence;
import stafette.words.UnreadableFile;

/**
 * A plan that was kept, to be opened again: which line of which score at what tempo, for whom,
 * under which rules, and who plays what.
 */
public final class PlanFile {
  private static final int FIRST = 1;

  private final PlanJson plan;
  private final boolean first;

  private PlanFile(PlanJson plan, boolean first) {
    this.plan = plan;
    this.first = first;
  }

  /**
   * Whether an earlier release kept it, of another planning model: then what was proven is left
   * out, and figures and weights are those in force.
   */
  public boolean isOfEarlierRelease() {
    return first;
  }

  /**
   * What a search came to.
   *
   * @param cost of the plan, in points
   * @param bound no plan costs less than this; empty if there is no plan
   * @param rotation the turns in a fixed order that were preferred to the cheapest plan
   * @param seconds how long it took
   * @param remarks why there is no plan
   */
  public record Search(
      PlanJson.Result result,
      Optional<Integer> cost,
      Optional<Integer> bound,
      Optional<SplitResult.InRotation> rotation,
      double seconds,
      List<String> remarks) {
    public Search {
      remarks = List.copyOf(remarks);
    }

    /** Whether no plan costs less. */
    public boolean optimal() {
      return result == PlanJson.Result.OPTIMAL;
    }

    /** Whether that is proven for a plan at this cost. */
    public boolean proves(int points) {
      int least = bound.orElse(0);
      return optimal()
          && cost.equals(Optional.of(points))
          && rotation.map(how -> how.cheapestCost() == least).orElse(points == least);
    }

    /** Whether there was a search at all; a plan made by hand needs none. */
    public boolean happened() {
      return result != PlanJson.Result.STOPPED || seconds > 0 || bound.orElse(0) > 0;
    }
  }

  /**
   * @param file what to call the file in messages
   * @param bytes all of it
   * @throws UnreadableFile with everything that is wrong in the file
   */
  public static PlanFile read(String file, byte[] bytes) throws UnreadableFile {
    return read(file, Documents.text(file, bytes));
  }

  /**
   * @param file what to call the file in messages
   * @throws UnreadableFile with everything that is wrong in the text
   */
  public static PlanFile read(String file, String text) throws UnreadableFile {
    boolean first = Documents.version(file, text) == FIRST;
    PlanJson plan =
        Documents.read(file, text, PlanJson.class, Map.of(FIRST, FirstEdition::upgraded));
    Spot spot = Spot.of(file);
    plan.score().check(spot.in("score"));
    plan.line().check(spot.in("line"));
    plan.settings().check(spot.in("settings"));
    for (int i = 0; i < plan.relays().size(); i++) {
      Spot relay = spot.in("relays", i);
      plan.relays().get(i).line().ifPresent(line -> line.check(relay.in("line")));
    }
    spot.throwIfAny();
    return new PlanFile(plan, first);
  }

  /** Where the line stands. */
  public ScoreFile score() {
    return plan.score();
  }

  /** Which line. */
  public LineJson source() {
    return plan.line();
  }

  /** For each relay its line, if that is another one than the first. */
  public List<Optional<LineJson>> relays() {
    return plan.relays().stream().map(PlanJson.RelayJson::line).toList();
  }

  /** The mark in force at the line's start, exactly. */
  public TempoMark tempo() {
    return plan.line().mark();
  }

  /**
   * The settings, without locks.
   *
   * @param inForce weights that favour nothing, for a plan of an earlier release
   */
  public Rules rules(Weights inForce) {
    Rules kept = plan.settings().rules();
    return first ? kept.favouring(kept.favour(), inForce) : kept;
  }

  /** What the search had proven when the plan was kept. */
  public Search search() {
    return first
        ? new Search(
            PlanJson.Result.STOPPED,
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            0,
            List.of())
        : proven();
  }

  private Search proven() {
    return new Search(
        plan.result(),
        plan.cost(),
        plan.bound(),
        plan.rotation().map(PlanJson.RotationJson::rotation),
        plan.searchSeconds(),
        plan.findings().stream()
            .filter(finding -> finding.kind().isEmpty())
            .map(PlanJson.FindingJson::message)
            .toList());
  }

  /** The seats that are known, by players' names. */
  public Map<String, Seat> seats() {
    Map<String, Seat> seats = new HashMap<>();
    plan.players()
        .forEach(player -> player.seat().ifPresent(own -> seats.put(player.name(), own.seat())));
    return Map.copyOf(seats);
  }

  /** The players who leave out for the line what the score gives them. */
  public Set<String> freed() {
    return plan.players().stream()
        .filter(PlayerJson::isFreed)
        .map(PlayerJson::name)
        .collect(Collectors.toUnmodifiableSet());
  }

  /**
   * What was asked, for a line taken from the score once more in each relay. Techniques are as the
   * catalogue has them, rates, breath and level as the file has them; of an earlier release's plan
   * the players' techniques are those that are expected, and figures the population's.
   *
   * @param inForce weights that favour nothing, for a plan of an earlier release
   * @throws UnreadableFile if a line has another number of strokes, or an instrument or technique
   *     is not known
   */
  public Brief brief(List<Line> lines, Catalogue catalogue, Weights inForce) throws UnreadableFile {
    Spot spot = Spot.of(score().file());
    for (int relay = 0; relay < lines.size(); relay++) {
      if (lines.get(relay).count() != strokes(relay)) {
        spot.tell(
            Sentence.of(
                "the line has {0} notes, the plan was made for {1}; split it again",
                lines.get(relay).count(), strokes(relay)));
      }
    }
    List<Player> players = players(catalogue, spot);
    spot.throwIfAny();
    List<Lock> locks = new ArrayList<>();
    for (LockJson own : plan.locks()) {
      own.among(players, lines)
          .ifPresentOrElse(
              locks::add,
              () -> spot.tell(Sentence.of("a lock names a player, way or stroke not there")));
    }
    spot.throwIfAny();
    return new Brief(lines, players, rules(inForce).with(locks));
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
  public Brief withoutLocks(List<Line> lines, Catalogue catalogue, Weights inForce)
      throws UnreadableFile {
    Spot spot = Spot.of(score().file());
    List<Player> players = players(catalogue, spot);
    spot.throwIfAny();
    return new Brief(lines, players, rules(inForce));
  }

  private int strokes(int relay) {
    return relays().get(relay).orElse(source()).strokes().size();
  }

  private List<Player> players(Catalogue catalogue, Spot spot) {
    if (plan.players().stream().map(PlayerJson::name).distinct().count() < plan.players().size()) {
      spot.tell(Sentence.of("the plan needs players, each with a name of its own"));
    }
    return plan.players().stream()
        .flatMap(
            player ->
                player
                    .player(catalogue, plan.settings().rules().assurance(), spot.at(player.name()))
                    .stream())
        .map(player -> first ? ofPopulation(player) : player)
        .toList();
  }

  /** The player with what is expected of everybody, and what the plan used besides. */
  private Player ofPopulation(Player player) {
    Assurance assurance = plan.settings().rules().assurance();
    List<Technique> used = player.skills().stream().map(Skill::technique).toList();
    return player.with(
        player.instrument().techniques().stream()
            .filter(technique -> technique.expected() || used.contains(technique))
            .map(technique -> new Skill(technique, technique.limit().at(assurance)))
            .toList());
  }

  /**
   * The plan itself for what {@link #brief} gave; empty if the file holds none.
   *
   * @throws UnreadableFile if a segment names a player, technique or stroke that is not there
   */
  public Optional<Plan> plan(Brief brief) throws UnreadableFile {
    Spot spot = Spot.of(score().file());
    List<Segment> segments = new ArrayList<>();
    for (SegmentJson own : plan.segments()) {
      own.in(brief)
          .ifPresentOrElse(
              segments::add,
              () ->
                  spot.at(own.player())
                      .tell(
                          Sentence.of(
                              "has no such stretch from stroke {0} to {1} in this plan; split it"
                                  + " again",
                              own.first(), own.last())));
    }
    spot.throwIfAny();
    return segments.isEmpty() ? Optional.empty() : Optional.of(joined(brief, segments));
  }

  private Plan joined(Brief brief, List<Segment> segments) throws UnreadableFile {
    try {
      return new Plan(brief, segments);
    } catch (IllegalArgumentException e) {
      throw new UnreadableFile(
          List.of(
              Sentence.of(
                  "{0}: a relay has no segment, or a hocket lacks one of its two players; split it"
                      + " again",
                  score().file())));
    }
  }
}

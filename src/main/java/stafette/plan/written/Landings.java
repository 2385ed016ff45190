package stafette.plan.written;

import java.util.List;
import java.util.NavigableSet;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import stafette.limits.Breath;
import stafette.notation.LandingNote;
import stafette.plan.GivenStretch;
import stafette.plan.Plan;
import stafette.plan.Player;
import stafette.plan.Segment;
import stafette.score.Line;
import stafette.score.Part;
import stafette.score.Stroke;
import stafette.time.Position;

/**
 * The notes on which players hand over: as long as is plain to read, but never into what a player
 * has next, nor into the time to get ready for it.
 *
 * @param players who share the stream of notes
 * @param onsets where they have something else to play
 * @param readySeconds rest before an entry
 */
public record Landings(List<Player> players, NavigableSet<Position> onsets, double readySeconds) {
  /** Those of parts beside the relay: none. */
  public static final Landings NONE = new Landings(List.of(), new TreeSet<>(), 0);

  /** The landing notes of a player of a plan who reads from a part of its own. */
  public static Landings of(Plan plan, int player) {
    return of(plan, List.of(player), new TreeSet<>());
  }

  /**
   * The landing notes of players of a plan.
   *
   * @param others where others who read from the same staff have notes
   */
  public static Landings of(Plan plan, List<Integer> players, NavigableSet<Position> others) {
    NavigableSet<Position> onsets = new TreeSet<>(others);
    for (int player : players) {
      for (Segment segment : plan.segmentsOf(player)) {
        onsets.add(plan.line(segment).stroke(segment.first()).onset());
      }
    }
    return new Landings(
        players.stream().map(plan.brief().players()::get).toList(),
        onsets,
        plan.brief().rules().readySeconds());
  }

  /**
   * Where a part has notes beside the turns of who plays from it. In the part that the line was
   * taken from, the line's are no others: what is not played there goes.
   */
  public static NavigableSet<Position> others(Part part, Plan plan) {
    Set<Position> own =
        part.id().equals(plan.line().source().part())
            ? plan.line().strokes().stream().map(Stroke::onset).collect(Collectors.toSet())
            : plan.segments().stream()
                .filter(segment -> plan.player(segment).part().equals(Optional.of(part.id())))
                .flatMap(segment -> plan.played(segment).all().stream())
                .map(Stroke::onset)
                .collect(Collectors.toSet());
    return part.voices().stream()
        .flatMap(voice -> voice.strokes().stream())
        .map(Stroke::onset)
        .filter(onset -> !own.contains(onset))
        .collect(Collectors.toCollection(TreeSet::new));
  }

  /** Whether the players have anything else between two places, the ends left out. */
  boolean hasBetween(Line line, Position from, Position to) {
    Position next = onsets.higher(from);
    return (next != null && next.isBefore(to))
        || players.stream()
            .flatMap(player -> player.busy().stream())
            .anyMatch(
                given ->
                    given.fromMicros() < line.micros(to) && line.micros(from) < given.toMicros());
  }

  /** The last stroke of a passage as it is written, where the line goes on without the player. */
  public Stroke written(Line line, int last) {
    Position landing = line.stroke(last).onset();
    return players.isEmpty()
        ? line.stroke(last)
        : LandingNote.written(line, last, end -> isFree(line, landing, end));
  }

  private boolean isFree(Line line, Position landing, Position end) {
    Position next = onsets.higher(landing);
    return (next == null || line.micros(end) + readyMicros() <= line.micros(next))
        && players.stream()
            .flatMap(player -> player.busy().stream())
            .filter(given -> given.toMicros() > line.micros(landing))
            .mapToLong(GivenStretch::fromMicros)
            .allMatch(from -> line.micros(end) + readyMicros() <= from);
  }

  private long readyMicros() {
    double breath =
        players.stream()
            .flatMap(player -> player.instrument().breath().stream())
            .mapToDouble(Breath::catchSeconds)
            .max()
            .orElse(0);
    return Math.round(Math.max(readySeconds, breath) * 1_000_000);
  }
}

package stafette.musicxml.share;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import stafette.plan.Handoff;
import stafette.plan.Plan;
import stafette.plan.Played;
import stafette.plan.Segment;
import stafette.plan.Turn;
import stafette.score.Stroke;

/**
 * The words that tell a player with whom it relays: at its first turn, and again where it relays
 * with others ("alternating with Fl. 2"); who has one turn alone is told from whom it comes and to
 * whom it goes.
 */
final class RelayWords {
  private final Plan plan;
  private final int player;
  private final List<Integer> together;
  private final WritingStyle style;
  private final List<Sign> signs = new ArrayList<>();

  /** Who hands over to a player at a turn, and to whom it does. */
  private record Neighbours(Segment turn, Optional<Handoff> from, Optional<Handoff> to) {}

  private RelayWords(Plan plan, int player, List<Integer> together, WritingStyle style) {
    this.plan = plan;
    this.player = player;
    this.together = together;
    this.style = style;
  }

  /**
   * The words for a player.
   *
   * @param together those of the same staff, whose labels say so
   */
  static List<Sign> of(Plan plan, int player, List<Integer> together, WritingStyle style) {
    RelayWords words = new RelayWords(plan, player, together, style);
    words.say();
    return words.signs;
  }

  private void say() {
    List<Neighbours> turns = plan.segmentsOf(player).stream().map(this::neighbours).toList();
    List<Neighbours> open = new ArrayList<>();
    for (Neighbours turn : turns) {
      if (!open.isEmpty() && !partners(turn).isEmpty() && isApart(open, turn)) {
        say(open);
        open.clear();
      }
      open.add(turn);
    }
    say(open);
  }

  private boolean isApart(List<Neighbours> open, Neighbours next) {
    Set<String> known = partners(open);
    return !known.isEmpty() && partners(next).stream().noneMatch(known::contains);
  }

  private void say(List<Neighbours> turns) {
    if (turns.size() == 1) {
      Neighbours turn = turns.get(0);
      turn.from().ifPresent(from -> add(first(turn), "from " + names(from.leaves())));
      turn.to().ifPresent(to -> add(last(turn), "to " + names(to.enters())));
    } else if (!turns.isEmpty() && !partners(turns).isEmpty()) {
      add(first(turns.get(0)), "alternating with " + String.join(", ", partners(turns)));
    }
  }

  private void add(Stroke stroke, String words) {
    signs.add(Sign.partner(stroke.onset(), words));
  }

  private Stroke first(Neighbours turn) {
    Played played = plan.played(turn.turn());
    return played.line().stroke(played.first());
  }

  private Stroke last(Neighbours turn) {
    Played played = plan.played(turn.turn());
    return played.line().stroke(played.last());
  }

  private Set<String> partners(List<Neighbours> turns) {
    Set<String> all = new LinkedHashSet<>();
    turns.forEach(turn -> all.addAll(partners(turn)));
    return all;
  }

  private Set<String> partners(Neighbours turn) {
    Set<String> all = new LinkedHashSet<>();
    turn.from().ifPresent(from -> all.add(names(from.leaves())));
    turn.to().ifPresent(to -> all.add(names(to.enters())));
    return all;
  }

  private Neighbours neighbours(Segment segment) {
    Optional<Handoff> from =
        plan.handoffs().stream()
            .filter(handoff -> handoff.enters().segments().contains(segment))
            .filter(handoff -> !handoff.leaves().has(player) && !isWithin(handoff))
            .findFirst();
    Optional<Handoff> to =
        plan.handoffs().stream()
            .filter(handoff -> handoff.leaves().segments().contains(segment))
            .filter(handoff -> !handoff.enters().has(player) && !isWithin(handoff))
            .findFirst();
    return new Neighbours(segment, from, to);
  }

  private boolean isWithin(Handoff handoff) {
    return isWithin(handoff.enters()) && isWithin(handoff.leaves());
  }

  private boolean isWithin(Turn turn) {
    return turn.segments().stream().allMatch(segment -> together.contains(segment.player()));
  }

  private String names(Turn turn) {
    return turn.segments().stream()
        .map(segment -> style.shortName().apply(plan.player(segment)))
        .reduce((one, other) -> one + " and " + other)
        .orElseThrow();
  }
}

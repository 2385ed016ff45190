package stafette.split;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import stafette.score.Line;

/**
 * Extends partial plans by one segment, carrying along what everybody brings: exact, every rule of
 * the model holds.
 */
final class Extension {
  private final Crew crew;
  private final Line line;
  private final Handoffs handoffs;
  private final Relaxation relaxation;
  private final int[] slots;

  Extension(Crew crew, Line line, Handoffs handoffs, Relaxation relaxation) {
    this.crew = crew;
    this.line = line;
    this.handoffs = handoffs;
    this.relaxation = relaxation;
    this.slots = crew.slots();
  }

  /**
   * The least that a plan costs which goes on from this label; {@link Relaxation#NEVER} if none
   * does.
   */
  int bound(Label label) {
    return label.hasEnd()
        ? valueAt(label, label.end())
        : label.paid()
            + relaxation.fromStart(label.kind(), label.skill(), label.first(), label.before());
  }

  /** Labels for every player who can begin the line. */
  void begin(Consumer<Label> take) {
    int[] players = new int[slots.length];
    State[] states = new State[slots.length];
    long next = timeFrom(1);
    int seen = 0;
    for (int slot = 0; slot < slots.length; slot++) {
      seen = slot > 0 && slots[slot] == slots[slot - 1] ? seen + 1 : 0;
      players[slot] = kind(slot).members().get(seen);
      State given = kind(slot).throughGiven(State.RESTED, Long.MIN_VALUE, next).orElseThrow();
      states[slot] = simplified(slot, given, next);
    }
    for (int slot = slots.length - 1; slot >= 0; slot--) {
      if (slot == 0 || slots[slot] != slots[slot - 1]) {
        for (int skill = kind(slot).tables().size() - 1; skill >= 0; skill--) {
          enter(Optional.empty(), slot, skill, 0, -1, 0, states, players).ifPresent(take);
        }
      }
    }
  }

  /** Finds out how far the label's segment can go, and orders its ends by what they promise. */
  void findEnds(Label label) {
    Row row = row(label);
    int from = Math.max(label.first(), label.before() + 1);
    int to = Math.min(row.last(), row.reach(label.tiredness(), label.air()));
    List<Integer> ends = new ArrayList<>();
    for (int end = from; end <= to; end++) {
      if (relaxation.fromEnd(label.kind(), label.skill(), end) < Relaxation.NEVER) {
        ends.add(end);
      }
    }
    ends.sort(
        Comparator.comparingInt((Integer end) -> valueAt(label, end))
            .thenComparing(Comparator.reverseOrder()));
    label.tryEnds(ends.stream().mapToInt(Integer::intValue).toArray());
  }

  /**
   * Whether the plan is whole when the label's segment ends with {@code end}, and nobody's own part
   * is spoilt by it.
   */
  boolean completes(Label label, int end) {
    return end == line.count() - 1 && statesAfter(label, end, Long.MAX_VALUE).isPresent();
  }

  /** All labels that follow when the label's segment ends with {@code end}. */
  void follow(Label label, int end, Consumer<Label> take) {
    if (handoffs.overSilence(end)) {
      followAt(label, end, end + 1, take);
    }
    int from = Math.max(handoffs.earliest(end), label.earliestNext());
    for (int start = from; start <= Math.min(end, handoffs.latest(end)); start++) {
      followAt(label, end, start, take);
    }
  }

  private void followAt(Label label, int end, int start, Consumer<Label> take) {
    Optional<State[]> states = statesAfter(label, end, timeFrom(Math.max(start, end) + 1));
    if (states.isEmpty()) {
      return;
    }
    int paid = label.paid() + row(label).points(end);
    for (int slot = slots.length - 1; slot >= 0; slot--) {
      if (slot == label.slot() || repeats(label, slot)) {
        continue;
      }
      int handoff = handoffs.cost(label.kind(), slots[slot], start, end);
      for (int skill = kind(slot).tables().size() - 1; skill >= 0; skill--) {
        if (relaxation.fromStart(slots[slot], skill, start, end) < Relaxation.NEVER) {
          enter(
                  Optional.of(label),
                  slot,
                  skill,
                  start,
                  end,
                  paid + handoff,
                  states.get(),
                  label.players())
              .ifPresent(take);
        }
      }
    }
  }

  /** Whether a player alike in all, its state included, stands before this one. */
  private boolean repeats(Label label, int slot) {
    for (int other = slot - 1; other >= 0 && slots[other] == slots[slot]; other--) {
      if (other != label.slot() && label.state(other).equals(label.state(slot))) {
        return true;
      }
    }
    return false;
  }

  /**
   * Everybody's state once the label's segment has ended; who plays on from here has its own still
   * as it was.
   *
   * @param until all given passages that begin before this moment are played
   * @return empty if the plan spoils a given passage
   */
  private Optional<State[]> statesAfter(Label label, int end, long until) {
    State[] states = label.states();
    long since = timeFrom(label.earliestNext());
    for (int slot = 0; slot < states.length; slot++) {
      boolean playing = slot == label.slot();
      State state =
          playing
              ? kind(slot).after(table(label), row(label), end, label.tiredness(), label.air())
              : states[slot];
      long from = playing ? line.onsetMicros(label.first()) : since;
      Optional<State> after = kind(slot).throughGiven(state, from, until);
      if (after.isEmpty()) {
        return Optional.empty();
      }
      states[slot] = simplified(slot, after.get(), until);
    }
    return Optional.of(states);
  }

  /**
   * The label of a segment begun, if its player is free and has the strength for more than the
   * overlap.
   */
  private Optional<Label> enter(
      Optional<Label> parent,
      int slot,
      int skill,
      int start,
      int before,
      int paid,
      State[] statesAfter,
      int[] players) {
    PlayerKind kind = kind(slot);
    SegmentTable table = kind.tables().get(skill);
    long onset = line.onsetMicros(start);
    long since = parent.map(label -> timeFrom(label.earliestNext())).orElse(Long.MIN_VALUE);
    State was = parent.map(label -> label.state(slot)).orElse(State.RESTED);
    Optional<State> brings = kind.throughGiven(was, since, onset);
    if (brings.isEmpty() || kind.freeFrom(brings.get()) > onset) {
      return Optional.empty();
    }
    long tiredness = kind.tirednessEntering(brings.get(), table, start);
    long air = kind.airEntering(brings.get(), onset);
    if (tiredness > Shares.WHOLE || table.row(start).reach(tiredness, air) <= before) {
      return Optional.empty();
    }
    State[] states = statesAfter.clone();
    int[] owners = players.clone();
    int foremost = foremost(slot);
    swap(states, owners, slot, foremost);
    states[foremost] = State.RESTED;
    sortAlike(states, owners, foremost);
    return Optional.of(
        new Label(
            parent,
            slots[slot],
            skill,
            foremost,
            start,
            before,
            paid,
            tiredness,
            air,
            states,
            owners));
  }

  /** The first slot of the same kind: whoever plays is put there. */
  private int foremost(int slot) {
    int first = slot;
    while (first > 0 && slots[first - 1] == slots[slot]) {
      first--;
    }
    return first;
  }

  /**
   * Puts players of a kind in the order in which they are free, so that labels that differ only in
   * names look the same.
   */
  private void sortAlike(State[] states, int[] owners, int playing) {
    for (int i = 1; i < states.length; i++) {
      for (int j = i; j > 0 && slots[j - 1] == slots[j] && j - 1 != playing; j--) {
        if (later(states[j - 1], states[j])) {
          swap(states, owners, j - 1, j);
        }
      }
    }
  }

  private static void swap(State[] states, int[] owners, int one, int other) {
    State state = states[one];
    states[one] = states[other];
    states[other] = state;
    int owner = owners[one];
    owners[one] = owners[other];
    owners[other] = owner;
  }

  private static boolean later(State one, State other) {
    if (one.untouched() || other.untouched()) {
      return !one.untouched();
    }
    return one.soundMicros() > other.soundMicros();
  }

  /** Whether whatever can follow one label can follow the other at no more cost. */
  boolean noWorse(Label one, Label other) {
    if (one.paid() > other.paid()
        || one.tiredness() > other.tiredness()
        || one.air() > other.air()) {
      return false;
    }
    for (int slot = 0; slot < slots.length; slot++) {
      if (slot != one.slot() && !kind(slot).noWorse(one.state(slot), other.state(slot))) {
        return false;
      }
    }
    return true;
  }

  private int valueAt(Label label, int end) {
    return label.paid()
        + row(label).points(end)
        + relaxation.fromEnd(label.kind(), label.skill(), end);
  }

  /** Past the line's end nobody enters any more, and what anybody brings makes no difference. */
  private State simplified(int slot, State state, long now) {
    return now == Long.MAX_VALUE ? State.RESTED : kind(slot).simplified(state, now);
  }

  private long timeFrom(int stroke) {
    return stroke < line.count() ? line.onsetMicros(stroke) : Long.MAX_VALUE;
  }

  private PlayerKind kind(int slot) {
    return crew.kinds().get(slots[slot]);
  }

  private SegmentTable table(Label label) {
    return crew.kinds().get(label.kind()).tables().get(label.skill());
  }

  private Row row(Label label) {
    return table(label).row(label.first());
  }
}

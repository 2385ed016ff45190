package stafette.musicxml.read;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import stafette.time.Length;
import stafette.time.Rational;

/**
 * Finds which notes of a measure make up a tuplet. A bracketed group reaches from the start of its
 * outermost bracket to the stop; one without brackets is complete when its notes fill a whole
 * number of the unit that it counts.
 */
final class TupletGroups {
  private final List<Optional<TupletGroup>> groupOf;
  private final Map<String, Run> open = new HashMap<>();
  private final Map<String, Run> lastOf = new HashMap<>();

  private TupletGroups(int count) {
    groupOf = new ArrayList<>(Collections.nCopies(count, Optional.empty()));
  }

  /**
   * A whole group.
   *
   * @param start from the start of the bar
   * @param end from the start of the bar
   * @param beamedInThrees whether its beams end after each third note
   */
  record TupletGroup(Length start, Length end, boolean beamedInThrees) {}

  /** For each child of a measure, the group to which it belongs. */
  static List<Optional<TupletGroup>> of(List<WrittenMeasure.Child> children) {
    TupletGroups groups = new TupletGroups(children.size());
    for (int i = 0; i < children.size(); i++) {
      WrittenMeasure.Child child = children.get(i);
      int index = i;
      child.note().ifPresent(note -> groups.add(index, child.onset(), note));
    }
    groups.open.values().forEach(groups::close);
    return groups.groupOf;
  }

  /** A group that is still growing. */
  private static final class Run {
    private final Length start;
    private final TimeModification modification;
    private final List<Integer> members = new ArrayList<>();
    private final List<Boolean> beamEnds = new ArrayList<>();
    private Length end;
    private Rational smallestUnit;
    private int brackets;
    private boolean bracketed;

    private Run(Length start, TimeModification modification, Rational unit) {
      this.start = start;
      this.end = start;
      this.modification = modification;
      this.smallestUnit = unit;
    }

    private boolean goesOnWith(Length onset, WrittenNote note) {
      return end.equals(onset)
          && note.modification().isPresent()
          && (bracketed
              || (note.notations().tupletStarts() == 0
                  && note.modification().get().ratio().equals(modification.ratio())));
    }

    private void add(int index, WrittenNote note) {
      members.add(index);
      beamEnds.add(!note.beams().ended().isEmpty());
      end = end.plus(note.text().length());
      smallestUnit = smallestUnit.min(unitOf(note));
      brackets += note.notations().tupletStarts() - note.notations().tupletStops();
      bracketed |= note.notations().tupletStarts() > 0;
    }

    private boolean isBeamedInThrees() {
      return beamEnds.size() % 3 == 0
          && IntStream.range(0, beamEnds.size()).allMatch(i -> beamEnds.get(i) == (i % 3 == 2));
    }

    private boolean complete() {
      if (bracketed || brackets < 0) {
        return brackets <= 0;
      }
      Rational whole = smallestUnit.times(modification.normal());
      return whole.signum() > 0 && end.minus(start).quarters().modulo(whole).signum() == 0;
    }
  }

  private void add(int index, Length onset, WrittenNote note) {
    String voice = note.text().voice();
    if (note.text().chord()) {
      Optional.ofNullable(lastOf.get(voice)).ifPresent(run -> run.members.add(index));
      return;
    }
    if (note.ornamental()) {
      lastOf.remove(voice);
      return;
    }
    Run run = open.get(voice);
    if (run != null && !run.goesOnWith(onset, note)) {
      close(run);
      open.remove(voice);
      run = null;
    }
    lastOf.remove(voice);
    if (note.modification().isEmpty() || alternates(note)) {
      return;
    }
    if (run == null) {
      run = new Run(onset, note.modification().get(), unitOf(note));
      open.put(voice, run);
    }
    run.add(index, note);
    lastOf.put(voice, run);
    if (run.complete()) {
      close(run);
      open.remove(voice);
    }
  }

  private void close(Run run) {
    TupletGroup group = new TupletGroup(run.start, run.end, run.isBeamedInThrees());
    run.members.forEach(member -> groupOf.set(member, Optional.of(group)));
  }

  /** Two-note tremolos state a time modification too, but are no tuplets. */
  private static boolean alternates(WrittenNote note) {
    return note.notations()
        .tremolo()
        .map(slashes -> slashes.joined() != Notations.Joined.NOTHING)
        .orElse(false);
  }

  /** The stated unit, else the note's own value. */
  private static Rational unitOf(WrittenNote note) {
    TimeModification modification = note.modification().orElseThrow();
    return modification
        .unit()
        .or(note::value)
        .map(Length::quarters)
        .orElseGet(() -> note.text().length().quarters().dividedBy(modification.ratio()));
  }
}

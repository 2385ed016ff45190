package stafette.picture.notes;

import java.util.ArrayList;
import java.util.List;
import stafette.score.Pitch;
import stafette.score.Tone;
import stafette.score.Transposition;
import stafette.time.Bar;
import stafette.time.Position;

/**
 * Passages that are written an octave off, so that nobody has to count ledger lines: those with
 * more than four of them, and the notes beside that lie far out too (common practice, no source).
 */
final class OctaveLines {
  /** Steps above the bottom line from which an octave line is wanted. */
  private static final int FAR_ABOVE = 18;

  /** Steps above the bottom line down to which it holds on. */
  private static final int STILL_ABOVE = 12;

  private static final int FAR_BELOW = -10;
  private static final int STILL_BELOW = -4;

  /** Steps within which notes may lie that only fill up a beat. */
  private static final int FILLS_ABOVE = 7;

  private static final int FILLS_BELOW = 1;

  /** How many such notes may stand between two passages under one line. */
  private static final int MOST_BETWEEN = 8;

  private final Staff staff;
  private final List<Bar> bars;
  private final List<NotatedItem> notes;
  private final List<OctaveLine> lines = new ArrayList<>();

  /**
   * An octave line over or under some of the notes.
   *
   * @param first the first note, among all notes and rests
   * @param last the last note
   * @param up whether it sounds an octave higher than it is written
   */
  record OctaveLine(int first, int last, boolean up) {}

  private OctaveLines(Staff staff, List<Bar> bars, List<NotatedItem> written) {
    this.staff = staff;
    this.bars = bars;
    notes = new ArrayList<>(written);
    find(true);
    find(false);
  }

  /** Finds the passages in what a staff of written pitches has. */
  static OctaveLines of(Staff staff, List<Bar> bars, List<NotatedItem> written) {
    return new OctaveLines(staff, bars, written);
  }

  /** The notes as they are written under the lines. */
  List<NotatedItem> notes() {
    return List.copyOf(notes);
  }

  List<OctaveLine> lines() {
    return List.copyOf(lines);
  }

  private void find(boolean up) {
    int first = 0;
    while (first < notes.size()) {
      int last = first;
      while (last < notes.size() && holds(notes.get(last), up)) {
        last++;
      }
      boolean wanted = notes.subList(first, last).stream().anyMatch(note -> isFar(note, up));
      if (wanted) {
        last = filled(last - 1, 1, up) + 1;
        add(filled(first, -1, up), last - 1, up);
      }
      first = Math.max(last, first + 1);
    }
  }

  /** Where a line ends that begins and ends with beats, if the notes there are not too near. */
  private int filled(int edge, int way, boolean up) {
    Position beat = beat(edge);
    int at = edge;
    while (at + way >= 0 && at + way < notes.size() && beat(at + way).equals(beat)) {
      at += way;
      if (!reaches(notes.get(at), up, FILLS_ABOVE, FILLS_BELOW)) {
        return edge;
      }
    }
    return at;
  }

  private Position beat(int index) {
    Position onset = notes.get(index).onset();
    return bars.stream()
        .filter(bar -> bar.span().contains(onset))
        .findFirst()
        .map(bar -> bar.beatStart(onset))
        .orElse(onset);
  }

  private void add(int first, int last, boolean up) {
    int from = first;
    int start = first;
    if (!lines.isEmpty() && goesOn(lines.get(lines.size() - 1), first, up)) {
      OctaveLine before = lines.remove(lines.size() - 1);
      from = before.last() + 1;
      start = before.first();
    }
    lines.add(new OctaveLine(start, last, up));
    Transposition octave = up ? new Transposition(-7, -12) : new Transposition(7, 12);
    for (int i = from; i <= last; i++) {
      notes.set(i, notes.get(i).withTones(tone -> moved(tone, octave)));
    }
  }

  /** Whether few notes between two lines, none of them too near, make one line of them. */
  private boolean goesOn(OctaveLine before, int next, boolean up) {
    if (before.up() != up || next <= before.last()) {
      return false;
    }
    List<NotatedItem> between = notes.subList(before.last() + 1, next);
    return between.size() <= MOST_BETWEEN
        && between.stream().allMatch(note -> reaches(note, up, FILLS_ABOVE, FILLS_BELOW));
  }

  private static Tone moved(Tone tone, Transposition octave) {
    return tone instanceof Pitch pitch ? pitch.movedBy(octave) : tone;
  }

  private boolean holds(NotatedItem note, boolean up) {
    return reaches(note, up, STILL_ABOVE, STILL_BELOW);
  }

  private boolean reaches(NotatedItem note, boolean up, int above, int below) {
    return !note.isRest()
        && (up ? StemGroup.lowest(staff, note) >= above : StemGroup.highest(staff, note) <= below);
  }

  private boolean isFar(NotatedItem note, boolean up) {
    return up
        ? StemGroup.highest(staff, note) >= FAR_ABOVE
        : StemGroup.lowest(staff, note) <= FAR_BELOW;
  }
}

package stafette.musicxml.newparts;

import java.math.BigInteger;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.audiveris.proxymusic.Attributes;
import org.audiveris.proxymusic.Clef;
import org.audiveris.proxymusic.StaffDetails;
import stafette.limits.Instrument;
import stafette.musicxml.share.Assigned;
import stafette.score.Pitch;
import stafette.score.Step;
import stafette.score.Tone;

/**
 * The staves of a new part: two for harps and keyboards, with the line on that of its register; a
 * single line for a drum that the score has on one; else one staff in the clefs that it asks for.
 */
final class NewStaves {
  private static final Set<String> ON_TWO = Set.of("harp", "keyboard");
  private static final Pitch MIDDLE = new Pitch(Step.C, 0, 4);

  private final Assigned assigned;
  private final Instrument instrument;
  private final Optional<ClefCourse> clefs;
  private final Map<Integer, Integer> staves = new HashMap<>();
  private final boolean oneLine;

  /**
   * The staves for what a player has.
   *
   * @param oneLine whether the line's own part has a staff of one line
   */
  NewStaves(Assigned assigned, boolean oneLine) {
    this.assigned = assigned;
    this.instrument = assigned.player().instrument();
    this.oneLine = oneLine && instrument.range().isEmpty() && hasOnePlace();
    SortedMap<Integer, List<Pitch>> written = new TreeMap<>();
    for (int bar : assigned.bars()) {
      List<Pitch> pitches = written(assigned, bar);
      if (!pitches.isEmpty()) {
        written.put(bar, pitches);
      }
    }
    if (ON_TWO.contains(instrument.family())) {
      this.clefs = Optional.empty();
      written.forEach((bar, pitches) -> staves.put(bar, staff(bar, pitches)));
    } else {
      this.clefs = Optional.of(new ClefCourse(instrument, written));
    }
  }

  private List<Pitch> written(Assigned notes, int bar) {
    return tones(notes, bar)
        .filter(Pitch.class::isInstance)
        .map(Pitch.class::cast)
        .map(pitch -> pitch.movedBy(instrument.transposition().inverse()))
        .toList();
  }

  private static Stream<Tone> tones(Assigned notes, int bar) {
    return notes.sounds(bar).stream()
        .flatMap(sound -> notes.stroke(sound.stroke()).tones().stream());
  }

  /** The upper staff from middle C on. */
  private static int byRegister(List<Pitch> pitches) {
    double middle = pitches.stream().mapToInt(Pitch::diatonic).average().orElseThrow();
    return middle >= MIDDLE.diatonic() ? 1 : 2;
  }

  /** By register, but what is tied over a barline stays on its staff. */
  private int staff(int bar, List<Pitch> pitches) {
    boolean begins = assigned.sounds(bar).get(0).first();
    int own = byRegister(pitches);
    return begins ? own : staves.getOrDefault(bar - 1, own);
  }

  int count() {
    return clefs.isPresent() ? 1 : 2;
  }

  /** The staff on which the line stands in a bar, from 1. */
  int of(int bar) {
    return staves.getOrDefault(bar, 1);
  }

  /** The staff for other notes in a bar, from 1. */
  int of(Assigned others, int bar) {
    List<Pitch> pitches = written(others, bar);
    return count() == 1 || pitches.isEmpty() ? 1 : byRegister(pitches);
  }

  private boolean hasOnePlace() {
    return assigned.bars().stream()
            .flatMap(bar -> tones(assigned, bar))
            .map(Tone::key)
            .distinct()
            .count()
        == 1;
  }

  /**
   * Adds what a bar begins with: at first how many staves there are, and clefs where they change.
   */
  void describe(Attributes attributes, int bar) {
    if (clefs.isEmpty() && bar == 0) {
      attributes.setStaves(BigInteger.TWO);
      attributes.getClef().add(numbered(ClefCourse.element("G2"), 1));
      attributes.getClef().add(numbered(ClefCourse.element("F4"), 2));
    }
    clefs.flatMap(course -> course.from(bar)).ifPresent(attributes.getClef()::add);
    if (bar == 0 && oneLine) {
      StaffDetails details = new StaffDetails();
      details.setStaffLines(BigInteger.ONE);
      attributes.getStaffDetails().add(details);
    }
  }

  private static Clef numbered(Clef clef, int staff) {
    clef.setNumber(BigInteger.valueOf(staff));
    return clef;
  }

  /** Whether a clef begins with a bar. */
  boolean changesClef(int bar) {
    return clefs.flatMap(course -> course.from(bar)).isPresent();
  }
}

package stafette.check;

import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import stafette.limits.Assurance;
import stafette.limits.Capability;
import stafette.limits.Groups;
import stafette.limits.HarpPedals;
import stafette.limits.Technique;
import stafette.score.Line;
import stafette.score.Pitch;
import stafette.score.Stroke;
import stafette.score.Tone;

/**
 * How fast a line goes against the best technique that is used at each of its strokes: by pitch
 * (repeated or not), slur, group of three, lowest rate and twin string.
 *
 * @param unknownPeakPerSecond the peak where no technique is used
 */
record Pace(
    Line line, List<Technique> techniques, Assurance assurance, double unknownPeakPerSecond) {
  /** Whether the gap before a stroke is shorter than that share of the peak makes it. */
  boolean exceeds(double share, int j) {
    return ratePerSecond(j) > share * peakPerSecond(j) * (1 + Tolerance.SHARE);
  }

  private double ratePerSecond(int j) {
    return 1e6 / (line.onsetMicros(j) - line.onsetMicros(j - 1));
  }

  private double peakPerSecond(int j) {
    OptionalDouble best =
        techniques.stream()
            .filter(technique -> isUsed(technique, j))
            .mapToDouble(technique -> peakPerSecond(technique, j))
            .max();
    return best.orElse(unknownPeakPerSecond);
  }

  private double peakPerSecond(Technique technique, int j) {
    Capability capability = technique.limit().at(assurance);
    boolean moving =
        technique.act().repeatsByKey()
            && !repeats(j)
            && capability.movingMilli() != Capability.UNLIMITED;
    return (moving ? capability.movingMilli() : capability.peakMilli()) / 1000.0;
  }

  private boolean isUsed(Technique technique, int j) {
    Stroke stroke = line.stroke(j);
    boolean pitches =
        switch (technique.pitches()) {
          case ANY -> true;
          case REPEATED -> repeats(j);
          case MOVING -> !repeats(j);
        };
    boolean slurs =
        switch (technique.slurs()) {
          case ANY -> true;
          case NONE -> !stroke.slurred();
          case ALL -> stroke.slurred() || stroke.slurContinues();
        };
    return pitches
        && slurs
        && ratePerSecond(j) >= technique.lowestPerSecond()
        && (technique.groups() != Groups.THREES || line.placeInThree(j) >= 0)
        && (!technique.twinStrings() || !repeats(j) || twinned(stroke));
  }

  private boolean repeats(int j) {
    return keys(line.stroke(j)).equals(keys(line.stroke(j - 1)));
  }

  private static Set<Integer> keys(Stroke stroke) {
    return stroke.tones().stream().map(Tone::key).collect(Collectors.toSet());
  }

  private static boolean twinned(Stroke stroke) {
    return stroke.tones().stream()
        .allMatch(tone -> tone instanceof Pitch pitch && HarpPedals.hasTwin(pitch.midi()));
  }
}

package stafette.musicxml.read;

import java.util.ArrayList;
import java.util.List;
import java.util.NavigableMap;
import java.util.Set;
import stafette.score.Articulation;
import stafette.score.Dynamic;
import stafette.score.Grace;
import stafette.score.Manner;
import stafette.score.Stroke;
import stafette.score.Tone;
import stafette.score.Value;
import stafette.time.Position;

/** A stroke to which ties may still add. */
final class StrokeDraft {
  private final Position onset;
  private final List<Tone> tones;
  private final List<Grace> graces;
  private final boolean slurred;
  private final boolean measured;
  private final Set<Articulation> articulations;
  private final Manner manner;
  private final List<Value> values = new ArrayList<>();
  private Position end;
  private boolean slurContinues;

  StrokeDraft(
      Position onset,
      List<Tone> tones,
      List<Grace> graces,
      boolean slurred,
      boolean measured,
      Set<Articulation> articulations,
      Manner manner) {
    this.onset = onset;
    this.end = onset;
    this.tones = tones;
    this.graces = graces;
    this.slurred = slurred;
    this.measured = measured;
    this.articulations = articulations;
    this.manner = manner;
  }

  /** Lets it sound longer; what holds of the added note about slurs holds of all. */
  void prolong(Value value, boolean slurGoesOn) {
    values.add(value);
    end = end.plus(value.length());
    slurContinues = slurGoesOn;
  }

  Position onset() {
    return onset;
  }

  Position end() {
    return end;
  }

  Stroke finished(NavigableMap<Position, Dynamic> dynamics) {
    return new Stroke(
        onset,
        tones,
        values,
        graces,
        slurred,
        slurContinues,
        measured,
        articulations,
        dynamics.floorEntry(onset).getValue(),
        manner);
  }
}

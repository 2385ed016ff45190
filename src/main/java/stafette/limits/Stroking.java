package stafette.limits;

import java.util.stream.IntStream;
import stafette.score.Line;
import stafette.score.Stroke;
import stafette.words.Sayable;
import stafette.words.Sentence;

/** How most notes of a passage are made, as it is written. */
public enum Stroking implements Sayable {
  REPEATED,
  SEPARATE,
  SLURRED,
  PLUCKED;

  /** Plucked where all of it is; else as more than half of the notes after the first are. */
  public static Stroking of(Line line) {
    if (line.isPlucked()) {
      return PLUCKED;
    }
    int gaps = line.count() - 1;
    if (2 * line.strokes().stream().filter(Stroke::slurred).count() > gaps) {
      return SLURRED;
    }
    long repeated =
        IntStream.rangeClosed(1, gaps)
            .filter(j -> line.stroke(j).isLike(line.stroke(j - 1)))
            .count();
    return 2 * repeated > gaps ? REPEATED : SEPARATE;
  }

  /** Whether a technique is one for such notes. */
  boolean takes(Technique technique) {
    boolean slurs = technique.slurs() == Technique.SlurUse.ALL;
    return switch (this) {
      case PLUCKED -> technique.act() == Act.PLUCK;
      case REPEATED ->
          technique.expected() && !slurs && technique.pitches() != Technique.Pitches.MOVING;
      case SEPARATE ->
          technique.expected() && !slurs && technique.pitches() == Technique.Pitches.ANY;
      case SLURRED ->
          technique.expected()
              && slurs == technique.act().slurs()
              && technique.pitches() == Technique.Pitches.ANY;
    };
  }

  @Override
  public Sentence inWords() {
    return switch (this) {
      case REPEATED -> Sentence.of("repeated notes");
      case SEPARATE -> Sentence.of("changing notes without slurs");
      case SLURRED -> Sentence.of("slurred notes");
      case PLUCKED -> Sentence.of("plucked notes");
    };
  }
}

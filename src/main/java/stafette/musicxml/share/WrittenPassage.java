package stafette.musicxml.share;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import stafette.plan.HarpTurn;
import stafette.plan.Played;
import stafette.score.Line;
import stafette.score.Stroke;
import stafette.score.Tone;

/**
 * What a player has without a break, as it is written.
 *
 * @param played which strokes of a line
 * @param strokes as they are written
 * @param shaded the strokes at both ends that are shaded, as others play them too
 * @param softer by how many steps its dynamics are softer than the line's
 */
public record WrittenPassage(Played played, List<Stroke> strokes, Overlaps shaded, int softer) {
  public WrittenPassage {
    strokes = List.copyOf(strokes);
  }

  /**
   * A passage.
   *
   * @param landings how its last note is written
   */
  public static WrittenPassage of(Played played, Landings landings, Overlaps shaded, int softer) {
    List<Stroke> strokes = new ArrayList<>(played.all());
    strokes.set(strokes.size() - 1, landings.written(played.line(), played.last()));
    if (shaded.entering() > 0) {
      strokes.set(0, shaded.entered(strokes.get(0)));
    }
    return new WrittenPassage(played, strokes, shaded, softer);
  }

  /** A passage as the line is written. */
  public static WrittenPassage plain(Played played, Landings landings) {
    return of(played, landings, Overlaps.NONE, 0);
  }

  /** The same passage with each note as the string is called that sounds it. */
  WrittenPassage on(HarpTurn harp) {
    List<List<Tone>> tones = harp.tones();
    List<Stroke> spelled =
        IntStream.range(0, strokes.size())
            .mapToObj(i -> strokes.get(i).withTones(tones.get(i)))
            .toList();
    return new WrittenPassage(played, spelled, shaded, softer);
  }

  public Line line() {
    return played.line();
  }

  public Stroke landing() {
    return strokes.get(strokes.size() - 1);
  }
}

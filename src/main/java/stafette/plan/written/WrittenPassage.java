package stafette.plan.written;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import stafette.limits.Instrument;
import stafette.plan.HarpTurn;
import stafette.plan.Joins;
import stafette.plan.LevelSteps;
import stafette.plan.Plan;
import stafette.plan.Played;
import stafette.plan.Segment;
import stafette.plan.SourceTreatment;
import stafette.plan.WrittenAs;
import stafette.score.Line;
import stafette.score.Stroke;
import stafette.score.Tone;
import stafette.time.Position;

/**
 * What a player has without a break, as it is written.
 *
 * @param played which strokes of a line
 * @param strokes as they are written
 * @param shaded the strokes at both ends that are shaded, as others play them too
 * @param softer by how many steps its dynamics are softer than the line's
 * @param instrument that reads it; empty for who reads the line where it stands
 * @param writtenOut whether no notes have slashes
 */
public record WrittenPassage(
    Played played,
    List<Stroke> strokes,
    Overlaps shaded,
    int softer,
    Optional<Instrument> instrument,
    boolean writtenOut) {
  public WrittenPassage {
    strokes = List.copyOf(strokes);
  }

  /**
   * The turns of a player of a plan, in order.
   *
   * @param landings how their last notes are written
   * @param harps how it plays those that it has as a harp
   */
  public static List<WrittenPassage> all(
      Plan plan, int player, Landings landings, WrittenAs how, Map<Segment, HarpTurn> harps) {
    List<WrittenPassage> passages = new ArrayList<>();
    for (Segment segment : plan.segmentsOf(player)) {
      WrittenPassage passage =
          of(
              plan.played(segment),
              landings,
              how.joins() == Joins.SHADED ? Overlaps.of(plan, segment) : Overlaps.NONE,
              how.balanced() ? LevelSteps.steps(plan, player) : 0,
              Optional.of(plan.brief().players().get(player).instrument()),
              isWrittenOut(how));
      HarpTurn harp = harps.get(segment);
      passages.add(harp == null ? passage : passage.on(harp));
    }
    return passages;
  }

  private static WrittenPassage of(
      Played played,
      Landings landings,
      Overlaps shaded,
      int softer,
      Optional<Instrument> instrument,
      boolean writtenOut) {
    List<Stroke> strokes = new ArrayList<>(played.all());
    strokes.set(strokes.size() - 1, landings.written(played.line(), played.last()));
    if (shaded.entering() > 0) {
      strokes.set(0, shaded.entered(strokes.get(0)));
    }
    return new WrittenPassage(played, strokes, shaded, softer, instrument, writtenOut);
  }

  /**
   * A passage as the line is written.
   *
   * @param landings how its last note is written
   * @param instrument that reads it; empty for who reads the line where it stands
   */
  public static WrittenPassage plain(
      Played played, Landings landings, Optional<Instrument> instrument, boolean writtenOut) {
    return of(played, landings, Overlaps.NONE, 0, instrument, writtenOut);
  }

  /**
   * Whether slashes are written out everywhere: they are in cues of which a player has some, from
   * which the line may be read again.
   */
  public static boolean isWrittenOut(WrittenAs how) {
    return how.source() == SourceTreatment.CUE;
  }

  /** The same for who reads the line where it stands. */
  public static WrittenPassage plain(Played played, Landings landings) {
    return plain(played, landings, Optional.empty(), false);
  }

  /** All of a line as it is written. */
  public static WrittenPassage whole(Line line) {
    return plain(new Played(line, 0, line.count() - 1), Landings.NONE);
  }

  /** The same passage with each note as the string is called that sounds it. */
  private WrittenPassage on(HarpTurn harp) {
    List<List<Tone>> tones = harp.tones();
    List<Stroke> spelled =
        IntStream.range(0, strokes.size())
            .mapToObj(i -> strokes.get(i).withTones(tones.get(i)))
            .toList();
    return new WrittenPassage(played, spelled, shaded, softer, instrument, writtenOut);
  }

  public Line line() {
    return played.line();
  }

  /** Which of its strokes are written as notes with slashes, in order. */
  public List<SlashedNote> slashed() {
    Position entry = strokes.get(0).onset();
    return writtenOut
        ? List.of()
        : SlashedNotes.in(line(), strokes, instrument).stream()
            .filter(note -> shaded.entering() == 0 || note.span().start().isAfter(entry))
            .toList();
  }

  public Stroke landing() {
    return strokes.get(strokes.size() - 1);
  }
}

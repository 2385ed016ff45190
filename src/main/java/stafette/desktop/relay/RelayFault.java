package stafette.desktop.relay;

import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import stafette.check.Finding;
import stafette.plan.Plan;
import stafette.score.Line;
import stafette.score.Place;
import stafette.split.Reason;
import stafette.time.BarBeat;
import stafette.time.Position;
import stafette.words.Sentence;

/**
 * Something that does not work, at the note where it shows.
 *
 * @param number among all that does not work, from 0
 * @param lane of the player
 * @param words what it is
 */
record RelayFault(int number, int lane, Position at, Sentence words) {
  /** What the judge found in a plan. */
  static List<RelayFault> found(Plan plan, List<Finding> findings) {
    return IntStream.range(0, findings.size())
        .boxed()
        .flatMap(i -> at(i, plan, findings.get(i).place(), findings.get(i).message()))
        .toList();
  }

  /** What prevents a plan, in the line of who has it in the score. */
  static List<RelayFault> preventing(Plan written, List<Reason> reasons) {
    return IntStream.range(0, reasons.size())
        .boxed()
        .flatMap(
            i ->
                reasons.get(i).place().stream()
                    .flatMap(place -> at(i, written, place, reasons.get(i).text())))
        .toList();
  }

  /** In the lane of whoever is named; else of who plays there. None where there is no such note. */
  private static Stream<RelayFault> at(int number, Plan plan, Place place, Sentence words) {
    return plan.segments().stream()
        .sorted(
            (one, other) ->
                Boolean.compare(
                    plan.player(other).name().equals(place.part()),
                    plan.player(one).name().equals(place.part())))
        .flatMap(
            segment ->
                onset(plan.line(segment), segment.first(), segment.last(), place.at())
                    .map(at -> new RelayFault(number, segment.player(), at, words)))
        .limit(1);
  }

  private static Stream<Position> onset(Line line, int first, int last, BarBeat at) {
    return IntStream.rangeClosed(first, last)
        .filter(stroke -> line.placeOf(stroke).at().equals(at))
        .mapToObj(stroke -> line.stroke(stroke).onset())
        .limit(1);
  }
}

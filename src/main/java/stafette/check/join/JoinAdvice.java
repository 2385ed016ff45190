package stafette.check.join;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import stafette.plan.Plan;
import stafette.time.BarBeat;
import stafette.words.Sentence;

/**
 * One thing to do at joins.
 *
 * @param what in words
 * @param at the landing notes where it is to be done, at least one
 */
public record JoinAdvice(Sentence what, List<BarBeat> at) {
  public JoinAdvice {
    at = List.copyOf(at);
  }

  /** All there is to do in a plan, each thing once with all its places, in order of the first. */
  public static List<JoinAdvice> of(Plan plan) {
    Map<Sentence, Set<BarBeat>> places = new LinkedHashMap<>();
    for (JoinReport join : JoinReport.of(plan)) {
      BarBeat landing =
          plan.brief()
              .line(join.handoff().leaves().relay())
              .placeOf(join.handoff().leaves().last())
              .at();
      join.toDo()
          .forEach(
              what -> places.computeIfAbsent(what, first -> new LinkedHashSet<>()).add(landing));
    }
    return places.entrySet().stream()
        .map(each -> new JoinAdvice(each.getKey(), List.copyOf(each.getValue())))
        .toList();
  }

  /** "7.1, 9.1"; "7.1; 9.4, last sixth" where one stands within a beat. */
  public String places() {
    List<String> places = at.stream().map(place -> place.inShort().toString()).toList();
    return String.join(places.stream().anyMatch(p -> p.contains(",")) ? "; " : ", ", places);
  }
}

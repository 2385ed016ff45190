package stafette.check;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import stafette.limits.Demand;
import stafette.plan.Plan;
import stafette.plan.Played;
import stafette.plan.Segment;

/**
 * How the strain runs through a segment, stroke by stroke: the largest of the share of a limit that
 * the stroke's rate takes, the tiredness and the share of the air spent, with everything carried
 * over from before. Its highest point is the segment's {@link SegmentReport#strain}.
 */
public final class StrainCourse {
  private final Plan plan;
  private final Demands demands;

  private StrainCourse(Plan plan) {
    this.plan = plan;
    this.demands = new Demands(plan.brief());
  }

  /** For each segment of the plan, in order, the strain at each stroke that it really plays. */
  public static List<List<Double>> of(Plan plan) {
    return new StrainCourse(plan).all();
  }

  private List<List<Double>> all() {
    Map<Segment, List<Double>> courses = new HashMap<>();
    Judge.players(plan).forEach(player -> add(WholePart.of(plan, player, demands), courses));
    return plan.segments().stream()
        .map(segment -> Objects.requireNonNull(courses.get(segment)))
        .toList();
  }

  private void add(WholePart part, Map<Segment, List<Double>> courses) {
    double[][] tiredness = PlayingSimulation.tiredness(part, 1);
    double[][] breath =
        part.player()
            .instrument()
            .breath()
            .map(lungs -> PlayingSimulation.breath(part, lungs, 1))
            .orElseGet(() -> new double[part.stints().size()][0]);
    for (int i = 0; i < part.stints().size(); i++) {
      double[] tired = tiredness[i];
      double[] air = breath[i];
      part.stints()
          .get(i)
          .segment()
          .ifPresent(segment -> courses.put(segment, course(segment, tired, air)));
    }
  }

  private List<Double> course(Segment segment, double[] tired, double[] air) {
    Demand demand = demands.of(segment);
    Played played = demands.played(segment);
    List<Double> course = new ArrayList<>();
    int loads = 0;
    for (int j = played.first(); j <= played.last(); j++) {
      if (demand.loads(played.first(), j)) {
        loads++;
      }
      int sounds = course.size();
      double spent = Math.max(tired[loads - 1], sounds < air.length ? air[sounds] : 0);
      course.add(Math.max(Strain.use(demand, played.line(), played.first(), j), spent));
    }
    return course;
  }
}

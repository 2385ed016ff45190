package stafette.picture.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import stafette.check.SegmentReport;
import stafette.check.Strain;
import stafette.check.StrainCourse;
import stafette.check.Verdict;
import stafette.limits.Demand;
import stafette.limits.Technique;
import stafette.plan.Plan;
import stafette.plan.Played;
import stafette.plan.Segment;
import stafette.time.BarBeat;
import stafette.words.Sentence;

/** Where the players are nearest to their limits. */
final class TightSpots {
  private static final int MOST = 4;

  private TightSpots() {}

  /**
   * One of them.
   *
   * @param strain the share of the limit
   * @param micros when, on the line's clock
   * @param text who, where, and what of
   */
  private record TightSpot(double strain, long micros, Sentence text) {}

  /** The tightest place of each player, the tightest first: "96 % Flute 1 …". */
  static List<Sentence> of(Plan plan, Verdict verdict) {
    List<List<Double>> courses = StrainCourse.of(plan);
    Map<Integer, TightSpot> spots = new LinkedHashMap<>();
    for (int i = 0; i < courses.size(); i++) {
      SegmentReport report = verdict.segments().get(i);
      spots.merge(
          report.segment().player(),
          spot(plan, report, courses.get(i)),
          (one, other) -> ORDER.compare(one, other) <= 0 ? one : other);
    }
    List<TightSpot> all = new ArrayList<>(spots.values());
    all.sort(ORDER);
    return all.stream().limit(MOST).map(TightSpot::text).toList();
  }

  private static final Comparator<TightSpot> ORDER =
      Comparator.comparingDouble((TightSpot spot) -> -spot.strain())
          .thenComparingLong(TightSpot::micros);

  private static TightSpot spot(Plan plan, SegmentReport report, List<Double> course) {
    int tightest = 0;
    for (int k = 1; k < course.size(); k++) {
      tightest = course.get(k) > course.get(tightest) + 1e-9 ? k : tightest;
    }
    Played played = plan.played(report.segment());
    int stroke = played.first() + tightest;
    return new TightSpot(
        report.strain(), played.line().onsetMicros(stroke), words(plan, report, stroke));
  }

  private static Sentence words(Plan plan, SegmentReport report, int stroke) {
    String name = plan.player(report.segment()).name();
    BarBeat place = SheetFigures.place(plan.played(report.segment()).line(), stroke);
    String share = Strain.percent(report.strain());
    if (report.strain() <= report.use()) {
      return Sentence.of(
          "{0} at {1}: {2} of the fastest {3}",
          name, place, share, technique(plan, report.segment(), stroke));
    }
    return report.strain() <= report.tiredness()
        ? Sentence.of("{0} at {1}: {2} tired", name, place, share)
        : Sentence.of("{0} at {1}: {2} of the breath spent", name, place, share);
  }

  /** The technique of which it is a share; the player may be told a slower one that will do. */
  private static Technique technique(Plan plan, Segment segment, int stroke) {
    Demand demand =
        Demand.of(
            plan.player(segment).instrument(), plan.way(segment), plan.played(segment).line());
    return plan.way(segment).skills().get(demand.skill(stroke)).technique();
  }
}

package stafette.split;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.IntFunction;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import stafette.limits.Demand;
import stafette.plan.Brief;
import stafette.plan.OverlapRule;
import stafette.plan.Player;
import stafette.plan.Skill;
import stafette.score.Line;
import stafette.score.Place;
import stafette.score.Stroke;

/** Says why a brief has no plan: where, and which constraints together leave none. */
public final class WhyNot {
  private final Brief brief;
  private final Line line;
  private final Conflict conflict;

  private WhyNot(Brief brief, Conflict conflict) {
    this.brief = brief;
    this.line = brief.line();
    this.conflict = conflict;
  }

  /**
   * A smallest set of reasons, with a first one that says where and whether it is proven to be the
   * smallest; empty if there was no time for any.
   *
   * @param brief one that is proven to have no plan
   * @param stops when to stop the first of so many searches to come
   */
  public static List<Reason> of(Brief brief, IntFunction<BooleanSupplier> stops) {
    Conflict conflict = Conflict.of(brief, stops);
    return conflict.constraints().isEmpty() ? List.of() : new WhyNot(brief, conflict).reasons();
  }

  private List<Reason> reasons() {
    List<Reason> reasons = new ArrayList<>();
    reasons.add(reason(where() + extent()));
    conflict.constraints().forEach(constraint -> reasons.add(reason(sentence(constraint))));
    return reasons;
  }

  private Reason reason(String text) {
    return new Reason(Optional.of(line.placeOf(conflict.first())), text);
  }

  private String where() {
    Place from = line.placeOf(conflict.first());
    Place to = line.placeOf(conflict.last());
    if (conflict.first() == 0 && conflict.last() == line.count() - 1) {
      return "the line as a whole";
    }
    return conflict.first() == conflict.last()
        ? from.toString()
        : from + " to " + to.at() + ", already this stretch";
  }

  private String extent() {
    String reasons =
        conflict.constraints().size() == 1
            ? " can't be played for one reason, and without it could"
            : " can't be played for these reasons together, and without any one of them could";
    return reasons
        + (conflict.isProven() ? "" : " (the time set ended this search" + unsettled() + ")");
  }

  private String unsettled() {
    String others =
        conflict.unsettled().stream()
            .map(constraint -> constraint.name().toLowerCase(Locale.ROOT))
            .collect(Collectors.joining(", "));
    return (conflict.shortest() ? "" : "; fewer bars may be enough")
        + (others.isEmpty() ? "" : "; may play a part too: " + others);
  }

  private String sentence(Constraint constraint) {
    return switch (constraint) {
      case LOCKS -> "locks: what is to be kept leaves no other way; take some locks off";
      case TECHNIQUES -> "techniques: " + techniques();
      case OVERLAP -> "overlap: two players share " + overlap() + " at each handoff";
      case READY -> "rest: " + ready();
      case BUSY ->
          "other notes: the score gives "
              + names(brief.players().stream().filter(this::isBusy).toList())
              + " something else to play at that time";
      case BREATH ->
          "breath: "
              + each(
                  player -> player.instrument().breath().map(b -> b.capacitySeconds()).orElse(0.0),
                  "%.0f seconds")
              + ", and the stretch lasts "
              + String.format(Locale.ROOT, "%.1f", seconds());
      case RANGE -> "range: " + range();
      case TIREDNESS ->
          String.format(
              Locale.ROOT,
              "tiredness: the line goes on at %.1f notes a second, and they keep up %s before they tire",
              Demand.usualRatePerSecond(line),
              each(best(skill -> skill.capability().sustainedPerSecond()), "%.1f"));
      case RATES -> "speed: " + rates();
    };
  }

  private String rates() {
    int fastest = conflict.first();
    for (int j = conflict.first() + 1; j <= conflict.last(); j++) {
      fastest = rate(j) > rate(fastest) || fastest == conflict.first() ? j : fastest;
    }
    return String.format(
        Locale.ROOT,
        "up to %.1f notes a second (%s), and for a moment they reach %s",
        rate(fastest),
        line.placeOf(fastest).at(),
        each(best(skill -> skill.capability().peakPerSecond()), "%.1f"));
  }

  private double rate(int j) {
    return j == 0 ? 0 : 1e6 / Math.max(1, line.onsetMicros(j) - line.onsetMicros(j - 1));
  }

  private String range() {
    for (int j = conflict.first(); j <= conflict.last(); j++) {
      Stroke stroke = line.stroke(j);
      List<Player> without =
          brief.players().stream()
              .filter(p -> !stroke.tones().stream().allMatch(p.instrument()::reaches))
              .toList();
      if (!without.isEmpty()) {
        return stroke.tones().get(0)
            + " ("
            + line.placeOf(j).at()
            + ") is out of the range of "
            + names(without);
      }
    }
    return "not everybody has every note";
  }

  private String techniques() {
    List<Player> without = brief.players().stream().filter(p -> p.skills().isEmpty()).toList();
    return without.isEmpty()
        ? "only those are used that fit the notes and that everybody can be relied on to have"
        : names(without) + " has none for such a line (its slurs, repeated notes or rate)";
  }

  private String overlap() {
    OverlapRule rule = brief.rules().overlap();
    if (rule.max().isEmpty()) {
      return "at least " + rule.min() + " and at most a beat of notes";
    }
    return rule.min() == rule.max().getAsInt()
        ? "just " + rule.min()
        : rule.min() + " to " + rule.max().getAsInt() + " notes";
  }

  private String ready() {
    double most =
        brief.players().stream().mapToLong(brief.rules()::readyMicros).max().orElse(0) / 1e6;
    return String.format(Locale.ROOT, "up to %.2f seconds before a player may enter again", most);
  }

  private double seconds() {
    return (line.endMicros(conflict.last()) - line.onsetMicros(conflict.first())) / 1e6;
  }

  private boolean isBusy(Player player) {
    return player.busy().stream()
        .anyMatch(
            busy ->
                busy.toMicros() > line.onsetMicros(conflict.first())
                    && busy.fromMicros() < line.endMicros(conflict.last()));
  }

  private static String names(List<Player> players) {
    return players.stream().map(Player::name).collect(Collectors.joining(", "));
  }

  private static ToDoubleFunction<Player> best(ToDoubleFunction<Skill> figure) {
    return player -> player.skills().stream().mapToDouble(figure).max().orElse(0);
  }

  /** "Flute 1 9.2, Clarinet 1 7.5", players without a figure left out. */
  private String each(ToDoubleFunction<Player> figure, String format) {
    return brief.players().stream()
        .filter(player -> figure.applyAsDouble(player) > 0)
        .map(p -> p.name() + " " + String.format(Locale.ROOT, format, figure.applyAsDouble(p)))
        .collect(Collectors.joining(", "));
  }
}

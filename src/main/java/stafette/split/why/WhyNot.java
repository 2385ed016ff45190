package stafette.split.why;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.BooleanSupplier;
import java.util.function.IntFunction;
import java.util.function.ToDoubleFunction;
import stafette.limits.Demand;
import stafette.limits.Skill;
import stafette.plan.Brief;
import stafette.plan.OverlapRule;
import stafette.plan.Player;
import stafette.score.Line;
import stafette.score.Place;
import stafette.score.Stroke;
import stafette.split.Reason;
import stafette.words.Sentence;

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
   * smallest; empty if there was too little work for any.
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
    reasons.add(reason(extent(where())));
    conflict.constraints().forEach(constraint -> reasons.add(reason(sentence(constraint))));
    return reasons;
  }

  private Reason reason(Sentence text) {
    return new Reason(Optional.of(line.placeOf(conflict.first())), text);
  }

  private Sentence where() {
    Place from = line.placeOf(conflict.first());
    Place to = line.placeOf(conflict.last());
    if (conflict.first() == 0 && conflict.last() == line.count() - 1) {
      return Sentence.of("the line as a whole");
    }
    return conflict.first() == conflict.last()
        ? from.inWords()
        : Sentence.of("{0} to {1}: even this much", from, to.at());
  }

  private Sentence extent(Sentence where) {
    Sentence reasons =
        conflict.constraints().size() == 1
            ? Sentence.of("{0} can't be played; already one limit prevents it", where)
            : Sentence.of("{0} can't be played; already these limits together prevent it", where);
    return conflict.isProven() ? reasons : Sentence.of("{0} ({1})", reasons, unsettled());
  }

  private Sentence unsettled() {
    List<Sentence> words = new ArrayList<>();
    words.add(Sentence.of("this search was ended before it was done"));
    if (!conflict.shortest()) {
      words.add(Sentence.of("fewer bars may be enough"));
    }
    if (!conflict.unsettled().isEmpty()) {
      words.add(Sentence.of("may play a part too: {0}", Sentence.list(conflict.unsettled())));
    }
    return Sentence.list("; ", words);
  }

  private Sentence sentence(Constraint constraint) {
    return switch (constraint) {
      case LOCKS ->
          Sentence.of("locks: what is to be kept leaves no other way; take some locks off");
      case TECHNIQUES -> Sentence.of("techniques: {0}", techniques());
      case OVERLAP -> Sentence.of("overlap: two players share {0} at each handoff", overlap());
      case READY -> Sentence.of("rest: up to {0} seconds before a player may enter again", ready());
      case BUSY -> otherNotes();
      case BREATH ->
          Sentence.of(
              "breath: {0}, and the stretch lasts {1}", breaths(), Sentence.decimal(seconds(), 1));
      case RANGE -> Sentence.of("range: {0}", range());
      case TIREDNESS ->
          Sentence.of(
              "tiredness: the line goes on at {0} notes a second, and they keep up {1} before they"
                  + " tire",
              Sentence.decimal(Demand.usualRatePerSecond(line), 1),
              rates(skill -> skill.capability().sustainedPerSecond()));
      case RATES ->
          Sentence.of(
              "speed: {0}",
              new Speeds(brief, conflict.first(), conflict.last())
                  .fastest()
                  .orElseGet(() -> Sentence.of("nobody is fast enough")));
    };
  }

  private Sentence range() {
    for (int j = conflict.first(); j <= conflict.last(); j++) {
      Stroke stroke = line.stroke(j);
      List<Player> without =
          brief.players().stream()
              .filter(p -> !stroke.tones().stream().allMatch(p.instrument()::reaches))
              .toList();
      if (!without.isEmpty()) {
        return Sentence.of(
            "{0} ({1}) is out of the range of {2}",
            stroke.tones().get(0), line.placeOf(j).at(), names(without));
      }
    }
    return Sentence.of("not everybody has every note");
  }

  private Sentence techniques() {
    List<Player> without = brief.players().stream().filter(p -> p.skills().isEmpty()).toList();
    return without.isEmpty()
        ? Sentence.of(
            "only those are used that everybody can be relied on to have, as the notes ask")
        : Sentence.of("{0} has none", names(without));
  }

  private Sentence overlap() {
    OverlapRule rule = brief.rules().overlap();
    if (rule.max().isEmpty()) {
      return Sentence.of("at least {0} and at most a beat of notes", rule.min());
    }
    return rule.min() == rule.max().getAsInt()
        ? Sentence.of("just {0}", rule.min())
        : Sentence.of("{0} to {1} notes", rule.min(), rule.max().getAsInt());
  }

  private BigDecimal ready() {
    double most =
        brief.players().stream().mapToLong(brief.rules()::readyMicros).max().orElse(0) / 1e6;
    return Sentence.decimal(most, 2);
  }

  private double seconds() {
    return (line.endMicros(conflict.last()) - line.onsetMicros(conflict.first())) / 1e6;
  }

  private Sentence otherNotes() {
    List<Player> busy = brief.players().stream().filter(this::isBusy).toList();
    return busy.isEmpty()
        ? Sentence.of(
            "other notes: what the score gives {0} just before or after leaves no time for these",
            names(brief.players().stream().filter(player -> !player.busy().isEmpty()).toList()))
        : Sentence.of(
            "other notes: the score gives {0} something else to play at that time", names(busy));
  }

  private boolean isBusy(Player player) {
    return player.busy().stream()
        .anyMatch(
            busy ->
                busy.toMicros() > line.onsetMicros(conflict.first())
                    && busy.fromMicros() < line.endMicros(conflict.last()));
  }

  private static Sentence names(List<Player> players) {
    return Sentence.list(players.stream().map(Player::name).toList());
  }

  /** "Flute 1 9.2, Clarinet 1 7.5", players without a figure left out. */
  private Sentence rates(ToDoubleFunction<Skill> figure) {
    return each(
        player -> player.skills().stream().mapToDouble(figure).max().orElse(0),
        (player, rate) -> Sentence.of("{0} {1}", player, Sentence.decimal(rate, 1)));
  }

  private Sentence breaths() {
    return each(
        player -> player.instrument().breath().map(b -> b.capacitySeconds()).orElse(0.0),
        (player, seconds) -> Sentence.of("{0} {1} seconds", player, Sentence.decimal(seconds, 0)));
  }

  private Sentence each(
      ToDoubleFunction<Player> figure, BiFunction<String, Double, Sentence> words) {
    return Sentence.list(
        brief.players().stream()
            .filter(player -> figure.applyAsDouble(player) > 0)
            .map(player -> words.apply(player.name(), figure.applyAsDouble(player)))
            .toList());
  }
}

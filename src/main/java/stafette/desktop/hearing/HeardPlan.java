package stafette.desktop.hearing;

import java.util.List;
import java.util.Optional;
import stafette.desktop.playing.Balance;
import stafette.desktop.playing.HearingWish;
import stafette.desktop.playing.Places;
import stafette.desktop.state.Desk;
import stafette.keep.LimitsInForce;
import stafette.plan.Plan;
import stafette.plan.Player;
import stafette.time.Rational;
import stafette.work.OpenLine;
import stafette.work.Playback;

/** A plan that can be heard, and the line that it relays. */
record HeardPlan(Plan plan, OpenLine line, Places places) {
  static Optional<HeardPlan> of(Desk desk) {
    return desk.plan()
        .flatMap(
            judged ->
                desk.line()
                    .map(line -> new HeardPlan(judged.plan(), line, Places.of(judged.plan()))));
  }

  /** Whether the other is a plan for the same notes. */
  boolean continues(HeardPlan other) {
    return plan.line().source().equals(other.plan.line().source())
        && line.score().file().equals(other.line.score().file());
  }

  /** How it would be heard. */
  Playback.PlaybackManner manner(HearingWish wish) {
    return new Playback.PlaybackManner(
        line.seats(),
        Rational.of(wish.percent(), 100),
        wish.byOne(),
        wish.behind() ? Optional.of(line.score()) : Optional.empty());
  }

  Playback playback(Playback.PlaybackManner manner, LimitsInForce limits) {
    return Playback.of(plan, manner, limits);
  }

  /** What is wished of the players who are there. */
  Balance balance(HearingWish wish) {
    return wish.balance().among(plan.brief().players().stream().map(Player::name).toList());
  }

  /** Who has something to play and would be heard. */
  List<String> heard(HearingWish wish) {
    Balance balance = balance(wish);
    return plan.playing().stream().filter(balance::hears).toList();
  }
}

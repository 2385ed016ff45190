package stafette.desktop.window;

import java.util.List;
import java.util.Optional;
import stafette.desktop.playing.Balance;
import stafette.desktop.playing.Places;
import stafette.desktop.playing.Wish;
import stafette.desktop.state.Desk;
import stafette.plan.Plan;
import stafette.plan.Player;
import stafette.time.Rational;
import stafette.work.LimitsInForce;
import stafette.work.OpenLine;
import stafette.work.Playback;

/** A plan that can be heard, and the line that it relays. */
record Piece(Plan plan, OpenLine line, Places places) {
  static Optional<Piece> of(Desk desk) {
    return desk.plan()
        .flatMap(
            judged ->
                desk.line().map(line -> new Piece(judged.plan(), line, Places.of(judged.plan()))));
  }

  /** Whether the other is a plan for the same notes. */
  boolean continues(Piece other) {
    return plan.line().source().equals(other.plan.line().source())
        && line.score().file().equals(other.line.score().file());
  }

  /** How it would be heard. */
  Playback.Manner manner(Wish wish) {
    return new Playback.Manner(
        line.seats(),
        Rational.of(wish.percent(), 100),
        wish.byOne(),
        wish.behind() ? Optional.of(line.score()) : Optional.empty());
  }

  Playback playback(Playback.Manner manner, LimitsInForce limits) {
    return Playback.of(plan, manner, limits);
  }

  /** What is wished of the players who are there. */
  Balance balance(Wish wish) {
    return wish.balance().among(plan.brief().players().stream().map(Player::name).toList());
  }

  /** Who has something to play and would be heard. */
  List<String> heard(Wish wish) {
    Balance balance = balance(wish);
    return plan.playing().stream().filter(balance::hears).toList();
  }
}

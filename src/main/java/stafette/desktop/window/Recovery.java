package stafette.desktop.window;

import java.nio.file.Path;
import java.util.Date;
import java.util.List;
import java.util.Optional;
import stafette.desktop.state.LineInWords;
import stafette.desktop.state.Session;
import stafette.desktop.texts.Texts;
import stafette.keep.Unfinished;
import stafette.words.Refusal;
import stafette.words.Sentence;
import stafette.work.OpenPlan;

/**
 * Offers what was on the desk when a program ended unforeseen, one after the other. What is offered
 * stays in its file until it is on the desk again, or the user throws it away.
 */
final class Recovery {
  private final Session session;
  private final Unfinished unfinished;
  private final Asking asking;
  private final Leaving leaving;
  private final Offer offer;
  private final LineInWords words;
  private final Texts texts;

  Recovery(
      Session session,
      Unfinished unfinished,
      Asking asking,
      Leaving leaving,
      Offer offer,
      LineInWords words,
      Texts texts) {
    this.session = session;
    this.unfinished = unfinished;
    this.asking = asking;
    this.leaving = leaving;
    this.offer = offer;
    this.words = words;
    this.texts = texts;
  }

  void offer(List<Unfinished.Left> all) {
    offer.putOff();
    if (!all.isEmpty()) {
      new One(all.get(0), all.subList(1, all.size())).offer();
    }
  }

  /** One of them, and those that come after it. */
  private final class One {
    private final Unfinished.Left left;
    private final List<Unfinished.Left> rest;

    One(Unfinished.Left left, List<Unfinished.Left> rest) {
      this.left = left;
      this.rest = rest;
    }

    void offer() {
      offer.show(
          texts.get("offer.unfinished", name(), Date.from(left.when())),
          List.of(
              new Offer.Action(
                  "accept", texts.get("offer.recover"), () -> recover(Optional.empty())),
              discard()));
    }

    private String name() {
      return left.score().orElse("?");
    }

    private void recover(Optional<Path> score) {
      leaving.before(() -> session.recover(left, score, this::recovered, this::refused));
    }

    private void recovered(OpenPlan.ScoreNow score) {
      if (score == OpenPlan.ScoreNow.UNFIT) {
        offer.show(texts.get("offer.unfit"), List.of(copy(), discard()));
      } else {
        Recovery.this.offer(rest);
      }
    }

    private void refused(Sentence why) {
      words.warn(texts.say(why));
      Offer.Action elsewhere =
          new Offer.Action(
              "score",
              texts.get("offer.score"),
              () -> asking.toOpen().ifPresent(file -> recover(Optional.of(file))));
      offer.show(texts.get("offer.refused", texts.say(why)), List.of(elsewhere, copy(), discard()));
    }

    private Offer.Action copy() {
      String proposed = name().replaceFirst("\\.[A-Za-z]+$", "") + "-unfinished.json";
      return new Offer.Action(
          "copy",
          texts.get("offer.copy"),
          () ->
              asking
                  .toWrite(Path.of(proposed))
                  .ifPresent(file -> words.attempt(texts, () -> copyTo(file))));
    }

    private void copyTo(Path file) throws Refusal {
      unfinished.copy(left, file);
      words.say(texts.get("window.written", file));
    }

    private Offer.Action discard() {
      return new Offer.Action(
          "discard", texts.get("offer.discard"), () -> words.attempt(texts, this::dismiss));
    }

    private Asking.Proposal discarding() {
      return new Asking.Proposal(
          texts.get("offer.discard.title"), List.of(name()), "", texts.get("offer.discard"));
    }

    private void dismiss() throws Refusal {
      if (asking.agrees(discarding())) {
        unfinished.dismiss(left);
        Recovery.this.offer(rest);
      }
    }
  }
}

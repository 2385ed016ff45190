package stafette.desktop.state;

import java.util.function.UnaryOperator;
import stafette.ask.SplitRequest;
import stafette.limits.Assurance;
import stafette.plan.Favour;
import stafette.plan.Hocket;
import stafette.plan.OverlapRule;
import stafette.plan.WrittenAs;
import stafette.score.Slurring;
import stafette.score.ToneChoice;
import stafette.score.Tremolo;
import stafette.words.Refusal;
import stafette.words.Sentence;
import stafette.work.OpenLine;

/**
 * Puts the line on the desk under other rules. Each change is one step, after which the plan, as it
 * is, has been judged anew; it goes where it can't be played that way at all. What is so already is
 * no step. Without a line nothing happens.
 */
public final class RuleChanges {
  private final Session session;

  RuleChanges(Session session) {
    this.session = session;
  }

  public void favour(Favour favour) throws Refusal {
    ask(now -> now.with(favour));
  }

  public void overlap(OverlapRule overlap) throws Refusal {
    ask(now -> now.under(now.assurance(), overlap, now.readySeconds(), now.favour()));
  }

  /** Rest before an entry. */
  public void ready(double seconds) throws Refusal {
    ask(now -> now.under(now.assurance(), now.overlap(), seconds, now.favour()));
  }

  public void assurance(Assurance assurance) throws Refusal {
    ask(now -> now.under(assurance, now.overlap(), now.readySeconds(), now.favour()));
  }

  public void hocket(Hocket hocket) throws Refusal {
    ask(now -> now.with(now.relaying().with(hocket)));
  }

  /** How many always play; locks of relays that there are no longer go. */
  public void together(int players) throws Refusal {
    ask(now -> now.with(now.relaying().with(players)));
  }

  /**
   * Which tones of chords are meant; locks on notes that are no longer meant go.
   *
   * @param each whether each of them gets players of its own
   * @throws Refusal if no chord has such a tone
   */
  public void tones(ToneChoice choice, boolean each) throws Refusal {
    ask(
        now ->
            now.with(now.line().with(now.line().choice().with(choice)))
                .with(now.relaying().withEachTone(each)));
  }

  /** Slurs the line where its pitch changes, or no longer. */
  public void slurring(Slurring slurring) throws Refusal {
    ask(now -> now.with(now.line().with(slurring)));
  }

  /** Reads slashes through stems otherwise, beside the window, since the score is read again. */
  public void tremolo(Tremolo tremolo) {
    session.otherwiseBeside(
        line -> line.asked().line().tremolo() == tremolo ? line : line.reading(tremolo));
  }

  /** How the plan is written into the score; nothing of the plan changes. */
  public void writing(UnaryOperator<WrittenAs> change) {
    Desk desk = session.desk();
    WrittenAs other = change.apply(desk.writing());
    if (!desk.writing().equals(other)) {
      session.go(desk.with(other));
    }
  }

  /** Whether a player may use a technique that not everybody has. */
  public void allow(String player, String technique, boolean allowed) {
    session.changeLine(line -> line.allowing(player, technique, allowed));
  }

  private void ask(UnaryOperator<SplitRequest> change) throws Refusal {
    session.otherwise(line -> asked(line, change.apply(line.asked())));
  }

  private static OpenLine asked(OpenLine line, SplitRequest other) throws Refusal {
    return other.equals(line.asked()) ? line : line.askingWithoutLostLocks(refusingBoth(other));
  }

  private static SplitRequest refusingBoth(SplitRequest asked) throws Refusal {
    if (asked.relaying().eachTone() && asked.relaying().together() > 1) {
      throw Refusal.wrongUse(
          Sentence.of(
              "each tone with its own players and several who always play don't go together; take back one of them"));
    }
    return asked;
  }
}

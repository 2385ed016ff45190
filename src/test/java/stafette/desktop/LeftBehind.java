package stafette.desktop;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import stafette.desktop.state.BackgroundWork;
import stafette.desktop.state.Session;
import stafette.keep.LimitsInForce;
import stafette.keep.Remembered;
import stafette.plan.PlanEdit;
import stafette.plan.Segment;
import stafette.score.BarChoice;
import stafette.score.LineChoice;
import stafette.score.ToneChoice;
import stafette.words.Refusal;
import stafette.work.BellScore;
import stafette.work.OpenLine;

/** A desk with work by hand on it, and what a program that ended unforeseen leaves of it. */
public final class LeftBehind {
  private LeftBehind() {}

  /** A score of eight bars. */
  public static Path score(Path folder) throws IOException {
    return BellScore.write(
        folder.resolve("bells.musicxml"), List.of("1", "2", "3", "4", "5", "6", "7", "8"));
  }

  /** Has a rest stand where the first notes stood. */
  public static void silenceFirstNotes(Path score) throws IOException {
    String rest = "<note><rest/><duration>1</duration><voice>1</voice></note>";
    String notes = "(?s)<note><pitch>.*?</note>\\s*<note><chord/>.*?</note>";
    Files.writeString(score, Files.readString(score).replaceFirst(notes, rest));
  }

  /** The piano's upper tones in the first four bars. */
  public static LineChoice line() {
    return new LineChoice(
        "Piano",
        Optional.of(new BarChoice("1-4")),
        OptionalInt.empty(),
        Optional.empty(),
        Optional.of(new ToneChoice.FromTop(1)));
  }

  public static LimitsInForce limits() {
    try {
      return LimitsInForce.load(Optional.empty());
    } catch (Refusal e) {
      throw new AssertionError(e);
    }
  }

  /** A session in which everything is done at once. */
  public static Session session(Remembered remembered) {
    return new Session(limits(), remembered, new BackgroundWork(Runnable::run, Runnable::run));
  }

  /** Plans, measures a player, frees another one, and divides a segment by hand. */
  public static void work(Session session, Path score) {
    session.open(score);
    session.choose(line());
    session.add("Flute 1", Optional.empty());
    session.add("Clarinet 1", Optional.empty());
    session.measured("Clarinet 1", "single tonguing", new OpenLine.Measured(9.5, 8, 20));
    session.free("Flute 1", true);
    session.plan();
    Segment first = session.desk().plan().orElseThrow().plan().segments().get(0);
    session.byHand().split(0, (first.first() + first.last()) / 2);
    session.byHand().edit(new PlanEdit.Give(0, first.player(), 0));
  }

  /** Works, and ends as after a crash. */
  public static Session crashed(Path folder, Path score) {
    Remembered remembered = new Remembered(folder);
    Session session = session(remembered);
    work(session, score);
    remembered.close();
    return session;
  }
}

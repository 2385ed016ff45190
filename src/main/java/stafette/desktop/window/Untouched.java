package stafette.desktop.window;

import java.util.Optional;
import stafette.check.Finding;
import stafette.desktop.passages.LineForm;
import stafette.desktop.passages.PassagesView;
import stafette.desktop.players.PlayerGestures;
import stafette.desktop.relay.RelayGestures;
import stafette.desktop.tempo.TempoRule;
import stafette.desktop.verdict.VerdictView;
import stafette.plan.Seat;
import stafette.time.TempoMark;
import stafette.work.CheckScore;

/** What is done to the panels while a file is only looked at: nothing comes of it. */
final class Untouched
    implements RelayGestures,
        PlayerGestures,
        PassagesView.Chosen,
        VerdictView.Jumps,
        TempoRule.Moved {
  @Override
  public void moveHandoff(int handoff, End end, int stroke, boolean done) {}

  @Override
  public void cancelMove() {}

  @Override
  public void give(int segment, int player) {}

  @Override
  public void split(int segment, int stroke) {}

  @Override
  public void join(int handoff) {}

  @Override
  public void lockHandoff(int handoff) {}

  @Override
  public void lockSegment(int segment) {}

  @Override
  public void hocket(int segment) {}

  @Override
  public void chosen(int segment) {}

  @Override
  public void add(String name) {}

  @Override
  public void remove(String name) {}

  @Override
  public void plays(String name, String instrument) {}

  @Override
  public void lock(String name, boolean kept) {}

  @Override
  public void countOther(String name, boolean counts) {}

  @Override
  public void sit(String name, Optional<Seat> seat) {}

  @Override
  public void measured(
      String name, String technique, double peak, double sustained, double staminaStrokes) {}

  @Override
  public void move(String name, int places) {}

  @Override
  public void passage(CheckScore.Report passage) {}

  @Override
  public void line(LineForm.Wish line) {}

  @Override
  public void to(Finding finding) {}

  @Override
  public void take(int alternative) {}

  @Override
  public void to(TempoMark tempo, boolean done) {}
}

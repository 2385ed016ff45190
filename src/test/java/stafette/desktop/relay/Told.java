package stafette.desktop.relay;

import java.util.List;

/** Writes down what is told. */
record Told(List<String> told) implements RelayGestures {
  @Override
  public void moveHandoff(int handoff, HandoffEnd end, int stroke, boolean done) {
    told.add("move " + handoff + " " + end + " " + stroke + (done ? " done" : " going"));
  }

  @Override
  public void cancelMove() {
    told.add("cancel");
  }

  @Override
  public void give(int segment, int player) {
    told.add("give " + segment + " " + player);
  }

  @Override
  public void split(int segment, int stroke) {
    told.add("split " + segment + " " + stroke);
  }

  @Override
  public void join(int handoff) {
    told.add("join " + handoff);
  }

  @Override
  public void lockHandoff(int handoff) {
    told.add("lock handoff " + handoff);
  }

  @Override
  public void lockSegment(int segment) {
    told.add("lock " + segment);
  }

  @Override
  public void hocket(int segment) {
    told.add("hocket " + segment);
  }

  @Override
  public void chosen(int segment) {}

  @Override
  public void chosenHandoff(int handoff) {}

  @Override
  public void playFrom(long lineMicros) {
    told.add("from " + lineMicros);
  }

  @Override
  public void mend(int finding) {
    told.add("mend " + finding);
  }

  @Override
  public void askWhy() {
    told.add("why");
  }
}

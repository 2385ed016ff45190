package stafette.musicxml.write;

import java.util.ArrayList;
import java.util.List;

/**
 * Something that holds in every bar of a well written part.
 *
 * @param name what holds
 */
record WrittenRule(String name, Judge judge) {
  /** Finds what is wrong in a part. */
  @FunctionalInterface
  interface Judge {
    /**
     * Judges one part.
     *
     * @param source the score before anything was written into it
     * @param page the score that is judged
     */
    void judge(ReadPage source, ReadPage page, ReadPage.Part part, Wrong wrong);
  }

  /** Takes note of what is wrong in a bar. */
  @FunctionalInterface
  interface Wrong {
    void say(ReadPage.Bar bar, String what);
  }

  /**
   * Where a rule is broken.
   *
   * @param bar its index, from 0
   * @param what is wrong; places are in quarters from the beginning of the bar
   */
  record Violation(String rule, String part, int bar, String what) {
    /** Whether another bar of the same number, in any part, has the same wrong. */
    boolean isAs(Violation other) {
      return bar == other.bar && rule.equals(other.rule) && what.equals(other.what);
    }

    @Override
    public String toString() {
      return part + ", bar #" + (bar + 1) + ": " + what + " (" + rule + ")";
    }
  }

  List<Violation> violations(ReadPage source, ReadPage page) {
    List<Violation> violations = new ArrayList<>();
    for (ReadPage.Part part : page.parts()) {
      judge.judge(
          source,
          page,
          part,
          (bar, what) -> violations.add(new Violation(name, part.id(), bar.index(), what)));
    }
    return violations;
  }
}

package stafette.check.join;

import stafette.check.Costing;
import stafette.plan.Handoff;
import stafette.score.Line;
import stafette.words.Sayable;
import stafette.words.Sentence;

/**
 * Whether who enters begins on an accent of the source. Who enters does so a shade under and
 * without accent, who leaves keeps the accent of the beat (common practice, no source).
 */
public enum EntryAccent implements Sayable {
  /** There is none, or the line itself begins anew after a rest, with an accent of its own. */
  NONE,
  /** The landing note has one too, or is the same note: who leaves keeps it. */
  KEPT_BY_LEAVING,
  /** Only the entry has it, not the landing note: the ear is drawn to the entry. */
  EXPOSED;

  static EntryAccent of(Line line, Handoff handoff) {
    if (Costing.overSilence(line, handoff) || !line.stroke(handoff.enters().first()).accented()) {
      return NONE;
    }
    boolean kept = handoff.shared() > 0 && line.stroke(handoff.leaves().last()).accented();
    return kept ? KEPT_BY_LEAVING : EXPOSED;
  }

  @Override
  public Sentence inWords() {
    return switch (this) {
      case NONE -> Sentence.of("no accent where it enters");
      case KEPT_BY_LEAVING -> Sentence.of("the accent stays with who leaves");
      case EXPOSED ->
          Sentence.of("an accent on the entry alone exposes it: enter without the accent");
    };
  }
}

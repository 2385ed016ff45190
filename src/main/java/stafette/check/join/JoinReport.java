package stafette.check.join;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stafette.limits.Instrument;
import stafette.plan.Handoff;
import stafette.plan.Plan;
import stafette.score.Line;
import stafette.words.Sayable;
import stafette.words.Sentence;

/**
 * What a master would see to at one handoff. Of hocket pairs those two are meant who play the
 * landing note.
 *
 * @param handoff which
 * @param accent whether who enters begins on an accent
 * @param balance the dynamics proposed, where the two differ by a step of loudness or more
 * @param cover how far other parts cover it
 * @param flam repeated notes that both play
 * @param cuts what it cuts, each at most once
 */
public record JoinReport(
    Handoff handoff,
    EntryAccent accent,
    Optional<LevelBalance> balance,
    JoinCover cover,
    Optional<Flam> flam,
    List<JoinCut> cuts)
    implements Sayable {
  public JoinReport {
    cuts = List.copyOf(cuts);
  }

  /** One for each handoff, in order. */
  public static List<JoinReport> of(Plan plan) {
    return plan.handoffs().stream().map(handoff -> of(plan, handoff)).toList();
  }

  /** What there is to see to at one handoff of a plan. */
  public static JoinReport of(Plan plan, Handoff handoff) {
    Line line = plan.brief().line(handoff.enters().relay());
    int landing = handoff.leaves().last();
    int together = Math.max(handoff.enters().first(), landing);
    Instrument leaving = plan.player(handoff.leaves(), landing).instrument();
    Instrument entering = plan.player(handoff.enters(), together).instrument();
    return new JoinReport(
        handoff,
        EntryAccent.of(line, handoff),
        LevelBalance.of(leaving, entering, line.stroke(together).dynamic()),
        JoinCover.of(line.cover(landing)),
        Flam.of(line, handoff, leaving, entering),
        JoinCut.of(line, handoff));
  }

  /** Whether an accent exposes the entry, and other parts don't hide it. */
  public boolean isExposed() {
    return accent == EntryAccent.EXPOSED && !cover.hides();
  }

  /** The flam, unless it disappears under other parts' attack. */
  public Optional<Flam> audibleFlam() {
    return flam.filter(rows -> !cover.hides());
  }

  /** What there is to do, the weightiest first; empty for most joins. */
  public List<Sentence> toDo() {
    List<Sentence> all = new ArrayList<>();
    cuts.forEach(cut -> all.add(cut.inWords()));
    balance.ifPresent(levels -> all.add(levels.inWords()));
    if (isExposed()) {
      all.add(accent.inWords());
    }
    audibleFlam().ifPresent(rows -> all.add(rows.inWords()));
    return List.copyOf(all);
  }

  /** All of it in a row. */
  @Override
  public Sentence inWords() {
    List<Sentence> all = new ArrayList<>();
    cuts.forEach(cut -> all.add(cut.inWords()));
    all.add(
        balance
            .map(LevelBalance::inWords)
            .orElseGet(() -> Sentence.of("equally loud within a step")));
    all.add(accent.inWords());
    flam.ifPresent(rows -> all.add(rows.inWords()));
    all.add(cover.inWords());
    return Sentence.list("; ", all);
  }
}

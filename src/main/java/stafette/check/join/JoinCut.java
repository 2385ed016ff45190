package stafette.check.join;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stafette.check.Costing;
import stafette.plan.Handoff;
import stafette.score.Line;
import stafette.score.Tuplet;
import stafette.time.Position;
import stafette.time.Rank;
import stafette.words.Sayable;
import stafette.words.Sentence;

/** What a join cuts that belongs together. */
public enum JoinCut implements Sayable {
  /** A slur goes on over the first note of who enters or over the landing note. */
  SLUR,
  /** One of the two stands inside a beat, neither on half of it, or inside a tuplet. */
  GROUP;

  /** Nothing is cut where the line itself rests. */
  static List<JoinCut> of(Line line, Handoff handoff) {
    if (Costing.overSilence(line, handoff)) {
      return List.of();
    }
    int entry = handoff.enters().first();
    int landing = handoff.leaves().last();
    List<JoinCut> cuts = new ArrayList<>();
    if (Costing.cutsSlur(line, entry) || Costing.cutsSlur(line, landing)) {
      cuts.add(SLUR);
    }
    if (insideGroup(line, landing)) {
      cuts.add(GROUP);
    }
    return cuts;
  }

  private static boolean insideGroup(Line line, int j) {
    return line.rank(j) == Rank.ELSEWHERE || (line.rank(j) == Rank.HALF && insideTuplet(line, j));
  }

  private static boolean insideTuplet(Line line, int j) {
    Position onset = line.stroke(j).onset();
    Optional<Tuplet> tuplet = line.stroke(j).values().get(0).tuplet();
    return tuplet.filter(group -> group.span().start().isBefore(onset)).isPresent();
  }

  @Override
  public Sentence inWords() {
    return switch (this) {
      case SLUR -> Sentence.of("cuts a slur: land on its last note");
      case GROUP -> Sentence.of("cuts a group of notes: land on a beat");
    };
  }
}

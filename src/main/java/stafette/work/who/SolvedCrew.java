package stafette.work.who;

import java.util.List;
import stafette.ask.PlayerWish;
import stafette.ask.SplitRequest;
import stafette.check.JudgedPlan;
import stafette.check.alone.Ease;
import stafette.plan.TurnsInWords;
import stafette.words.Sentence;

/**
 * Players who together play a line, and the plan for them.
 *
 * @param members those of them who play
 * @param asked the question to which the plan is the answer
 * @param judged the plan
 * @param holds whether it holds for the share of players asked for
 * @param keepsMargin whether it holds with the margin of tempo asked for
 */
public record SolvedCrew(
    List<Candidate> members,
    SplitRequest asked,
    JudgedPlan judged,
    boolean holds,
    boolean keepsMargin) {
  public SolvedCrew {
    members = List.copyOf(members);
  }

  public List<PlayerWish> players() {
    return asked.players();
  }

  /** How many of 100 manage the hardest part of it. */
  public double share() {
    return judged.verdict().hardest() * 100;
  }

  /** How many of them are not in the score. */
  public int newcomers() {
    return (int) members.stream().filter(member -> !member.isInScore()).count();
  }

  /** "Flute 1, 2 in turn, 2 bars each (6 turns); comfortable; free throughout". */
  public Sentence inWords() {
    Sentence turns = TurnsInWords.of(judged.plan());
    Sentence ease = Sentence.name(Ease.of(share()).text());
    Sentence sure = keepsMargin ? ease : Sentence.of("{0}, without reserve of tempo", ease);
    return Sentence.of("{0}; {1}; {2}", turns, sure, whenFree());
  }

  private Sentence whenFree() {
    List<Sentence> busy =
        members.stream()
            .filter(member -> !member.isFree())
            .map(
                member ->
                    Sentence.of("{0} {1}", member.player().name(), member.busy().orElseThrow()))
            .toList();
    List<String> absent =
        members.stream()
            .filter(member -> !member.isInScore())
            .map(member -> member.player().name())
            .toList();
    if (!absent.isEmpty()) {
      return Sentence.of("{0} not in the score", Sentence.list(absent));
    }
    return busy.isEmpty() ? Sentence.of("free throughout") : Sentence.list(busy);
  }
}

package stafette.check;

import java.util.ArrayList;
import java.util.List;
import stafette.words.Sentence;

/** What is different in one plan from another, as a musician would say it. */
record Differences(Traits plan, Traits other) {
  List<Sentence> inWords() {
    List<Sentence> words = new ArrayList<>();
    handoffs(words);
    players(words);
    instead(
        words,
        Sentence.of("highest strain"),
        Strain.percent(plan.highestStrain()),
        Strain.percent(other.highestStrain()));
    instead(
        words,
        Sentence.of("mean strain"),
        Strain.percent(plan.meanStrain()),
        Strain.percent(other.meanStrain()));
    blend(words);
    instead(words, Sentence.of("odds"), odds(plan), odds(other));
    if (words.isEmpty()) {
      words.add(Sentence.of("other places to hand over"));
    }
    return words;
  }

  private void handoffs(List<Sentence> words) {
    int more = plan.handoffs() - other.handoffs();
    if (more != 0) {
      Sentence count =
          Math.abs(more) == 1
              ? Sentence.of("1 handoff")
              : Sentence.of("{0} handoffs", Math.abs(more));
      words.add(more < 0 ? Sentence.of("{0} fewer", count) : Sentence.of("{0} more", count));
    }
  }

  private void players(List<Sentence> words) {
    for (int i = 0; i < plan.turns().size(); i++) {
      Traits.TurnCounts own = plan.turns().get(i);
      boolean needed = own.segments() > 0;
      if (needed != other.turns().get(i).segments() > 0) {
        words.add(
            needed
                ? Sentence.of("{0} plays too", own.player())
                : Sentence.of("{0} not needed", own.player()));
      }
    }
  }

  private void blend(List<Sentence> words) {
    int more = plan.blend() - other.blend();
    if (more != 0) {
      Sentence points =
          Math.abs(more) == 1 ? Sentence.of("1 point") : Sentence.of("{0} points", Math.abs(more));
      words.add(
          more < 0
              ? Sentence.of("instruments {0} closer", points)
              : Sentence.of("instruments {0} further apart", points));
    }
  }

  private static void instead(List<Sentence> words, Sentence what, Object own, Object others) {
    if (!own.equals(others)) {
      words.add(Sentence.of("{0} {1} instead of {2}", what, own, others));
    }
  }

  private static Sentence odds(Traits traits) {
    return Sentence.of("{0} in 100", (int) Math.floor(traits.odds() * 100));
  }
}

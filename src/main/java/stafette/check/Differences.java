package stafette.check;

import java.util.ArrayList;
import java.util.List;

/** What is different in one plan from another, as a musician would say it. */
record Differences(Traits plan, Traits other) {
  List<String> inWords() {
    List<String> words = new ArrayList<>();
    handoffs(words);
    players(words);
    instead(
        words,
        "highest strain",
        Strain.percent(plan.highestStrain()),
        Strain.percent(other.highestStrain()));
    instead(
        words,
        "mean strain",
        Strain.percent(plan.meanStrain()),
        Strain.percent(other.meanStrain()));
    blend(words);
    instead(words, "odds", odds(plan), odds(other));
    if (words.isEmpty()) {
      words.add("other places to hand over");
    }
    return words;
  }

  private void handoffs(List<String> words) {
    int more = plan.handoffs() - other.handoffs();
    if (more != 0) {
      int count = Math.abs(more);
      words.add(count + (count == 1 ? " handoff " : " handoffs ") + (more < 0 ? "fewer" : "more"));
    }
  }

  private void players(List<String> words) {
    for (int i = 0; i < plan.turns().size(); i++) {
      Traits.Turns own = plan.turns().get(i);
      boolean needed = own.segments() > 0;
      if (needed != other.turns().get(i).segments() > 0) {
        words.add(own.player() + (needed ? " plays too" : " not needed"));
      }
    }
  }

  private void blend(List<String> words) {
    int more = plan.blend() - other.blend();
    if (more != 0) {
      words.add(
          "instruments "
              + Math.abs(more)
              + (Math.abs(more) == 1 ? " point " : " points ")
              + (more < 0 ? "closer" : "further apart"));
    }
  }

  private static void instead(List<String> words, String what, String own, String others) {
    if (!own.equals(others)) {
      words.add(what + " " + own + " instead of " + others);
    }
  }

  private static String odds(Traits traits) {
    return (int) Math.floor(traits.odds() * 100) + " in 100";
  }
}

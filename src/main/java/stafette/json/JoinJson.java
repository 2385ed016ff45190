package stafette.json;

import java.util.List;
import java.util.Optional;
import stafette.check.join.EntryAccent;
import stafette.check.join.Flam;
import stafette.check.join.JoinCut;
import stafette.check.join.JoinReport;
import stafette.check.join.LevelBalance;
import stafette.json.Means.Items;
import stafette.json.Means.Least;
import stafette.json.Means.Most;
import stafette.json.Means.Told;
import stafette.score.Dynamic;
import stafette.words.Sentence;

/** What a master would see to at a handoff. */
@Told
@Means("What a master would see to at a handoff: advice to players and copyists.")
record JoinJson(
    @Means(
            "The accent of the source on the first note of who enters. kept by leaving: who enters leaves it out, who leaves has it on the landing note. exposed: the landing note has none.")
        EntryAccent accent,
    @Means("Dynamics that balance the two; null where they differ by less than a step.")
        Optional<BalanceJson> balance,
    @Means(
            "How many other parts attack at the landing note, one with an accent counted twice; 4 stands for any more, under which the join disappears.")
        @Least(0)
        @Most(4)
        int attacksBeside,
    @Means("Repeated notes that both play; null where there are none.") Optional<FlamJson> flam,
    @Means("What it cuts.") List<JoinCut> cuts,
    @Means("What is to be done, sentences for people.") List<String> toDo) {
  static JoinJson of(JoinReport join) {
    return new JoinJson(
        join.accent(),
        join.balance().map(BalanceJson::of),
        join.cover().attacks(),
        join.flam().map(FlamJson::of),
        join.cuts(),
        join.toDo().stream().map(Sentence::toString).toList());
  }

  /** Dynamics that balance two instruments. */
  @Means("Dynamics that balance the two who meet.")
  record BalanceJson(
      @Means("The louder instrument.") String louder,
      @Means("How much louder it is at the same dynamic, decibels.") @Least(0) double decibel,
      @Means("The dynamic in force in the source at the landing note.") Dynamic written,
      @Means("What the louder one plays.") Dynamic louderPlays,
      @Means("What the softer one plays: as written, unless the louder one can't go down enough.")
          Dynamic softerPlays) {
    static BalanceJson of(LevelBalance balance) {
      return new BalanceJson(
          balance.louder().name(),
          balance.decibel(),
          balance.written(),
          balance.louderPlays(),
          balance.softerPlays());
    }
  }

  /** Repeated notes that both play. */
  @Means("A row of repeated notes that both play.")
  record FlamJson(
      @Means("How many in a row.") @Least(2) int notes,
      @Means(
              "Standard deviation of the difference of their onsets, the smaller and the larger published figure, seconds.")
          @Items(least = 2, most = 2)
          @Least(0)
          List<Double> onsetsApart) {
    static FlamJson of(Flam flam) {
      return new FlamJson(
          flam.notes(),
          List.of(flam.spread().leastMillis() / 1000, flam.spread().mostMillis() / 1000));
    }
  }
}

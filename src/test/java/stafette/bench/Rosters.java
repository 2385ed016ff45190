package stafette.bench;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import stafette.Invented;
import stafette.limits.Assurance;
import stafette.limits.Breath;
import stafette.limits.Instrument;
import stafette.plan.Brief;
import stafette.plan.Favour;
import stafette.plan.OverlapRule;
import stafette.plan.Player;
import stafette.plan.Rules;
import stafette.tables.LimitTables;

/**
 * Briefs of one kind, for measuring the search: a line of triplets on one note, 12 strokes a second
 * and 12 to a bar, and players with invented limits. Instruments, their blend and all weights are
 * those of the built-in tables. Who is alike is named, a section that has the line anyhow; who is
 * unlike is proposed, so that the search may choose among them.
 */
public final class Rosters {
  /** Strokes a second of every line here. */
  public static final double STROKES_PER_SECOND = 12;

  private static final int STROKES_PER_BEAT = 3;
  private static final int QUARTERS_PER_MINUTE = 240;
  private static final double PEAK = 13;
  private static final double SUSTAINED = 8;
  private static final double STAMINA = 20;
  private static final double RECOVERY = 8;
  private static final LimitTables TABLES = LimitTables.builtIn();

  private static final List<String> INSTRUMENTS =
      List.of(
          "flute",
          "clarinet in B-flat",
          "oboe",
          "alto saxophone",
          "trumpet in C",
          "violin",
          "horn in F",
          "viola");

  /** Peak, sustained and stamina of each of the mixed players. */
  private static final double[][] FIGURES = {
    {14.0, 8.5, 22},
    {12.5, 7.0, 30},
    {13.5, 9.0, 15},
    {13.0, 8.0, 26},
    {15.0, 9.5, 18},
    {14.5, 7.5, 28},
    {12.8, 8.8, 20},
    {13.8, 7.8, 24}
  };

  private Rosters() {}

  /** Players who are alike in all: peak 13, sustained 8, stamina 20 strokes, recovery 8 s. */
  public static Brief identical(int bars, int players) {
    return brief(bars, flutes(players, SUSTAINED));
  }

  /**
   * Players all unlike, up to eight: peak 12.5 to 15, sustained 7 to 9.5, stamina 15 to 30 strokes,
   * recovery 8 s, each on another instrument; they needn't breathe.
   */
  public static Brief mixed(int bars, int players) {
    return brief(bars, proposed(unlike(players, false)));
  }

  /** The same players, who breathe as the tables say. */
  public static Brief breathing(int bars, int players) {
    return brief(bars, proposed(unlike(players, true)));
  }

  private static List<Player> proposed(List<Player> players) {
    return players.stream().map(Player::proposed).toList();
  }

  /**
   * Players who are alike and, together, near what they can do: peak 13, stamina 20 strokes,
   * recovery 8 s, and a sustained rate at which playing in turn, landing notes alone shared, spends
   * so much of what resting gives back.
   *
   * @param load the share of capacity; above 1 a line that is long enough can't be played, 64 bars
   *     at 1.4, say
   */
  public static Brief atCapacity(int bars, int players, double load) {
    return alwaysOn(bars, players, 1, load);
  }

  /**
   * The same where so many of them play at a time, each in a relay of its own over the same line.
   */
  public static Brief alwaysOn(int bars, int players, int on, double load) {
    double sustained = STROKES_PER_SECOND - load * (players - on) * STAMINA / (on * RECOVERY);
    Brief one = brief(bars, flutes(players, sustained));
    return new Brief(Collections.nCopies(on, one.line()), one.players(), one.rules());
  }

  /**
   * Players who are alike and, together, have a share of the rate as what can go on: peak 13, and
   * in a rest each gives back as many strokes a second as it could go on with, so that a share of 1
   * is just what taking turns without end asks for.
   *
   * @param share players times sustained, as a share of the rate
   */
  public static Brief sharing(int bars, int players, double share, double stamina) {
    double sustained = share * STROKES_PER_SECOND / players;
    return brief(bars, flutes(players, sustained, stamina, stamina / sustained));
  }

  private static Brief brief(int bars, List<Player> players) {
    Rules rules =
        new Rules(
            Assurance.DEFAULT,
            OverlapRule.DEFAULT,
            Rules.DEFAULT_READY_SECONDS,
            Favour.BALANCE,
            TABLES.weights());
    return new Brief(Invented.line(bars, STROKES_PER_BEAT, QUARTERS_PER_MINUTE), players, rules);
  }

  private static List<Player> flutes(int count, double sustained) {
    return flutes(count, sustained, STAMINA, RECOVERY);
  }

  private static List<Player> flutes(int count, double sustained, double stamina, double recovery) {
    Instrument flute = instrument("flute", false);
    return IntStream.rangeClosed(1, count)
        .mapToObj(
            chair -> Invented.player("Flute " + chair, flute, PEAK, sustained, stamina, recovery))
        .toList();
  }

  private static List<Player> unlike(int count, boolean breathing) {
    List<Player> players = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      double[] figures = FIGURES[i];
      Instrument instrument = instrument(INSTRUMENTS.get(i), breathing);
      players.add(
          Invented.player(
              instrument.name(), instrument, figures[0], figures[1], figures[2], RECOVERY));
    }
    return players;
  }

  /** An instrument of the tables with one technique, of the tongue and without factors. */
  private static Instrument instrument(String name, boolean breathing) {
    Instrument known = TABLES.catalogue().find(name).orElseThrow();
    Optional<Breath> breath = breathing ? known.breath() : Optional.empty();
    return new Instrument(
        known.name(),
        known.aliases(),
        known.family(),
        known.range(),
        known.comfortable(),
        known.transposition(),
        known.clef(),
        known.levelDecibel(),
        breath,
        known.midiProgram(),
        List.of(Invented.tonguing("tonguing")),
        known.source());
  }
}

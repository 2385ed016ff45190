package stafette.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import stafette.words.Sentence;

/** A plan in one sentence: "Flute 1, 2, 3 in rotation, 2 bars each (6 turns)". */
public final class TurnsInWords {
  /** A name and a chair's number. */
  private static final Pattern NUMBERED = Pattern.compile("(.*\\S)\\s+([0-9]+)");

  private final Plan plan;

  private TurnsInWords(Plan plan) {
    this.plan = plan;
  }

  /** Who takes turns in which order, how long each is, and how many there are. */
  public static Sentence of(Plan plan) {
    TurnsInWords words = new TurnsInWords(plan);
    List<List<Turn>> relays = plan.relays();
    if (relays.size() == 1) {
      return words.relay(relays.get(0));
    }
    return Sentence.list(
        "; ",
        IntStream.range(0, relays.size())
            .mapToObj(i -> Sentence.of("relay {0}: {1}", i + 1, words.relay(relays.get(i))))
            .toList());
  }

  /**
   * The first entries of the first relay: "Flute 1 from 5.1, Flute 2 from 7.1".
   *
   * @param most so many of them
   */
  public static Sentence entries(Plan plan, int most) {
    return Sentence.list(
        plan.relays().get(0).stream()
            .limit(most)
            .map(
                turn ->
                    Sentence.of(
                        "{0} from {1}",
                        plan.who(turn),
                        plan.line()
                            .bars()
                            .nameOf(plan.line().stroke(turn.first()).onset())
                            .inShort()))
            .toList());
  }

  private Sentence relay(List<Turn> turns) {
    if (turns.size() == 1) {
      Turn only = turns.get(0);
      return only.isHocket()
          ? Sentence.of("{0}, in turn by the {1}", plan.who(only), unit())
          : Sentence.of("{0} alone", plan.who(only));
    }
    Sentence lengths = new TurnLengths(plan.brief().line(turns.get(0).relay()), turns).inWords();
    Sentence all = Sentence.of("{0}, {1} ({2} turns)", order(turns), lengths, turns.size());
    return turns.stream().anyMatch(Turn::isHocket)
        ? Sentence.of("{0}; pairs in turn by the {1}", all, unit())
        : all;
  }

  private Sentence unit() {
    return Sentence.name(plan.brief().rules().hocket().name().toLowerCase(Locale.ROOT));
  }

  private Sentence order(List<Turn> turns) {
    List<List<Integer>> who = turns.stream().map(TurnsInWords::players).toList();
    List<List<Integer>> distinct = who.stream().distinct().toList();
    Sentence names = names(turns, distinct);
    if (distinct.size() == 1) {
      return names;
    }
    if (distinct.size() == turns.size()) {
      return Sentence.of("{0} one after the other", names);
    }
    boolean rotates =
        IntStream.range(0, who.size())
            .allMatch(i -> who.get(i).equals(distinct.get(i % distinct.size())));
    if (!rotates) {
      return Sentence.of("{0} in changing order", names);
    }
    return distinct.size() == 2
        ? Sentence.of("{0} in turn", names)
        : Sentence.of("{0} in rotation", names);
  }

  private static List<Integer> players(Turn turn) {
    return turn.segments().stream().map(Segment::player).toList();
  }

  /** Single players by their kinds, "Flute 1, 2, Clarinet 1"; pairs in full. */
  private Sentence names(List<Turn> turns, List<List<Integer>> distinct) {
    if (turns.stream().anyMatch(Turn::isHocket)) {
      return Sentence.list(
          distinct.stream()
              .map(players -> turns.stream().filter(t -> players(t).equals(players)).findFirst())
              .map(turn -> plan.who(turn.orElseThrow()))
              .toList());
    }
    return Sentence.list(
        shortened(
            distinct.stream().map(p -> plan.brief().players().get(p.get(0)).name()).toList()));
  }

  /** Names in order, the common part of those who follow one another said once. */
  static List<String> shortened(List<String> names) {
    List<String> result = new ArrayList<>();
    String kindBefore = "";
    for (String name : names) {
      Matcher numbered = NUMBERED.matcher(name);
      String kind = numbered.matches() ? numbered.group(1) : "";
      result.add(!kind.isEmpty() && kind.equals(kindBefore) ? numbered.group(2) : name);
      kindBefore = kind;
    }
    return result;
  }
}

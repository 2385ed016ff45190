package stafette.split;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import stafette.Invented;
import stafette.limits.Instrument;
import stafette.plan.Player;

class CrewsTest {
  private static final Instrument FLUTE = Invented.instrument("flute");
  private static final int PRICE = 25;

  private record Found(int bound, Crew crew) {}

  @Property(tries = 200)
  void every_crew_that_may_have_a_plan_comes_once_and_cheaper_ones_first(@ForAll long seed) {
    Random random = new Random(seed);
    List<PlayerKind> kinds = kinds(IntStream.range(0, 4).map(k -> 1 + random.nextInt(2)).toArray());
    Crews.CrewFigures figures = figures(kinds.size(), random);
    int[] needed =
        IntStream.range(0, kinds.size())
            .flatMap(kind -> random.ints(kinds.get(kind).members().size(), kind, kind + 1))
            .filter(kind -> random.nextInt(6) == 0)
            .toArray();
    Crews crews = new Crews(kinds, figures, needed);
    List<Found> found = new ArrayList<>();
    while (crews.bound() < Relaxation.NEVER) {
      int bound = crews.bound();
      Crews.Made made = crews.next();
      assertEquals(bound, made.floor() + prices(made.crew(), figures));
      found.add(new Found(bound, made.crew()));
    }
    assertEquals(expected(kinds, figures, needed), found);
  }

  private static Crews.CrewFigures figures(int kinds, Random random) {
    int[] withKind = new int[kinds];
    List<Integer> prices = new ArrayList<>();
    long[] strength = new long[kinds];
    for (int kind = 0; kind < kinds; kind++) {
      withKind[kind] = random.nextInt(8) == 0 ? Relaxation.NEVER : random.nextInt(80);
      strength[kind] = random.nextInt(10);
      prices.add(random.nextInt(2) * PRICE);
    }
    return new Crews.CrewFigures(
        random.nextInt(30),
        prices,
        1 + random.nextInt(6),
        random.nextInt(40),
        Arrays.stream(withKind).boxed().toList(),
        new Multipliers.Strength(Arrays.stream(strength).boxed().toList(), random.nextInt(30)));
  }

  /** All of them, each bound reckoned from scratch. */
  private static List<Found> expected(
      List<PlayerKind> kinds, Crews.CrewFigures figures, int[] needed) {
    return all(kinds).stream()
        .filter(crew -> hasAll(crew, needed))
        .filter(crew -> crew.size() > 0 && crew.size() <= figures.mostPlayers())
        .filter(crew -> strength(crew, figures) >= figures.strength().asked())
        .map(crew -> new Found(bound(crew, figures), crew))
        .filter(each -> each.bound < Relaxation.NEVER)
        .sorted(Comparator.comparingInt(Found::bound).thenComparing(Found::crew, Crew.ORDER))
        .toList();
  }

  private static boolean hasAll(Crew crew, int[] needed) {
    return Arrays.stream(needed)
        .allMatch(
            kind ->
                crew.counts().get(kind)
                    >= Arrays.stream(needed).filter(other -> other == kind).count());
  }

  private static long strength(Crew crew, Crews.CrewFigures figures) {
    return Arrays.stream(crew.slots())
        .mapToLong(kind -> figures.strength().ofOne().get(kind))
        .sum();
  }

  private static int bound(Crew crew, Crews.CrewFigures figures) {
    int dearest = crew.kindsPresent().map(kind -> figures.withKind().get(kind)).max().orElse(0);
    return Math.max(dearest, figures.floor()) + prices(crew, figures);
  }

  private static int prices(Crew crew, Crews.CrewFigures figures) {
    return figures.base()
        + Arrays.stream(crew.slots()).map(kind -> figures.prices().get(kind)).sum();
  }

  private static List<Crew> all(List<PlayerKind> kinds) {
    List<Crew> crews = new ArrayList<>(List.of(new Crew(kinds, List.of())));
    for (PlayerKind kind : kinds) {
      List<Crew> longer = new ArrayList<>();
      for (Crew crew : crews) {
        for (int count = 0; count <= kind.members().size(); count++) {
          List<Integer> counts = new ArrayList<>(crew.counts());
          counts.add(count);
          longer.add(new Crew(kinds, counts));
        }
      }
      crews = longer;
    }
    return crews;
  }

  /** Forty players have a million million crews; of 780 pairs and fewer there are 820. */
  @Test
  void those_that_cost_too_much_are_never_made() {
    List<PlayerKind> kinds = kinds(IntStream.range(0, 40).map(kind -> 1).toArray());
    Crews.CrewFigures figures =
        new Crews.CrewFigures(
            0,
            Collections.nCopies(40, PRICE),
            40,
            100,
            Collections.nCopies(40, 0),
            Multipliers.Strength.unknown(40));
    Crews crews = new Crews(kinds, figures, new int[0]);
    int made = 0;
    while (crews.bound() < 100 + 3 * PRICE) {
      crews.next();
      made++;
    }
    assertEquals(820, made);
    assertTrue(crews.work() < 4 * made, "work " + crews.work());
  }

  private static List<PlayerKind> kinds(int[] sizes) {
    List<Player> players = new ArrayList<>();
    for (int kind = 0; kind < sizes.length; kind++) {
      for (int member = 0; member < sizes[kind]; member++) {
        String name = "Flute " + kind + "." + member;
        players.add(Invented.player(name, FLUTE, 12 + kind / 100.0, 8, 20, 8));
      }
    }
    Player[] all = players.toArray(new Player[0]);
    return PlayerKind.of(Invented.brief(Invented.line(1, 4, 60), all));
  }
}

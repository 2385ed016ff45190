package stafette.repertoire;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.function.Predicate;
import stafette.ask.Allowance;
import stafette.check.alone.Ease;
import stafette.check.alone.LineTrial;
import stafette.keep.LimitsInForce;
import stafette.limits.Assurance;
import stafette.limits.Demand;
import stafette.limits.Stroking;
import stafette.limits.Technique;
import stafette.score.Line;
import stafette.time.Rational;
import stafette.words.Refusal;

/**
 * What the judge says of the fast passages of open scores on the instruments for which they are
 * written, at their tempo, a quarter faster and half as fast again. Professionals play them every
 * week, so few of them should be beyond as they stand, and many where they are hurried: figures
 * that call nothing too fast would be of no use.
 */
public final class Gates {
  private static final List<Rational> TEMPI =
      List.of(Rational.of(1), Rational.of(5, 4), Rational.of(3, 2));

  private final List<Judged> judged;
  private final Map<String, Integer> aside;

  /** A passage, and how hard it is at each of the tempi. */
  private record Judged(Corpora.File file, String instrument, List<Ease> eases, String words) {
    static Judged of(Passages.Found found) {
      return new Judged(
          found.file(),
          found.instrument().name(),
          TEMPI.stream().map(tempo -> ease(found, tempo)).toList(),
          inWords(found.line()));
    }

    private static String inWords(Line line) {
      return String.format(
          Locale.ROOT,
          "#%d-#%d\t%d strokes\t%.1f a second\t%s\t%s",
          line.source().firstBar() + 1,
          line.source().lastBar() + 1,
          line.count(),
          Demand.usualRatePerSecond(line),
          Stroking.of(line).inWords(),
          line.tempo().at(line.stroke(0).onset()));
    }
  }

  private Gates(List<Judged> judged, Map<String, Integer> aside) {
    this.judged = judged;
    this.aside = aside;
  }

  /**
   * Prints the tables.
   *
   * @param args a folder of scores; then, if one likes, one of limits
   */
  public static void main(String[] args) throws IOException, Refusal {
    Optional<Path> own = args.length > 1 ? Optional.of(Path.of(args[1])) : Optional.empty();
    LimitsInForce limits = LimitsInForce.load(own);
    Passages<Judged> passages = Passages.in(Path.of(args[0]), limits, Judged::of);
    Gates gates = new Gates(passages.found(), passages.aside());
    gates.print();
    if (args.length > 2) {
      gates.printHardest();
    }
  }

  private static Ease ease(Passages.Found passage, Rational tempo) {
    Line line = passage.line().at(passage.line().tempo().times(tempo));
    List<Technique> usable =
        Allowance.usable(List.of(), "", passage.instrument(), List.of(passage.line()));
    for (Ease ease : List.of(Ease.AT_THE_EDGE, Ease.FOR_THE_FEW)) {
      Assurance share = new Assurance(ease == Ease.AT_THE_EDGE ? 50 : 16);
      if (LineTrial.manages(line, passage.instrument(), share, usable).orElse(false)) {
        return ease;
      }
    }
    return Ease.BEYOND;
  }

  private void print() {
    int left = aside.values().stream().mapToInt(Integer::intValue).sum();
    System.out.printf(
        Locale.ROOT,
        "%d scores with fast passages; %d passages judged, %d left out (%.1f %%):%n",
        judged.stream().map(each -> each.file.path()).distinct().count(),
        judged.size(),
        left,
        100.0 * left / (judged.size() + left));
    aside.forEach((reason, count) -> System.out.println("  " + count + ": " + reason));
    System.out.println("Per cent for the few / beyond, by tempo:");
    System.out.println("| which | passages | as written | 1.25 times | 1.5 times |");
    print("all", each -> true);
    print("to set figures", each -> each.file.tunes());
    print("only to test", each -> !each.file.tunes());
    byName(each -> each.file.corpus())
        .forEach(
            (corpus, count) -> {
              print(corpus, each -> each.file.corpus().equals(corpus));
              print(
                  corpus + ", only to test",
                  each -> each.file.corpus().equals(corpus) && !each.file.tunes());
            });
    byName(each -> each.instrument)
        .forEach((name, count) -> print(name, each -> each.instrument.equals(name)));
  }

  private Map<String, Integer> byName(Function<Judged, String> name) {
    Map<String, Integer> counts = new TreeMap<>();
    judged.forEach(each -> counts.merge(name.apply(each), 1, Integer::sum));
    return counts;
  }

  private void print(String which, Predicate<Judged> these) {
    List<Judged> chosen = judged.stream().filter(these).toList();
    StringBuilder row = new StringBuilder("| " + which + " | " + chosen.size());
    for (int tempo = 0; tempo < TEMPI.size(); tempo++) {
      row.append(
          String.format(
              Locale.ROOT,
              " | %.2f / %.2f",
              percent(chosen, tempo, Ease.FOR_THE_FEW),
              percent(chosen, tempo, Ease.BEYOND)));
    }
    System.out.println(row + " |");
  }

  private static double percent(List<Judged> chosen, int tempo, Ease ease) {
    long count = chosen.stream().filter(each -> each.eases.get(tempo) == ease).count();
    return 100.0 * count / Math.max(1, chosen.size());
  }

  /** Each passage that is beyond or for the few as it stands, to look at. */
  private void printHardest() {
    judged.stream()
        .filter(each -> each.eases.get(0) != Ease.AT_THE_EDGE)
        .sorted(Comparator.comparing(each -> each.file.path()))
        .forEach(
            each ->
                System.out.println(
                    String.join(
                        "\t",
                        each.eases.get(0).text(),
                        each.file.tunes() ? "sets" : "tests",
                        each.instrument,
                        each.file.name(),
                        each.words)));
  }
}

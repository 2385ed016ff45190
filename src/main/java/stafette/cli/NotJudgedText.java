package stafette.cli;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableSet;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import stafette.limits.Singers;
import stafette.score.Part;
import stafette.score.TremoloReading;
import stafette.score.TremoloRun;
import stafette.time.Bar;
import stafette.time.Bars;
import stafette.work.CheckScore;

/** What a check leaves aside, once and compactly. */
final class NotJudgedText {
  private final CheckScore.CheckedScore checked;
  private final Bars bars;

  private NotJudgedText(CheckScore.CheckedScore checked) {
    this.checked = checked;
    this.bars = checked.score().score().bars();
  }

  /** A line for each part with tremolo, one for singers, one for instruments that nobody knows. */
  static List<String> lines(CheckScore.CheckedScore checked) {
    NotJudgedText text = new NotJudgedText(checked);
    List<String> lines = new ArrayList<>(text.tremolos());
    text.singers().ifPresent(lines::add);
    text.unknown().ifPresent(lines::add);
    return lines;
  }

  private List<String> tremolos() {
    Map<String, List<TremoloRun>> byPart =
        checked.tremolos().stream()
            .collect(
                Collectors.groupingBy(TremoloRun::part, LinkedHashMap::new, Collectors.toList()));
    List<String> lines = new ArrayList<>();
    byPart.values().forEach(runs -> lines.add(runs.get(0).partName() + ": " + tremolo(runs)));
    if (!lines.isEmpty()) {
      lines.add(
          "All tremolos are counted with --tremolo measured, none with --tremolo unmeasured.");
    }
    return lines;
  }

  /** "tremolo not measured in bars 3-4, 17 (three slashes), bar 20 (the word tremolo)". */
  private String tremolo(List<TremoloRun> runs) {
    List<String> told = new ArrayList<>();
    told(runs, reading -> !reading.counts())
        .ifPresent(where -> told.add("tremolo not measured in " + where));
    told(runs, TremoloReading::counts)
        .ifPresent(where -> told.add("tremolo counted, but in doubt, in " + where));
    return String.join("; ", told);
  }

  private Optional<String> told(List<TremoloRun> runs, Predicate<TremoloReading> which) {
    Map<TremoloReading, NavigableSet<Integer>> places = new TreeMap<>();
    runs.stream()
        .filter(run -> which.test(run.reading()))
        .forEach(
            run ->
                IntStream.rangeClosed(run.firstBar(), run.lastBar())
                    .forEach(
                        bar ->
                            places
                                .computeIfAbsent(run.reading(), reading -> new TreeSet<>())
                                .add(bar)));
    return Optional.of(
            places.entrySet().stream()
                .map(each -> inWords(each.getValue()) + " (" + each.getKey().text() + ")")
                .collect(Collectors.joining(", ")))
        .filter(where -> !where.isEmpty());
  }

  /** "bars 3-4, 17". */
  private String inWords(Collection<Integer> indices) {
    List<List<Integer>> stretches = new ArrayList<>();
    for (int index : indices) {
      List<Integer> last = stretches.isEmpty() ? List.of() : stretches.get(stretches.size() - 1);
      if (last.isEmpty() || last.get(last.size() - 1) + 1 < index) {
        last = new ArrayList<>();
        stretches.add(last);
      }
      last.add(index);
    }
    return (indices.size() == 1 ? "bar " : "bars ")
        + stretches.stream().map(this::range).collect(Collectors.joining(", "));
  }

  /** As printed, but counted where one of its numbers is printed twice. */
  private String range(List<Integer> stretch) {
    List<Bar> ends =
        IntStream.of(stretch.get(0), stretch.get(stretch.size() - 1))
            .distinct()
            .mapToObj(bars::get)
            .toList();
    boolean once = ends.stream().allMatch(bar -> bars.isPrintedOnce(bar.number()));
    return ends.stream()
        .map(bar -> once ? bar.number() : "#" + (bar.index() + 1))
        .collect(Collectors.joining("-"));
  }

  private Optional<String> singers() {
    List<String> names =
        checked.notJudged().stream().filter(Singers::sing).map(Part::name).distinct().toList();
    return names.isEmpty()
        ? Optional.empty()
        : Optional.of("not judged: singers (" + String.join(", ", names) + ")");
  }

  private Optional<String> unknown() {
    List<String> parts =
        checked.notJudged().stream()
            .filter(part -> !Singers.sing(part))
            .map(part -> part.name() + ", " + inWords(passages(part)))
            .toList();
    return parts.isEmpty()
        ? Optional.empty()
        : Optional.of(
            "not judged: unknown instruments ("
                + String.join("; ", parts)
                + "); check them with --part and --as INSTRUMENT");
  }

  private Collection<Integer> passages(Part part) {
    return checked.reports().stream()
        .map(report -> report.line().source())
        .filter(source -> source.part().equals(part.id()))
        .flatMapToInt(source -> IntStream.rangeClosed(source.firstBar(), source.lastBar()))
        .boxed()
        .collect(Collectors.toCollection(TreeSet::new));
  }
}

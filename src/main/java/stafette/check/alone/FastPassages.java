package stafette.check.alone;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.Function;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import stafette.limits.Act;
import stafette.limits.Assurance;
import stafette.limits.Demand;
import stafette.limits.Instrument;
import stafette.limits.Technique;
import stafette.score.Attack;
import stafette.score.Line;
import stafette.score.Part;
import stafette.score.Score;
import stafette.score.SharedHands;
import stafette.score.Strands;
import stafette.score.Stroke;
import stafette.score.ToneChoice;
import stafette.score.Voice;
import stafette.time.Movement;
import stafette.time.Span;
import stafette.words.Fault;
import stafette.words.Sentence;

/**
 * Finds the fast passages of a score: maximal runs of at least {@link #LEAST_STROKES} strokes in
 * one voice, or woven by two hands or voices, whose every gap is shorter than 1/({@link #SHARE} ×
 * peak) of the best technique that applies to the stroke that ends it. Plucked strokes are runs of
 * their own. Which one applies is settled on the run that the slowest technique of the instrument
 * makes, among techniques that are expected of everybody and can go on. Unmeasured tremolos end a
 * run, and so does the end of a movement.
 */
public final class FastPassages {
  private static final int LEAST_STROKES = 8;
  private static final double SHARE = 0.7;

  private final Score score;
  private final Assurance assurance;
  private final double unknownPeakPerSecond;
  private final List<Passage> found = new ArrayList<>();

  private FastPassages(Score score, Assurance assurance, double unknownPeakPerSecond) {
    this.score = score;
    this.assurance = assurance;
    this.unknownPeakPerSecond = unknownPeakPerSecond;
  }

  /**
   * The fast passages, part by part, by onset.
   *
   * @param instrumentOf what a part plays, if that is known
   * @param unknownPeakPerSecond the peak to go by where it isn't
   */
  public static List<Passage> in(
      Score score,
      Function<Part, Optional<Instrument>> instrumentOf,
      Assurance assurance,
      double unknownPeakPerSecond) {
    FastPassages passages = new FastPassages(score, assurance, unknownPeakPerSecond);
    for (Part part : score.parts()) {
      Optional<Instrument> instrument = instrumentOf.apply(part);
      List<SharedHands> shared = SharedHands.in(part, score.bars().span());
      int before = passages.found.size();
      for (Attack attack : Attack.values()) {
        List<Technique> techniques =
            instrument.map(known -> lasting(known, attack)).orElse(List.of());
        for (Voice voice : part.voices()) {
          passages.search(part, voice, attack, techniques);
        }
        passages.searchShared(part, shared, attack, techniques);
      }
      passages
          .found
          .subList(before, passages.found.size())
          .sort(Comparator.comparing(each -> each.line().stroke(0).onset()));
    }
    return List.copyOf(passages.found);
  }

  /** Techniques that can go on, of those that everybody is expected to have for such strokes. */
  private static List<Technique> lasting(Instrument instrument, Attack attack) {
    Optional<Act> own =
        ownAct(attack)
            .filter(act -> instrument.techniques().stream().anyMatch(each -> each.act() == act));
    return instrument.techniques().stream()
        .filter(
            each ->
                own.isPresent()
                    ? each.act() == own.get()
                    : each.expected() && each.act() != Act.WOOD)
        .filter(each -> each.limit().sustainedPerSecond() > 0)
        .toList();
  }

  /** What alone makes strokes that the score has made so. */
  private static Optional<Act> ownAct(Attack attack) {
    return switch (attack) {
      case PLUCKED -> Optional.of(Act.PLUCK);
      case STRUCK_WITH_WOOD -> Optional.of(Act.WOOD);
      default -> Optional.empty();
    };
  }

  private void search(Part part, Voice voice, Attack attack, List<Technique> techniques) {
    Strands own = Strands.of(voice.staff(), voice.name());
    for (List<Stroke> run : runs(voice.strokes(), attack, slowest(techniques))) {
      found.addAll(fast(part, run, attack, techniques, each -> line(part, own, each)));
    }
  }

  /** Lines that hands share take the place of what each hand has of them. */
  private void searchShared(
      Part part, List<SharedHands> shared, Attack attack, List<Technique> techniques) {
    for (SharedHands hands : shared) {
      for (List<Stroke> run : runs(hands.strokes(), attack, slowest(techniques))) {
        for (SharedHands.SharedLine woven : hands.within(run)) {
          List<Passage> lines =
              fast(
                  part,
                  woven.strokes(),
                  attack,
                  techniques,
                  each -> line(part, woven.strands(), each));
          found.removeIf(single -> lines.stream().anyMatch(line -> line.holds(single)));
          found.addAll(lines);
        }
      }
    }
  }

  private IntToDoubleFunction slowest(List<Technique> techniques) {
    double peak = techniques.stream().mapToDouble(this::peak).min().orElse(unknownPeakPerSecond);
    return j -> peak;
  }

  /** Passages among strokes that are fast enough for the slowest technique. */
  private List<Passage> fast(
      Part part,
      List<Stroke> run,
      Attack attack,
      List<Technique> techniques,
      Function<List<Stroke>, Line> lineOf) {
    return Fault.at(
        () -> Sentence.of("{0}, bar {1}", part.name(), bar(run)),
        () -> within(part, run, attack, techniques, lineOf));
  }

  private String bar(List<Stroke> run) {
    return score.bars().at(run.get(0).onset()).number();
  }

  private List<Passage> within(
      Part part,
      List<Stroke> run,
      Attack attack,
      List<Technique> techniques,
      Function<List<Stroke>, Line> lineOf) {
    Line line = lineOf.apply(run);
    IntToDoubleFunction slowest = slowest(techniques);
    double[] best =
        IntStream.range(0, run.size())
            .mapToDouble(j -> bestPeak(techniques, line, j).orElse(slowest.applyAsDouble(j)))
            .toArray();
    return runs(run, attack, j -> best[j]).stream()
        .map(fast -> new Passage(part, lineOf.apply(fast)))
        .toList();
  }

  private OptionalDouble bestPeak(List<Technique> techniques, Line line, int j) {
    return techniques.stream()
        .filter(technique -> Demand.applies(technique, line, j))
        .mapToDouble(this::peak)
        .max();
  }

  private double peak(Technique technique) {
    return technique.limit().at(assurance).peakPerSecond();
  }

  private Line line(Part part, Strands strands, List<Stroke> strokes) {
    return score.line(part, strands, strokes, new ToneChoice.All());
  }

  /**
   * Runs of strokes that are attacked alike.
   *
   * @param peakPerSecond by the number of the stroke that ends a gap
   */
  private List<List<Stroke>> runs(
      List<Stroke> strokes, Attack attack, IntToDoubleFunction peakPerSecond) {
    List<List<Stroke>> runs = new ArrayList<>();
    OptionalInt start = OptionalInt.empty();
    for (int j = 0; j <= strokes.size(); j++) {
      boolean follows =
          j > 0
              && j < strokes.size()
              && counts(strokes.get(j - 1), attack)
              && counts(strokes.get(j), attack)
              && isFast(strokes.get(j - 1), strokes.get(j), peakPerSecond.applyAsDouble(j));
      if (!follows && start.isPresent()) {
        if (j - start.getAsInt() >= LEAST_STROKES) {
          runs.add(strokes.subList(start.getAsInt(), j));
        }
        start = OptionalInt.empty();
      }
      if (start.isEmpty() && j < strokes.size() && counts(strokes.get(j), attack)) {
        start = OptionalInt.of(j);
      }
    }
    return runs;
  }

  private static boolean counts(Stroke stroke, Attack attack) {
    return stroke.measured() && stroke.manner().attack() == attack;
  }

  private boolean isFast(Stroke before, Stroke stroke, double peakPerSecond) {
    double gapSeconds =
        score.tempo().secondsOf(new Span(before.onset(), stroke.onset())).toDouble();
    return gapSeconds < 1 / (SHARE * peakPerSecond)
        && movementAt(before).equals(movementAt(stroke));
  }

  private Optional<Movement> movementAt(Stroke stroke) {
    return score.bars().movementOf(score.bars().at(stroke.onset()));
  }
}

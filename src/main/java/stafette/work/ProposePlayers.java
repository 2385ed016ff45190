package stafette.work;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import stafette.ask.Allowance;
import stafette.ask.PlayerWish;
import stafette.ask.SplitRequest;
import stafette.check.alone.LineTrial;
import stafette.keep.LimitsInForce;
import stafette.keep.OpenScore;
import stafette.limits.Assurance;
import stafette.limits.Instrument;
import stafette.limits.Technique;
import stafette.plan.GivenStretch;
import stafette.score.Line;
import stafette.score.Part;
import stafette.words.Refusal;

/**
 * Who might play a line: players of the score first, those who have least else to play meanwhile,
 * and of these those to whom it comes easiest; where the score has nobody, two players each of the
 * first two usual instruments that can. Winds come first among these: strings that can play a line
 * seldom need a relay for it.
 */
public final class ProposePlayers {
  private static final int MOST = 4;
  private static final int NEW_OF_EACH = 2;
  private static final double NOBODY = Double.POSITIVE_INFINITY;
  private static final List<String> USUAL =
      List.of("flute", "clarinet in B-flat", "oboe", "bassoon", "trumpet in B-flat", "violin");

  private final Line line;
  private final Assurance assurance;
  private final List<Allowance> allowances;
  private final LimitsInForce limits;

  private ProposePlayers(
      Line line, Assurance assurance, List<Allowance> allowances, LimitsInForce limits) {
    this.line = line;
    this.assurance = assurance;
    this.allowances = allowances;
    this.limits = limits;
  }

  /**
   * At most four, the best first. Where nobody can play all of it, those who together reach most of
   * it, so that a search can say what would help.
   */
  static List<PlayerWish> forLine(
      OpenScore score,
      Line line,
      Assurance assurance,
      List<Allowance> allowances,
      LimitsInForce limits) {
    return new ProposePlayers(line, assurance, allowances, limits).from(score);
  }

  private List<PlayerWish> from(OpenScore score) {
    List<Candidate> parts = new ArrayList<>();
    for (Part part : score.score().parts()) {
      limits
          .catalogue()
          .of(part)
          .filter(known -> parts.stream().noneMatch(other -> other.isCalled(part.name())))
          .map(
              instrument ->
                  candidate(part.name(), instrument, GivenStretch.of(part, List.of(line))))
          .ifPresent(parts::add);
    }
    List<Candidate> usual = usual();
    List<Candidate> able = able(parts, line.count());
    if (able.size() > 1) {
      return players(able.subList(0, Math.min(MOST, able.size())));
    }
    List<Candidate> newcomers = usual.stream().filter(one -> one.isAble(line.count())).toList();
    if (!newcomers.isEmpty()) {
      return newcomers(newcomers);
    }
    return parts.size() > 1 ? players(together(parts)) : newcomers(together(usual));
  }

  /**
   * A request with players proposed for it.
   *
   * @throws Refusal if the score has no such line
   */
  public static SplitRequest into(SplitRequest request, OpenScore score, LimitsInForce limits)
      throws Refusal {
    Line line = request.line().in(score).line();
    List<PlayerWish> players =
        forLine(score, line, request.assurance(), request.allowances(), limits);
    return request.with(players, request.allowances());
  }

  /**
   * Somebody who might play.
   *
   * @param reached the strokes that are within the range
   * @param free those of them at which the score gives nothing else to play
   * @param strain the share of the peak rate that the best technique needs; infinite without one
   */
  private record Candidate(String name, BitSet reached, BitSet free, double strain) {
    /** Names that differ in nothing but case are one player's. */
    boolean isCalled(String other) {
      return name.trim().equalsIgnoreCase(other.trim());
    }

    boolean isAble(int strokes) {
      return reached.cardinality() == strokes && !free.isEmpty() && strain <= 1;
    }

    int adds(BitSet before) {
      BitSet more = (BitSet) free.clone();
      more.andNot(before);
      return more.cardinality();
    }
  }

  private Candidate candidate(String name, Instrument instrument, List<GivenStretch> busy) {
    BitSet reached = new BitSet();
    BitSet free = new BitSet();
    for (int stroke = 0; stroke < line.count(); stroke++) {
      boolean reaches = line.stroke(stroke).tones().stream().allMatch(instrument::reaches);
      reached.set(stroke, reaches);
      free.set(stroke, reaches && !isTaken(busy, line.onsetMicros(stroke)));
    }
    List<Technique> usable = Allowance.usable(allowances, name, instrument, List.of(line));
    return new Candidate(
        name,
        reached,
        free,
        LineTrial.leastUse(line, instrument, assurance, usable).orElse(NOBODY));
  }

  private static boolean isTaken(List<GivenStretch> busy, long micros) {
    return busy.stream()
        .anyMatch(given -> given.fromMicros() <= micros && micros < given.toMicros());
  }

  private static List<Candidate> able(List<Candidate> all, int strokes) {
    return all.stream()
        .filter(one -> one.isAble(strokes))
        .sorted(
            Comparator.comparingInt((Candidate one) -> -one.free().cardinality())
                .thenComparing(Candidate::strain))
        .toList();
  }

  /** One after the other who adds most to what the others reach; of equals, the least strained. */
  private static List<Candidate> together(List<Candidate> all) {
    List<Candidate> left = new ArrayList<>(all);
    List<Candidate> chosen = new ArrayList<>();
    BitSet reached = new BitSet();
    while (!left.isEmpty() && chosen.size() < MOST) {
      Candidate next =
          left.stream()
              .min(
                  Comparator.comparingInt((Candidate one) -> -one.adds(reached))
                      .thenComparing(one -> -one.free().cardinality())
                      .thenComparing(Candidate::strain))
              .orElseThrow();
      left.remove(next);
      chosen.add(next);
      reached.or(next.free());
    }
    return chosen;
  }

  private static List<PlayerWish> players(List<Candidate> chosen) {
    return chosen.stream().map(one -> new PlayerWish(one.name(), Optional.empty())).toList();
  }

  private List<Candidate> usual() {
    return USUAL.stream()
        .flatMap(name -> limits.catalogue().find(name).stream())
        .map(instrument -> candidate(instrument.name(), instrument, List.of()))
        .toList();
  }

  private static List<PlayerWish> newcomers(List<Candidate> instruments) {
    return instruments.stream()
        .limit(MOST / NEW_OF_EACH)
        .flatMap(
            found ->
                Stream.iterate(1, n -> n + 1)
                    .limit(NEW_OF_EACH)
                    .map(n -> new PlayerWish(chair(found.name(), n), Optional.of(found.name()))))
        .toList();
  }

  private static String chair(String instrument, int number) {
    String bare = instrument.replaceFirst(" in .*", "");
    return Character.toUpperCase(bare.charAt(0)) + bare.substring(1) + " " + number;
  }
}

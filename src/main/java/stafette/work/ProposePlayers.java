package stafette.work;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import stafette.limits.Instrument;
import stafette.score.Line;
import stafette.score.Part;

/**
 * Who might play a line: players of the score first, those to whom it comes easiest; where the
 * score has nobody, two players each of the two usual instruments to which it does.
 */
public final class ProposePlayers {
  private static final int MOST = 4;
  private static final int NEW_OF_EACH = 2;
  private static final List<String> USUAL =
      List.of("flute", "clarinet in B-flat", "oboe", "bassoon", "trumpet in B-flat", "violin");

  private ProposePlayers() {}

  /** At most four, the best first; none if no instrument reaches the line. */
  public static List<PlayerWish> forLine(
      OpenScore score, Line line, SplitLine.Request request, LimitsInForce limits) {
    List<Candidate> parts = new ArrayList<>();
    for (Part part : score.score().parts()) {
      limits
          .catalogue()
          .of(part)
          .flatMap(instrument -> candidate(part.name(), instrument, line, request))
          .ifPresent(parts::add);
    }
    parts.sort(Comparator.comparingDouble(Candidate::strain));
    List<String> names = parts.stream().map(Candidate::name).distinct().limit(MOST).toList();
    return names.size() > 1
        ? names.stream().map(name -> new PlayerWish(name, Optional.empty())).toList()
        : newcomers(line, request, limits);
  }

  /**
   * A request with players proposed for it; where nobody can play the line, two of the first usual
   * instrument, so that it can be said why.
   *
   * @throws Refusal if the score has no such line
   */
  public static SplitLine.Request into(
      SplitLine.Request request, OpenScore score, LimitsInForce limits) throws Refusal {
    Line line = request.line().in(score).line();
    List<PlayerWish> able = forLine(score, line, request, limits);
    return request.with(
        able.isEmpty() ? chairs(USUAL.get(0)).toList() : able, request.allowances());
  }

  private record Candidate(String name, double strain) {}

  private static Optional<Candidate> candidate(
      String name, Instrument instrument, Line line, SplitLine.Request request) {
    boolean reaches =
        line.strokes().stream()
            .allMatch(stroke -> stroke.tones().stream().allMatch(instrument::reaches));
    CheckScore.Answer answer =
        CheckScore.answer(line, instrument, name, request.assurance(), request.allowances());
    return reaches && !answer.rows().isEmpty() && answer.peakUse() <= 1
        ? Optional.of(new Candidate(name, answer.peakUse()))
        : Optional.empty();
  }

  private static List<PlayerWish> newcomers(
      Line line, SplitLine.Request request, LimitsInForce limits) {
    return USUAL.stream()
        .flatMap(name -> limits.catalogue().find(name).stream())
        .flatMap(i -> candidate(i.name(), i, line, request).stream())
        .sorted(Comparator.comparingDouble(Candidate::strain))
        .limit(MOST / NEW_OF_EACH)
        .flatMap(found -> chairs(found.name()))
        .toList();
  }

  private static Stream<PlayerWish> chairs(String instrument) {
    return IntStream.rangeClosed(1, NEW_OF_EACH)
        .mapToObj(n -> new PlayerWish(chair(instrument, n), Optional.of(instrument)));
  }

  private static String chair(String instrument, int number) {
    String bare = instrument.replaceFirst(" in .*", "");
    return Character.toUpperCase(bare.charAt(0)) + bare.substring(1) + " " + number;
  }
}

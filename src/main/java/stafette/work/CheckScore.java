package stafette.work;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import stafette.ask.Allowance;
import stafette.ask.LineRequest;
import stafette.ask.TempoWish;
import stafette.check.alone.FastPassages;
import stafette.check.alone.LineTrial;
import stafette.check.alone.LineVerdict;
import stafette.check.alone.Passage;
import stafette.check.alone.VerdictWords;
import stafette.keep.LimitsInForce;
import stafette.keep.OpenScore;
import stafette.limits.Assurance;
import stafette.limits.Instrument;
import stafette.limits.Technique;
import stafette.score.Line;
import stafette.score.LineSource;
import stafette.score.Part;
import stafette.score.Score;
import stafette.score.Tremolo;
import stafette.score.TremoloRun;
import stafette.words.Fault;
import stafette.words.Refusal;
import stafette.words.Sentence;
import stafette.words.Settable;

/** Checks every fast passage of a score, or one line, against the limits of instruments. */
public final class CheckScore {
  private static final Comparator<LineVerdict> EASIER_FIRST =
      Comparator.comparing(LineVerdict::ease)
          .thenComparing(Comparator.comparingInt(VerdictWords::toldShare).reversed());

  private CheckScore() {}

  /**
   * A line with the answers of instruments.
   *
   * @param line the line
   * @param answers one for each instrument asked; empty if the part's instrument is unknown
   */
  public record PassageVerdicts(Line line, List<LineVerdict> answers) {
    /** Whether an instrument that was asked can't play it. */
    public boolean hasFindings() {
      return answers.stream().anyMatch(answer -> !answer.ease().plays());
    }

    /** Whether it is for the few, or an instrument that was asked can't play it. */
    public boolean needsHelp() {
      return answers.stream().anyMatch(answer -> answer.ease().needsHelp());
    }

    private LineVerdict hardest() {
      return Collections.max(answers, EASIER_FIRST);
    }
  }

  /**
   * What a check found.
   *
   * @param score the score
   * @param reports the lines, worst first; of equals by part, then as they follow each other; last
   *     those that nobody was asked about
   * @param tremolos what is not judged for being no measured tremolo, or perhaps should not be
   * @param suspicions of its tempi
   * @param asked how it was checked
   */
  public record CheckedScore(
      OpenScore score,
      List<PassageVerdicts> reports,
      List<TremoloRun> tremolos,
      List<Sentence> suspicions,
      Asked asked) {
    public CheckedScore {
      reports = List.copyOf(reports);
      tremolos = List.copyOf(tremolos);
      suspicions = List.copyOf(suspicions);
    }

    /** Parts with fast passages whose instrument the limits don't know, singers among them. */
    public List<Part> notJudged() {
      Set<String> ids =
          reports.stream()
              .filter(report -> report.answers().isEmpty())
              .map(report -> report.line().source().part())
              .collect(Collectors.toSet());
      return score.score().parts().stream().filter(part -> ids.contains(part.id())).toList();
    }

    /** What to ask for to have a line split; empty if it can't be named. */
    public Optional<PassageToSplit> toSplit(PassageVerdicts report) {
      return PassageToSplit.of(score, report.line(), asked);
    }

    public boolean hasFindings() {
      return reports.stream().anyMatch(PassageVerdicts::hasFindings);
    }
  }

  /**
   * How a score is checked.
   *
   * @param tempo at the start of each line
   * @param assurance the share of players who should manage
   * @param allowances techniques that not everybody has
   */
  record Asked(Optional<TempoWish> tempo, Assurance assurance, List<Allowance> allowances) {}

  /**
   * The fast passages of a whole score against the instruments of their parts, worst first.
   *
   * @param tempo a tempo for the start of each passage
   * @throws Refusal if the file is no score
   */
  public static CheckedScore passages(
      Path file,
      Tremolo tremolo,
      Optional<TempoWish> tempo,
      Assurance assurance,
      List<Allowance> allowances,
      LimitsInForce limits)
      throws Refusal {
    return passages(
        OpenScore.open(file, tremolo, false, limits), tempo, assurance, allowances, limits);
  }

  /** Checks a score that is open. */
  public static CheckedScore passages(
      OpenScore open,
      Optional<TempoWish> tempo,
      Assurance assurance,
      List<Allowance> allowances,
      LimitsInForce limits) {
    Score score = open.score();
    List<PassageVerdicts> reports = new ArrayList<>();
    for (Passage passage :
        FastPassages.in(
            score, limits.catalogue()::of, assurance, limits.slowestWindPerSecond(assurance))) {
      Line line = tempo.map(wish -> wish.applyTo(passage.line())).orElse(passage.line());
      Optional<Instrument> instrument = limits.catalogue().of(passage.part());
      reports.add(
          Fault.at(
              () -> Sentence.of("{0}, bar {1}", passage.part().name(), firstBar(line)),
              () -> report(passage, line, instrument, assurance, allowances)));
    }
    return new CheckedScore(
        open,
        worstFirst(reports),
        open.document().tremolos(),
        tempo.isPresent() ? List.of() : TempoSuspicion.in(reports),
        new Asked(tempo, assurance, List.copyOf(allowances)));
  }

  private static List<PassageVerdicts> worstFirst(List<PassageVerdicts> reports) {
    return Stream.concat(
            reports.stream()
                .filter(report -> !report.answers().isEmpty())
                .sorted(Comparator.comparing(PassageVerdicts::hardest, EASIER_FIRST.reversed())),
            reports.stream().filter(report -> report.answers().isEmpty()))
        .toList();
  }

  private static String firstBar(Line line) {
    return line.placeOf(0).at().bar();
  }

  private static PassageVerdicts report(
      Passage passage,
      Line line,
      Optional<Instrument> instrument,
      Assurance assurance,
      List<Allowance> allowances) {
    return new PassageVerdicts(
        line,
        instrument.stream()
            .map(found -> answer(line, found, passage.part().name(), assurance, allowances))
            .toList());
  }

  /**
   * One line against instruments of the user's choice.
   *
   * @param instruments their names; the line's own part's if empty
   * @throws Refusal if the file is no score, or a line or an instrument is not there
   */
  public static CheckedScore line(
      LineRequest request,
      List<String> instruments,
      Assurance assurance,
      List<Allowance> allowances,
      LimitsInForce limits)
      throws Refusal {
    LineRequest.FoundLine found = request.find(limits);
    List<LineVerdict> answers = new ArrayList<>();
    for (Instrument instrument : asked(found, instruments, limits)) {
      answers.add(answer(found.line(), instrument, instrument.name(), assurance, allowances));
    }
    return new CheckedScore(
        found.score(),
        List.of(new PassageVerdicts(found.line(), answers)),
        found.score().document().tremolos().stream()
            .filter(run -> isIn(run, found.line().source()))
            .toList(),
        List.of(),
        new Asked(request.tempo(), assurance, allowances));
  }

  private static boolean isIn(TremoloRun run, LineSource source) {
    return run.part().equals(source.part())
        && source.strands().has(run.staff(), run.voice())
        && run.firstBar() <= source.lastBar()
        && run.lastBar() >= source.firstBar();
  }

  private static List<Instrument> asked(
      LineRequest.FoundLine found, List<String> names, LimitsInForce limits) throws Refusal {
    List<Instrument> instruments = new ArrayList<>();
    for (String name : names) {
      instruments.add(limits.instrument(name));
    }
    if (names.isEmpty()) {
      String id = found.line().source().part();
      Part part = found.score().score().part(id).orElseThrow();
      instruments.add(
          limits
              .catalogue()
              .of(part)
              .orElseThrow(
                  () ->
                      Refusal.wrongUse(
                          Sentence.of(
                              "{0} is no instrument that the limits know; say against which to"
                                  + " check{1}, such as \"flute, harp\"",
                              part.name(), Settable.INSTRUMENTS))));
    }
    return instruments;
  }

  static LineVerdict answer(
      Line line,
      Instrument instrument,
      String player,
      Assurance assurance,
      List<Allowance> allowances) {
    List<Technique> usable = Allowance.usable(allowances, player, instrument, List.of(line));
    return LineTrial.of(
        line, instrument, assurance, usable.isEmpty() ? instrument.techniques() : usable);
  }
}

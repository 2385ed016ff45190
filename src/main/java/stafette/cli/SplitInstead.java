package stafette.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import stafette.ask.Allowance;
import stafette.ask.PlayerWish;
import stafette.keep.LimitsInForce;
import stafette.limits.Instrument;
import stafette.score.LineChoice;
import stafette.score.Part;
import stafette.score.Score;
import stafette.score.ToneChoice;
import stafette.work.PassageToSplit;

/** The command that splits a passage, ready to be pasted into a shell. */
final class SplitInstead {
  /** What parts a list of players, or a name from its instrument. */
  private static final Pattern APART = Pattern.compile("[,;=\"\\p{Cntrl}]");

  private final Score score;
  private final LimitsInForce limits;
  private final List<String> words = new ArrayList<>();

  private SplitInstead(Score score, LimitsInForce limits) {
    this.score = score;
    this.limits = limits;
  }

  /**
   * The command; empty if none of the players can be named in it.
   *
   * @param asked what was asked for besides, such as a tempo
   */
  static Optional<String> of(
      Path file, Score score, PassageToSplit passage, List<String> asked, LimitsInForce limits) {
    SplitInstead command = new SplitInstead(score, limits);
    String players =
        passage.players().stream()
            .flatMap(wish -> command.named(wish).stream())
            .distinct()
            .collect(Collectors.joining(", "));
    command.words.addAll(List.of("split", file.toString()));
    command.add(passage.line());
    command.words.addAll(asked);
    passage.allowances().forEach(command::add);
    command.add("--players", players);
    return players.isEmpty() ? Optional.empty() : Optional.of(ShellWords.join(command.words));
  }

  private void add(LineChoice line) {
    add("--part", line.part());
    add("--staff", line.staves());
    add("--voice", line.voices());
    line.bars().ifPresent(bars -> add("--bars", bars.text()));
    line.tone().map(ToneChoice::text).ifPresent(tone -> add("--tone", tone));
  }

  /** Several that share a line: "1+2". */
  private void add(String option, List<?> shared) {
    if (!shared.isEmpty()) {
      add(option, shared.stream().map(String::valueOf).collect(Collectors.joining("+")));
    }
  }

  private void add(Allowance allowance) {
    String player = allowance.player().map(name -> name + ": ").orElse("");
    add(allowance.instead() ? "--set" : "--allow", player + allowance.technique());
  }

  private void add(String option, String value) {
    words.addAll(List.of(option, value));
  }

  /** By the part's id where its name would be read as two, or as a name and an instrument. */
  private Optional<String> named(PlayerWish wish) {
    Optional<String> name =
        isOne(wish.name())
            ? Optional.of(wish.name())
            : score.part(wish.name()).map(Part::id).filter(SplitInstead::isOne);
    return name.map(found -> found + instrument(wish));
  }

  private static boolean isOne(String name) {
    return !name.isBlank() && name.equals(name.trim()) && !APART.matcher(name).find();
  }

  private String instrument(PlayerWish wish) {
    Optional<String> told = limits.told(score, wish.name()).map(Instrument::name);
    return wish.instrument().isEmpty() || wish.instrument().equals(told)
        ? ""
        : " = " + wish.instrument().get();
  }
}

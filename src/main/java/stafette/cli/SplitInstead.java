package stafette.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import stafette.ask.Allowance;
import stafette.ask.PlayerWish;
import stafette.ask.SplitRequest;
import stafette.keep.LimitsInForce;
import stafette.limits.Instrument;
import stafette.score.LineChoice;
import stafette.score.Part;
import stafette.score.Reading;
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
   * The command for whoever suits.
   *
   * @param asked what was asked for besides, such as a tempo
   */
  static String of(
      Path file, Score score, PassageToSplit passage, List<String> asked, LimitsInForce limits) {
    return new SplitInstead(score, limits)
        .command(file, passage.line(), asked, passage.allowances());
  }

  /**
   * The command for some players; empty if one of them can't be named in it.
   *
   * @param asked what was asked for besides, such as a tempo
   */
  static Optional<String> of(
      Path file, Score score, SplitRequest request, List<String> asked, LimitsInForce limits) {
    SplitInstead command = new SplitInstead(score, limits);
    List<String> players =
        request.players().stream().flatMap(wish -> command.named(wish).stream()).toList();
    String bare = command.command(file, request.line().choice(), asked, request.allowances());
    return players.size() < request.players().size()
        ? Optional.empty()
        : Optional.of(bare + " --players " + ShellWords.join(List.of(String.join(", ", players))));
  }

  private String command(
      Path file, LineChoice line, List<String> asked, List<Allowance> allowances) {
    words.addAll(List.of("split", file.toString()));
    add(line);
    words.addAll(asked);
    allowances.forEach(this::add);
    return ShellWords.join(words);
  }

  private void add(LineChoice line) {
    add("--part", line.part());
    add("--staff", line.staves());
    add("--voice", line.voices());
    line.bars().ifPresent(bars -> add("--bars", bars.text()));
    line.tone().map(ToneChoice::text).ifPresent(tone -> add("--tone", tone));
    if (line.reading() != Reading.ALL) {
      add("--reading", line.reading().text());
    }
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

package stafette.cli;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import stafette.ask.PlayerWish;
import stafette.ask.SplitRequest;
import stafette.check.alone.Ease;
import stafette.keep.LimitsInForce;
import stafette.words.Refusal;
import stafette.words.Sentence;
import stafette.work.who.Candidate;
import stafette.work.who.SolvedCrew;
import stafette.work.who.WhoCouldPlay;

/** Who could play a line, for the terminal. */
final class WhoText {
  private WhoText() {}

  /**
   * A request with the players that it names, or the best crew for its line, which is told.
   *
   * @throws Refusal if the line is not there, or nobody is found who could be asked
   */
  static SplitRequest among(
      SplitRequest request, PlanOptions options, LimitsInForce limits, Output output)
      throws Refusal {
    if (!options.isForAnybody()) {
      return request;
    }
    WhoCouldPlay who = WhoCouldPlay.of(request, limits);
    SplitRequest with = who.into(request);
    if (with.players().isEmpty()) {
      throw Refusal.wrongUse(
          "who shall play? Nobody in the score and no usual neighbour has these notes; write for"
              + " example --players \"Flute 1, Flute 2, Clarinet 1\"");
    }
    String names = names(with.players());
    output
        .out()
        .println(
            who.best().isPresent()
                ? "Players    " + names + ": " + chosen(who) + "; --players names others\n"
                : "Players    " + names + ": nobody suits well; --players names others\n");
    return with;
  }

  private static String chosen(WhoCouldPlay who) {
    int crews = who.crews().size();
    return crews == 1
        ? "the only crew that was found"
        : "the best of " + crews + " crews (who shows them)";
  }

  private static String names(List<PlayerWish> players) {
    return players.stream().map(PlayerWish::name).collect(Collectors.joining(", "));
  }

  /**
   * All of it.
   *
   * @param command what to type for a crew
   */
  static String of(WhoCouldPlay who, Function<SolvedCrew, Optional<String>> command) {
    StringBuilder text = new StringBuilder();
    text.append(who.found().line().where("-")).append("\n\n");
    TextTable table =
        new TextTable()
            .row("player", "plays", "manages, of 100", "register", "louder", "busy", "besides");
    who.candidates().stream()
        .filter(one -> !one.within().isEmpty())
        .forEach(one -> row(table, one));
    text.append(table.text(2));
    List<String> lacking =
        who.candidates().stream()
            .filter(one -> one.chair().isPresent() && one.within().isEmpty())
            .map(one -> one.player().name())
            .toList();
    if (!lacking.isEmpty()) {
      text.append("  lack all of these notes: ").append(String.join(", ", lacking)).append('\n');
    }
    text.append('\n');
    if (who.crews().isEmpty()) {
      return text.append(
              "No crew can play it; split says what is in the way and what would help.\n")
          .toString();
    }
    text.append(
        who.holds() ? "Crews, the best first:\n" : "Nobody's plan holds as asked; nearest:\n");
    int number = 1;
    for (SolvedCrew crew : who.crews()) {
      text.append("  ").append(number++).append("  ").append(crew.inWords()).append('\n');
      command.apply(crew).ifPresent(typed -> text.append("     ").append(typed).append('\n'));
    }
    return text.toString();
  }

  private static void row(TextTable table, Candidate one) {
    table.row(
        one.player().name(),
        one.player().instrument().name(),
        manages(one),
        one.register().toString(),
        one.levelDecibel().map(WhoText::decibel).orElse(""),
        one.chair().isEmpty()
            ? "not in the score"
            : one.busy().map(Sentence::toString).orElse("free"),
        Stream.of(one.before(), one.after(), one.written())
            .flatMap(Optional::stream)
            .map(Sentence::toString)
            .collect(Collectors.joining(", ")));
  }

  private static String decibel(double louder) {
    long rounded = Math.round(louder);
    return (rounded > 0 ? "+" : "") + rounded + " dB";
  }

  /** Stretches with the same share as one. */
  private static String manages(Candidate one) {
    List<Candidate.StretchShare> stretches = one.stretches();
    StringBuilder text = new StringBuilder();
    int from = 0;
    for (int i = 1; i <= stretches.size(); i++) {
      if (i == stretches.size() || !share(stretches.get(i)).equals(share(stretches.get(from)))) {
        text.append(text.isEmpty() ? "" : ", ").append(share(stretches.get(from)));
        if (from > 0 || i < stretches.size()) {
          String first = stretches.get(from).bars().replaceAll("-.*", "");
          String last = stretches.get(i - 1).bars().replaceAll(".*-", "");
          text.append(" in ").append(first.equals(last) ? first : first + "-" + last);
        }
        from = i;
      }
    }
    return text.toString();
  }

  private static String share(Candidate.StretchShare stretch) {
    if (!stretch.inRange()) {
      return "lacks notes";
    }
    return switch (Ease.of(stretch.share())) {
      case COMFORTABLE -> "nearly all";
      case BEYOND, OUT_OF_RANGE -> "nobody";
      default -> Integer.toString(stretch.share());
    };
  }
}

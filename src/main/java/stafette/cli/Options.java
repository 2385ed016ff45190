package stafette.cli;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import stafette.ask.PlayerWish;
import stafette.plan.OverlapRule;
import stafette.words.Sayable;
import stafette.words.Sentence;
import stafette.words.Settable;
import stafette.work.Change;

/** The options in what the program says: how something can be set, and what would help typed. */
final class Options {
  private Options() {}

  /** Words with the option beside whatever can be set. */
  static String say(Sayable what) {
    return what.inWords().saying(settable -> Sentence.name(" (" + how(settable) + ")"));
  }

  private static String how(Settable settable) {
    return switch (settable) {
      case TONES -> "--tone";
      case READING -> "--reading";
      case PLAYERS -> "--players";
      case TECHNIQUES -> "--allow";
      case PLAYER_TECHNIQUES -> "--set";
      case OVERLAP -> "--overlap";
      case REST -> "--ready";
      case FAVOUR -> "--favour";
      case HOCKET -> "--hocket";
      case INSTRUMENTS -> "--as";
      case LIMITS -> "the command limits lists them, --limits DIR adds your own";
      case COLOUR -> "--colour";
      case SOUNDBANK -> "--bank";
      case COMPARISON -> "--compare";
      case SOLO -> "--solo";
      case MUTE -> "--mute";
      case PAPER -> "--paper";
      case REPLACING -> "or replace it with --force";
    };
  }

  /** What to type for a change, or what to do where no option does it. */
  static String typed(Change change) {
    return change.match(new TypedOption());
  }

  private static final class TypedOption implements Change.ChangeKinds<String> {
    @Override
    public String tempo(Change.Tempo change) {
      return "--tempo " + change.mark().perMinute();
    }

    @Override
    public String technique(Change.AllowedTechnique change) {
      return "--allow \"" + change.name() + "\"";
    }

    @Override
    public String overlap(Change.Overlap change) {
      OverlapRule rule = change.rule();
      return "--overlap "
          + rule.min()
          + ".."
          + (rule.max().isPresent() ? rule.max().getAsInt() : PlanOptions.BEAT);
    }

    @Override
    public String rest(Change.Readiness change) {
      return "--ready " + change.seconds();
    }

    @Override
    public String turns(Change.Turns change) {
      return "--hocket " + change.by().name().toLowerCase(Locale.ROOT);
    }

    @Override
    public String players(Change.Players change) {
      return "add " + names(change.more());
    }

    @Override
    public String anyTurns(Change.AnyTurns change) {
      return "--favour balance";
    }

    @Override
    public String divided(Change.Divided change) {
      return "write " + names(List.of(change.halves())) + " for " + names(List.of(change.whole()));
    }

    @Override
    public String shaken(Change.Shaken change) {
      return "--tremolo unmeasured";
    }

    private static String names(List<PlayerWish> players) {
      return players.stream()
          .map(wish -> wish.name() + wish.instrument().map(name -> " = " + name).orElse(""))
          .map(name -> "\"" + name + "\"")
          .collect(Collectors.joining(", "));
    }

    @Override
    public String slurred(Change.Slurred change) {
      return "--slur " + change.how().word();
    }

    @Override
    public String thinned(Change.Thinned change) {
      return "thin the line: " + change.pattern().text();
    }
  }
}

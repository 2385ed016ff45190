package stafette.work;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import stafette.ask.Briefing;
import stafette.ask.PlayerWish;
import stafette.ask.Roster;
import stafette.keep.LimitsInForce;
import stafette.limits.Instrument;
import stafette.limits.Technique;
import stafette.plan.Brief;
import stafette.plan.Player;
import stafette.words.Refusal;

/** Remedies by more players: of the instruments that are there, or of others that suit the line. */
final class PlayerRemedies {
  private static final int MORE_AT_MOST = 3;
  private static final int OTHERS_AT_MOST = 4;

  /** A chair's number at the end of a name. */
  private static final Pattern NUMBER = Pattern.compile("\\s*[0-9]+$");

  private final Briefing briefing;
  private final Brief brief;
  private final LimitsInForce limits;
  private final RemedyTrials trials;

  PlayerRemedies(Briefing briefing, LimitsInForce limits, RemedyTrials trials) {
    this.briefing = briefing;
    this.brief = briefing.brief();
    this.limits = limits;
    this.trials = trials;
  }

  /** As few more as are enough, of each instrument; of another one only one more. */
  List<Remedy> all() throws Refusal {
    List<Remedy> found = new ArrayList<>();
    List<Instrument> present = brief.players().stream().map(Player::instrument).distinct().toList();
    for (Instrument instrument : present) {
      Optional<Remedy> remedy = one(instrument);
      for (int more = 2; more <= MORE_AT_MOST && remedy.isEmpty(); more++) {
        remedy = added(instrument, newcomers(instrument).limit(more).toList());
      }
      remedy.ifPresent(found::add);
    }
    for (Instrument instrument : others(present)) {
      one(instrument).ifPresent(found::add);
    }
    return found.stream().sorted(Comparator.comparingInt(PlayerRemedies::players)).toList();
  }

  private static int players(Remedy remedy) {
    return remedy.plan().plan().brief().players().size();
  }

  /** One who is in the score already, else one who has nothing else to play. */
  private Optional<Remedy> one(Instrument instrument) throws Refusal {
    PlayerWish next = newcomers(instrument).findFirst().orElseThrow();
    Optional<Remedy> remedy = added(instrument, List.of(next));
    if (remedy.isPresent() || !isInScore(next)) {
      return remedy;
    }
    PlayerWish free =
        newcomers(instrument).filter(wish -> !isInScore(wish)).findFirst().orElseThrow();
    return added(instrument, List.of(free));
  }

  private Optional<Remedy> added(Instrument instrument, List<PlayerWish> wishes) throws Refusal {
    return trials.remedy(new Change.Players(instrument, wishes), briefing.adding(wishes));
  }

  /** By the next numbers that nobody has. */
  private Stream<PlayerWish> newcomers(Instrument instrument) {
    int present = (int) brief.players().stream().filter(p -> plays(p, instrument)).count();
    return IntStream.iterate(present + 1, number -> number + 1)
        .mapToObj(number -> wish(instrument, number))
        .filter(
            wish ->
                brief.players().stream().noneMatch(p -> p.name().equalsIgnoreCase(wish.name())));
  }

  private boolean isInScore(PlayerWish wish) {
    return briefing.score().score().part(wish.name()).isPresent();
  }

  private static boolean plays(Player player, Instrument instrument) {
    return player.instrument().name().equals(instrument.name());
  }

  /** By the name that the others have, or that of the instrument, with it where it is needed. */
  private PlayerWish wish(Instrument instrument, int number) {
    String base =
        brief.players().stream()
            .filter(player -> plays(player, instrument))
            .map(player -> NUMBER.matcher(player.name()).replaceAll(""))
            .filter(name -> limits.catalogue().find(name).map(instrument::equals).orElse(false))
            .findFirst()
            .orElseGet(() -> capitalised(instrument.name()));
    String name = base + " " + number;
    boolean plain =
        briefing
            .score()
            .score()
            .part(name)
            .flatMap(limits.catalogue()::of)
            .or(() -> limits.catalogue().find(name))
            .equals(Optional.of(instrument));
    return new PlayerWish(name, plain ? Optional.empty() : Optional.of(instrument.name()));
  }

  private static String capitalised(String name) {
    return name.substring(0, 1).toUpperCase(Locale.ROOT) + name.substring(1);
  }

  /**
   * Those that can play most of the line, of the families that are there first, then the fastest.
   */
  private List<Instrument> others(List<Instrument> present) {
    List<String> families = present.stream().map(Instrument::family).toList();
    return limits.catalogue().instruments().stream()
        .filter(instrument -> present.stream().noneMatch(i -> i.name().equals(instrument.name())))
        .filter(instrument -> 2 * reached(instrument) > brief.line().count())
        .filter(instrument -> sustained(instrument) > 0)
        .sorted(
            Comparator.comparing((Instrument i) -> !families.contains(i.family()))
                .thenComparing(Comparator.comparingLong(this::reached).reversed())
                .thenComparing(Comparator.comparingDouble(this::sustained).reversed()))
        .limit(OTHERS_AT_MOST)
        .toList();
  }

  private long reached(Instrument instrument) {
    return brief.line().strokes().stream()
        .filter(stroke -> stroke.tones().stream().allMatch(instrument::reaches))
        .count();
  }

  /** The highest rate to keep up, of the techniques that everybody has. */
  private double sustained(Instrument instrument) {
    return instrument.techniques().stream()
        .filter(technique -> technique.expected() && Roster.suits(technique, brief.lines()))
        .map(Technique::limit)
        .mapToDouble(limit -> limit.at(brief.rules().assurance()).sustainedPerSecond())
        .max()
        .orElse(0);
  }
}

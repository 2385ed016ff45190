package stafette.work;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import stafette.ask.Briefing;
import stafette.ask.PlayerWish;
import stafette.keep.LimitsInForce;
import stafette.limits.Act;
import stafette.limits.Instrument;
import stafette.limits.Repertoire;
import stafette.limits.TypedNames;
import stafette.plan.Brief;
import stafette.plan.Player;
import stafette.split.why.Obstacle;
import stafette.words.Refusal;

/** Remedies by more players: of the instruments that are there, or of others that suit the line. */
final class PlayerRemedies {
  private static final int MORE_AT_MOST = 3;
  private static final int OF_ANOTHER_AT_MOST = 2;
  private static final int OTHERS_AT_MOST = 3;

  /** What stands after the name of a section whose outside and inside players play in turn. */
  private static final String DIVIDED = " div. a 2";

  /** Names of sections, in several languages: "Violins I", "Celli", "Bratschen". */
  private static final Pattern PLURAL =
      Pattern.compile("(?i).*\\p{L}(?:s|i|en)(?:\\s+(?:[IVX]+|[0-9]+)\\.?)?");

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

  /** As few more as are enough, of each instrument that is there. */
  List<Remedy> more() throws Refusal {
    List<Remedy> found = new ArrayList<>();
    for (Instrument instrument : present()) {
      enough(instrument, MORE_AT_MOST).ifPresent(found::add);
    }
    return fewestFirst(found);
  }

  /** One section of bows divided, so that outside and inside players play in turn. */
  List<Remedy> divided() throws Refusal {
    List<Remedy> found = new ArrayList<>();
    for (PlayerWish whole : briefing.wishes()) {
      if (isSection(whole)) {
        PlayerWish halves = new PlayerWish(whole.name() + DIVIDED, whole.instrument());
        Change.Divided change = new Change.Divided(whole, halves, halves.players());
        divided(change).flatMap(brief -> trials.remedy(change, brief)).ifPresent(found::add);
      }
    }
    return found;
  }

  /** Empty where the section can't be divided. */
  private Optional<Brief> divided(Change.Divided change) {
    try {
      return Optional.of(briefing.with(change.whole(), change.each()));
    } catch (Refusal notUnderstood) {
      return Optional.empty();
    }
  }

  /** Several play from one part of the score if it names them all: "Violins I". */
  private boolean isSection(PlayerWish wish) {
    return brief.players().stream()
            .filter(player -> player.name().equals(wish.name()) && player.part().isPresent())
            .anyMatch(PlayerRemedies::bows)
        && PLURAL.matcher(wish.name()).matches();
  }

  private static boolean bows(Player player) {
    return player.skills().stream().anyMatch(skill -> skill.technique().act() == Act.BOW);
  }

  /** One or two of other instruments that make each note in time while they are fresh. */
  List<Remedy> colours() throws Refusal {
    List<Remedy> found = new ArrayList<>();
    int tried = 0;
    for (Instrument instrument : others()) {
      if (tried < OTHERS_AT_MOST && isFastEnough(instrument)) {
        tried++;
        enough(instrument, OF_ANOTHER_AT_MOST).ifPresent(found::add);
      }
    }
    return fewestFirst(found);
  }

  private boolean isFastEnough(Instrument instrument) throws Refusal {
    Brief with = briefing.adding(List.of(newcomers(instrument).findFirst().orElseThrow()));
    return Obstacle.isFastEnough(with.players().get(with.players().size() - 1), brief.line());
  }

  private Optional<Remedy> enough(Instrument instrument, int most) throws Refusal {
    Optional<Remedy> remedy = one(instrument);
    for (int more = 2; more <= most && remedy.isEmpty(); more++) {
      remedy = added(instrument, newcomers(instrument).limit(more).toList());
    }
    return remedy;
  }

  private static List<Remedy> fewestFirst(List<Remedy> found) {
    return found.stream().sorted(Comparator.comparingInt(PlayerRemedies::players)).toList();
  }

  private static int players(Remedy remedy) {
    return remedy.plan().plan().brief().players().size();
  }

  private List<Instrument> present() {
    return brief.players().stream().map(Player::instrument).distinct().toList();
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
        .filter(wish -> brief.players().stream().noneMatch(player -> isSame(player, wish)));
  }

  /** Whether a player goes by that name already, in the score's words or others. */
  private boolean isSame(Player player, PlayerWish wish) {
    return player.name().equalsIgnoreCase(wish.name())
        || briefing
            .chairs()
            .named(wish.name())
            .filter(chair -> briefing.chairs().named(player.name()).equals(Optional.of(chair)))
            .isPresent();
  }

  private boolean isInScore(PlayerWish wish) {
    return briefing.chairs().named(wish.name()).isPresent();
  }

  private static boolean plays(Player player, Instrument instrument) {
    return player.instrument().name().equals(instrument.name());
  }

  /**
   * By the name that the others have, unless that is a section's, or that of the instrument, with
   * it where it is needed.
   */
  private PlayerWish wish(Instrument instrument, int number) {
    String base =
        brief.players().stream()
            .filter(player -> plays(player, instrument))
            .map(player -> NUMBER.matcher(player.name()).replaceAll(""))
            .filter(name -> limits.catalogue().find(name).map(instrument::equals).orElse(false))
            .filter(name -> !PLURAL.matcher(name).matches())
            .findFirst()
            .orElseGet(() -> TypedNames.capitalised(instrument.name()));
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

  /**
   * Those that reach most of the line: first those that the score has, then those that other scores
   * have, then those of the families that are there, then those that reach more, then those that
   * more scores have.
   */
  private List<Instrument> others() {
    List<Instrument> present = present();
    List<String> families = present.stream().map(Instrument::family).toList();
    Set<String> inScore = inScore();
    return limits.catalogue().instruments().stream()
        .filter(instrument -> present.stream().noneMatch(i -> i.name().equals(instrument.name())))
        .filter(instrument -> 2 * reached(instrument) > brief.line().count())
        .filter(instrument -> !hasTheLine(instrument))
        .sorted(
            Comparator.comparing((Instrument i) -> !inScore.contains(i.name()))
                .thenComparing(i -> scores(i) == 0)
                .thenComparing(i -> !families.contains(i.family()))
                .thenComparing(Comparator.comparingLong(this::reached).reversed())
                .thenComparing(Comparator.comparingInt(PlayerRemedies::scores).reversed()))
        .toList();
  }

  /** In how many open scores a part for it was found: the more, the likelier it is at hand. */
  private static int scores(Instrument instrument) {
    return instrument.repertoire().rows().stream().mapToInt(Repertoire.Row::scores).max().orElse(0);
  }

  private Set<String> inScore() {
    return briefing.score().score().parts().stream()
        .flatMap(part -> limits.catalogue().of(part).stream())
        .map(Instrument::name)
        .collect(Collectors.toSet());
  }

  /** Whether it is the keyboard that has the line: that is to be given away. */
  private boolean hasTheLine(Instrument instrument) {
    return briefing
        .score()
        .score()
        .part(brief.line().source().part())
        .flatMap(limits.catalogue()::of)
        .filter(own -> own.name().equals(instrument.name()))
        .filter(own -> own.techniques().stream().anyMatch(t -> t.act() == Act.KEY))
        .isPresent();
  }

  private long reached(Instrument instrument) {
    return brief.line().strokes().stream()
        .filter(stroke -> stroke.tones().stream().allMatch(instrument::reaches))
        .count();
  }
}

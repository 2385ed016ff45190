package stafette.ask;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import stafette.chairs.Chair;
import stafette.chairs.Chairs;
import stafette.chairs.GivenNote;
import stafette.chairs.Sections;
import stafette.keep.LimitsInForce;
import stafette.limits.Assurance;
import stafette.limits.Capability;
import stafette.limits.Demand;
import stafette.limits.Division;
import stafette.limits.Instrument;
import stafette.limits.Skill;
import stafette.limits.Technique;
import stafette.limits.TypedNames;
import stafette.plan.GivenStretch;
import stafette.plan.Player;
import stafette.score.Line;
import stafette.score.Part;
import stafette.score.Score;
import stafette.score.Stroke;
import stafette.words.Refusal;
import stafette.words.Sentence;
import stafette.words.Settable;

/**
 * Turns the names of players into players who know their instrument, their limits and what they
 * already have to play.
 */
public final class Roster {
  private final Score score;
  private final Sections sections;
  private final Chairs chairs;
  private final List<Line> lines;
  private final LimitsInForce limits;
  private final MeasuredPlayers measured;
  private final Assurance assurance;
  private final List<Allowance> allowances;

  public Roster(
      Score score,
      Chairs chairs,
      List<Line> lines,
      LimitsInForce limits,
      MeasuredPlayers measured,
      Assurance assurance,
      List<Allowance> allowances) {
    this.score = score;
    this.sections = new Sections(score, limits.catalogue());
    this.chairs = chairs;
    this.lines = lines;
    this.limits = limits;
    this.measured = measured;
    this.assurance = assurance;
    this.allowances = allowances;
  }

  public List<Player> of(List<PlayerWish> wishes) throws Refusal {
    if (wishes.isEmpty()) {
      throw Refusal.wrongUse(Sentence.of("who shall play? Name at least one player"));
    }
    List<Player> players = beside(wishes);
    refuseOneChairTwice(seated(wishes));
    refuseTwoDivisions(players);
    refuseUnknownAllowances(players);
    return players;
  }

  private void refuseOneChairTwice(List<PlayerWish> wishes) throws Refusal {
    Map<Chair, String> seated = new HashMap<>();
    for (PlayerWish wish : wishes) {
      Optional<Chair> chair = chairs.named(wish.name());
      if (chair.isPresent()) {
        String other = seated.put(chair.get(), wish.name());
        if (other != null) {
          throw Refusal.wrongUse(
              Sentence.of(
                  "{0} and {1} are the same player of the score, {2}; name it once",
                  other, wish.name(), chair.get().name()));
        }
      }
    }
  }

  private void refuseTwoDivisions(List<Player> players) throws Refusal {
    for (Player player : players) {
      Optional<Division> division = Division.named(player.name());
      Optional<Player> other =
          division.flatMap(
              one -> players.stream().filter(each -> isOtherwiseDivided(each, one)).findFirst());
      if (other.isPresent()) {
        throw Refusal.wrongUse(
            Sentence.of(
                "{0} and {1} share players; name the section whole, or divided in one way",
                other.get().name(), player.name()));
      }
    }
  }

  /** Whether somebody is the section of a division, or a division of it divided otherwise. */
  private static boolean isOtherwiseDivided(Player player, Division division) {
    return Division.named(player.name())
        .map(
            other ->
                TypedNames.same(other.section(), division.section())
                    && other.parts() != division.parts())
        .orElseGet(() -> TypedNames.same(player.name(), division.section()));
  }

  /** Players beside others for whom allowances may be meant. */
  public List<Player> beside(List<PlayerWish> wishes) throws Refusal {
    List<Player> players = new ArrayList<>();
    for (PlayerWish wish : seated(wishes)) {
      players.add(playerOf(wish));
    }
    return players;
  }

  private List<PlayerWish> seated(List<PlayerWish> wishes) {
    return wishes.stream().flatMap(wish -> wish.seated(chairs).stream()).toList();
  }

  private Player playerOf(PlayerWish wish) throws Refusal {
    wish.refuseUnwritable();
    Instrument instrument = measured.asSaid(wish.name(), instrumentOf(wish)).breathing(assurance);
    List<Skill> skills =
        Allowance.usable(allowances, wish.name(), instrument, lines).stream()
            .map(technique -> new Skill(technique, capability(wish.name(), technique)))
            .toList();
    Optional<Division> division = Division.named(wish.name());
    Optional<Chair> chair = chairOf(wish, division);
    boolean free = measured.freed().contains(wish.name());
    List<GivenStretch> busy =
        chair.filter(own -> !free).map(own -> busy(own, instrument)).orElse(List.of());
    boolean writesThere =
        score.part(wish.name()).isPresent()
            || chair.map(own -> readsAs(own, instrument)).orElse(false);
    return new Player(
        wish.name(),
        chair.map(own -> own.seated(instrument)).orElse(instrument),
        chair.filter(own -> writesThere).map(Chair::part),
        place(chair, division),
        skills,
        busy,
        wish.isNamed());
  }

  /** A division sits where its section does. */
  private Optional<Chair> chairOf(PlayerWish wish, Optional<Division> division) {
    return chairs
        .named(wish.name())
        .or(
            () ->
                division
                    .flatMap(one -> sections.part(one.section()))
                    .flatMap(part -> chairs.in(part).stream().findFirst()));
  }

  private static OptionalInt place(Optional<Chair> chair, Optional<Division> division) {
    if (chair.isEmpty()) {
      return OptionalInt.empty();
    }
    return division.isPresent()
        ? OptionalInt.of(division.get().number())
        : chair.get().isShared() ? OptionalInt.of(chair.get().place()) : OptionalInt.empty();
  }

  /** What the score gives a chair, and the time to change where that is on another instrument. */
  private List<GivenStretch> busy(Chair chair, Instrument instrument) {
    List<Stroke> own = strokes(chair, note -> isOn(note, instrument));
    List<Stroke> others = strokes(chair, note -> !isOn(note, instrument));
    List<GivenStretch> there = GivenStretch.of(own, lines);
    List<GivenStretch> elsewhere = GivenStretch.of(others, lines);
    return elsewhere.isEmpty() ? there : GivenStretch.withChanges(there, elsewhere);
  }

  private List<Stroke> strokes(Chair chair, Predicate<GivenNote> which) {
    return chairs.given(chair).stream().filter(which).map(GivenNote::stroke).toList();
  }

  private static boolean isOn(GivenNote note, Instrument instrument) {
    return note.instrument().map(with -> isLike(with, instrument)).orElse(true);
  }

  /** Names differ where a user's own figures are for a player alone. */
  private static boolean isLike(Instrument one, Instrument other) {
    return one.name().equals(other.name()) || !one.family().equals(other.family());
  }

  /** Whether a player can read from the chair's staff with an instrument. */
  private static boolean readsAs(Chair chair, Instrument instrument) {
    return chair.instruments().isEmpty()
        || chair.instruments().get(0).transposition().equals(instrument.transposition());
  }

  private Capability capability(String player, Technique technique) {
    return measured.capability(player, technique).orElseGet(() -> technique.limit().at(assurance));
  }

  /** Whether some stroke of the lines can be made with a technique. */
  public static boolean suits(Technique technique, List<Line> lines) {
    return lines.stream()
        .distinct()
        .anyMatch(
            line ->
                IntStream.range(0, line.count()).anyMatch(j -> Demand.applies(technique, line, j)));
  }

  private Instrument instrumentOf(PlayerWish wish) throws Refusal {
    Optional<Instrument> own = measured.instrumentOf(wish.name());
    if (own.isPresent()) {
      return own.get();
    }
    Instrument whole = wholeInstrumentOf(wish);
    Optional<Division> division = Division.named(wish.name());
    if (division.isPresent()) {
      refuseUndivided(division.get(), whole);
    }
    return division.map(one -> one.playing(whole)).orElse(whole);
  }

  private void refuseUndivided(Division division, Instrument instrument) throws Refusal {
    if (!Sections.isBowed(instrument)) {
      throw Refusal.wrongUse(
          Sentence.of(
              "{0}: only sections of bowed strings can be divided, as in \"Violins I div. a 2\";"
                  + " name each player of {1} instead",
              division.name(), division.section()));
    }
    if (!sections.canDivide(division.section())) {
      throw Refusal.wrongUse(
          Sentence.of(
              "{0}: {1} is one player and can't be divided; name a section, as in \"Violins I div."
                  + " a 2\", or another player",
              division.name(),
              sections.part(division.section()).map(Part::name).orElse(division.section())));
    }
  }

  private Instrument wholeInstrumentOf(PlayerWish wish) throws Refusal {
    if (wish.instrument().isPresent()) {
      return limits.instrument(wish.instrument().get());
    }
    refuseSeveral(wish.name());
    return chairs
        .named(wish.name())
        .flatMap(chair -> asNamed(chair, wish.name()))
        .or(() -> limits.told(score, wish.name()))
        .orElseThrow(
            () ->
                Refusal.wrongUse(
                    Sentence.of(
                        "{0} plays no instrument that the limits know{1}; write \"{0}=flute\", with"
                            + " its instrument after the sign",
                        wish.name(), Settable.LIMITS)));
  }

  /** What a chair is named by: "Piccolo", for one that has a flute besides; else its usual one. */
  private Optional<Instrument> asNamed(Chair chair, String name) {
    Optional<Instrument> named = limits.catalogue().find(name).filter(chair::holds);
    return score.part(name).isPresent() || named.isEmpty()
        ? chair.instruments().stream().findFirst()
        : named;
  }

  private void refuseSeveral(String name) throws Refusal {
    List<String> names =
        chairs.named(name).isPresent() ? List.of() : SeveralPlayers.in(name, limits.catalogue());
    if (!names.isEmpty()) {
      throw Refusal.wrongUse(
          Sentence.of(
              "\"{0}\" reads as several players; write \"{1}\", or \"{0} = flute\", with its"
                  + " instrument after the sign, for one of that name",
              name, Sentence.list(names)));
    }
  }

  private void refuseUnknownAllowances(List<Player> players) throws Refusal {
    for (Allowance allowance : allowances) {
      if (!allowance.coversAnyOf(players)) {
        throw Refusal.wrongUse(
            Sentence.of(
                "\"{0}{1}\" can't be allowed{2}: none of these players has a technique of that"
                    + " name{3}",
                allowance.player().map(name -> name + ": ").orElse(""),
                Sentence.name(allowance.technique()),
                allowance.instead() ? Settable.PLAYER_TECHNIQUES : Settable.TECHNIQUES,
                Settable.LIMITS));
      }
    }
  }
}

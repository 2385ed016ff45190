package stafette.ask;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
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
  private final List<Line> lines;
  private final LimitsInForce limits;
  private final MeasuredPlayers measured;
  private final Assurance assurance;
  private final List<Allowance> allowances;

  public Roster(
      Score score,
      List<Line> lines,
      LimitsInForce limits,
      MeasuredPlayers measured,
      Assurance assurance,
      List<Allowance> allowances) {
    this.score = score;
    this.sections = new Sections(score, limits.catalogue());
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
    refuseOnePartTwice(players);
    refuseTwoDivisions(players);
    refuseUnknownAllowances(players);
    return players;
  }

  private void refuseOnePartTwice(List<Player> players) throws Refusal {
    Map<String, String> named = new HashMap<>();
    for (Player player : players) {
      if (player.part().isPresent()) {
        String part = player.part().get();
        String other = named.put(part, player.name());
        if (other != null) {
          throw Refusal.wrongUse(
              Sentence.of(
                  "{0} and {1} are the same part of the score, {2}; name it once",
                  other, player.name(), score.part(part).map(Part::name).orElse(part)));
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
    for (PlayerWish wish : wishes) {
      players.add(playerOf(wish));
    }
    return players;
  }

  private Player playerOf(PlayerWish wish) throws Refusal {
    wish.refuseUnwritable();
    Optional<Division> division = Division.named(wish.name());
    Optional<Part> section = division.flatMap(one -> sections.part(one.section()));
    Optional<Part> own = score.part(wish.name());
    Optional<Part> part = own.or(() -> division.filter(Division::isFirst).flatMap(f -> section));
    Instrument instrument = measured.asSaid(wish.name(), instrumentOf(wish)).breathing(assurance);
    List<Skill> skills =
        Allowance.usable(allowances, wish.name(), instrument, lines).stream()
            .map(technique -> new Skill(technique, capability(wish.name(), technique)))
            .toList();
    boolean free = measured.freed().contains(wish.name());
    List<GivenStretch> busy =
        own.or(() -> section)
            .filter(p -> !free)
            .map(p -> GivenStretch.of(p, lines))
            .orElse(List.of());
    return new Player(wish.name(), instrument, part.map(Part::id), skills, busy, wish.isNamed());
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
      sections.refuseUndivided(division.get(), whole);
    }
    return division.map(one -> one.playing(whole)).orElse(whole);
  }

  private Instrument wholeInstrumentOf(PlayerWish wish) throws Refusal {
    if (wish.instrument().isPresent()) {
      return limits.instrument(wish.instrument().get());
    }
    refuseSeveral(wish.name());
    return limits
        .told(score, wish.name())
        .orElseThrow(
            () ->
                Refusal.wrongUse(
                    Sentence.of(
                        "{0} plays no instrument that the limits know{1}; write \"{0}=flute\", with"
                            + " its instrument after the sign",
                        wish.name(), Settable.LIMITS)));
  }

  private void refuseSeveral(String name) throws Refusal {
    List<String> names =
        score.part(name).isPresent() ? List.of() : SeveralPlayers.in(name, limits.catalogue());
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
      boolean meant =
          players.stream()
              .anyMatch(
                  player ->
                      player.instrument().techniques().stream()
                          .anyMatch(
                              technique ->
                                  allowance.covers(player.name(), player.instrument(), technique)));
      if (!meant) {
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

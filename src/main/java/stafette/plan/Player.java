package stafette.plan;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import stafette.limits.Assurance;
import stafette.limits.Breath;
import stafette.limits.Instrument;
import stafette.limits.Skill;
import stafette.limits.Way;

/**
 * One chair or desk.
 *
 * @param name as in the score or as given
 * @param instrument what it plays
 * @param part the id of the part of the score from which the player reads, if there is one
 * @param chair the player's place among those who share that part, counted from 1 from above; empty
 *     for all of a part's players, and for who has a part alone
 * @param skills the techniques it brings, the first preferred; may be empty
 * @param busy what the score already gives it, in order, on the line's clock
 * @param isNamed whether the user named it; else the program proposed it
 */
public record Player(
    String name,
    Instrument instrument,
    Optional<String> part,
    OptionalInt chair,
    List<Skill> skills,
    List<GivenStretch> busy,
    boolean isNamed) {
  public Player {
    skills = List.copyOf(skills);
    busy = List.copyOf(busy);
  }

  /** A player who has a part alone, or none. */
  public Player(
      String name,
      Instrument instrument,
      Optional<String> part,
      List<Skill> skills,
      List<GivenStretch> busy,
      boolean isNamed) {
    this(name, instrument, part, OptionalInt.empty(), skills, busy, isNamed);
  }

  /** A player whom the user named. */
  public Player(
      String name,
      Instrument instrument,
      Optional<String> part,
      List<Skill> skills,
      List<GivenStretch> busy) {
    this(name, instrument, part, skills, busy, true);
  }

  /** In which ways it may take a stretch; none without skills. */
  public List<Way> ways() {
    return Way.of(skills);
  }

  /**
   * A player for whom the written tempo is as hard as any within a margin is for this one: gaps,
   * rests and silences count for shorter, sounds for longer than they are.
   */
  public Player within(Margin margin) {
    if (margin.isNone()) {
      return this;
    }
    double gaps = margin.shortened();
    Optional<Breath> breath =
        instrument.breath().map(lungs -> lungs.where(gaps, margin.lengthened()));
    List<Skill> harder =
        skills.stream()
            .map(skill -> new Skill(skill.technique(), skill.capability().where(gaps)))
            .toList();
    return with(instrument.with(instrument.levelDecibel(), breath, instrument.techniques()), harder)
        .busyWith(busy.stream().map(given -> given.within(margin)).toList());
  }

  /** The same player with other skills. */
  public Player with(List<Skill> others) {
    return new Player(name, instrument, part, chair, others, busy, isNamed);
  }

  /**
   * Somebody in this player's place of whom another share of the population is as good or better.
   *
   * @param planned for which share this player's figures are taken where they are the population's
   */
  public Player at(Assurance planned, Assurance wanted) {
    Instrument own =
        instrument.with(
            instrument.levelDecibel(),
            instrument.breath().map(breath -> breath.at(planned, wanted)),
            instrument.techniques());
    return new Player(
        name,
        own,
        part,
        chair,
        skills.stream().map(skill -> skill.at(planned, wanted)).toList(),
        busy,
        isNamed);
  }

  /** The same player on another instrument of the kind, or with other figures. */
  public Player with(Instrument other, List<Skill> others) {
    return new Player(name, other, part, chair, others, busy, isNamed);
  }

  /** The same player with other things to play beside the line. */
  public Player busyWith(List<GivenStretch> others) {
    return new Player(name, instrument, part, chair, skills, others, isNamed);
  }

  /** The same player, proposed by the program. */
  public Player proposed() {
    return new Player(name, instrument, part, chair, skills, busy, false);
  }

  /**
   * Whether another player could take this one's place in every plan: all but the names is alike.
   */
  public boolean isLike(Player other) {
    return instrument.equals(other.instrument)
        && skills.equals(other.skills)
        && busy.equals(other.busy)
        && isNamed == other.isNamed;
  }

  /**
   * The skill with the highest sustained rate, the first of equals: how given passages are taken to
   * be played.
   */
  public Optional<Skill> leastTiringSkill() {
    return skills.stream()
        .reduce(
            (one, other) ->
                other.capability().sustainedMilli() > one.capability().sustainedMilli()
                    ? other
                    : one);
  }
}

package stafette.plan;

import java.util.List;
import java.util.Optional;
import stafette.limits.Assurance;
import stafette.limits.Instrument;
import stafette.limits.Skill;
import stafette.limits.Way;

/**
 * One chair or desk.
 *
 * @param name as in the score or as given
 * @param instrument what it plays
 * @param part the id of the player's part, if the score has one
 * @param skills the techniques it brings, the first preferred; may be empty
 * @param busy what the score already gives it, in order, on the line's clock
 */
public record Player(
    String name,
    Instrument instrument,
    Optional<String> part,
    List<Skill> skills,
    List<GivenStretch> busy) {
  public Player {
    skills = List.copyOf(skills);
    busy = List.copyOf(busy);
  }

  /** In which ways it may take a stretch; none without skills. */
  public List<Way> ways() {
    return Way.of(skills);
  }

  /** The same player with other skills. */
  public Player with(List<Skill> others) {
    return new Player(name, instrument, part, others, busy);
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
        name, own, part, skills.stream().map(skill -> skill.at(planned, wanted)).toList(), busy);
  }

  /**
   * Whether another player could take this one's place in every plan: all but the names is alike.
   */
  public boolean isLike(Player other) {
    return instrument.equals(other.instrument)
        && skills.equals(other.skills)
        && busy.equals(other.busy);
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

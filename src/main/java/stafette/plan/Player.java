package stafette.plan;

import java.util.List;
import java.util.Optional;
import stafette.limits.Instrument;

/**
 * One chair or desk.
 *
 * @param name as in the score or as given
 * @param instrument what it plays
 * @param part the id of the player's part, if the score has one
 * @param skills the techniques to plan with, the first preferred; may be empty if none applies to
 *     the line
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

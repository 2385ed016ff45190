package stafette.limits;

import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;

/**
 * One way in which a player takes a stretch: the techniques between which it changes from stroke to
 * stroke as the music asks. Nearly all instruments have one way; the harp has two, for a stretch
 * goes on single strings or has a twin string for each note that is repeated.
 *
 * @param twinStrings whether repeated notes go to two strings of the same pitch in turn (harp)
 * @param skills in the order in which a player would choose them, at least one
 */
public record Way(boolean twinStrings, List<Skill> skills) {
  /**
   * @throws IllegalArgumentException if there is no skill
   */
  public Way {
    skills = List.copyOf(skills);
    if (skills.isEmpty()) {
      throw new IllegalArgumentException("a way of playing needs a technique");
    }
  }

  /** The ways of a player who brings these skills: single strings first. */
  public static List<Way> of(List<Skill> skills) {
    return Stream.of(false, true)
        .filter(twins -> skills.stream().anyMatch(skill -> isFor(twins, skill)))
        .map(twins -> new Way(twins, skills.stream().filter(s -> isFor(twins, s)).toList()))
        .toList();
  }

  /** Whether it goes on single strings of the harp, whose pedals may have to move. */
  public boolean isPedalled() {
    return !twinStrings && skills.get(0).technique().act() == Act.STRING;
  }

  private static boolean isFor(boolean twins, Skill skill) {
    return skill.technique().twinStrings() == twins;
  }

  /** The same way with other figures, technique by technique. */
  public Way with(UnaryOperator<Skill> change) {
    return new Way(twinStrings, skills.stream().map(change).toList());
  }
}

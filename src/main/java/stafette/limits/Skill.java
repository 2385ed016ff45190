package stafette.limits;

/**
 * A technique in the hands of one player.
 *
 * @param technique which
 * @param capability how fast this player does it
 */
public record Skill(Technique technique, Capability capability) {
  /**
   * The same technique in the hands of somebody of whom another share of the population is as good
   * or better. Whose figure is not the population's has a figure of its own, which stays.
   *
   * @param planned for which share this skill's figures are taken if they are the population's
   */
  public Skill at(Assurance planned, Assurance wanted) {
    return technique.limit().at(planned).equals(capability)
        ? new Skill(technique, technique.limit().at(wanted))
        : this;
  }
}

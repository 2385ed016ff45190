package stafette.plan;

import stafette.limits.Capability;
import stafette.limits.Technique;

/**
 * A technique in the hands of one player.
 *
 * @param technique which
 * @param capability how fast this player does it
 */
public record Skill(Technique technique, Capability capability) {}

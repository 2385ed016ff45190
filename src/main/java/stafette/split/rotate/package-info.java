/**
 * Rotates: the cheapest regular rotation, and whether one is wanted at all.
 *
 * <p>May import {@code words}, {@code time}, {@code score}, {@code limits}, {@code plan}, {@code
 * check} and {@code split}. Decisions:
 *
 * <ul>
 *   <li>Regular rotations are few enough to be tried part by part with the judge's own rules; only
 *       the order of the players needs a search.
 *   <li>A rotation that costs hardly more than the cheapest plan is preferred to it, since it
 *       rehearses itself; what the cheapest costs is told beside it, and only of that anything is
 *       proven.
 *   <li>Whoever wants a plan asks {@link stafette.split.rotate.RotationOrCheapest}: it stands above
 *       both searches, so that neither knows the other.
 * </ul>
 */
@NullMarked
package stafette.split.rotate;

import org.jspecify.annotations.NullMarked;

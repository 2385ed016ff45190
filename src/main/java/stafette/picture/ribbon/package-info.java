/**
 * Draws: the timeline of a plan, a lane for each player.
 *
 * <p>May import {@code words}, {@code time}, {@code score}, {@code limits}, {@code plan}, {@code
 * plan.written}, {@code check}, {@code picture.ink} and {@code picture.notes}. Decisions:
 *
 * <ul>
 *   <li>Nothing is told by colour alone: strain is the share of ink, handoffs have a shape.
 *   <li>What is under the pointer is found by the same layout that draws, so that a window can be
 *       edited where it is seen.
 * </ul>
 */
@NullMarked
package stafette.picture.ribbon;

import org.jspecify.annotations.NullMarked;

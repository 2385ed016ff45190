/**
 * Judges: a line or a plan against the limits. The only room whose comparison of a rate with a
 * limit reaches the user.
 *
 * <p>May import {@code words}, {@code time}, {@code score}, {@code limits} and {@code plan}.
 * Decisions:
 *
 * <ul>
 *   <li>A plan is judged from scratch, stroke by stroke, in floating point with one part in a
 *       thousand million in the player's favour; costs are whole numbers.
 *   <li>Given passages tire by the player's least tiring skill, can't spend more than there is, and
 *       are held against a plan only where it is the plan that spoils them.
 *   <li>A tempo window is followed outward to the first failure on either side, by the same rules
 *       that judge; a mark is shown only if the plan holds at it.
 *   <li>The odds take players as independent, and each as good at all techniques as at one.
 *   <li>Headroom keeps the plan and asks for the odds five per cent faster; where rest is then too
 *       short or pedals too late, nobody manages.
 *   <li>A turn of fewer strokes than a burst takes in gets no relief: no relay gets round a rate
 *       that is beyond its players ({@link stafette.check.ShortTurn}).
 * </ul>
 */
@NullMarked
package stafette.check;

import org.jspecify.annotations.NullMarked;

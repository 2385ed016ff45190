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
 *   <li>A line that holds lasts to its end: nothing is said of how much longer the player could.
 *   <li>A tempo window is followed outward to the first failure on either side, by the same rules
 *       that judge; a mark is shown only if the plan holds at it.
 *   <li>What a handoff does to the ear ({@link stafette.check.Ear}) is an estimate from published
 *       figures: reported with its sources, never part of a cost or of a finding.
 *   <li>The odds take players as independent, and each as good at all techniques as at one.
 *   <li>Headroom keeps the plan and asks for the odds five per cent faster; where rest or breath is
 *       then too short, nobody manages.
 *   <li>Thinning keeps every stroke on a beat. A change of harmony is read from the line alone:
 *       where repeated tones give way to other repeated ones.
 *   <li>A thinned note is judged by its new written length, so that what is found is what is
 *       written.
 * </ul>
 */
@NullMarked
package stafette.check;

import org.jspecify.annotations.NullMarked;

/**
 * Judges: a passage as one player would play it, whole or thinned.
 *
 * <p>May import {@code words}, {@code time}, {@code score}, {@code limits}, {@code plan} and {@code
 * check}. It stands above the judge of plans and uses its rules. Decisions:
 *
 * <ul>
 *   <li>A line that holds lasts to its end: nothing is said of how much longer the player could.
 *   <li>Thinning keeps every stroke on a beat. A change of harmony is read from the line alone:
 *       where repeated tones give way to other repeated ones; between bars of figuration, where the
 *       notes are others.
 *   <li>Slashes on bows and in rolls are judged as they were to be counted, every run of equally
 *       fast ones as a line of its own, by the techniques expected of everybody.
 *   <li>A thinned note is judged by its new written length, so that what is found is what is
 *       written.
 * </ul>
 */
@NullMarked
package stafette.check.alone;

import org.jspecify.annotations.NullMarked;

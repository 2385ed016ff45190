/**
 * Writes out: what each player of a plan is given to read, turn by turn: its strokes as they are
 * written, and the dynamics, hairpins and words that stand beside them.
 *
 * <p>May import {@code words}, {@code time}, {@code score}, {@code notation}, {@code limits} and
 * {@code plan}. Decisions:
 *
 * <ul>
 *   <li>Files and pictures are made from this, so that the sheet says what stands in the part.
 *   <li>A hairpin that crosses a join is divided: who leaves arrives at what it has reached there,
 *       who enters begins with it and has the goal.
 *   <li>A landing note is as long as is plain to read, never into what its player has next.
 *   <li>A dynamic stands at an entry where the player can't know it: the first time, after a long
 *       rest, after something else of its part, and where it has changed.
 * </ul>
 */
@NullMarked
package stafette.plan.written;

import org.jspecify.annotations.NullMarked;

/**
 * Allows: what an instrument and a technique can do, each figure with its source and its grade.
 *
 * <p>May import {@code words}, {@code time} and {@code score}. Figures about people are data, not
 * code: they stand in the tables of {@code limits/}, and this room only says what they mean.
 * Decisions:
 *
 * <ul>
 *   <li>A figure for a population becomes a figure for a player once, at an {@link
 *       stafette.limits.Assurance}, rounded down to thousandths; whoever judges or searches uses
 *       that same number.
 *   <li>What each stroke of a line asks of a technique is worked out in one place, {@link
 *       stafette.limits.Demand}.
 *   <li>The lowest rate of a technique (sautillé) is held against the usual rate of the line as a
 *       whole.
 *   <li>Names are matched without case, accents and chair numbers; a name of something that is not
 *       in the tables is not guessed.
 * </ul>
 */
@NullMarked
package stafette.limits;

import org.jspecify.annotations.NullMarked;

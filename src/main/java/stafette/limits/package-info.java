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
 *   <li>A limit is a judgement; what a source says is a {@link stafette.limits.Statement} of some
 *       kind, and {@link stafette.limits.Stance} tells whether the one contradicts the other. A
 *       figure that a professional is relied on for is what 84 of 100 reach, never the mean.
 *   <li>What each stroke of a line asks of a player is worked out in one place, {@link
 *       stafette.limits.Demand}: the technique it is made with is chosen stroke by stroke, by the
 *       tables' means, so that no share of the population changes it. The lowest rate of a
 *       technique (sautillé) bounds that choice only.
 *   <li>What one player says to manage becomes a limit without spread ({@link
 *       stafette.limits.Saying}), and what hangs on it shifts with it ({@link
 *       stafette.limits.OwnTechniques}), so that a musician need not know sustained and stamina.
 *   <li>No single gap is a limit: {@link stafette.limits.Burst}.
 *   <li>The pedals of the harp go with the stretch: {@link stafette.limits.PedalCourse} shows that
 *       it can be pedalled, not that it can't.
 *   <li>Names are matched without case, accents and chair numbers; a name of something that is not
 *       in the tables is not guessed.
 * </ul>
 */
@NullMarked
package stafette.limits;

import org.jspecify.annotations.NullMarked;

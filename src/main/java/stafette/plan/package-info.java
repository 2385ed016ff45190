/**
 * Assigns: who plays which stretch of a line, and where they meet.
 *
 * <p>May import {@code words}, {@code time}, {@code score} and {@code limits}. Judging and choosing
 * stay out of here. Decisions:
 *
 * <ul>
 *   <li>The shape of a plan is an invariant, its rules are findings: a gap between two segments is
 *       for {@code check} to find.
 *   <li>Handoffs are derived from segments, never stored.
 *   <li>How a harp's pedals stand and which strings it strikes follows from the plan ({@link
 *       stafette.plan.HarpTurn}), so that score, sheet and document say the same.
 *   <li>Seats are not part of a player: no rule and no cost knows them, so they go beside a plan by
 *       players' names.
 *   <li>Points of cost and distances between instruments are data ({@link stafette.plan.Weights}),
 *       read from tables.
 * </ul>
 */
@NullMarked
package stafette.plan;

import org.jspecify.annotations.NullMarked;

/**
 * Reports: what a master would see to at each handoff of a plan.
 *
 * <p>May import {@code words}, {@code time}, {@code score}, {@code limits}, {@code plan}, {@code
 * check} and {@code check.ear}. Decisions:
 *
 * <ul>
 *   <li>It is advice to players and copyists: no cost and no verdict rests on it, so that a plan is
 *       never refused for what a pencil mends.
 *   <li>What is to be done has the same words wherever the same is to be done, so that those who
 *       show it can name all places at once.
 *   <li>That who enters leaves an accent to who leaves is a rule for every join; to be done is only
 *       what goes beyond it.
 * </ul>
 */
@NullMarked
package stafette.check.join;

import org.jspecify.annotations.NullMarked;

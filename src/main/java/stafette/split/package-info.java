/**
 * Chooses: the cheapest plan, and proves it.
 *
 * <p>May import {@code words}, {@code time}, {@code score}, {@code limits}, {@code plan} and {@code
 * check}. {@link stafette.split.Splitter} tells the whole pipeline. Decisions:
 *
 * <ul>
 *   <li>The search runs on whole numbers, each rounded once against the player, so that what it
 *       finds passes the judge.
 *   <li>What strain costs is reckoned with {@code check}'s own functions, so that both get the same
 *       points; validity is reckoned here a second time, by another road.
 *   <li>Crews are searched side by side. Only of players who are paid for where they are idle a
 *       label knows who has played; with more than eight kinds of players not even that, and what
 *       idle ones cost is left out of the bound.
 *   <li>No handoff position is dropped: a bound, never a rule of thumb, says what need not be
 *       looked at.
 *   <li>An alternative is the best plan for what it favours, and not nearly the same as another.
 *   <li>A search ends with a plan and its proof, the proof that there is none, or, when stopped,
 *       with what it has and a bound.
 * </ul>
 */
@NullMarked
package stafette.split;

import org.jspecify.annotations.NullMarked;

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
 *   <li>Crews are searched side by side, so that no label needs to know who has been used.
 *   <li>No handoff position is dropped: a bound, never a rule of thumb, says what need not be
 *       looked at.
 *   <li>Regular rotations are few enough to be tried part by part with {@code check}'s own rules;
 *       only the order of the players needs a search ({@link stafette.split.Alternatives} offers
 *       the best one among other plans).
 *   <li>An alternative is the best plan for what it favours, and not nearly the same as another.
 *   <li>A search ends with a plan and its proof, the proof that there is none, or, when stopped,
 *       with what it has and a bound.
 *   <li>A tempo table asks for the fewest players by a price for each that outweighs all else: one
 *       search answers for every number of players, and knows nothing that the splitter doesn't.
 *   <li>Nothing about tempi is taken to be monotone: slow lines take more breath. An edge is where
 *       one mark has a plan and the next is proven to have none.
 *   <li>Thinned parts are searched bar by bar with the judge's own steps in floating point, as
 *       nothing there needs whole numbers; what comes out is judged, and a part that does not hold
 *       is our bug.
 *   <li>The kinds of thinning are tried whole: one technique, and one way of writing notes left far
 *       apart, so that a part looks alike throughout.
 *   <li>Why there is no plan is told by a deletion filter over nine constraints that can be thought
 *       away; the stretch is shortened first, since short searches are quick.
 * </ul>
 */
@NullMarked
package stafette.split;

import org.jspecify.annotations.NullMarked;

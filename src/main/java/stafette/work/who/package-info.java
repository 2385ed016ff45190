/**
 * Proposes: who could play a line, and the best few crews from those, each solved. May use all that
 * a line can be asked for; prints and shows nothing. Decisions:
 *
 * <ul>
 *   <li>A crew is chosen as a whole: among crews each player costs what a proposed one does; once
 *       chosen they are asked for by name, so that a plan is the one that was shown.
 *   <li>Searches are cut by counted looks, never by a clock: the same score gives the same crews.
 *   <li>Strings that are not in the score come after winds that are not: they seldom need a relay.
 * </ul>
 */
@NullMarked
package stafette.work.who;

import org.jspecify.annotations.NullMarked;

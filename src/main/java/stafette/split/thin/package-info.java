/**
 * Thins: the fullest part of a line that one player can play.
 *
 * <p>May import {@code words}, {@code time}, {@code score}, {@code limits}, {@code plan}, {@code
 * check}, {@code check.alone} and {@code split}. Decisions:
 *
 * <ul>
 *   <li>Thinned parts are searched bar by bar with the judge's own steps in floating point, as
 *       nothing there needs whole numbers; what comes out is judged, and a part that does not hold
 *       is our bug.
 *   <li>Patterns change at phrases and harmonies, and no single bar is a hole (common practice, no
 *       source): a part that changed with every bar could keep more, and nobody would rehearse it.
 *   <li>The kinds of thinning are tried whole: one technique, and one way of writing notes left far
 *       apart, so that a part looks alike throughout.
 * </ul>
 */
@NullMarked
package stafette.split.thin;

import org.jspecify.annotations.NullMarked;

/**
 * Explains: why there is no plan.
 *
 * <p>May import {@code words}, {@code time}, {@code score}, {@code limits}, {@code plan}, {@code
 * check}, {@code split} and {@code split.rotate}. Decisions:
 *
 * <ul>
 *   <li>Why there is no plan is told by a deletion filter over nine constraints that can be thought
 *       away; the stretch is shortened first, since short searches are quick.
 * </ul>
 */
@NullMarked
package stafette.split.why;

import org.jspecify.annotations.NullMarked;

/**
 * Sequences: one class for each thing that a user can ask for.
 *
 * <p>May import every room but the front ends. Both front ends do the same because both only call
 * this. Decisions:
 *
 * <ul>
 *   <li>A request and its outcome are records; what happens between them is one method that knows
 *       neither a terminal nor a window.
 *   <li>Every plan is judged from scratch before it is shown, kept or written.
 * </ul>
 */
@NullMarked
package stafette.work;

import org.jspecify.annotations.NullMarked;

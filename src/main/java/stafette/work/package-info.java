/**
 * Sequences: one class for each thing that a user can ask for.
 *
 * <p>May import every room but the front ends. Both front ends do the same because both only call
 * this. Decisions:
 *
 * <ul>
 *   <li>All files are written through {@code FileDoor}, and a command declares them in {@code
 *       Outputs} before it reckons anything: none is an input or another output, whatever links
 *       say. What was written is read again before it replaces anything, and moved in one step.
 *   <li>What is unfinished has a place for each program that runs, held by a lock of the system's:
 *       a place with a file that nobody holds was left by a crash. It is removed only when it is on
 *       a desk again and kept there, or when the user says so.
 *   <li>A stroke is named by its bar as printed, or by the bar counted from 1 where a number is
 *       printed more than once, so that locks find their stroke again.
 *   <li>A kept plan opens with the question that it answers; where its score is another one by now
 *       it opens without plan and locks rather than not at all.
 * </ul>
 */
@NullMarked
package stafette.work;

import org.jspecify.annotations.NullMarked;

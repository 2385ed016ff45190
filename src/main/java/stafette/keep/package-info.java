/**
 * Keeps: the door to files, what was left unfinished, what is remembered.
 *
 * <p>May import the rooms from {@code words} to {@code tables}. No other room writes a file.
 * Decisions:
 *
 * <ul>
 *   <li>Whether slashes are counted is decided when a score is opened, by the limits in force and
 *       the score's own tempo, before anybody is asked to play it or it is taken at another tempo;
 *       so no command reads a score otherwise than the others.
 *   <li>All files are written through {@link stafette.keep.FileDoor}, and a command declares them
 *       in {@link stafette.keep.Outputs} before it reckons anything: none is an input or another
 *       output, whatever links say. What was written is read again before it replaces anything, and
 *       moved in one step.
 *   <li>What is unfinished has a place for each program that runs, held by a lock of the system's:
 *       a place with a file that nobody holds was left by a crash. It is removed only when it is on
 *       a desk again and kept there, or when the user says so.
 * </ul>
 */
@NullMarked
package stafette.keep;

import org.jspecify.annotations.NullMarked;

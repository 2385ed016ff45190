/**
 * Seats: who reads from a part of the score, and what each of them has to play there. May use the
 * score and what instruments there are; knows no plan and no file.
 *
 * <p>A chair is one player, or one section of strings that can be divided. Whom a note is for is
 * read from words ("1.", "a 2", "div."), from voices and from the notes of chords, each from above;
 * what nothing is said of is for all. Decisions:
 *
 * <ul>
 *   <li>A mark holds until the next; one that names its voice holds for that voice to the end of
 *       its bar. Two voices count for more than a mark for the staff. "Solo" is the first player.
 *   <li>Where it can't be told who plays, all do: a player too many is busy rather than one too
 *       few.
 *   <li>Winds share a staff player by player. "Flutes" without a number are two, or as many as are
 *       seen; a section of strings is one chair, whatever plays in it.
 *   <li>"To X" is how a relay hands over; it calls for another instrument only in other words.
 * </ul>
 */
@NullMarked
package stafette.chairs;

import org.jspecify.annotations.NullMarked;

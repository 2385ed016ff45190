/**
 * Seats: who reads from a part of the score, and what each of them has to play there. May use the
 * score and what instruments there are; knows no plan and no file.
 *
 * <p>A chair is one player, or one section of strings that can be divided. Whom a note is for is
 * read from words ("1.", "a 2", "div."), from voices and from the notes of chords, each from above;
 * what nothing is said of is for all.
 */
@NullMarked
package stafette.chairs;

import org.jspecify.annotations.NullMarked;

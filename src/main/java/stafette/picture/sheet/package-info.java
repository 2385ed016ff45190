/**
 * Lays out the sheet: a page for the conductor, then one for each player who plays, to be given
 * out.
 *
 * <p>May import {@code words}, {@code time}, {@code score}, {@code limits}, {@code plan}, {@code
 * plan.written}, {@code check}, {@code check.alone} (for the words of a share) and the rest of
 * {@code picture}. Decisions:
 *
 * <ul>
 *   <li>Everything is a {@link stafette.picture.sheet.Block} of a known height; {@link
 *       stafette.picture.sheet.Pages} breaks them. Nothing is measured twice, nothing overlaps.
 *   <li>Staffs are 7 to 8 mm high and fill the page. Notes and rests get the room that they need,
 *       and more the longer they last; bars of rest are counted together.
 *   <li>Pages are turned where the player rests long enough, even if it takes a page more for each
 *       such turn.
 *   <li>Dynamics, hairpins and words are those that are written into the parts; what the parts have
 *       at joins and for balance is told once, not proposed again.
 *   <li>Rehearsal marks, tempi and bar lines of the score are on every sheet.
 *   <li>Each player begins on a page of its own, so that pages can be given out. The caution stands
 *       at the foot of the first page of everybody.
 *   <li>Notes are written as the player reads them, and the page says so; places are bar and beat.
 *   <li>All words are sentences, said in the language that comes from outside.
 *   <li>The date comes from outside: the same plan and date give the same bytes.
 * </ul>
 */
@NullMarked
package stafette.picture.sheet;

import org.jspecify.annotations.NullMarked;

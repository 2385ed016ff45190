/**
 * Spells: what sounds in a bar as a copyist writes it down, in note values, rests, tuplets, beams
 * and accidentals; free of any file format and of any picture.
 *
 * <p>May import {@code words}, {@code time} and {@code score}. Decisions:
 *
 * <ul>
 *   <li>Files and pictures are made from the same items, so that what is shown as written is what
 *       stands in the file.
 * </ul>
 */
@NullMarked
package stafette.notation;

import org.jspecify.annotations.NullMarked;

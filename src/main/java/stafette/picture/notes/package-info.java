/**
 * Engraves: notes, rests, beams and signatures as marks on a staff.
 *
 * <p>May import {@code words}, {@code time}, {@code score}, {@code notation}, {@code limits},
 * {@code plan}, {@code plan.written} and {@code picture.ink}. Decisions:
 *
 * <ul>
 *   <li>Values, rests, tuplets, beams and accidentals are those that files are written with.
 *   <li>Players read it at their own pitch and in their own key, spelled as it is written into
 *       their parts.
 *   <li>Signatures that change are written where a row leaves room for them, else accidentals are.
 *       A row has one clef; octave lines do the rest.
 *   <li>Music under a ribbon is spaced by time, with room after bar lines for all that stands
 *       before the first note; staffs shrink where a bar is wider than the paper. Elsewhere a row
 *       says where each note stands.
 * </ul>
 */
@NullMarked
package stafette.picture.notes;

import org.jspecify.annotations.NullMarked;

/**
 * Draws: a plan as a picture, on no device yet, and such drawings onto SVG, PDF and PNG.
 *
 * <p>May import {@code words}, {@code time}, {@code score}, {@code limits}, {@code plan} and {@code
 * check}. Decisions:
 *
 * <ul>
 *   <li>A {@link stafette.picture.Drawing} knows points and inks only; whatever shows it is a
 *       {@link stafette.picture.Mark.Hand}, and all of them show the same.
 *   <li>Nothing is told by colour alone: strain is the share of ink, handoffs have a shape.
 *   <li>Fonts are bundled and measured by ourselves, so a picture is the same on every machine and
 *       needs no screen.
 *   <li>Music is spaced by time on the scale of the ribbon, with room after bar lines for all that
 *       stands before the first note; staffs shrink where a bar is wider than the paper.
 *   <li>Players read it at their own pitch and in their own key, spelled as it is written into
 *       their parts. Signatures that change are written where a row leaves room for them, else
 *       accidentals are. A row has one clef; octave lines do the rest.
 * </ul>
 */
@NullMarked
package stafette.picture;

import org.jspecify.annotations.NullMarked;

/**
 * Inks: marks, paths and letters, and the devices they are drawn on.
 *
 * <p>May import {@code words}. It knows points and colours, no music. Decisions:
 *
 * <ul>
 *   <li>A {@link stafette.picture.ink.Drawing} knows points and inks only; whatever shows it is a
 *       {@link stafette.picture.ink.Mark.Hand}, and all of them show the same.
 *   <li>Fonts are bundled and measured by ourselves, so a picture is the same on every machine and
 *       needs no screen.
 * </ul>
 */
@NullMarked
package stafette.picture.ink;

import org.jspecify.annotations.NullMarked;

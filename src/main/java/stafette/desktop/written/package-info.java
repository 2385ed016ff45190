/**
 * Shows the bars that would be written, as music, before and after.
 *
 * <p>{@code Systems} breaks bars into rows as wide as the view; {@code SystemPicture} lays the
 * staves of one row under each other; each row is a canvas in a list that makes only those in
 * sight. The notes come from {@code picture}, as on paper.
 */
@NullMarked
package stafette.desktop.written;

import org.jspecify.annotations.NullMarked;

/**
 * Lists the fast passages of a score, worst first, and takes a line by part, staff, voice and bars.
 */
@NullMarked
package stafette.desktop.passages;

import org.jspecify.annotations.NullMarked;

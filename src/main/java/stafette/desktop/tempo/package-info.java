/**
 * Shows the tempi between which a plan holds, on one strip from slow to fast, and takes another.
 */
@NullMarked
package stafette.desktop.tempo;

import org.jspecify.annotations.NullMarked;

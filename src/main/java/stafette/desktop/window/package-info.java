/** The frame: where the panels stand, and the light and the dark style. */
@NullMarked
package stafette.desktop.window;

import org.jspecify.annotations.NullMarked;

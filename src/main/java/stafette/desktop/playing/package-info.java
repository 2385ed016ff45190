/** Makes a plan sound while it is looked at; goes on silently where there is no sound card. */
@NullMarked
package stafette.desktop.playing;

import org.jspecify.annotations.NullMarked;

/**
 * Hearing a plan: the strip of controls, and what they do to what plays.
 *
 * <p>It joins the relay, which shows what sounds, with {@code playing}, which sounds it.
 */
@NullMarked
package stafette.desktop.hearing;

import org.jspecify.annotations.NullMarked;

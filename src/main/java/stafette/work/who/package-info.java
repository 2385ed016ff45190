/**
 * Proposes: who could play a line, and the best few crews from those, each solved. May use all that
 * a line can be asked for; prints and shows nothing.
 */
@NullMarked
package stafette.work.who;

import org.jspecify.annotations.NullMarked;

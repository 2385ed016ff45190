/** Shows who may play: instruments, limits, seats, and what is settled about them. */
@NullMarked
package stafette.desktop.players;

import org.jspecify.annotations.NullMarked;

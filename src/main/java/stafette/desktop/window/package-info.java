/**
 * The frame: where the panels stand, and what joins them with the session.
 *
 * <ul>
 *   <li>What the user does goes one way, {@code Gestures}, {@code Ruling} and {@code Doer} to the
 *       session; what becomes of it the other, from the session through {@code Teller} to the
 *       panels.
 *   <li>{@code Listener} plays what is on the desk; {@code Leaving} asks before work by hand leaves
 *       it, {@code Recovery} offers what a crash left.
 *   <li>What takes long goes on in {@code Threads}; everything here is used from the toolkit's.
 * </ul>
 */
@NullMarked
package stafette.desktop.window;

import org.jspecify.annotations.NullMarked;

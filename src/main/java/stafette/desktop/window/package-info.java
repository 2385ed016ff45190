/**
 * The frame: where the panels stand, and what all of them share.
 *
 * <ul>
 *   <li>Each panel has a presenter beside it: what the user does there goes through it to the
 *       session, and what becomes of the session through it to the panel. {@code Panels} has them
 *       all, {@code SessionPresenter} is told first and says how things stand.
 *   <li>{@code ToolsPresenter} does what the tools ask for; {@code Leaving} asks before work by
 *       hand leaves the desk, {@code Recovery} offers what a crash left.
 *   <li>What takes long goes on in {@code Threads}; everything here is used from the toolkit's.
 * </ul>
 */
@NullMarked
package stafette.desktop.window;

import org.jspecify.annotations.NullMarked;

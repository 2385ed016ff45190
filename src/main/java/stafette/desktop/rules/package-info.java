/**
 * Shows the rules that plans are made and judged by, and takes others: all that a command line can
 * ask for beside the line and its players.
 *
 * <ul>
 *   <li>A choice counts when it is made, a figure when its field is left; what is none is said in
 *       words at the field, and so is what the session refuses.
 *   <li>What is typed is read by {@link stafette.desktop.rules.TypedValue}, which needs no screen.
 * </ul>
 */
@NullMarked
package stafette.desktop.rules;

import org.jspecify.annotations.NullMarked;

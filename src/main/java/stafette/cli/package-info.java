/**
 * Prints: commands, arguments, exit codes, text.
 *
 * <p>May import the core and {@code work}.
 */
@NullMarked
package stafette.cli;

import org.jspecify.annotations.NullMarked;

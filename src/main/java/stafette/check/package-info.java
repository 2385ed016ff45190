/**
 * Judges: a line or a plan against the limits. The only room whose comparison of a rate with a
 * limit reaches the user.
 *
 * <p>May import {@code time}, {@code score}, {@code limits} and {@code plan}.
 */
@NullMarked
package stafette.check;

import org.jspecify.annotations.NullMarked;

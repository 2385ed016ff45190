/**
 * Chooses: the cheapest plan, and proves it.
 *
 * <p>May import {@code time}, {@code score}, {@code limits}, {@code plan} and {@code check}.
 */
@NullMarked
package stafette.split;

import org.jspecify.annotations.NullMarked;

/**
 * Translates: the tables in {@code limits/} to limits and weights; plans and verdicts to and from
 * JSON.
 *
 * <p>May import {@code time}, {@code score}, {@code limits}, {@code plan} and {@code check} (whose
 * verdicts it writes down).
 */
@NullMarked
package stafette.tables;

import org.jspecify.annotations.NullMarked;

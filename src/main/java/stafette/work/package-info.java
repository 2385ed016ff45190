/**
 * Sequences: one class for each thing that a user can ask for.
 *
 * <p>May import every room but the front ends. Both front ends do the same because both only call
 * this.
 */
@NullMarked
package stafette.work;

import org.jspecify.annotations.NullMarked;

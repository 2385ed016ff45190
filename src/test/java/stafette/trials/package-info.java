/**
 * Spoils scores, plans, tables and commands by a seed, runs the program on them and asks that it
 * says what is wrong, in words, and leaves every file whole.
 */
@NullMarked
package stafette.trials;

import org.jspecify.annotations.NullMarked;

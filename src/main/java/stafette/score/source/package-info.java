/**
 * Accounts: what became of each note of the page from which a line is taken: taken, moved by an
 * octave, given to somebody else, or omitted. May use the score alone.
 */
@NullMarked
package stafette.score.source;

import org.jspecify.annotations.NullMarked;

/**
 * What the repertoire asks, and what the judge says of it: programs that read folders of open
 * scores, beside the tests and not shipped. No score comes with this project; figures alone do.
 *
 * <p>A folder holds a folder for each corpus, and that one for each composer. Half of the
 * composers, chosen by the sum of their names, serve to set figures; the scores of the others only
 * test them.
 */
@NullMarked
package stafette.repertoire;

import org.jspecify.annotations.NullMarked;

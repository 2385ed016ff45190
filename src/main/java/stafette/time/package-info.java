/**
 * Measures: exact musical time, the tempo map, metres and bars, and their clock time. Knows no
 * notes.
 *
 * <p>May import {@code words}. Decisions:
 *
 * <ul>
 *   <li>Positions are exact fractions of quarter notes with {@code BigInteger} inside: a {@code
 *       long} fraction overflows after some fourteen stepped tempo marks.
 *   <li>A {@link stafette.time.Position} is a point, a {@link stafette.time.Length} an amount; the
 *       two never mix.
 *   <li>A metre whose upper figure is 6, 9, 12 … (over 8 or less common values) is compound; 3/8 is
 *       counted in three, as printed.
 *   <li>A bar's metre is what is printed; what it is counted in may be groups of that, which only
 *       its notes tell ({@link stafette.time.Bar#counted}).
 * </ul>
 */
@NullMarked
package stafette.time;

import org.jspecify.annotations.NullMarked;

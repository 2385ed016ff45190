/**
 * Adds: a part that a score doesn't have yet, at its place in the score, with names, clefs and
 * staves like its neighbours'.
 *
 * <p>May import {@code words}, {@code time}, {@code score}, {@code notation}, {@code limits},
 * {@code chairs}, {@code plan}, {@code musicxml.text}, {@code musicxml.share} and {@code
 * musicxml.make}. Decisions:
 *
 * <ul>
 *   <li>A new part stands where {@link stafette.musicxml.newparts.Seating} says, and shares the
 *       brackets of those whom it is akin to; new parts at one place keep an order of their own, so
 *       that the list and the parts agree in it.
 *   <li>It has the bars of the part that the line was taken from, and what in them concerns
 *       everybody: barlines, tempi, rehearsal marks, fermatas.
 * </ul>
 */
@NullMarked
package stafette.musicxml.newparts;

import org.jspecify.annotations.NullMarked;

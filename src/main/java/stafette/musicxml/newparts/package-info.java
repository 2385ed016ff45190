/**
 * Parts that a score does not have yet: where they stand in it, how they are called, in which clefs
 * and on how many staves they are written, and what they take over from the part of the line.
 *
 * <p>May import {@code words}, {@code time}, {@code score}, {@code notation}, {@code limits},
 * {@code plan}, {@code musicxml.text}, {@code musicxml.share} and {@code musicxml.make}; changes no
 * part that is there.
 */
@NullMarked
package stafette.musicxml.newparts;

import org.jspecify.annotations.NullMarked;

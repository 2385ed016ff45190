/**
 * Makes the text of single elements: notes, rests, directions, cues, and stretches of a bar.
 *
 * <p>May import {@code words}, {@code time}, {@code score}, {@code notation}, {@code limits},
 * {@code musicxml.text}, {@code musicxml.read} and {@code musicxml.share}; knows no part as a
 * whole.
 *
 * <p>Elements are built as ProxyMusic objects and marshalled as fragments, so that they come out in
 * the schema's order. JAXB takes a second to load: only what writes touches it.
 */
@NullMarked
package stafette.musicxml.make;

import org.jspecify.annotations.NullMarked;

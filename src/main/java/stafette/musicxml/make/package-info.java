/**
 * Sets: what stands in one bar of a part, its notes, rests, signs and cues, as text.
 *
 * <p>May import {@code words}, {@code time}, {@code score}, {@code notation}, {@code limits},
 * {@code musicxml.text}, {@code musicxml.read} and {@code musicxml.share}. Decisions:
 *
 * <ul>
 *   <li>New elements are built as ProxyMusic objects and marshalled as fragments, so that they come
 *       out in the schema's order. JAXB takes a second to load: only what writes touches it.
 *   <li>What is there already is changed as text, so that all else in it stays byte for byte.
 * </ul>
 */
@NullMarked
package stafette.musicxml.make;

import org.jspecify.annotations.NullMarked;

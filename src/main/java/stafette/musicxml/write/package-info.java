/**
 * Writes: a plan, a cue, a new part back into the text that a score came from.
 *
 * <p>May import {@code words}, {@code time}, {@code score}, {@code limits}, {@code plan}, {@code
 * musicxml.text} and {@code musicxml.read}. Decisions:
 *
 * <ul>
 *   <li>New measures and parts are built as ProxyMusic objects and marshalled as fragments, so that
 *       they come out in the schema's order. JAXB takes a second to load: only what writes touches
 *       it.
 *   <li>Notes of a player's part that are the line's own strokes may be written anew; all its other
 *       notes are kept. A measured tremolo is written out.
 *   <li>A player's strokes are written from a list of the player's own, whether or not they follow
 *       one another: a half of a hocket and a thinned line are lines with gaps. Slurs and beams
 *       join only strokes between which nothing is silent.
 *   <li>Words for ways of playing stand where the line, or what goes on after it, is played
 *       otherwise than what was before; a part's own words are never taken out.
 *   <li>A background part takes the place of whatever notes of the line its bars had; a bar in
 *       which just these stand already is left alone.
 *   <li>Players who share a staff have one stream of notes there, since where they meet they have
 *       the same ones; labels say who plays where that changes. Where they have different notes
 *       each gets a voice. What the next given notes are for is said again if a label would be
 *       taken for theirs.
 *   <li>A new part stands where {@link stafette.musicxml.write.Seating} says, and shares the
 *       brackets of those whom it is akin to; new parts at one place keep an order of their own, so
 *       that the list and the parts agree in it.
 * </ul>
 */
@NullMarked
package stafette.musicxml.write;

import org.jspecify.annotations.NullMarked;

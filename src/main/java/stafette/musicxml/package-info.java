/**
 * Translates: MusicXML to score, and a plan back into the text it came from.
 *
 * <p>May import {@code words}, {@code time}, {@code score}, {@code limits} and {@code plan}.
 * Decisions:
 *
 * <ul>
 *   <li>Reading is one streaming pass over the strictly decoded text; the same pass notes where
 *       each part, measure and element stands ({@link stafette.musicxml.Origin}).
 *   <li>Writing is a list of replacements in that text, never a re-print: outside them the file
 *       stays byte for byte, and undoing them must give the input back.
 *   <li>New measures and parts are built as ProxyMusic objects and marshalled as fragments, so that
 *       they come out in the schema's order. JAXB takes a second to load: only what writes touches
 *       it.
 *   <li>Repeats and endings are not unfolded: bars are read in the order in which they are written.
 *       Cue notes are no strokes.
 *   <li>Notes of a player's part that are the line's own strokes may be written anew; all its other
 *       notes are kept. A measured tremolo is written out.
 *   <li>A player's strokes are written from a list of the player's own, whether or not they follow
 *       one another: a half of a hocket and a thinned line are lines with gaps. Slurs and beams
 *       join only strokes between which nothing is silent.
 *   <li>A background part takes the place of whatever notes of the line its bars had; a bar in
 *       which just these stand already is left alone.
 *   <li>Nothing outside the file is ever opened: no DTD, no entity, no network.
 * </ul>
 */
@NullMarked
package stafette.musicxml;

import org.jspecify.annotations.NullMarked;

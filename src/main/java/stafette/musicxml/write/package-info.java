/**
 * Writes: a plan, a cue, a new part back into the text that a score came from.
 *
 * <p>May import {@code words}, {@code time}, {@code score}, {@code limits}, {@code plan}, {@code
 * musicxml.text}, {@code musicxml.read}, {@code musicxml.share}, {@code musicxml.make} and {@code
 * musicxml.newparts}. Decisions:
 *
 * <ul>
 *   <li>Notes of a player's part that are the line's own strokes may be written anew; all its other
 *       notes are kept. A measured tremolo is written out.
 *   <li>Words for ways of playing stand where the line, or what goes on after it, is played
 *       otherwise than what was before; a part's own words are never taken out.
 *   <li>A background part takes the place of whatever notes of the line its bars had; a bar in
 *       which just these stand already is left alone.
 * </ul>
 */
@NullMarked
package stafette.musicxml.write;

import org.jspecify.annotations.NullMarked;

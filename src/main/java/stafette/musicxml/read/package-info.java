/**
 * Reads: MusicXML to score, and where in the text all of it stands.
 *
 * <p>May import {@code words}, {@code time}, {@code score} and {@code musicxml.text}. Decisions:
 *
 * <ul>
 *   <li>Reading is one streaming pass over the decoded text; the same pass notes where each part,
 *       measure and element stands ({@link stafette.musicxml.text.Origin}).
 *   <li>Repeats and endings are not unfolded: bars are read in the order in which they are written.
 *       Cue notes are no strokes.
 *   <li>Where 5, 7, 10 or 11 over 8 or 16 leave the groups open, the beams of the bar's fastest
 *       voice say them, or accents; one bar has the same groups for all parts.
 *   <li>A figure outside its plausible range is refused with its bar and line, so that nothing
 *       takes longer than the file is long.
 * </ul>
 */
@NullMarked
package stafette.musicxml.read;

import org.jspecify.annotations.NullMarked;

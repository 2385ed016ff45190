/**
 * Says what is written: parts, voices, strokes and lines, free of any file format.
 *
 * <p>May import {@code words} and {@code time}. Decisions:
 *
 * <ul>
 *   <li>Pitches are sounding pitches; how a part writes them is the translator's business.
 *   <li>A stroke is one attack. Notes tied to it belong to it, measured tremolos are already
 *       spelled out, and grace notes hang on the stroke that they lead to: they take time from it,
 *       have no place of their own, and can't be parted from it.
 *   <li>A trill that is written out under its sign is one stroke: its first note. The others stay
 *       where the file has them, so that they can be given away and written, but are not measured.
 *   <li>A sextuplet goes in twos unless beams or accents divide it by threes, so that only triplets
 *       are tongued in threes; it can be thinned by threes all the same.
 *   <li>A line that hands share is one stream: what they strike at once is a chord, no stroke lasts
 *       beyond the next, and a slur goes on only within its own voice. Chords of both hands before
 *       and after it are none of it.
 *   <li>A {@link stafette.score.Line} carries its own clock: onsets are rounded once to
 *       microseconds, so that everyone who asks what is playable reckons with the same numbers.
 * </ul>
 */
@NullMarked
package stafette.score;

import org.jspecify.annotations.NullMarked;

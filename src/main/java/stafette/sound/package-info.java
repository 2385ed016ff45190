/**
 * Plays: a plan to MIDI and, through the JDK's synthesiser and without a sound card, to audio.
 *
 * <p>May import {@code words}, {@code time}, {@code score}, {@code limits}, {@code plan} and {@code
 * check}. Decisions:
 *
 * <ul>
 *   <li>A {@link stafette.sound.Performance} is notes in microseconds. Rendered and played by a
 *       sequencer, each tick is one of them, since the JDK's reader cuts every event's time down to
 *       whole microseconds and would drift; the file for people counts in the score's beats.
 *   <li>Chance is reckoned from segment and stroke: the same plan makes the same bytes, and an
 *       excerpt sounds like the same place in the whole.
 *   <li>The same synthetic voice twice on the same sample adds up as one wave (+6 dB), two players
 *       don't (+3.01 dB): so even with the spread switched off strokes lie up to 4 ms apart in
 *       audio. In a MIDI file they then stand exactly.
 *   <li>Neither reverberation nor chorus: what is heard, and measured, are the players.
 *   <li>A user's own soundbank needs an internal package of java.desktop; all else is public API.
 * </ul>
 */
@NullMarked
package stafette.sound;

import org.jspecify.annotations.NullMarked;

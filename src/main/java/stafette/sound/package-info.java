/**
 * Plays: a plan as notes in time, and those as MIDI and audio.
 *
 * <p>May import {@code time}, {@code score}, {@code limits}, {@code plan} and {@code check}.
 * Decisions:
 *
 * <ul>
 *   <li>A {@link stafette.sound.Performance} is notes on a clock; who plays late, louder or from
 *       where is settled in it, so MIDI and audio say the same.
 *   <li>What people do not do to the millisecond is drawn with a fixed seed: the same plan gives
 *       the same bytes. Each player is a few cents off, as two players always are.
 *   <li>Only the JDK's own synthesiser is used, offline, without its reverberation: silence is
 *       silence, and no sound card is needed.
 * </ul>
 */
@NullMarked
package stafette.sound;

import org.jspecify.annotations.NullMarked;

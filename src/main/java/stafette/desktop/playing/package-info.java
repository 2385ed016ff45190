/**
 * Makes a plan sound while it is looked at; goes on silently where there is no sound card.
 *
 * <p>What is wished ({@link stafette.desktop.playing.HearingWish}, {@link
 * stafette.desktop.playing.Balance}) is kept apart from what plays ({@link
 * stafette.desktop.playing.Playing}) and from the strip that shows it. Players are meant by name,
 * places by the line's clock, so that both outlive a change of the plan. Another speed is heard at
 * once by turning the sequencer's tempo; a playback made for that speed follows, since in it the
 * players' distances in time don't stretch.
 */
@NullMarked
package stafette.desktop.playing;

import org.jspecify.annotations.NullMarked;

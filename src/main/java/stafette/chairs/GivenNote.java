package stafette.chairs;

import java.util.Optional;
import stafette.limits.Instrument;
import stafette.score.Stroke;

/**
 * A note that the score gives a chair.
 *
 * @param stroke with the tones that are this chair's
 * @param instrument with which it is played, if the limits know it
 */
public record GivenNote(Stroke stroke, Optional<Instrument> instrument) {}

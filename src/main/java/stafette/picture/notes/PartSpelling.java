package stafette.picture.notes;

import java.util.List;
import stafette.limits.HarpPedals;
import stafette.score.Keys;
import stafette.score.Pitch;
import stafette.score.Spelling;
import stafette.score.Tone;
import stafette.score.Transposition;
import stafette.time.Bar;
import stafette.time.Position;

/**
 * How a part spells what sounds: at its own pitch, near to its own key.
 *
 * @param transposition of the instrument, from written to sounding
 * @param keys of the part; where they lie beyond seven, it has them the other way round
 * @param byString whether notes are spelled by the strings of a harp that sound them
 */
public record PartSpelling(Transposition transposition, Keys keys, boolean byString) {
  /** The signature: so many sharps, or flats if below zero, from −7 to 7. */
  public int signature(Position at) {
    return Spelling.writtenKey(keys.at(at), Transposition.NONE);
  }

  public int signature(Bar bar) {
    return signature(bar.span().start());
  }

  List<NotatedItem> of(List<NotatedItem> sounding) {
    return sounding.stream().map(one -> one.withTones(tone -> written(tone, one.onset()))).toList();
  }

  Tone written(Tone tone, Position at) {
    return tone instanceof Pitch pitch && !(byString && HarpPedals.hasString(pitch))
        ? Spelling.written(
            pitch, transposition, Spelling.soundingKey(keys.at(at), transposition), signature(at))
        : tone;
  }
}

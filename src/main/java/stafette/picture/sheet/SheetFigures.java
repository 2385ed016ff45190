package stafette.picture.sheet;

import stafette.score.Line;
import stafette.score.LineSource;
import stafette.score.Reading;
import stafette.score.Slurring;
import stafette.score.Strands;
import stafette.time.BarBeat;
import stafette.time.BeatUnit;
import stafette.time.Rational;
import stafette.time.TempoMark;
import stafette.words.Sentence;

/** Numbers and places as the sheet shows them. */
final class SheetFigures {
  /** Sixteenths in a second are so many quarters in a minute. */
  private static final int QUARTERS_PER_MINUTE = 15;

  private SheetFigures() {}

  static Sentence seconds(double seconds) {
    return Sentence.of("{0} s", Sentence.decimal(seconds, 1));
  }

  static Sentence seconds(long micros) {
    return seconds(micros / 1e6);
  }

  /** The metronome mark at which sixteenths go so fast: "16ths at quarter = 156". */
  static Sentence mark(double perSecond) {
    Rational quarters = Rational.of(Math.round(perSecond * QUARTERS_PER_MINUTE));
    return Sentence.of("16ths at {0}", new TempoMark(BeatUnit.QUARTER, quarters));
  }

  static Sentence perSecond(double rate) {
    return Sentence.of("{0} a second", Sentence.decimal(rate, 1));
  }

  static Sentence notes(int count) {
    return count == 1 ? Sentence.of("1 note") : Sentence.of("{0} notes", count);
  }

  /** "bar 8, beat 1". */
  static BarBeat place(Line line, int stroke) {
    return line.placeOf(stroke).at();
  }

  /** "Piano, staff 1, voice 1, bars 5–16", and how the line was read. */
  static Sentence where(Line line) {
    LineSource source = line.source();
    String bars = line.barsInWords("–");
    String numbers = bars.substring(bars.indexOf(' ') + 1);
    Sentence where =
        source.firstBar() == source.lastBar()
            ? Sentence.of("{0}, {1}, bar {2}", source.partName(), hands(source.strands()), numbers)
            : Sentence.of(
                "{0}, {1}, bars {2}", source.partName(), hands(source.strands()), numbers);
    Sentence read =
        source.reading() == Reading.ALL
            ? where
            : source.reading() == Reading.UPPER
                ? Sentence.of("{0}, upper notes", where)
                : Sentence.of("{0}, lower notes", where);
    return source.slurring() == Slurring.AS_WRITTEN
        ? read
        : Sentence.of("{0}, slurs changed", read);
  }

  private static Sentence hands(Strands strands) {
    if (!strands.isShared()) {
      return Sentence.of("staff {0}, voice {1}", strands.staffText(), strands.voiceText());
    }
    return strands.staves().size() == 2
        ? Sentence.of("both hands")
        : Sentence.of("staff {0}, voices {1}", strands.staffText(), strands.voiceText());
  }
}

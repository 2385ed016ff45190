package stafette.check.alone;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import stafette.limits.Assurance;
import stafette.limits.Instrument;
import stafette.limits.Technique;
import stafette.score.Line;
import stafette.score.Part;
import stafette.score.TremoloReading;
import stafette.score.TremoloTrial;

/**
 * Reads slashes by what the part's own instrument can do with them at the score's tempo. Three and
 * more are measured only where that is comfortable, fewer wherever most manage. Where nobody knows
 * what the instrument can do, their number decides.
 */
public final class TremoloByTempo implements TremoloTrial {
  private static final Assurance COMFORTABLE = new Assurance(98);
  private static final Assurance MOST = new Assurance(84);

  private final Function<Part, Optional<Instrument>> instrumentOf;

  /**
   * A trial by the limits of instruments.
   *
   * @param instrumentOf what a part plays, if that is known
   */
  public TremoloByTempo(Function<Part, Optional<Instrument>> instrumentOf) {
    this.instrumentOf = instrumentOf;
  }

  @Override
  public TremoloReading of(Part part, Line counted, boolean three) {
    return instrumentOf
        .apply(part)
        .flatMap(instrument -> judged(instrument, counted, three))
        .orElseGet(() -> BY_SLASHES.of(part, counted, three));
  }

  /** Empty where the instrument has no technique for it. */
  private static Optional<TremoloReading> judged(
      Instrument instrument, Line counted, boolean three) {
    List<Technique> techniques =
        instrument.techniques().stream().filter(Technique::expected).toList();
    return LineTrial.manages(counted, instrument, three ? COMFORTABLE : MOST, techniques)
        .map(
            managed -> {
              if (three) {
                return managed ? TremoloReading.IN_DOUBT : TremoloReading.THREE_SLASHES;
              }
              return managed ? TremoloReading.MEASURED : outrun(instrument);
            });
  }

  private static TremoloReading outrun(Instrument instrument) {
    return switch (instrument.techniques().get(0).act()) {
      case BOW, WOOD -> TremoloReading.OUTRUNS_THE_BOW;
      case KEY, STRING, PLUCK -> TremoloReading.OUTRUNS_THE_HANDS;
      case MALLET, TONGUE -> TremoloReading.OUTRUNS_THE_STICKS;
    };
  }
}

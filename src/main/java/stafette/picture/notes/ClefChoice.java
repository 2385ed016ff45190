package stafette.picture.notes;

import java.util.List;
import stafette.limits.Instrument;
import stafette.plan.written.WrittenPassage;
import stafette.score.Stroke;
import stafette.time.Span;

/**
 * The clef in which a passage is best read: the instrument's own, unless that would take many
 * ledger lines and its players also read one that takes few (common practice, no source).
 */
public final class ClefChoice {
  /** Ledger lines a note that players put up with. */
  private static final double BEARABLE = 2;

  private ClefChoice() {}

  /** The clef for what an instrument plays within a span. */
  public static Clef of(Instrument instrument, List<WrittenPassage> plays, Span span) {
    Clef usual = Clef.of(instrument.clef());
    List<Stroke> strokes =
        plays.stream()
            .flatMap(passage -> passage.strokes().stream())
            .filter(stroke -> stroke.span().overlaps(span))
            .toList();
    double least = ledgers(usual, instrument, strokes);
    if (least <= BEARABLE) {
      return usual;
    }
    Clef best = usual;
    for (Clef other : instrument.furtherClefs().stream().map(Clef::of).toList()) {
      double lines = ledgers(other, instrument, strokes);
      if (lines <= least / 2) {
        best = other;
        least = lines;
      }
    }
    return best;
  }

  /** Ledger lines a note. */
  private static double ledgers(Clef clef, Instrument instrument, List<Stroke> strokes) {
    Staff staff = new Staff(0, 1, clef, instrument.transposition());
    return strokes.stream()
        .flatMap(stroke -> stroke.tones().stream())
        .mapToInt(staff::step)
        .map(step -> Math.max(0, Math.max(-step, step - 8) / 2))
        .average()
        .orElse(0);
  }
}

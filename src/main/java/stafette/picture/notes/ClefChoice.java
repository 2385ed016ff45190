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

  /** Brass in the treble clef that goes below this, a horn, reads the bass clef too: E2. */
  private static final int DEEP = 40;

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
    for (Clef other : others(usual, instrument)) {
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

  /** Further clefs that players of an instrument read, the likelier first. */
  private static List<Clef> others(Clef usual, Instrument instrument) {
    boolean deep = instrument.range().filter(range -> range.low() < DEEP).isPresent();
    return switch (usual) {
      case BASS ->
          switch (instrument.family()) {
            case "woodwind", "brass" -> List.of(Clef.TENOR);
            case "percussion" -> List.of();
            default -> List.of(Clef.TENOR, Clef.TREBLE);
          };
      case ALTO -> List.of(Clef.TREBLE);
      case TREBLE ->
          switch (instrument.family()) {
            case "woodwind", "strings", "plucked" -> List.of();
            case "brass" -> deep ? List.of(Clef.BASS) : List.of();
            default -> List.of(Clef.BASS);
          };
      case TENOR, PERCUSSION -> List.of();
    };
  }
}

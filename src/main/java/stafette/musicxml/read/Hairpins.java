package stafette.musicxml.read;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Pattern;
import stafette.musicxml.read.WrittenMeasure.PlacedSwell;
import stafette.musicxml.read.WrittenMeasure.PlacedWords;
import stafette.musicxml.read.WrittenMeasure.SwellSign;
import stafette.score.Dynamic;
import stafette.score.Hairpin;
import stafette.time.Bars;
import stafette.time.Length;
import stafette.time.Position;
import stafette.time.Span;

/**
 * The hairpins of a part: wedges from their start to their stop, and words such as "cresc.", which
 * hold as far as their dashes go, else to the next dynamic or the next of their kind.
 */
final class Hairpins {
  private static final Pattern LOUDER = Pattern.compile("\\bcresc");
  private static final Pattern SOFTER = Pattern.compile("\\b(?:decresc|dim(?:\\b|in))");

  /** So far after a hairpin its goal may stand. */
  private static final Length NEAR = Length.ofQuarters(1, 2);

  private final List<Hairpin> found = new ArrayList<>();

  /** The last dynamic at each place. */
  private final NavigableMap<Position, Dynamic> dynamics = new TreeMap<>();

  private final List<PlacedSign<PlacedSwell>> swells = new ArrayList<>();
  private final List<PlacedSign<PlacedWords>> words = new ArrayList<>();
  private final Position end;

  /** Something, and where it stands. */
  private record PlacedSign<T>(Position at, T what) {}

  /** What tells one wedge, or one row of dashes, from another that is open. */
  private record Open(boolean dashes, int number) {}

  private Hairpins(WrittenPart part, Bars bars) {
    end = bars.span().end();
    for (int i = 0; i < part.measures().size(); i++) {
      WrittenMeasure measure = part.measures().get(i);
      Position start = bars.get(i).span().start();
      measure
          .dynamics()
          .forEach(
              mark ->
                  dynamics.put(
                      TempoLayout.placed(start, mark.offset()), mark.change().apply(Dynamic.MF)));
      measure
          .swells()
          .forEach(
              each -> swells.add(new PlacedSign<>(TempoLayout.placed(start, each.offset()), each)));
      measure.words().stream()
          .filter(each -> louder(each.text()).isPresent())
          .forEach(
              each -> words.add(new PlacedSign<>(TempoLayout.placed(start, each.offset()), each)));
    }
    swells.sort(Comparator.comparing(PlacedSign::at));
  }

  static List<Hairpin> of(WrittenPart part, Bars bars) {
    Hairpins hairpins = new Hairpins(part, bars);
    hairpins.match();
    hairpins.read();
    hairpins.found.sort(Comparator.comparing(hairpin -> hairpin.span().start()));
    return hairpins.found;
  }

  /** Empty for words that say neither. */
  private static Optional<Boolean> louder(String text) {
    String plain = text.toLowerCase(Locale.ROOT);
    return SOFTER.matcher(plain).find()
        ? Optional.of(false)
        : LOUDER.matcher(plain).find() ? Optional.of(true) : Optional.empty();
  }

  /** Starts with their stops; what never stops is none. */
  private void match() {
    Map<Open, PlacedSign<PlacedSwell>> open = new HashMap<>();
    for (PlacedSign<PlacedSwell> swell : swells) {
      SwellSign sign = swell.what().sign();
      boolean dashes = sign == SwellSign.DASHES || sign == SwellSign.DASHES_STOP;
      Open key = new Open(dashes, swell.what().number());
      if (sign == SwellSign.STOP || sign == SwellSign.DASHES_STOP) {
        Optional.ofNullable(open.remove(key)).ifPresent(start -> close(start, swell.at()));
      } else {
        open.put(key, swell);
      }
    }
  }

  private void close(PlacedSign<PlacedSwell> start, Position stop) {
    if (!start.at().isBefore(stop)) {
      return;
    }
    Span span = new Span(start.at(), stop);
    int staff = start.what().staff();
    if (start.what().sign() != SwellSign.DASHES) {
      boolean louder = start.what().sign() == SwellSign.LOUDER;
      found.add(new Hairpin(span, staff, louder, Optional.empty(), false, goal(span)));
      return;
    }
    words.stream()
        .filter(each -> each.at().equals(start.at()))
        .findFirst()
        .ifPresent(
            each -> {
              words.remove(each);
              found.add(hairpin(span, each.what(), true));
            });
  }

  /** What stands where a hairpin ends, or shortly after. */
  private Optional<Dynamic> goal(Span span) {
    return dynamics.subMap(span.end(), true, span.end().plus(NEAR), true).values().stream()
        .findFirst();
  }

  private Hairpin hairpin(Span span, PlacedWords words, boolean dashed) {
    return new Hairpin(
        span,
        words.staff(),
        louder(words.text()).orElseThrow(),
        Optional.of(words.text()),
        dashed,
        goal(span));
  }

  /** Words without dashes. */
  private void read() {
    for (PlacedSign<PlacedWords> each : words) {
      Position stop = end;
      Position dynamic = dynamics.higherKey(each.at());
      stop = dynamic != null && dynamic.isBefore(stop) ? dynamic : stop;
      for (PlacedSign<PlacedWords> other : words) {
        stop = other.at().isAfter(each.at()) && other.at().isBefore(stop) ? other.at() : stop;
      }
      if (each.at().isBefore(stop)) {
        found.add(hairpin(new Span(each.at(), stop), each.what(), false));
      }
    }
  }
}

package stafette.musicxml.newparts;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import stafette.musicxml.text.Element;
import stafette.musicxml.text.Origin;
import stafette.musicxml.text.TextSpan;
import stafette.musicxml.text.UnreadableScore;
import stafette.musicxml.text.XmlWalk;

/** The part list as it stands in the text: parts, and brackets that start and stop between them. */
final class PartListing {
  /** Symbols of groups that hold players of one instrument; a family has a bracket. */
  private static final Set<String> OF_ONE_INSTRUMENT = Set.of("brace", "square");

  private final Origin origin;
  private final List<Element> items;

  PartListing(Origin origin) {
    this.origin = origin;
    this.items = origin.partList().isEmpty() ? List.of() : read(origin);
  }

  private static List<Element> read(Origin origin) {
    try {
      return XmlWalk.open(origin.partList().in(origin.text())).element().children();
    } catch (UnreadableScore e) {
      throw new IllegalStateException("a part list that was read can't be read again", e);
    }
  }

  /** What an entry for a place stands beside, on that side; empty if the part isn't listed. */
  Optional<TextSpan> beside(PartPlace place) {
    OptionalInt part = indexOf(place.part());
    return part.isPresent()
        ? Optional.of(spanOf(outermost(place, part.getAsInt())))
        : Optional.empty();
  }

  private OptionalInt indexOf(String part) {
    return IntStream.range(0, items.size())
        .filter(i -> items.get(i).name().equals("score-part") && items.get(i).says("id", part))
        .findFirst();
  }

  /** The part, or the last end of a bracket next to it that the place doesn't share. */
  private int outermost(PartPlace place, int part) {
    boolean below = place.side() == PartPlace.Side.BELOW;
    int step = below ? 1 : -1;
    Predicate<Integer> isLeft =
        i ->
            items.get(i).name().equals("part-group")
                && items.get(i).says("type", below ? "stop" : "start")
                && leaves(place, symbol(i));
    int at = part;
    while (at + step >= 0 && at + step < items.size() && isLeft.test(at + step)) {
      at += step;
    }
    return at;
  }

  private static boolean leaves(PartPlace place, String symbol) {
    return switch (place.kinship()) {
      case INSTRUMENT -> false;
      case FAMILY -> OF_ONE_INSTRUMENT.contains(symbol);
      case NONE -> true;
    };
  }

  /** The symbol of the group that starts or stops here; "none" if it states none. */
  private String symbol(int index) {
    String number = number(items.get(index));
    int start = index;
    while (start > 0 && !isStart(items.get(start), number)) {
      start--;
    }
    return items.get(start).textOf("group-symbol").orElse("none");
  }

  private static boolean isStart(Element item, String number) {
    return item.name().equals("part-group")
        && item.says("type", "start")
        && number(item).equals(number);
  }

  private static String number(Element group) {
    return group.attribute("number").orElse("1");
  }

  private TextSpan spanOf(int index) {
    TextSpan within = items.get(index).span();
    int offset = origin.partList().start();
    return new TextSpan(offset + within.start(), offset + within.end());
  }
}

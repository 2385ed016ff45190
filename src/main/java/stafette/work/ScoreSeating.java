package stafette.work;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;
import stafette.chairs.Chair;
import stafette.chairs.ChairNumbers;
import stafette.chairs.Chairs;
import stafette.chairs.Sections;
import stafette.limits.Catalogue;
import stafette.limits.Division;
import stafette.limits.Instrument;
import stafette.limits.Singers;
import stafette.musicxml.newparts.PartPlace;
import stafette.musicxml.newparts.PartPlace.Kinship;
import stafette.musicxml.newparts.PartPlace.Side;
import stafette.musicxml.newparts.Seating;
import stafette.plan.Player;
import stafette.score.Part;
import stafette.score.Score;

/**
 * Where players sit in a score, by its names. New parts stand in score order (common practice, no
 * source): beside those of their instrument, by number; else in their family, else between the
 * families, but above keyboards at the foot of the score.
 */
record ScoreSeating(Score score, Catalogue catalogue, Chairs seated) implements Seating {
  private static final String KEYBOARD = "keyboard";
  private static final List<String> FAMILIES =
      List.of("woodwind", "brass", "percussion", "harp", "plucked", KEYBOARD, "strings");

  /** Instruments of one name whose keys are no further apart have one place, in semitones. */
  private static final int SAME_PLACE = 2;

  private static final int MOST_INSTRUMENTS = 10_000;
  private static final int MOST_NUMBERS = 10;

  ScoreSeating(Score score, Catalogue catalogue) {
    this(score, catalogue, Chairs.of(score, catalogue));
  }

  @Override
  public List<Chair> chairs(String part) {
    return score.part(part).map(seated::in).orElse(List.of());
  }

  @Override
  public Optional<PartPlace> place(Player player) {
    return besideSection(player)
        .or(() -> besideAlike(player))
        .or(() -> inScoreOrder(player))
        .or(() -> above(foot(), player));
  }

  /** The last part of the same instrument, if the player's name says a number and no more. */
  @Override
  public Optional<String> namesake(Player player) {
    int number = number(player.name());
    return number == 0 || !isPlain(player)
        ? Optional.empty()
        : last(score.parts().stream().filter(part -> isOf(player.instrument().name(), part)))
            .filter(
                part ->
                    ChairNumbers.renumbered(part.name(), number)
                        .filter(name -> score.part(name).isEmpty())
                        .isPresent())
            .map(Part::id);
  }

  /** Whether a player is called by the instrument, as one of its chairs. */
  private boolean isPlain(Player player) {
    return Chairs.isAName(player.name())
        && catalogue.find(player.name()).filter(isAlike(player.instrument())).isPresent();
  }

  private boolean isOf(String instrument, Part part) {
    return instrument(part).filter(own -> own.name().equals(instrument)).isPresent();
  }

  private Optional<PartPlace> besideSection(Player player) {
    return Division.named(player.name())
        .flatMap(division -> new Sections(score, catalogue).part(division.section()))
        .map(section -> place(player, section.id(), Side.BELOW, Kinship.INSTRUMENT));
  }

  /** After the last with a lower number, or before the first if all have higher ones. */
  private Optional<PartPlace> besideAlike(Player player) {
    List<Part> alike =
        score.parts().stream()
            .filter(part -> instrument(part).filter(isAlike(player.instrument())).isPresent())
            .toList();
    int number = number(player.name());
    return last(alike.stream().filter(part -> number == 0 || number(part.name()) <= number))
        .map(part -> place(player, part.id(), Side.BELOW, Kinship.INSTRUMENT))
        .or(
            () ->
                alike.stream()
                    .findFirst()
                    .map(part -> place(player, part.id(), Side.ABOVE, Kinship.INSTRUMENT)));
  }

  /** A part that stands at its instrument's place in the score order. */
  private record Seated(Part part, Instrument instrument, int order) {
    boolean isOfFamily(Player player) {
      return instrument.family().equals(player.instrument().family());
    }

    Kinship kinship(Player player) {
      return isOfFamily(player) ? Kinship.FAMILY : Kinship.NONE;
    }
  }

  private Optional<PartPlace> inScoreOrder(Player player) {
    List<Seated> seated = inOrder();
    int order = order(player.instrument());
    Comparator<Seated> byOrder = Comparator.comparingInt(Seated::order);
    Optional<Seated> above =
        last(seated.stream().filter(each -> each.order() < order).sorted(byOrder));
    Optional<Seated> below = seated.stream().filter(each -> each.order() > order).min(byOrder);
    boolean goesAbove =
        above.isEmpty()
            || (!above.get().isOfFamily(player)
                && below.filter(each -> each.isOfFamily(player)).isPresent());
    return goesAbove
        ? below.map(each -> place(player, each.part().id(), Side.ABOVE, each.kinship(player)))
        : above.map(each -> place(player, each.part().id(), Side.BELOW, each.kinship(player)));
  }

  private Optional<PartPlace> above(List<Part> foot, Player player) {
    return foot.stream()
        .findFirst()
        .map(part -> place(player, part.id(), Side.ABOVE, Kinship.NONE));
  }

  /** The parts whose place in the score order is known, but for those at the foot. */
  private List<Seated> inOrder() {
    return score.parts().stream()
        .limit(score.parts().size() - foot().size())
        .flatMap(part -> instrument(part).map(own -> new Seated(part, own, order(own))).stream())
        .toList();
  }

  /** The keyboards with which the score ends, if it does. */
  private List<Part> foot() {
    List<Part> parts = score.parts();
    int from = parts.size();
    while (from > 0 && isKeyboard(parts.get(from - 1))) {
      from--;
    }
    return parts.subList(from, parts.size());
  }

  /** Of a part that doesn't say what it is, two staves do. */
  private boolean isKeyboard(Part part) {
    return catalogue
        .of(part)
        .map(instrument -> instrument.family().equals(KEYBOARD))
        .orElse(part.voices().stream().anyMatch(voice -> voice.staff() > 1));
  }

  private Optional<Instrument> instrument(Part part) {
    return catalogue.of(part).filter(any -> !Singers.sing(part));
  }

  private PartPlace place(Player player, String part, Side side, Kinship kinship) {
    return new PartPlace(part, side, kinship, rank(player));
  }

  /** The order of new parts at one place: by instrument, then by number. */
  private int rank(Player player) {
    int number = Division.named(player.name()).map(Division::number).orElse(number(player.name()));
    return order(player.instrument()) * MOST_NUMBERS + number;
  }

  /** Where an instrument stands in the score order, from above. */
  private int order(Instrument instrument) {
    int family = FAMILIES.indexOf(instrument.family());
    List<Instrument> all = catalogue.instruments();
    int place = 0;
    while (place < all.size() && !isAlike(instrument).test(all.get(place))) {
      place++;
    }
    return (family < 0 ? FAMILIES.size() : family) * MOST_INSTRUMENTS + place;
  }

  /** Whether an instrument is another one, but perhaps in a key nearby. */
  private static Predicate<Instrument> isAlike(Instrument one) {
    return other ->
        one.bareName().equals(other.bareName())
            && Math.abs(one.transposition().chromatic() - other.transposition().chromatic())
                <= SAME_PLACE;
  }

  /** The first number in a name; 0 if it has none. */
  private static int number(String name) {
    return ChairNumbers.in(name).stream().findFirst().orElse(0);
  }

  private static <T> Optional<T> last(Stream<T> all) {
    return all.reduce((one, other) -> other);
  }
}

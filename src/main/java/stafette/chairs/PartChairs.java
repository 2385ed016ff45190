package stafette.chairs;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import stafette.limits.Catalogue;
import stafette.limits.Instrument;
import stafette.limits.TypedNames;
import stafette.score.Part;
import stafette.score.Stroke;
import stafette.score.Words;

/** Who reads from a part, by its name and what stands in it. */
final class PartChairs {
  /** Between the instruments of one chair: "Flute / Piccolo", "Reed 1: Fl., Cl.". */
  private static final Pattern DOUBLING =
      Pattern.compile("\\s*(?:[/&+,;]|\\b(?:and|und|et|e|u\\.)\\b|\\bdoubling\\b|\\bdbl\\.?)\\s*");

  private static final Pattern BOOK = Pattern.compile("^[^:]*:\\s*");

  /** Words that name several winds without a number. */
  private static final Pattern PLURAL =
      Pattern.compile(
          "(?i)(flutes|flauti|fl[öo]ten|fl[ûu]tes|oboes|oboi|oboen|hautbois|clarinets|clarinetti"
              + "|klarinetten|clarinettes|bassoons|fagotti|fagotte|bassons|horns|corni|h[öo]rner"
              + "|cors|trumpets|trombe|trompeten|trompettes|trombones|tromboni|posaunen)\\b.*");

  private final Part part;
  private final Sections sections;
  private final Catalogue catalogue;

  private PartChairs(Part part, Sections sections, Catalogue catalogue) {
    this.part = part;
    this.sections = sections;
    this.catalogue = catalogue;
  }

  /**
   * The chairs of a part.
   *
   * @param before those of other parts, whose names are taken
   */
  static List<Chair> of(Part part, Sections sections, Catalogue catalogue, List<Chair> before) {
    return new PartChairs(part, sections, catalogue).chairs(before);
  }

  private List<Chair> chairs(List<Chair> before) {
    List<Instrument> instruments = instruments();
    List<Integer> numbers = ChairNumbers.in(part.name());
    // Only winds share a staff player by player.
    boolean shared = instruments.stream().limit(1).anyMatch(Instrument::isWind);
    int count = !shared ? 1 : numbers.isEmpty() ? unnumbered() : numbers.size();
    if (count == 1) {
      return List.of(
          new Chair(
              part.id(),
              part.name(),
              1,
              1,
              numbers.stream().findFirst(),
              instruments,
              sections.isSection(part)));
    }
    List<Integer> all =
        numbers.isEmpty() ? IntStream.rangeClosed(1, count).boxed().toList() : numbers;
    return IntStream.range(0, count)
        .mapToObj(i -> chair(i + 1, count, all.get(i), instruments, before))
        .toList();
  }

  private Chair chair(
      int place, int of, int number, List<Instrument> instruments, List<Chair> before) {
    Instrument usual = instruments.get(0);
    String bare = TypedNames.capitalised(usual.bareName()) + " " + number;
    boolean taken = before.stream().anyMatch(other -> TypedNames.same(other.name(), bare));
    String name = taken ? TypedNames.capitalised(usual.name()) + " " + number : bare;
    return new Chair(part.id(), name, place, of, Optional.of(number), instruments, false);
  }

  /** The usual one first. */
  private List<Instrument> instruments() {
    List<Instrument> found = new ArrayList<>(catalogue.of(part).stream().toList());
    String doubling = BOOK.matcher(part.name()).replaceFirst("");
    Stream.of(DOUBLING.split(doubling))
        .filter(piece -> piece.chars().anyMatch(Character::isLetter))
        .flatMap(piece -> catalogue.find(piece).stream())
        .forEach(found::add);
    List<Instrument> distinct = new ArrayList<>();
    for (Instrument each : found) {
      boolean known = distinct.stream().anyMatch(other -> other.bareName().equals(each.bareName()));
      if (!known) {
        distinct.add(each);
      }
    }
    return distinct;
  }

  /** Of "Flutes", as many as are seen, two at least; of "Flute" with "a 2" or "2." as many. */
  private int unnumbered() {
    int named = PLURAL.matcher(part.name().trim()).matches() ? 2 : 1;
    int marked =
        part.marks().words().stream()
            .map(Words::text)
            .flatMap(words -> ChairMark.in(words).stream())
            .flatMap(mark -> mark.numbers().stream())
            .max(Integer::compare)
            .orElse(1);
    return named == 1 ? 1 : Math.max(named, Math.max(marked, most()));
  }

  /** The most notes at once on one staff, of several voices together. */
  private int most() {
    return part.voices().stream()
        .flatMap(voice -> voice.strokes().stream())
        .map(Stroke::tones)
        .mapToInt(List::size)
        .filter(tones -> tones <= 4)
        .max()
        .orElse(1);
  }
}

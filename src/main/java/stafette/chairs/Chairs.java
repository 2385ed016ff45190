package stafette.chairs;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import stafette.limits.Catalogue;
import stafette.limits.Division;
import stafette.limits.Instrument;
import stafette.limits.TypedNames;
import stafette.score.Part;
import stafette.score.Score;

/** Who plays in a score. */
public final class Chairs {
  private final Score score;
  private final Catalogue catalogue;
  private final List<Chair> all;
  private final Map<Chair, List<GivenNote>> given = new HashMap<>();

  private Chairs(Score score, Catalogue catalogue, List<Chair> all) {
    this.score = score;
    this.catalogue = catalogue;
    this.all = List.copyOf(all);
  }

  /** The chairs of a score, from top to bottom. */
  public static Chairs of(Score score, Catalogue catalogue) {
    Sections sections = new Sections(score, catalogue);
    List<Chair> all = new ArrayList<>();
    for (Part part : score.parts()) {
      all.addAll(PartChairs.of(part, sections, catalogue, all));
    }
    return new Chairs(score, catalogue, all);
  }

  public List<Chair> all() {
    return all;
  }

  /** Who reads from a part, from above. */
  public List<Chair> in(Part part) {
    return all.stream().filter(chair -> chair.part().equals(part.id())).toList();
  }

  /**
   * The chair that a name means: by its name, else by instrument and number, whatever the language:
   * "Flute 2" of a part that is called "Flutes 1.2" or "Flauto II", "Piccolo" for the only chair
   * that holds one.
   */
  public Optional<Chair> named(String name) {
    Optional<Part> part = score.part(name);
    if (part.isPresent()) {
      return alone(part.get());
    }
    return all.stream()
        .filter(chair -> TypedNames.same(chair.name(), name))
        .findFirst()
        .or(() -> catalogue.find(name).flatMap(instrument -> like(name, instrument)));
  }

  private Optional<Chair> alone(Part part) {
    List<Chair> chairs = in(part);
    return chairs.size() == 1 ? Optional.of(chairs.get(0)) : Optional.empty();
  }

  private Optional<Chair> like(String name, Instrument instrument) {
    List<Integer> numbers = ChairNumbers.in(name);
    if (numbers.size() > 1 || !isAName(name)) {
      return Optional.empty();
    }
    Optional<Integer> number = numbers.stream().findFirst();
    boolean inAnyKey = !TypedNames.plain(name).contains(" in ");
    return Stream.of(
            holding(number, own -> own.name().equals(instrument.name())),
            holding(number, own -> inAnyKey && own.bareName().equals(instrument.bareName())))
        .filter(found -> found.size() == 1)
        .map(found -> found.get(0))
        .findFirst();
  }

  /**
   * Whether a name may be that of a chair: a soloist sits in no section, and a division is some of
   * one.
   */
  public static boolean isAName(String name) {
    return Division.named(name).isEmpty()
        && !TypedNames.plain(name).matches(".*\\b(solo|principal|soloist)\\b.*");
  }

  /** Chairs with that number, or the only one, before those that hold the instrument besides. */
  private List<Chair> holding(Optional<Integer> number, Predicate<Instrument> instrument) {
    List<Chair> usual =
        all.stream()
            .filter(chair -> chair.instruments().stream().limit(1).anyMatch(instrument))
            .toList();
    List<Chair> found = numbered(usual, number);
    return found.isEmpty()
        ? numbered(
            all.stream()
                .filter(chair -> chair.instruments().stream().anyMatch(instrument))
                .toList(),
            number)
        : found;
  }

  private static List<Chair> numbered(List<Chair> chairs, Optional<Integer> number) {
    boolean fits =
        number.isEmpty()
            || (number.get() == 1 && chairs.stream().allMatch(one -> one.number().isEmpty()));
    if (chairs.size() == 1 && fits) {
      return chairs;
    }
    return number.isEmpty()
        ? List.of()
        : chairs.stream().filter(chair -> chair.number().equals(number)).toList();
  }

  /** Whether a name reads as that of one who shares a part: "Flute 2" of "Flutes 1.2". */
  public static boolean mayMean(String name, Part part) {
    List<Integer> own = ChairNumbers.in(name);
    return own.size() == 1
        && ChairNumbers.in(part.name()).containsAll(own)
        && words(part.name()).containsAll(words(name));
  }

  private static Set<String> words(String name) {
    return Stream.of(TypedNames.plain(name).split(" ", -1))
        .filter(word -> !word.matches("[0-9]+|[iv]+"))
        .map(word -> word.replaceFirst("s$", ""))
        .collect(Collectors.toSet());
  }

  /** The chairs for whom the name of a part stands: "Flutes 1.2"; empty if that is one chair's. */
  public List<Chair> severalNamed(String name) {
    return score.part(name).map(this::in).filter(chairs -> chairs.size() > 1).orElse(List.of());
  }

  /** The part from which a chair reads. */
  public Optional<Part> part(Chair chair) {
    return score.part(chair.part());
  }

  /** What a chair has to play in the score, by onset. */
  public List<GivenNote> given(Chair chair) {
    return given.computeIfAbsent(
        chair,
        one ->
            score
                .part(one.part())
                .map(part -> new PartGiven(part, in(part), score.bars(), catalogue).of(one))
                .orElse(List.of()));
  }
}

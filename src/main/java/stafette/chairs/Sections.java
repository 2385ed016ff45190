package stafette.chairs;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import stafette.limits.Catalogue;
import stafette.limits.Instrument;
import stafette.limits.TypedNames;
import stafette.score.Part;
import stafette.score.Score;

/** The sections of bowed strings in a score, which can be divided. */
public record Sections(Score score, Catalogue catalogue) {
  private static final String BOWED = "strings";

  /**
   * Words that name many: of these a part or a person means a section. Languages as in the tables;
   * the list is ours.
   */
  private static final Set<String> MANY =
      Set.of(
          ("section tutti strings violins violini violinen geigen violons violas viole violen"
                  + " bratschen altos cellos celli violoncellos violoncelli violoncelles basses"
                  + " contrabasses contrabassi contrabbassi kontrabasse contrebasses")
              .split(" "));

  /** One of each in a score is as a rule an orchestra's, whatever the parts are called. */
  private static final int FEWEST_BOWED = 5;

  private static final int FEWEST_WINDS = 4;

  /**
   * The part of a section: the one of that name, else the one of the same instrument and number, as
   * "Violin I" is where "Violins 1" are asked for.
   */
  public Optional<Part> part(String section) {
    return score.part(section).or(() -> alike(section));
  }

  private Optional<Part> alike(String section) {
    Optional<Instrument> instrument = catalogue.find(section);
    return instrument.isEmpty()
        ? Optional.empty()
        : score.parts().stream()
            .filter(part -> catalogue.of(part).equals(instrument))
            .filter(part -> numbers(part.name()).equals(numbers(section)))
            .findFirst();
  }

  /** Whether so many play from a part that they can be divided. */
  public boolean isSection(Part part) {
    return catalogue.of(part).filter(Sections::isBowed).isPresent()
        && words(part.name()).noneMatch("solo"::equals)
        && (namesMany(part.name()) || isOrchestral());
  }

  /** Whether a section of that name, in this score or not, can be divided. */
  public boolean canDivide(String section) {
    return part(section).map(this::isSection).orElseGet(() -> namesMany(section));
  }

  public static boolean isBowed(Instrument instrument) {
    return instrument.family().equals(BOWED);
  }

  private static boolean namesMany(String name) {
    return words(name).anyMatch(MANY::contains);
  }

  private boolean isOrchestral() {
    List<String> families =
        score.parts().stream()
            .flatMap(part -> catalogue.of(part).stream())
            .map(Instrument::family)
            .toList();
    long bowed = families.stream().filter(BOWED::equals).count();
    long winds = families.stream().filter(Set.of("woodwind", "brass")::contains).count();
    return bowed >= FEWEST_BOWED && winds >= FEWEST_WINDS;
  }

  private static Set<Integer> numbers(String name) {
    return words(name).flatMap(word -> number(word).stream()).collect(Collectors.toSet());
  }

  private static Optional<Integer> number(String word) {
    return switch (word) {
      case "i", "1", "1st", "first" -> Optional.of(1);
      case "ii", "2", "2nd", "second" -> Optional.of(2);
      case "iii", "3", "3rd", "third" -> Optional.of(3);
      case "iv", "4", "4th", "fourth" -> Optional.of(4);
      default -> Optional.empty();
    };
  }

  private static Stream<String> words(String name) {
    return Arrays.stream(TypedNames.plain(name).split(" "));
  }
}

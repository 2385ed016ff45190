package stafette.work;

import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import stafette.chairs.Chair;
import stafette.chairs.Chairs;
import stafette.chairs.Sections;
import stafette.limits.Catalogue;
import stafette.limits.Division;
import stafette.limits.Instrument;
import stafette.musicxml.newparts.Seating;
import stafette.plan.Player;
import stafette.score.Part;
import stafette.score.Score;

/** Where players sit in a score, by its names. */
record ScoreSeating(Score score, Catalogue catalogue, Chairs seated) implements Seating {
  private static final String KEYS = "keyboard";

  /** From the top of a score (common practice, no source). */
  private static final List<String> FAMILIES =
      List.of("woodwind", "brass", "percussion", "harp", "plucked", KEYS, "strings");

  ScoreSeating(Score score, Catalogue catalogue) {
    this(score, catalogue, Chairs.of(score, catalogue));
  }

  @Override
  public List<Chair> chairs(String part) {
    return score.part(part).map(seated::in).orElse(List.of());
  }

  /**
   * That of the section of which a player is a division, else the last part of its instrument, else
   * the last of its family that stands above it in a score.
   */
  @Override
  public Optional<String> neighbour(Player player) {
    return Division.named(player.name())
        .flatMap(division -> new Sections(score, catalogue).part(division.section()))
        .map(Part::id)
        .or(() -> last(each -> isTwin(each, player)))
        .or(() -> last(each -> isKin(each, player) && rank(each) <= rank(player)));
  }

  private Optional<String> last(Predicate<Instrument> isMeant) {
    return score.parts().stream()
        .filter(part -> catalogue.of(part).filter(isMeant).isPresent())
        .map(Part::id)
        .reduce((one, later) -> later);
  }

  private static boolean isTwin(Instrument one, Player player) {
    return one.bareName().equals(player.instrument().bareName());
  }

  private static boolean isKin(Instrument one, Player player) {
    return one.family().equals(player.instrument().family());
  }

  /** In a score for keyboards alone above them, whatever the instrument. */
  @Override
  public Optional<PartBelow> below(Player player) {
    boolean keysAlone =
        score.parts().stream()
            .flatMap(part -> catalogue.of(part).stream())
            .allMatch(instrument -> instrument.family().equals(KEYS));
    int own = keysAlone ? FAMILIES.indexOf(KEYS) - 1 : FAMILIES.indexOf(family(player));
    for (Part part : score.parts()) {
      Optional<Instrument> there = catalogue.of(part);
      if (there.filter(each -> isKin(each, player)).isPresent()) {
        return Optional.of(new PartBelow(part.id(), true));
      }
      if (there.filter(each -> FAMILIES.indexOf(each.family()) > own).isPresent()) {
        return Optional.of(new PartBelow(part.id(), false));
      }
    }
    return Optional.empty();
  }

  @Override
  public int rank(Player player) {
    return rank(player.instrument());
  }

  private int rank(Instrument instrument) {
    List<String> names = catalogue.instruments().stream().map(Instrument::name).toList();
    return FAMILIES.indexOf(instrument.family()) * names.size() + names.indexOf(instrument.name());
  }

  private static String family(Player player) {
    return player.instrument().family();
  }
}

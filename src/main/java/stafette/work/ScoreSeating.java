package stafette.work;

import java.util.List;
import java.util.Optional;
import stafette.chairs.Chair;
import stafette.chairs.Chairs;
import stafette.chairs.Sections;
import stafette.limits.Catalogue;
import stafette.limits.Division;
import stafette.limits.Instrument;
import stafette.musicxml.write.Seating;
import stafette.plan.Player;
import stafette.score.Part;
import stafette.score.Score;

/** Where players sit in a score, by its names. */
record ScoreSeating(Score score, Catalogue catalogue, Chairs seated) implements Seating {
  ScoreSeating(Score score, Catalogue catalogue) {
    this(score, catalogue, Chairs.of(score, catalogue));
  }

  @Override
  public List<Chair> chairs(String part) {
    return score.part(part).map(seated::in).orElse(List.of());
  }

  /**
   * That of the section of which a player is a division, else the last part of its instrument, else
   * of its family.
   */
  @Override
  public Optional<String> neighbour(Player player) {
    return Division.named(player.name())
        .flatMap(division -> new Sections(score, catalogue).part(division.section()))
        .map(Part::id)
        .or(() -> kin(player));
  }

  private Optional<String> kin(Player player) {
    Optional<String> kin = Optional.empty();
    Optional<String> twin = Optional.empty();
    for (Part part : score.parts()) {
      Optional<Instrument> instrument = catalogue.of(part);
      if (instrument.isPresent()
          && instrument.get().family().equals(player.instrument().family())) {
        kin = Optional.of(part.id());
        if (instrument.get().name().equals(player.instrument().name())) {
          twin = kin;
        }
      }
    }
    return twin.isPresent() ? twin : kin;
  }
}

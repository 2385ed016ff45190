package stafette.json;

import stafette.check.ShownTechnique;
import stafette.json.Means.Least;

/** What a player is told to use in a stretch. */
@Means("What a player is told to use in a stretch.")
record ShownTechniqueJson(
    @Means("As in the tables of limits.") String name,
    @Means("First stroke of the line, counted from 0.") @Least(0) int first,
    @Means("Last stroke, included.") @Least(0) int last) {
  static ShownTechniqueJson of(ShownTechnique shown) {
    return new ShownTechniqueJson(shown.technique().name(), shown.first(), shown.last());
  }
}

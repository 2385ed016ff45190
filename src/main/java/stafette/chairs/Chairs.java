package stafette.chairs;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stafette.limits.Catalogue;
import stafette.limits.TypedNames;
import stafette.score.Part;
import stafette.score.Score;

/** Who plays in a score. */
public final class Chairs {
  private final Score score;
  private final List<Chair> all;

  private Chairs(Score score, List<Chair> all) {
    this.score = score;
    this.all = List.copyOf(all);
  }

  /** The chairs of a score, from top to bottom. */
  public static Chairs of(Score score, Catalogue catalogue) {
    List<Chair> all = new ArrayList<>();
    for (Part part : score.parts()) {
      all.add(
          new Chair(
              part.id(),
              part.name(),
              1,
              1,
              Optional.empty(),
              catalogue.of(part).stream().toList(),
              false));
    }
    return new Chairs(score, all);
  }

  public List<Chair> all() {
    return all;
  }

  /** Who reads from a part, from above. */
  public List<Chair> in(Part part) {
    return all.stream().filter(chair -> chair.part().equals(part.id())).toList();
  }

  /**
   * The chair that a name means: "Flute 2" of a part that is called "Flutes 1.2", or "Flauto 2".
   */
  public Optional<Chair> named(String name) {
    return all.stream().filter(chair -> TypedNames.same(chair.name(), name)).findFirst();
  }

  /** The chairs for whom the name of a part stands: "Flutes 1.2"; empty if that is one chair's. */
  public List<Chair> severalNamed(String name) {
    return score.part(name).map(this::in).filter(chairs -> chairs.size() > 1).orElse(List.of());
  }

  /** What a chair has to play in the score, by onset. */
  public List<GivenNote> given(Chair chair) {
    return score.part(chair.part()).stream()
        .flatMap(part -> part.voices().stream())
        .flatMap(voice -> voice.strokes().stream())
        .map(stroke -> new GivenNote(stroke, chair.instruments().stream().findFirst()))
        .toList();
  }
}

package stafette.musicxml.read;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import stafette.musicxml.text.DecimalText;
import stafette.musicxml.text.Element;
import stafette.musicxml.text.Malformed;
import stafette.score.Articulation;
import stafette.score.Dynamic;

/**
 * The marks on a note.
 *
 * @param tiedFrom whether a tied mark ends here
 * @param tiedOn whether a tied mark begins here
 * @param tupletStarts how many tuplets begin here
 * @param tupletStops how many tuplets end here
 * @param slurs ends of slurs, in order
 * @param tremolo slashes through its stem
 * @param trill signs of a trill
 * @param articulations and bowings
 * @param dynamic what a dynamic mark on the note leaves in force
 */
record Notations(
    boolean tiedFrom,
    boolean tiedOn,
    int tupletStarts,
    int tupletStops,
    List<SlurEnd> slurs,
    Optional<Slashes> tremolo,
    TrillSigns trill,
    Set<Articulation> articulations,
    Optional<Dynamic> dynamic) {
  static final Notations NONE =
      new Notations(
          false,
          false,
          0,
          0,
          List.of(),
          Optional.empty(),
          TrillSigns.NONE,
          Set.of(),
          Optional.empty());

  private static final Map<String, Articulation> ARTICULATIONS =
      Map.of(
          "staccato", Articulation.STACCATO,
          "staccatissimo", Articulation.STACCATISSIMO,
          "spiccato", Articulation.SPICCATO,
          "tenuto", Articulation.TENUTO,
          "detached-legato", Articulation.DETACHED_LEGATO,
          "accent", Articulation.ACCENT,
          "strong-accent", Articulation.STRONG_ACCENT,
          "stress", Articulation.STRESS,
          "up-bow", Articulation.UP_BOW,
          "down-bow", Articulation.DOWN_BOW);

  private static final Set<String> TRILLS = Set.of("trill-mark", "shake");

  /**
   * One end of a slur.
   *
   * @param starts whether it begins here
   * @param number the number that tells slurs apart
   */
  record SlurEnd(boolean starts, String number) {}

  /** What the slashes join. */
  enum Joined {
    NOTHING,
    WITH_NEXT,
    WITH_PREVIOUS
  }

  /**
   * Slashes through a stem or between two.
   *
   * @param count how many, besides the note's own beams
   * @param joined whether two notes alternate
   * @param measured false if the file itself says that they are unmeasured
   */
  record Slashes(int count, Joined joined, boolean measured) {}

  /**
   * Signs of a trill.
   *
   * @param marked whether its sign stands here
   * @param starts whether a wavy line begins here
   * @param stops whether a wavy line ends here
   */
  record TrillSigns(boolean marked, boolean starts, boolean stops) {
    static final TrillSigns NONE = new TrillSigns(false, false, false);
  }

  static Notations in(Element note) throws Malformed {
    List<Element> marks = new ArrayList<>();
    for (Element notations : note.all("notations")) {
      marks.addAll(notations.children());
    }
    if (marks.isEmpty()) {
      return NONE;
    }
    return new Notations(
        any(marks, "tied", "stop"),
        any(marks, "tied", "start"),
        count(marks, "tuplet", "start"),
        count(marks, "tuplet", "stop"),
        slurs(marks),
        slashes(marks),
        trill(marks),
        articulations(marks),
        marks.stream()
            .filter(mark -> mark.name().equals("dynamics"))
            .flatMap(mark -> DynamicMark.leftBy(mark).stream())
            .reduce((first, last) -> last));
  }

  private static int count(List<Element> marks, String name, String type) {
    return (int) marks.stream().filter(m -> m.name().equals(name) && m.says("type", type)).count();
  }

  private static boolean any(List<Element> marks, String name, String type) {
    return count(marks, name, type) > 0;
  }

  private static List<SlurEnd> slurs(List<Element> marks) {
    return marks.stream()
        .filter(mark -> mark.name().equals("slur"))
        .filter(mark -> mark.says("type", "start") || mark.says("type", "stop"))
        .map(mark -> new SlurEnd(mark.says("type", "start"), mark.attribute("number").orElse("1")))
        .toList();
  }

  private static Optional<Slashes> slashes(List<Element> marks) throws Malformed {
    for (Element ornaments : marks) {
      Optional<Element> tremolo = ornaments.child("tremolo");
      if (ornaments.name().equals("ornaments") && tremolo.isPresent()) {
        return Optional.of(slashes(tremolo.get()));
      }
    }
    return Optional.empty();
  }

  private static Slashes slashes(Element tremolo) throws Malformed {
    int count = tremolo.text().isEmpty() ? 3 : DecimalText.whole(tremolo, 0, 8);
    Joined joined =
        switch (tremolo.attribute("type").orElse("single")) {
          case "start" -> Joined.WITH_NEXT;
          case "stop" -> Joined.WITH_PREVIOUS;
          default -> Joined.NOTHING;
        };
    return new Slashes(count, joined, !tremolo.says("type", "unmeasured"));
  }

  private static TrillSigns trill(List<Element> marks) {
    List<Element> ornaments =
        marks.stream()
            .filter(mark -> mark.name().equals("ornaments"))
            .flatMap(mark -> mark.children().stream())
            .toList();
    return new TrillSigns(
        ornaments.stream().anyMatch(sign -> TRILLS.contains(sign.name())),
        any(ornaments, "wavy-line", "start"),
        any(ornaments, "wavy-line", "stop"));
  }

  private static Set<Articulation> articulations(List<Element> marks) {
    Set<Articulation> found = EnumSet.noneOf(Articulation.class);
    for (Element group : marks) {
      if (group.name().equals("articulations") || group.name().equals("technical")) {
        for (Element mark : group.children()) {
          Optional.ofNullable(ARTICULATIONS.get(mark.name())).ifPresent(found::add);
        }
      }
    }
    return found;
  }
}

package stafette.musicxml.share;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import stafette.chairs.Chair;
import stafette.limits.Division;
import stafette.plan.Player;

/**
 * What is written over a staff of several players to say who plays: "1.", "a 2", "div., outside",
 * "unis."
 *
 * @param chairs who reads from the staff, from above; one for a section
 * @param division of those who play, if a section is divided
 */
public record ChairLabels(List<Chair> chairs, Optional<Division> division) {
  /** For some of those who share a part. */
  public static ChairLabels of(List<Player> players, List<Chair> chairs) {
    return new ChairLabels(
        chairs,
        players.stream().map(Player::name).flatMap(n -> Division.named(n).stream()).findFirst());
  }

  private int count() {
    return division.map(Division::parts).orElse(chairs.size());
  }

  /** What says that these play, by their places from above. */
  public String of(Set<Integer> places) {
    if (places.size() == count()) {
      return all();
    }
    return division.isPresent()
        ? places.stream().sorted().map(this::desks).collect(Collectors.joining(", "))
        : places.stream().sorted().map(this::number).collect(Collectors.joining());
  }

  /** What says so where nothing was said before: a section has to divide. */
  public String first(Set<Integer> places) {
    boolean divides = division.isPresent() && places.size() < count();
    return divides ? "div. a " + count() + ", " + of(places) : of(places);
  }

  /** What says that all play. */
  public String all() {
    return division.isPresent() ? "unis." : "a " + count();
  }

  private String number(int place) {
    return chairs.get(place - 1).number().orElse(place) + ".";
  }

  private String desks(int place) {
    Division whole = division.orElseThrow();
    String name = new Division(whole.section(), place, whole.parts()).name();
    return name.substring(whole.section().length()).trim();
  }
}

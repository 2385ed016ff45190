package stafette.ask;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stafette.limits.Act;
import stafette.limits.Catalogue;
import stafette.limits.Instrument;
import stafette.limits.Technique;
import stafette.limits.TypedNames;
import stafette.plan.Player;
import stafette.score.Line;

/**
 * What somebody says of the techniques of players: one that not everybody has is allowed, or those
 * that are set take the place of all expected ones.
 *
 * @param player the player's name; everybody if empty
 * @param technique its name
 * @param instead whether it takes the place of all that are not set likewise
 */
public record Allowance(Optional<String> player, String technique, boolean instead) {
  /** A technique that is allowed beside the others. */
  public Allowance(Optional<String> player, String technique) {
    this(player, technique, false);
  }

  /**
   * Reads "double tonguing" or "Clarinet 1: double tonguing", several of them with commas between.
   *
   * @param instead whether these techniques take the place of all others
   */
  public static List<Allowance> parse(List<String> texts, boolean instead) {
    List<Allowance> result = new ArrayList<>();
    for (String text : texts) {
      Optional<String> player = Optional.empty();
      for (String entry : text.split(",", -1)) {
        int colon = entry.indexOf(':');
        player = colon < 0 ? player.filter(own -> instead) : own(entry.substring(0, colon));
        result.add(new Allowance(player, entry.substring(colon + 1).trim(), instead));
      }
    }
    return List.copyOf(result);
  }

  private static Optional<String> own(String player) {
    return Optional.of(player.trim());
  }

  /**
   * What a player brings: what is set; else what is expected of everybody, and what is allowed
   * besides. Where the score says that all of the lines are plucked, plucking is expected too.
   */
  public static List<Technique> usable(
      List<Allowance> all, String player, Instrument instrument, List<Line> lines) {
    boolean plucked = lines.stream().allMatch(Line::isPlucked);
    boolean set =
        instrument.techniques().stream()
            .anyMatch(
                technique ->
                    all.stream()
                        .anyMatch(one -> one.instead && one.covers(player, instrument, technique)));
    return instrument.techniques().stream()
        .filter(
            technique ->
                (!set && (technique.expected() || (plucked && technique.act() == Act.PLUCK)))
                    || all.stream().anyMatch(one -> one.covers(player, instrument, technique)))
        .toList();
  }

  /** One for each player whom it covers. */
  public List<Allowance> forEachOf(List<Player> players) {
    return players.stream()
        .flatMap(
            one ->
                Catalogue.technique(one.instrument(), technique).stream()
                    .filter(wanted -> covers(one.name(), one.instrument(), wanted))
                    .map(wanted -> new Allowance(Optional.of(one.name()), wanted.name(), instead)))
        .toList();
  }

  public boolean isFor(String name) {
    return player.filter(one -> TypedNames.same(one, name)).isPresent();
  }

  public boolean covers(String playerName, Instrument instrument, Technique wanted) {
    return (player.isEmpty() || isFor(playerName))
        && Catalogue.technique(instrument, technique).equals(Optional.of(wanted));
  }

  /** Whether somebody has a technique that it covers. */
  public boolean coversAnyOf(List<Player> players) {
    return players.stream()
        .anyMatch(
            one ->
                one.instrument().techniques().stream()
                    .anyMatch(each -> covers(one.name(), one.instrument(), each)));
  }
}

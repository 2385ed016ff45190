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
 * A technique that not everybody has, allowed for all players or for one.
 *
 * @param player the player's name; everybody if empty
 * @param technique its name
 */
public record Allowance(Optional<String> player, String technique) {
  /**
   * Reads "double tonguing" or "Clarinet 1: double tonguing", several of them with commas between.
   */
  public static List<Allowance> parse(List<String> texts) {
    List<Allowance> result = new ArrayList<>();
    for (String text : texts) {
      for (String entry : text.split(",", -1)) {
        int colon = entry.indexOf(':');
        Optional<String> player =
            colon < 0 ? Optional.empty() : Optional.of(entry.substring(0, colon).trim());
        result.add(new Allowance(player, entry.substring(colon + 1).trim()));
      }
    }
    return List.copyOf(result);
  }

  /**
   * What a player may use: what is expected of everybody, or on the lines as the score says that
   * they are played, and what is allowed besides.
   */
  public static List<Technique> usable(
      List<Allowance> all, String player, Instrument instrument, List<Line> lines) {
    boolean plucked = lines.stream().allMatch(Line::isPlucked);
    return instrument.techniques().stream()
        .filter(
            technique ->
                technique.expected()
                    || (plucked && technique.act() == Act.PLUCK)
                    || all.stream().anyMatch(one -> one.covers(player, instrument, technique)))
        .toList();
  }

  /** One allowance for each player whom it covers. */
  public List<Allowance> forEachOf(List<Player> players) {
    return players.stream()
        .flatMap(
            one ->
                Catalogue.technique(one.instrument(), technique).stream()
                    .filter(wanted -> covers(one.name(), one.instrument(), wanted))
                    .map(wanted -> new Allowance(Optional.of(one.name()), wanted.name())))
        .toList();
  }

  public boolean isFor(String name) {
    return player.filter(one -> TypedNames.same(one, name)).isPresent();
  }

  public boolean covers(String playerName, Instrument instrument, Technique wanted) {
    return (player.isEmpty() || isFor(playerName))
        && Catalogue.technique(instrument, technique).equals(Optional.of(wanted));
  }
}

package stafette.ask;

import java.nio.file.Path;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import stafette.json.PlayersFile;
import stafette.keep.FileDoor;
import stafette.keep.LimitsInForce;
import stafette.limits.Capability;
import stafette.limits.Grade;
import stafette.limits.Instrument;
import stafette.limits.OwnTechniques;
import stafette.limits.Saying;
import stafette.limits.Source;
import stafette.limits.Technique;
import stafette.words.Refusal;
import stafette.words.UnreadableFile;

/**
 * Players whose own limits were measured.
 *
 * @param file what a file says of them
 * @param byHand what was said of them since, by player and technique
 * @param said what was said in words of them since, by player and technique
 * @param freed those who leave out for the line what the score gives them
 */
public record MeasuredPlayers(
    PlayersFile file,
    Map<String, Map<String, Capability>> byHand,
    Map<String, Map<String, Saying>> said,
    Set<String> freed) {
  private static final Source IN_WORDS = new Source("the player's own figure, in words", Grade.D);

  public MeasuredPlayers {
    byHand = Map.copyOf(byHand);
    said = Map.copyOf(said);
    freed = Set.copyOf(freed);
  }

  public static MeasuredPlayers load(Optional<Path> file, LimitsInForce limits) throws Refusal {
    try {
      return new MeasuredPlayers(
          file.isPresent()
              ? PlayersFile.read(
                  file.get().toString(), FileDoor.read(file.get()), limits.catalogue())
              : new PlayersFile(Map.of(), Map.of()),
          Map.of(),
          Map.of(),
          Set.of());
    } catch (UnreadableFile e) {
      throw Refusal.ofFile(e.inWords());
    }
  }

  /** All of them, as if they had been asked for by name. */
  List<PlayerWish> wishes() {
    return file.players().keySet().stream()
        .map(name -> new PlayerWish(name, Optional.empty()))
        .toList();
  }

  Optional<Instrument> instrumentOf(String player) {
    return file.of(player);
  }

  /** What a player was said to be capable of with a technique. */
  Optional<Capability> capability(String player, Technique technique) {
    return Optional.ofNullable(byHand.getOrDefault(player, Map.of()).get(technique.name()));
  }

  /** An instrument in the hands of a player of whom something may have been said. */
  Instrument asSaid(String player, Instrument usual) {
    Map<String, Saying> sayings = said.getOrDefault(player, Map.of());
    return OwnTechniques.in(
        usual,
        usual.techniques().stream()
            .filter(technique -> sayings.containsKey(technique.name()))
            .map(
                technique ->
                    technique.with(
                        Objects.requireNonNull(sayings.get(technique.name())).on(technique),
                        true,
                        IN_WORDS))
            .toList());
  }

  /** Players with what one more is capable of; it takes the place of what was said of it. */
  MeasuredPlayers with(String player, Map<String, Capability> capabilities) {
    Map<String, Saying> sayings = new HashMap<>(said.getOrDefault(player, Map.of()));
    sayings.keySet().removeAll(capabilities.keySet());
    return new MeasuredPlayers(
        file, with(byHand, player, capabilities), with(said, player, sayings), freed);
  }

  /**
   * Players with what is said of a technique of one; it takes the place of figures.
   *
   * @param saying nothing any more if empty
   */
  MeasuredPlayers saying(String player, String technique, Optional<Saying> saying) {
    Map<String, Saying> sayings = new HashMap<>(said.getOrDefault(player, Map.of()));
    Map<String, Capability> figures = new HashMap<>(byHand.getOrDefault(player, Map.of()));
    sayings.remove(technique);
    saying.ifPresent(
        words -> {
          sayings.put(technique, words);
          figures.remove(technique);
        });
    return new MeasuredPlayers(
        file, with(byHand, player, figures), with(said, player, sayings), freed);
  }

  private static <T> Map<String, Map<String, T>> with(
      Map<String, Map<String, T>> before, String player, Map<String, T> now) {
    Map<String, Map<String, T>> all = new HashMap<>(before);
    all.put(player, Map.copyOf(now));
    return all;
  }

  /** Players of whom one leaves out what the score gives, or doesn't. */
  MeasuredPlayers freeing(String player, boolean free) {
    Set<String> others = new HashSet<>(freed);
    if (free) {
      others.add(player);
    } else {
      others.remove(player);
    }
    return new MeasuredPlayers(file, byHand, said, others);
  }
}

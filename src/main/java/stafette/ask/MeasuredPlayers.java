package stafette.ask;

import java.nio.file.Path;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import stafette.json.PlayersFile;
import stafette.keep.FileDoor;
import stafette.keep.LimitsInForce;
import stafette.limits.Capability;
import stafette.limits.Instrument;
import stafette.limits.Technique;
import stafette.words.Refusal;
import stafette.words.UnreadableFile;

/**
 * Players whose own limits were measured.
 *
 * @param file what a file says of them
 * @param byHand what was said of them since, by player and technique
 * @param freed those who leave out for the line what the score gives them
 */
public record MeasuredPlayers(
    PlayersFile file, Map<String, Map<String, Capability>> byHand, Set<String> freed) {
  public MeasuredPlayers {
    byHand = Map.copyOf(byHand);
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

  /** Players with what is said of one more. */
  MeasuredPlayers with(String player, Map<String, Capability> capabilities) {
    Map<String, Map<String, Capability>> all = new HashMap<>(byHand);
    all.put(player, Map.copyOf(capabilities));
    return new MeasuredPlayers(file, all, freed);
  }

  /** Players of whom one leaves out what the score gives, or doesn't. */
  MeasuredPlayers freeing(String player, boolean free) {
    Set<String> others = new HashSet<>(freed);
    if (free) {
      others.add(player);
    } else {
      others.remove(player);
    }
    return new MeasuredPlayers(file, byHand, others);
  }
}

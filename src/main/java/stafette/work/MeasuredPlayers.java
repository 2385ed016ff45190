package stafette.work;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stafette.limits.Instrument;
import stafette.tables.PlayersFile;
import stafette.tables.UnreadableFile;

/**
 * Players whose own limits were measured.
 *
 * @param file what a file says of them
 */
record MeasuredPlayers(PlayersFile file) {
  static MeasuredPlayers load(Optional<Path> file, LimitsInForce limits) throws Refusal {
    try {
      return new MeasuredPlayers(
          file.isPresent()
              ? PlayersFile.read(file.get(), limits.catalogue())
              : new PlayersFile(Map.of(), Map.of()));
    } catch (UnreadableFile e) {
      throw Refusal.ofFile(String.join("\n", e.problems()));
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
}

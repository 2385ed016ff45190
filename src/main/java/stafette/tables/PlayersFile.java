package stafette.tables;

import stafette.words.UnreadableFile;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import stafette.limits.Breath;
import stafette.limits.Catalogue;
import stafette.limits.Grade;
import stafette.limits.Instrument;
import stafette.limits.Limit;
import stafette.limits.Source;
import stafette.limits.Spelling;
import stafette.limits.Technique;
import stafette.plan.Seat;

/**
 * Players whose limits were measured. Each has the instrument as the tables have it, with the
 * player's own figures in the place of the population's; a technique so measured is one that the
 * player is known to have. The project's JSON Schema of players documents each member.
 *
 * @param players an instrument of one's own for each name, in the file's order
 * @param seats of those whose seats the file gives, by name
 */
public record PlayersFile(Map<String, Instrument> players, Map<String, Seat> seats) {
  static final String FORMAT = "stafette-players";

  private static final List<String> MEMBERS =
      List.of("name", "instrument", "techniques", "level", "breath", EarJson.SEAT, "comment");
  private static final List<String> FIGURES =
      List.of("name", "peak", "sustained", "stamina", "recovery", "moving", "comment");

  public PlayersFile {
    players = Collections.unmodifiableMap(new LinkedHashMap<>(players));
    seats = Map.copyOf(seats);
  }

  /**
   * @throws UnreadableFile with everything that is wrong in the file
   */
  public static PlayersFile read(Path file, Catalogue catalogue) throws UnreadableFile {
    Problems problems = new Problems();
    String text = TableFiles.text(file, problems);
    problems.throwIfAny();
    return read(String.valueOf(file.getFileName()), text, catalogue);
  }

  /**
   * @param file what to call the file in messages
   * @throws UnreadableFile with everything that is wrong in the text
   */
  public static PlayersFile read(String file, String text, Catalogue catalogue)
      throws UnreadableFile {
    Problems problems = new Problems();
    Entry document = Entry.document(file, text, FORMAT, problems);
    document.refuseOthers(List.of("format", "version", "players", "comment"));
    Map<String, Instrument> players = new LinkedHashMap<>();
    Map<String, Seat> seats = new LinkedHashMap<>();
    for (Entry entry : document.entries("players", "player")) {
      entry.refuseOthers(MEMBERS);
      String name = entry.text("name");
      Optional<Instrument> own = instrument(entry, catalogue).map(base -> measured(entry, base));
      if (players.containsKey(name)) {
        entry.problem("'" + name + "' is there twice; keep one of them");
      }
      own.ifPresent(instrument -> players.put(name, instrument));
      entry.optionalEntry(EarJson.SEAT).map(EarJson::seat).ifPresent(s -> seats.put(name, s));
    }
    problems.throwIfAny();
    return new PlayersFile(players, seats);
  }

  /** The instrument of a player of that name, whatever its case. */
  public Optional<Instrument> of(String player) {
    return players.entrySet().stream()
        .filter(entry -> Spelling.same(entry.getKey(), player))
        .map(Map.Entry::getValue)
        .findFirst();
  }

  /** By what the player is said to play, else by the player's name. */
  private static Optional<Instrument> instrument(Entry entry, Catalogue catalogue) {
    String text = entry.optionalText("instrument").orElseGet(() -> entry.text("name"));
    Optional<Instrument> instrument = catalogue.find(text);
    if (instrument.isEmpty() && !text.isEmpty()) {
      entry.problem(
          WeightRows.unknown(text, catalogue)
              + (entry.has("instrument") ? "" : ", or name one with \"instrument\""));
    }
    return instrument;
  }

  private static Instrument measured(Entry entry, Instrument base) {
    List<Technique> techniques = new ArrayList<>(base.techniques());
    Set<String> seen = new HashSet<>();
    for (Entry figures : entry.entries("techniques", "technique")) {
      figures.refuseOthers(FIGURES);
      String name = figures.text("name");
      Optional<Technique> known = Catalogue.technique(base, name);
      if (known.isEmpty() && !name.isEmpty()) {
        List<String> names = base.techniques().stream().map(Technique::name).toList();
        figures.problem(
            base.name() + " has no '" + name + "'; use one of " + String.join(", ", names));
      }
      known.ifPresent(
          technique -> {
            if (!seen.add(technique.name())) {
              figures.problem("'" + technique.name() + "' is there twice; keep one of them");
            }
            techniques.set(techniques.indexOf(technique), measured(figures, technique));
          });
    }
    OptionalDouble level = entry.number("level");
    Optional<Breath> breath =
        base.breath().map(b -> entry.optionalEntry("breath").map(own -> breath(own, b)).orElse(b));
    if (entry.has("breath") && base.breath().isEmpty()) {
      entry.problem("breath means nothing to " + base.name() + "; take it out");
    }
    return InstrumentRows.with(base, level.orElse(base.levelDecibel()), breath, techniques);
  }

  private static Breath breath(Entry own, Breath base) {
    own.refuseOthers(List.of("capacity", "catch", "full"));
    return new Breath(
        own.positive("capacity").orElse(base.capacitySeconds()),
        own.positive("catch").orElse(base.catchSeconds()),
        own.positive("full").orElse(base.fullSeconds()),
        base.use());
  }

  /**
   * A technique with a player's own figures, without spread. What was not measured is taken from
   * the population, rates in proportion to the peak.
   */
  private static Technique measured(Entry figures, Technique base) {
    Limit of = base.limit();
    double peak = figures.demanded("peak", figures.positive("peak"));
    double share = peak / of.peakPerSecond();
    double sustained = figures.notNegative("sustained").orElse(of.sustainedPerSecond() * share);
    if (sustained > peak) {
      figures.problem("sustained is above peak; correct one of them");
    }
    OptionalDouble stamina = figures.positive("stamina");
    OptionalDouble moving = figures.positive("moving");
    OptionalDouble scaled =
        of.movingPerSecond().isPresent()
            ? OptionalDouble.of(of.movingPerSecond().getAsDouble() * share)
            : OptionalDouble.empty();
    Limit limit =
        new Limit(
            peak,
            0,
            sustained,
            stamina.isPresent() ? stamina : of.staminaStrokes(),
            figures.positive("recovery").orElse(of.recoverySeconds()),
            moving.isPresent() ? moving : scaled);
    return new Technique(
        base.name(),
        base.act(),
        base.pitches(),
        base.slurs(),
        base.groups(),
        base.twinStrings(),
        true,
        limit,
        base.lowestPerSecond(),
        base.factors(),
        new Source("the player's own figure, from " + figures.place(), Grade.D),
        base.note());
  }
}

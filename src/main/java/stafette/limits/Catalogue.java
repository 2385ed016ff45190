package stafette.limits;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import stafette.score.Part;
import stafette.words.Sentence;

/**
 * All instruments that are known, found by whatever name a score or a person gives them.
 *
 * <p>Names are compared without case, accents, punctuation, plural s and chair numbers. A key may
 * be left out or be one that no instrument here has ("horn in E-flat"): then the first instrument
 * of that bare name is meant. The order of words is free: "flute, alto".
 */
public final class Catalogue {
  private static final Pattern BRACKETS = Pattern.compile("[(\\[]([^)\\]]*)[)\\]]");
  private static final Pattern DOUBLING = Pattern.compile("[/&+\\r\\n]");

  private final Map<String, Instrument> byName = new LinkedHashMap<>();
  private final Map<String, Instrument> byWriting = new HashMap<>();
  private final Map<String, Instrument> byBase = new HashMap<>();

  /**
   * @param instruments earlier ones win where a name fits several
   */
  public Catalogue(List<Instrument> instruments) {
    for (Instrument instrument : instruments) {
      byName.put(instrument.name(), instrument);
      InstrumentName own = InstrumentName.of(instrument.name());
      byWriting.putIfAbsent(own.written(), instrument);
      byBase.putIfAbsent(index(own.base(), own.key()), instrument);
    }
    for (Instrument instrument : instruments) {
      for (String alias : instrument.aliases()) {
        InstrumentName name = InstrumentName.of(alias);
        byWriting.putIfAbsent(name.written(), instrument);
        if (!name.hasKey()) {
          byBase.putIfAbsent(index(name.base(), ""), instrument);
        }
      }
    }
  }

  /** In the order of the tables. */
  public List<Instrument> instruments() {
    return List.copyOf(byName.values());
  }

  /** The instrument that a name stands for, in any of the languages that the tables know. */
  public Optional<Instrument> find(String name) {
    return match(name).map(Match::instrument);
  }

  /**
   * The instrument of a part: by its printed name, else by the other names by which the score knows
   * it. Those may narrow what is printed ("Clarinet" with the sound of a clarinet in A), never
   * contradict it.
   */
  public Optional<Instrument> of(Part part) {
    List<Match> matches =
        Stream.concat(Stream.of(part.name()), part.instruments().stream())
            .flatMap(name -> match(name).stream())
            .toList();
    return matches.stream().reduce(Match::narrowedBy).map(Match::instrument);
  }

  /** Up to three names of instruments that are likest to a text, or whose other names are. */
  public List<String> nearest(String name) {
    List<String> likest = TypedNames.nearest(name, byName.keySet());
    if (!likest.isEmpty()) {
      return likest;
    }
    List<String> aliases =
        byName.values().stream().flatMap(instrument -> instrument.aliases().stream()).toList();
    return TypedNames.nearest(name, aliases).stream()
        .flatMap(alias -> find(alias).stream())
        .map(Instrument::name)
        .distinct()
        .toList();
  }

  /** That no instrument has this name, and which may be meant. */
  public Sentence unknown(String name) {
    List<String> near = nearest(name);
    return near.isEmpty()
        ? Sentence.of("no instrument is called '{0}'; add it to instruments.csv", name)
        : Sentence.of(
            "no instrument is called '{0}'; use {1}",
            name,
            near.stream()
                .map(Sentence::name)
                .reduce((one, other) -> Sentence.of("{0} or {1}", one, other))
                .orElse(Sentence.NONE));
  }

  /** The technique of an instrument, its name typed with or without accents. */
  public static Optional<Technique> technique(Instrument instrument, String name) {
    return instrument.techniques().stream()
        .filter(technique -> TypedNames.same(technique.name(), name))
        .findFirst();
  }

  private Optional<Match> match(String text) {
    String open = keysOutOfBrackets(text);
    String first = DOUBLING.split(open, 2)[0];
    return matchWhole(first).or(() -> matchWhole(open)).or(() -> matchWhole(text));
  }

  private Optional<Match> matchWhole(String text) {
    InstrumentName name = InstrumentName.of(text);
    if (name.written().isEmpty()) {
      return Optional.empty();
    }
    Instrument written = byWriting.get(name.written());
    if (written != null) {
      return Optional.of(new Match(written, name));
    }
    return Stream.of(index(name.base(), name.key()), index(name.base(), ""))
        .filter(byBase::containsKey)
        .findFirst()
        .map(byBase::get)
        .map(instrument -> new Match(inKey(instrument, name), name));
  }

  /** The instrument of the same bare name in another key, if there is one. */
  private Instrument inKey(Instrument instrument, InstrumentName name) {
    if (!name.hasKey()) {
      return instrument;
    }
    InstrumentName own = InstrumentName.of(instrument.name());
    return byBase.getOrDefault(index(own.base(), name.key()), instrument);
  }

  private static String keysOutOfBrackets(String text) {
    return BRACKETS
        .matcher(text)
        .replaceAll(
            found ->
                InstrumentName.isKey(found.group(1))
                    ? Matcher.quoteReplacement(" in " + found.group(1))
                    : " ");
  }

  private static String index(Set<String> base, String key) {
    return String.join(" ", base) + "|" + key;
  }

  /** An instrument, and the name by which it was found. */
  private record Match(Instrument instrument, InstrumentName name) {
    Match narrowedBy(Match hint) {
      InstrumentName own = InstrumentName.of(instrument.name());
      Set<String> other = InstrumentName.of(hint.instrument.name()).base();
      boolean narrows =
          !name.hasKey() && (other.containsAll(own.base()) || other.containsAll(name.base()));
      return narrows ? hint : this;
    }
  }
}

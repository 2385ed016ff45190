package stafette.musicxml.newparts;

import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import stafette.chairs.Chair;
import stafette.chairs.ChairNumbers;
import stafette.limits.Division;
import stafette.musicxml.text.Element;
import stafette.musicxml.text.Origin;
import stafette.musicxml.text.Origin.PartText;
import stafette.musicxml.text.UnreadableScore;
import stafette.musicxml.text.XmlWalk;
import stafette.plan.Player;
import stafette.score.Part;

/**
 * What players are called in a score. Its own have the names of their parts, in short where it has
 * abbreviations; a new one is named like a namesake, else as is usual for the instrument.
 */
public final class PlayerNames {
  private static final String NAME = "part-name";
  private static final String ABBREVIATION = "part-abbreviation";

  /** What tells players of one instrument apart, at the end of a name. */
  private static final Pattern NUMBER =
      Pattern.compile("[\\s.]*\\b((?:\\d+|[IVX]+)(?:[.,/&\\s-]+(?:\\d+|[IVX]+))*)\\.?$");

  private final Origin origin;
  private final Seating seating;
  private final boolean areUsed;

  public PlayerNames(Origin origin, Seating seating) {
    this.origin = origin;
    this.seating = seating;
    this.areUsed = origin.parts().stream().anyMatch(part -> text(part, ABBREVIATION).isPresent());
  }

  /** A part whose names those of a player's new part follow, but for the number. */
  Optional<PartText> namesake(Player player) {
    return seating.namesake(player).flatMap(origin::part);
  }

  /** What a player's part is called, be it new or there. */
  String ofPart(Player player) {
    boolean isAlone = player.chair().isEmpty() && Division.named(player.name()).isEmpty();
    Optional<PartText> own = player.part().filter(id -> isAlone).flatMap(origin::part);
    return own.flatMap(part -> text(part, NAME))
        .or(() -> likeNamesake(player, NAME))
        .orElse(player.name());
  }

  private Optional<String> likeNamesake(Player player, String element) {
    return player.part().isPresent()
        ? Optional.empty()
        : namesake(player)
            .flatMap(part -> text(part, element))
            .flatMap(name -> numbered(name, player));
  }

  /** Another's name with a player's number; empty if it can't take that. */
  static Optional<String> numbered(String name, Player player) {
    return ChairNumbers.in(player.name()).stream()
        .findFirst()
        .flatMap(number -> ChairNumbers.renumbered(name.strip(), number));
  }

  /** The abbreviation of a new part; none in a score that has none. */
  public Optional<String> abbreviation(Player player) {
    return areUsed ? Optional.of(of(player)) : Optional.empty();
  }

  /** What a player is called in words over a staff. */
  public String of(Player player) {
    if (!areUsed) {
      return ofPart(player);
    }
    return player
        .part()
        .flatMap(origin::part)
        .flatMap(part -> text(part, ABBREVIATION))
        .map(own -> inPart(own, player))
        .or(() -> likeNamesake(player, ABBREVIATION))
        .orElseGet(() -> derived(player));
  }

  /** What a part of the score is called in words over a staff. */
  public String of(Part part) {
    return origin.part(part.id()).flatMap(text -> text(text, ABBREVIATION)).orElse(part.name());
  }

  /** Whether a text is the short name of somebody in the score, or of a chair in it. */
  public boolean isOne(String text) {
    String bare = bare(text);
    return origin.parts().stream()
        .flatMap(part -> text(part, ABBREVIATION).stream())
        .anyMatch(own -> own.equals(text) || bare(own).equals(bare));
  }

  /** Of several who share a part the name of one. */
  private String inPart(String own, Player player) {
    Optional<Division> division = Division.named(player.name());
    if (division.isPresent()) {
      return own + player.name().substring(division.get().section().length());
    }
    if (player.chair().isEmpty()) {
      return own;
    }
    List<Chair> chairs = seating.chairs(player.part().orElseThrow());
    int place = player.chair().getAsInt();
    int number = place <= chairs.size() ? chairs.get(place - 1).number().orElse(place) : place;
    return bare(own) + " " + number;
  }

  /** Like those of the same instrument, with its own number. */
  private String derived(Player player) {
    String bare = bare(player.name());
    Optional<String> like =
        origin.parts().stream()
            .filter(part -> text(part, NAME).map(PlayerNames::bare).equals(Optional.of(bare)))
            .flatMap(part -> text(part, ABBREVIATION).stream())
            .map(PlayerNames::bare)
            .findFirst();
    boolean isInstrument =
        player.instrument().bareName().equalsIgnoreCase(bare)
            || player.instrument().name().equalsIgnoreCase(bare);
    Optional<String> base =
        like.or(() -> isInstrument ? player.instrument().abbreviation() : Optional.empty());
    return base.map(found -> (found + " " + number(player.name())).trim()).orElse(player.name());
  }

  private Optional<String> text(PartText part, String element) {
    return part.scorePart().flatMap(span -> entry(span.in(origin.text())).textOf(element));
  }

  private static Element entry(String scorePart) {
    try {
      return XmlWalk.open(scorePart).element();
    } catch (UnreadableScore e) {
      throw new IllegalStateException("an entry that was read can't be read again", e);
    }
  }

  private static String bare(String name) {
    Matcher number = NUMBER.matcher(name);
    if (!number.find() || number.start() == 0) {
      return name;
    }
    String before = name.substring(0, number.start());
    boolean dotted = name.charAt(number.start()) == '.';
    return dotted ? before + "." : before;
  }

  private static String number(String name) {
    Matcher number = NUMBER.matcher(name);
    return number.find() && number.start() > 0 ? number.group(1) : "";
  }
}

package stafette.musicxml.newparts;

import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import stafette.chairs.Chair;
import stafette.limits.Division;
import stafette.musicxml.text.Origin;
import stafette.musicxml.text.Origin.PartText;
import stafette.plan.Player;
import stafette.score.Part;

/**
 * The short names of players: the abbreviations that a score has for its parts; for new players
 * those of their like, else what is usual for the instrument. A score without any has the names.
 */
public final class ShortNames {
  private static final Pattern ABBREVIATION =
      Pattern.compile("<part-abbreviation(?:\\s[^>]*)?>\\s*([^<]*?)\\s*</part-abbreviation>");
  private static final Pattern NAME =
      Pattern.compile("<part-name(?:\\s[^>]*)?>\\s*([^<]*?)\\s*</part-name>");

  /** What tells players of one instrument apart, at the end of a name. */
  private static final Pattern NUMBER =
      Pattern.compile("[\\s.]*\\b((?:\\d+|[IVX]+)(?:[.,/&\\s-]+(?:\\d+|[IVX]+))*)\\.?$");

  private final Origin origin;
  private final Seating seating;
  private final boolean areUsed;

  public ShortNames(Origin origin, Seating seating) {
    this.origin = origin;
    this.seating = seating;
    this.areUsed = origin.parts().stream().anyMatch(part -> text(part, ABBREVIATION).isPresent());
  }

  /** The abbreviation of a new part; none in a score that has none. */
  public Optional<String> abbreviation(Player player) {
    return areUsed ? Optional.of(of(player)) : Optional.empty();
  }

  /** The short name of a player. */
  public String of(Player player) {
    if (!areUsed) {
      return player.name();
    }
    return player
        .part()
        .flatMap(origin::part)
        .flatMap(part -> text(part, ABBREVIATION))
        .map(own -> inPart(own, player))
        .orElseGet(() -> derived(player));
  }

  /** The short name of a part of the score. */
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
            .filter(part -> text(part, NAME).map(ShortNames::bare).equals(Optional.of(bare)))
            .flatMap(part -> text(part, ABBREVIATION).stream())
            .map(ShortNames::bare)
            .findFirst();
    boolean isInstrument =
        player.instrument().bareName().equalsIgnoreCase(bare)
            || player.instrument().name().equalsIgnoreCase(bare);
    Optional<String> base =
        like.or(() -> isInstrument ? player.instrument().abbreviation() : Optional.empty());
    return base.map(found -> (found + " " + number(player.name())).trim()).orElse(player.name());
  }

  private Optional<String> text(PartText part, Pattern pattern) {
    return part.scorePart()
        .map(span -> pattern.matcher(span.in(origin.text())))
        .filter(Matcher::find)
        .map(found -> found.group(1).replace("&amp;", "&"))
        .filter(text -> !text.isBlank());
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

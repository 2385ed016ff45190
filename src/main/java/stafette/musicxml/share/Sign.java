package stafette.musicxml.share;

import java.util.Locale;
import java.util.Optional;
import stafette.score.Dynamic;
import stafette.time.Position;
import stafette.time.Span;

/**
 * A sign above or below the staff.
 *
 * @param at where it stands; for one that ends something, after a note
 * @param note the onset of the note to which it belongs
 * @param kind what it is
 * @param text what it says, if it says something
 * @param voice for which alone it stands, if so
 * @param swell the hairpin to which it belongs, as far as the player has it
 */
public record Sign(
    Position at,
    Position note,
    SignKind kind,
    String text,
    Optional<String> voice,
    Optional<Span> swell) {
  /** What a sign is. */
  public enum SignKind {
    /** Who plays, or how it is done. */
    WORDS,
    /** With whom a player relays. */
    PARTNER,
    /** In what character it is played. */
    CHARACTER,
    DYNAMIC,
    /** "cresc." and the like. */
    SWELL_WORDS,
    LOUDER,
    SOFTER,
    WEDGE_STOP,
    DASHES,
    DASHES_STOP;

    /** Whether it ends what another began. */
    public boolean closes() {
      return this == WEDGE_STOP || this == DASHES_STOP;
    }
  }

  public static Sign words(Position at, String text) {
    return new Sign(at, at, SignKind.WORDS, text, Optional.empty(), Optional.empty());
  }

  public static Sign partner(Position at, String text) {
    return new Sign(at, at, SignKind.PARTNER, text, Optional.empty(), Optional.empty());
  }

  public static Sign character(Position at, String text) {
    return new Sign(at, at, SignKind.CHARACTER, text, Optional.empty(), Optional.empty());
  }

  public static Sign of(Position at, Dynamic dynamic) {
    String text = dynamic.name().toLowerCase(Locale.ROOT);
    return new Sign(at, at, SignKind.DYNAMIC, text, Optional.empty(), Optional.empty());
  }

  /** A sign at which something begins that gets louder or softer. */
  public static Sign begins(SignKind kind, Position at, String text, Span swell) {
    return new Sign(at, at, kind, text, Optional.empty(), Optional.of(swell));
  }

  /** A sign after a note, at which that ends. */
  public static Sign ends(SignKind kind, Position note, Span swell) {
    return new Sign(swell.end(), note, kind, "", Optional.empty(), Optional.of(swell));
  }

  public Sign in(String onlyVoice) {
    return new Sign(at, note, kind, text, Optional.of(onlyVoice), swell);
  }

  /** The words of a sign that says who plays, with whom, or how it is done. */
  public Optional<String> words() {
    boolean says = kind == SignKind.WORDS || kind == SignKind.PARTNER;
    return says ? Optional.of(text) : Optional.empty();
  }

  public Optional<Dynamic> dynamic() {
    return kind == SignKind.DYNAMIC
        ? Optional.of(Dynamic.valueOf(text.toUpperCase(Locale.ROOT)))
        : Optional.empty();
  }
}

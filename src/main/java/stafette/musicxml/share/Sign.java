package stafette.musicxml.share;

import java.util.Locale;
import java.util.Optional;
import stafette.limits.HarpPedals;
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
 * @param pedals how a harp's pedals stand from there, if that is what it shows
 */
public record Sign(
    Position at,
    Position note,
    SignKind kind,
    String text,
    Optional<String> voice,
    Optional<Span> swell,
    Optional<HarpPedals.Setting> pedals) {
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
    DASHES_STOP,
    /** How all pedals of a harp stand. */
    PEDALS,
    /** Which of them move. */
    PEDAL_WORDS;

    /** Whether it ends what another began. */
    public boolean closes() {
      return this == WEDGE_STOP || this == DASHES_STOP;
    }

    /** Whether it is for a harpist's feet. */
    public boolean setsPedals() {
      return this == PEDALS || this == PEDAL_WORDS;
    }
  }

  private static Sign saying(SignKind kind, Position at, String text) {
    return new Sign(at, at, kind, text, Optional.empty(), Optional.empty(), Optional.empty());
  }

  public static Sign words(Position at, String text) {
    return saying(SignKind.WORDS, at, text);
  }

  public static Sign partner(Position at, String text) {
    return saying(SignKind.PARTNER, at, text);
  }

  public static Sign character(Position at, String text) {
    return saying(SignKind.CHARACTER, at, text);
  }

  /** The pedals that move: "B♯ E♭". */
  public static Sign pedalWords(Position at, String text) {
    return saying(SignKind.PEDAL_WORDS, at, text);
  }

  public static Sign pedals(Position at, HarpPedals.Setting setting) {
    return new Sign(
        at, at, SignKind.PEDALS, "", Optional.empty(), Optional.empty(), Optional.of(setting));
  }

  public static Sign of(Position at, Dynamic dynamic) {
    return saying(SignKind.DYNAMIC, at, dynamic.name().toLowerCase(Locale.ROOT));
  }

  /** A sign at which something begins that gets louder or softer. */
  public static Sign begins(SignKind kind, Position at, String text, Span swell) {
    return new Sign(at, at, kind, text, Optional.empty(), Optional.of(swell), Optional.empty());
  }

  /** A sign after a note, at which that ends. */
  public static Sign ends(SignKind kind, Position note, Span swell) {
    return new Sign(
        swell.end(), note, kind, "", Optional.empty(), Optional.of(swell), Optional.empty());
  }

  public Sign in(String onlyVoice) {
    return new Sign(at, note, kind, text, Optional.of(onlyVoice), swell, pedals);
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

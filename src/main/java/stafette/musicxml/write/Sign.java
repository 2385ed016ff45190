package stafette.musicxml.write;

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
record Sign(
    Position at,
    Position note,
    SignKind kind,
    String text,
    Optional<String> voice,
    Optional<Span> swell) {
  /** What a sign is. */
  enum SignKind {
    /** Who plays, how it is done, to whom it goes. */
    WORDS,
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
    boolean closes() {
      return this == WEDGE_STOP || this == DASHES_STOP;
    }
  }

  static Sign words(Position at, String text) {
    return new Sign(at, at, SignKind.WORDS, text, Optional.empty(), Optional.empty());
  }

  static Sign character(Position at, String text) {
    return new Sign(at, at, SignKind.CHARACTER, text, Optional.empty(), Optional.empty());
  }

  static Sign of(Position at, Dynamic dynamic) {
    String text = dynamic.name().toLowerCase(Locale.ROOT);
    return new Sign(at, at, SignKind.DYNAMIC, text, Optional.empty(), Optional.empty());
  }

  /** A sign at which something begins that gets louder or softer. */
  static Sign begins(SignKind kind, Position at, String text, Span swell) {
    return new Sign(at, at, kind, text, Optional.empty(), Optional.of(swell));
  }

  /** A sign after a note, at which that ends. */
  static Sign ends(SignKind kind, Position note, Span swell) {
    return new Sign(swell.end(), note, kind, "", Optional.empty(), Optional.of(swell));
  }

  Sign in(String onlyVoice) {
    return new Sign(at, note, kind, text, Optional.of(onlyVoice), swell);
  }

  /** The words of a sign that says who plays, or how it is done. */
  Optional<String> words() {
    return kind == SignKind.WORDS ? Optional.of(text) : Optional.empty();
  }

  Optional<Dynamic> dynamic() {
    return kind == SignKind.DYNAMIC
        ? Optional.of(Dynamic.valueOf(text.toUpperCase(Locale.ROOT)))
        : Optional.empty();
  }
}

package stafette.limits;

/**
 * A stretch of an instrument's range that sounds in its own way.
 *
 * @param range sounding pitches
 * @param word what players say of it: "weak", "full", "piercing"
 * @param decibel how much louder it is than the instrument's level at the same effort
 */
public record Register(Range range, String word, double decibel) {}

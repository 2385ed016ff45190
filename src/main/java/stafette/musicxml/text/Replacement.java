package stafette.musicxml.text;

/**
 * A change of the file's text.
 *
 * @param span what goes; empty for an insertion
 * @param text what comes in its place
 */
public record Replacement(TextSpan span, String text) {}

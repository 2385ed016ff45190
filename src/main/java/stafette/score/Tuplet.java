package stafette.score;

import stafette.time.Span;

/**
 * A group of notes in the time of another number of them.
 *
 * @param actual how many are played
 * @param normal in the time of how many
 * @param span the whole group
 */
public record Tuplet(int actual, int normal, Span span) {}

package stafette.split.rotate;

/**
 * What it costs one player to take every n-th turn, with the technique for which it costs least.
 */
public record EveryNth(int skill, int points) {}

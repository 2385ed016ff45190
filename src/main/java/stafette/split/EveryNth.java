package stafette.split;

/**
 * What it costs one player to take every n-th turn, with the technique for which it costs least.
 */
record EveryNth(int skill, int points) {}

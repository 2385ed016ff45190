package stafette.split.rotate;

/** What it costs one player to take every n-th turn, in the way in which it costs least. */
public record EveryNth(int way, int points) {}

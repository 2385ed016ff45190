package stafette.split;

/**
 * What one player brings along.
 *
 * @param untouched whether nothing that it did before matters any more: it is as before its first
 *     stroke of all
 * @param loadMicros its last stroke that tires
 * @param tiredness after that stroke
 * @param soundMicros the end of its last sound
 * @param air spent by then
 * @param use what multiplies the use of air in the last sound, and in the silence after it
 * @param turnMicros the last stroke of its last turn, also where somebody else plays it; {@link
 *     #NEVER} where that does not matter
 */
record PlayerState(
    boolean untouched,
    long loadMicros,
    long tiredness,
    long soundMicros,
    long air,
    double use,
    long turnMicros) {
  /** Before all that can be. */
  static final long NEVER = Long.MIN_VALUE / 4;

  static final PlayerState RESTED = new PlayerState(true, NEVER, 0, NEVER, 0, 1, NEVER);
}

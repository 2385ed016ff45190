package stafette.score;

/**
 * How loud, from soft to loud; marks that name a change (sfz, fp) are read as what they leave
 * behind.
 */
public enum Dynamic {
  PPP,
  PP,
  P,
  MP,
  MF,
  F,
  FF,
  FFF
}

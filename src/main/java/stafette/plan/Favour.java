package stafette.plan;

/** What a plan favours: a change of weights. */
public enum Favour {
  BALANCE,
  HANDOFFS,
  STRAIN,
  BLEND,
  PLAYERS
}

package stafette.limits;

import java.util.Map;
import stafette.words.Sayable;
import stafette.words.Sentence;

/**
 * One way to make strokes on an instrument.
 *
 * @param name such as "double tonguing"
 * @param act what makes the stroke
 * @param pitches on which notes it is used
 * @param slurs with which slurs
 * @param groups whether it comes in groups
 * @param twinStrings whether it takes two strings of the same pitch in turn (harp)
 * @param takers how many hands, fingers or syllables alternate: one or two
 * @param expected whether a section professional can be relied on to have it
 * @param limit how fast it goes
 * @param lowestPerSecond where strokes follow more slowly it does not work (sautillé); 0 if always
 * @param factors what multiplies the limits under which condition; 1 where nothing is said
 * @param source where the figures come from
 * @param note a remark for the user, may be empty
 */
public record Technique(
    String name,
    Act act,
    Pitches pitches,
    SlurUse slurs,
    Groups groups,
    boolean twinStrings,
    int takers,
    boolean expected,
    Limit limit,
    double lowestPerSecond,
    Map<Condition, Double> factors,
    Source source,
    String note)
    implements Sayable {
  /**
   * @throws IllegalArgumentException if there are more than two takers, or none
   */
  public Technique {
    factors = Map.copyOf(factors);
    if (takers != 1 && takers != 2) {
      throw new IllegalArgumentException("one or two takers alternate: " + takers);
    }
  }

  /**
   * In the hands of somebody with another limit.
   *
   * @param known whether that player is known to have it
   * @param origin where the figures come from
   */
  public Technique with(Limit own, boolean known, Source origin) {
    return new Technique(
        name,
        act,
        pitches,
        slurs,
        groups,
        twinStrings,
        takers,
        known,
        own,
        lowestPerSecond,
        factors,
        origin,
        note);
  }

  /** Whether its notes are finger changes under a slur, of which only the first is a stroke. */
  public boolean isSlurred() {
    return slurs == SlurUse.ALL && act.slurs();
  }

  @Override
  public Sentence inWords() {
    return Sentence.name(name);
  }

  /**
   * Whether it is the way to play what it applies to, and so takes the place of all that go there
   * too, however fast they are.
   */
  public boolean takesPrecedence() {
    return act == Act.WOOD || pitches == Pitches.ALTERNATING;
  }

  /** Which notes of a line a technique takes. */
  public enum Pitches {
    ANY,
    /** Only lines in which each note repeats the one before. */
    REPEATED,
    /** Only lines in which no note repeats the one before. */
    MOVING,
    /** Only where two notes, more than a tone apart, are played in turn. */
    ALTERNATING
  }

  /** Which lines a technique takes as to their slurs. */
  public enum SlurUse {
    ANY,
    /** Only lines without a slur. */
    NONE,
    /**
     * Only lines all of whose notes but the first of each slur are slurred, with at least one slur.
     */
    ALL
  }
}

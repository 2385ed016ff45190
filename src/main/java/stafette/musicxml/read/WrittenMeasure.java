package stafette.musicxml.read;

import java.util.List;
import java.util.Optional;
import stafette.musicxml.text.Origin.Attributes;
import stafette.musicxml.text.TextSpan;
import stafette.score.Dynamic;
import stafette.time.Landmarks.BarLine;
import stafette.time.Length;
import stafette.time.Meter;
import stafette.time.Rational;

/**
 * One measure of one part, before it is known when its bar begins.
 *
 * @param number as printed; empty if it states none
 * @param implicit whether it is marked as one that is not counted
 * @param whole the whole element
 * @param startTag its start tag
 * @param empty whether it is an empty element
 * @param attributes in force when it begins
 * @param meter the metre that it states
 * @param elements its children
 * @param tempi what it says about tempo
 * @param dynamics its dynamics
 * @param manners what it says of ways of playing
 * @param words what its directions say
 * @param pedals what it says of a keyboard's pedals
 * @param swells where wedges and dashes begin and end
 * @param content how far its notes reach
 * @param section its bar lines, its rehearsal mark, and words for the tempo
 */
record WrittenMeasure(
    String number,
    boolean implicit,
    TextSpan whole,
    TextSpan startTag,
    boolean empty,
    Attributes attributes,
    Optional<Meter> meter,
    List<Child> elements,
    List<PlacedTempo> tempi,
    List<PlacedMark<Dynamic>> dynamics,
    List<PlacedMark<MannerInForce>> manners,
    List<PlacedWords> words,
    List<PlacedPedal> pedals,
    List<PlacedSwell> swells,
    Length content,
    SectionMarks section) {

  /**
   * A child of a measure.
   *
   * @param onset from the start of the bar
   */
  record Child(
      String name,
      TextSpan span,
      Length onset,
      Attributes attributes,
      Optional<WrittenNote> note) {}

  /**
   * A tempo.
   *
   * @param offset quarters from the start of the bar; may lead out of it
   */
  record PlacedTempo(Rational offset, TempoSign sign) {}

  /**
   * Words.
   *
   * @param offset quarters from the start of the bar; may lead out of it
   * @param staff counted from 1
   * @param voice for which they stand alone, if they say so
   */
  record PlacedWords(Rational offset, int staff, Optional<String> voice, String text) {}

  /**
   * A sign for a keyboard's pedals.
   *
   * @param offset quarters from the start of the bar; may lead out of it
   */
  record PlacedPedal(Rational offset, PedalSign sign) {}

  /** What pedal signs do, at one place in this order. */
  enum PedalSign {
    STOP,
    BREAK,
    MIDDLE,
    CHANGE,
    PRESS,
    RESUME
  }

  /** What wedges and dashes do. */
  enum SwellSign {
    LOUDER,
    SOFTER,
    STOP,
    DASHES,
    DASHES_STOP
  }

  /**
   * Where a wedge or dashes begin or end.
   *
   * @param offset quarters from the start of the bar; may lead out of it
   * @param staff counted from 1
   * @param number tells those apart that are open at once
   */
  record PlacedSwell(Rational offset, int staff, int number, SwellSign sign) {}

  /**
   * What all find their way by.
   *
   * @param rehearsal its rehearsal mark
   * @param tempo words for the tempo
   * @param before the bar line at its beginning
   * @param after the bar line at its end
   */
  record SectionMarks(
      Optional<String> rehearsal, List<PlacedWords> tempo, BarLine before, BarLine after) {}
}

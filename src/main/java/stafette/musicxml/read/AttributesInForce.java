package stafette.musicxml.read;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stafette.musicxml.text.DecimalText;
import stafette.musicxml.text.Element;
import stafette.musicxml.text.Malformed;
import stafette.musicxml.text.Origin.Attributes;
import stafette.score.Transposition;
import stafette.time.Length;
import stafette.time.Meter;
import stafette.time.Rational;
import stafette.words.Sentence;

/** What a part's attributes elements have said so far. */
final class AttributesInForce {
  /** Longer than any bar that is written out; a long of eight whole notes has 32 quarters. */
  private static final Rational LONGEST = Rational.of(1_024);

  private static final int MOST_STAVES = 99;
  private static final int MOST_FIFTHS = 99;
  private static final int FARTHEST_OCTAVE = 9;

  /** Letters for the semitones of an octave, where only the semitones are given. */
  private static final int[] LETTERS = {0, 1, 1, 2, 2, 3, 3, 4, 5, 5, 6, 6};

  private final Map<Integer, Transposition> byStaff = new HashMap<>();
  private final TimeGrid grid;
  private Transposition allStaves = Transposition.NONE;
  private Attributes current =
      new Attributes(Rational.ONE, 0, Transposition.NONE, 1, List.of("G2"), "");
  private Optional<Meter> statedMeter = Optional.empty();
  private Meter meter = Meter.COMMON;

  /**
   * What holds before any of a part's attributes.
   *
   * @param grid the whole score's
   */
  AttributesInForce(TimeGrid grid) {
    this.grid = grid;
  }

  Attributes current() {
    return current;
  }

  /** A number of divisions as a length. */
  Rational quarters(Rational divisions) {
    return divisions.dividedBy(current.divisions());
  }

  /**
   * The duration of a note, backup or forward.
   *
   * @throws Malformed if it is below zero, longer than any bar, or fits into no grid
   */
  Length length(Rational divisions) throws Malformed {
    if (divisions.signum() < 0) {
      throw new Malformed(Sentence.of("<duration> is below zero: {0}", divisions));
    }
    Rational quarters = quarters(divisions);
    if (quarters.compareTo(LONGEST) > 0) {
      throw new Malformed(
          Sentence.of(
              "<duration> lasts {0} quarters, and no more than {1} are read",
              quarters.floor(), LONGEST));
    }
    return grid.with(new Length(quarters));
  }

  Transposition transposition(int staff) {
    return byStaff.getOrDefault(staff, allStaves);
  }

  Length nominalLength() {
    return meter.length();
  }

  /** The metre stated since this was last asked. */
  Optional<Meter> takeStatedMeter() {
    Optional<Meter> taken = statedMeter;
    statedMeter = Optional.empty();
    return taken;
  }

  void read(Element attributes) throws Malformed {
    for (Element transpose : attributes.all("transpose")) {
      readTransposition(transpose);
    }
    int staves = DecimalText.wholeOf(attributes, "staves", 0, MOST_STAVES, current.staves());
    current =
        new Attributes(
            divisions(attributes),
            fifths(attributes),
            transposition(1),
            Math.max(1, staves),
            clefs(attributes, staves),
            timeText(attributes));
  }

  private Rational divisions(Element attributes) throws Malformed {
    Optional<Element> stated = attributes.child("divisions");
    if (stated.isEmpty()) {
      return current.divisions();
    }
    Rational divisions = DecimalText.of(stated.get());
    if (divisions.signum() <= 0) {
      throw new Malformed(Sentence.of("<divisions> is not above zero: {0}", divisions));
    }
    return divisions;
  }

  private int fifths(Element attributes) throws Malformed {
    Optional<Element> key = ofFirstStaff(attributes.all("key"));
    return key.isEmpty()
        ? current.fifths()
        : DecimalText.wholeOf(key.get(), "fifths", -MOST_FIFTHS, MOST_FIFTHS, 0);
  }

  private String timeText(Element attributes) throws Malformed {
    Optional<Element> time = ofFirstStaff(attributes.all("time"));
    Optional<TimeElement> signature =
        time.isPresent() ? TimeElement.of(time.get()) : Optional.empty();
    if (signature.isEmpty()) {
      return current.time();
    }
    meter = signature.get().meter();
    for (Length beat : meter.beats()) {
      grid.with(beat);
    }
    statedMeter = Optional.of(meter);
    return signature.get().text();
  }

  private List<String> clefs(Element attributes, int staves) throws Malformed {
    List<String> clefs = new ArrayList<>(current.clefs());
    for (int staff = clefs.size(); staff < staves; staff++) {
      clefs.add("G2");
    }
    for (Element clef : attributes.all("clef")) {
      int staff = staffOf(clef).orElse(1);
      if (staff <= clefs.size()) {
        clefs.set(staff - 1, clef.textOf("sign").orElse("G") + clef.textOf("line").orElse(""));
      }
    }
    return clefs.equals(current.clefs()) ? current.clefs() : clefs;
  }

  private void readTransposition(Element transpose) throws Malformed {
    Optional<Element> semitones = transpose.child("chromatic");
    int chromatic = semitones.isPresent() ? DecimalText.whole(semitones.get(), -99, 99) : 0;
    int diatonic = DecimalText.wholeOf(transpose, "diatonic", -99, 99, lettersOf(chromatic));
    int octaves =
        DecimalText.wholeOf(transpose, "octave-change", -FARTHEST_OCTAVE, FARTHEST_OCTAVE, 0);
    Transposition read = new Transposition(diatonic + 7 * octaves, chromatic + 12 * octaves);
    Optional<Integer> staff = staffOf(transpose);
    if (staff.isPresent()) {
      byStaff.put(staff.get(), read);
    } else {
      byStaff.clear();
      allStaves = read;
    }
  }

  private static int lettersOf(int semitones) {
    int letters = LETTERS[Math.abs(semitones) % 12] + 7 * (Math.abs(semitones) / 12);
    return semitones < 0 ? -letters : letters;
  }

  private static Optional<Element> ofFirstStaff(List<Element> elements) throws Malformed {
    for (Element element : elements) {
      if (staffOf(element).orElse(1) == 1) {
        return Optional.of(element);
      }
    }
    return Optional.empty();
  }

  private static Optional<Integer> staffOf(Element element) throws Malformed {
    Optional<String> number = element.attribute("number").map(String::trim);
    if (number.isPresent() && !number.get().matches("[1-9]\\d?")) {
      throw new Malformed(
          Sentence.of("<{0}> names a staff that does not exist: number=\"…\"", element.name()));
    }
    return number.map(Integer::parseInt);
  }
}

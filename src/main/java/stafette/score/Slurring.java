package stafette.score;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import stafette.time.Bar;
import stafette.time.Length;
import stafette.time.Rational;

/**
 * Slurs that a line is given where its pitch changes, so that most of its notes need no stroke of
 * the tongue or bow: the usual way out for moving figures (common practice, no source).
 *
 * <p>Notes of one length are counted from their beat, and no slur leads from one beat into the
 * next. None is given to a note that repeats a tone of the one before, is accented, tied or has
 * grace notes, or is neither tongued nor bowed as usual, over a silence, nor where the score has a
 * slur already. Under a new slur dots and dashes go, as they would say that each note is
 * articulated.
 */
public enum Slurring {
  AS_WRITTEN("as written"),
  /** Two slurred, two tongued. */
  TWO_AND_TWO("slurred two, tongued two"),
  PAIRS("slurred in pairs"),
  FOURS("slurred in fours");

  private static final Set<Articulation> SEPARATING =
      EnumSet.of(
          Articulation.STACCATO,
          Articulation.STACCATISSIMO,
          Articulation.SPICCATO,
          Articulation.TENUTO,
          Articulation.DETACHED_LEGATO);

  private static final Set<Articulation> BOWINGS =
      EnumSet.of(Articulation.UP_BOW, Articulation.DOWN_BOW);

  private final String text;

  Slurring(String text) {
    this.text = text;
  }

  /** "slurred in pairs". */
  public String text() {
    return text;
  }

  /** How it is asked for: "pairs", "two-and-two". */
  public String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** Reads what {@link #word} writes. */
  public static Optional<Slurring> parse(String word) {
    String plain = word.trim().toLowerCase(Locale.ROOT).replaceAll("[\\s_]+", "-");
    return Arrays.stream(values()).filter(each -> each.word().equals(plain)).findFirst();
  }

  /** Those that change something, from the fewest new slurs to the longest. */
  public static List<Slurring> changes() {
    return List.of(TWO_AND_TWO, PAIRS, FOURS);
  }

  /** The line so slurred; the line itself where no note can be. */
  public Line of(Line line) {
    List<Stroke> strokes = new ArrayList<>();
    boolean any = false;
    boolean joined = false;
    for (int j = 0; j < line.count(); j++) {
      boolean goesOn = j + 1 < line.count() && joins(line, j + 1);
      strokes.add(joined || goesOn ? slurred(line.stroke(j), joined, goesOn) : line.stroke(j));
      any |= goesOn;
      joined = goesOn;
    }
    return any ? line.with(line.source().with(this), strokes) : line;
  }

  private static Stroke slurred(Stroke stroke, boolean joined, boolean goesOn) {
    Set<Articulation> marks =
        stroke.articulations().stream()
            .filter(mark -> !SEPARATING.contains(mark) && !(joined && BOWINGS.contains(mark)))
            .collect(Collectors.toSet());
    return new Stroke(
        stroke.onset(),
        stroke.tones(),
        stroke.values(),
        stroke.graces(),
        joined,
        goesOn,
        stroke.measured(),
        marks,
        stroke.dynamic(),
        stroke.manner());
  }

  /** Whether a new slur leads to a stroke from the one before. */
  private boolean joins(Line line, int j) {
    Stroke before = line.stroke(j - 1);
    Stroke stroke = line.stroke(j);
    Optional<Integer> place = place(line, j);
    return place.filter(this::joins).isPresent()
        && line.sameBeat(j)
        && before.length().equals(stroke.length())
        && before.span().end().equals(stroke.onset())
        && canBeSlurred(before)
        && canBeSlurred(stroke)
        && stroke.graces().isEmpty()
        && !stroke.accented()
        && before.tones().size() == stroke.tones().size()
        && stroke.tones().stream().noneMatch(before::sounds);
  }

  private boolean joins(int place) {
    return switch (this) {
      case AS_WRITTEN -> false;
      case TWO_AND_TWO -> place % 4 == 1;
      case PAIRS -> place % 2 == 1;
      case FOURS -> place % 4 != 0;
    };
  }

  /** How many notes of its length lie between a beat and a stroke; empty if no whole number. */
  private static Optional<Integer> place(Line line, int j) {
    Stroke stroke = line.stroke(j);
    Bar bar = line.bars().at(stroke.onset());
    Length since = stroke.onset().since(bar.beatStart(stroke.onset()));
    Rational place = since.quarters().dividedBy(stroke.length().quarters());
    return place.isWhole() ? Optional.of(place.floor().intValueExact()) : Optional.empty();
  }

  private static boolean canBeSlurred(Stroke stroke) {
    return stroke.measured()
        && stroke.manner().attack() == Attack.PLAIN
        && !stroke.slurred()
        && !stroke.slurContinues()
        && stroke.values().size() == 1
        && stroke.tones().stream().allMatch(Pitch.class::isInstance);
  }
}

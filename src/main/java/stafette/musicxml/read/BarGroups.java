package stafette.musicxml.read;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Stream;
import stafette.musicxml.read.WrittenMeasure.Child;
import stafette.score.Articulation;
import stafette.time.Length;
import stafette.time.Meter;
import stafette.time.Rational;

/**
 * The groups in which a bar is felt whose metre leaves them open, as its notes tell them.
 *
 * <p>The beams tell them: where the outermost beams begin and end, or if one joins the whole bar,
 * where the next inner ones are broken. What stands between beams is a group of two or three, or
 * several; one unit alone belongs to the shorter group beside it. Where no beam says anything,
 * accents do: each begins a group. All voices of all parts share one bar; the voice with the most
 * beamed notes that says anything decides, since the fast line is the one that needs them, and of
 * equal ones the upper. That beams show the groups is common practice, no source.
 */
final class BarGroups {
  private static final List<String> INNER = List.of("2", "3", "4");

  private final Meter meter;
  private final Rational unit;
  private final List<Child> notes;

  private BarGroups(Meter meter, List<Child> notes) {
    this.meter = meter;
    this.unit = meter.beats().get(0).quarters();
    this.notes = notes.stream().sorted(Comparator.comparing(Child::onset)).toList();
  }

  private record Group(int units, boolean beamed) {

    boolean isStray() {
      return units == 1 && !beamed;
    }
  }

  /**
   * How a full bar is counted.
   *
   * @param measures those of all parts
   */
  static Meter counted(Meter meter, List<WrittenMeasure> measures) {
    if (!meter.leavesGroupsOpen()) {
      return meter;
    }
    List<BarGroups> voices =
        measures.stream()
            .flatMap(measure -> voices(measure).stream())
            .map(notes -> new BarGroups(meter, notes))
            .toList();
    return Stream.concat(
            voices.stream()
                .sorted(Comparator.comparing(BarGroups::beamedNotes).reversed())
                .limit(1)
                .map(BarGroups::byBeams),
            voices.stream()
                .sorted(Comparator.comparing((BarGroups voice) -> voice.notes.size()).reversed())
                .map(BarGroups::byAccents))
        .flatMap(Optional::stream)
        .findFirst()
        .orElse(meter);
  }

  /** Notes that take time, by voice; a voice may change staves under one beam. */
  private static List<List<Child>> voices(WrittenMeasure measure) {
    Map<String, List<Child>> voices = new LinkedHashMap<>();
    for (Child child : measure.elements()) {
      child
          .note()
          .filter(note -> !note.ornamental() && !note.text().chord())
          .ifPresent(
              note ->
                  voices.computeIfAbsent(note.text().voice(), v -> new ArrayList<>()).add(child));
    }
    return List.copyOf(voices.values());
  }

  private static WrittenNote note(Child child) {
    return child.note().orElseThrow();
  }

  private static Length end(Child child) {
    return child.onset().plus(note(child).text().length());
  }

  private static NoteBeams beams(Child child) {
    return note(child).beams();
  }

  private long beamedNotes() {
    return notes.stream().filter(child -> beams(child).beamed()).count();
  }

  private Optional<Meter> byBeams() {
    Stream<Length> ends =
        notes.stream()
            .flatMap(
                child ->
                    Stream.concat(
                        Stream.of(child.onset()).filter(at -> beams(child).begun().contains("1")),
                        Stream.of(end(child)).filter(at -> beams(child).ended().contains("1"))));
    return Stream.concat(
            Stream.of(groups(ends)), INNER.stream().map(level -> groups(broken(level))))
        .filter(groups -> groups.size() > 1 && tell(groups))
        .findFirst()
        .flatMap(groups -> meterOf(withoutStrays(groups)));
  }

  /** Where an inner beam begins right after one of its kind has ended. */
  private Stream<Length> broken(String level) {
    return Stream.iterate(1, i -> i < notes.size(), i -> i + 1)
        .filter(i -> beams(notes.get(i)).begun().contains(level))
        .filter(i -> beams(notes.get(i - 1)).ended().contains(level))
        .filter(i -> end(notes.get(i - 1)).equals(notes.get(i).onset()))
        .map(i -> notes.get(i).onset());
  }

  private Optional<Meter> byAccents() {
    List<Group> groups =
        groups(
            notes.stream()
                .filter(
                    child ->
                        note(child).notations().articulations().stream()
                            .anyMatch(Articulation::accents))
                .map(Child::onset));
    boolean everywhere = groups.stream().allMatch(group -> group.units == 1);
    return everywhere ? Optional.empty() : meterOf(withoutStrays(groups));
  }

  /** The bar divided at those of the borders that stand on its units. */
  private List<Group> groups(Stream<Length> borders) {
    TreeSet<Integer> starts = new TreeSet<>(List.of(0));
    borders
        .filter(border -> border.compareTo(meter.length()) < 0)
        .map(border -> border.quarters().dividedBy(unit))
        .filter(Rational::isWhole)
        .map(border -> border.numerator().intValueExact())
        .forEach(starts::add);
    List<Group> groups = new ArrayList<>();
    for (int start : starts) {
      Integer next = starts.higher(start);
      int end = next == null ? meter.beats().size() : next;
      groups.add(new Group(end - start, isBeamed(start, end)));
    }
    return groups;
  }

  private boolean isBeamed(int start, int end) {
    Length from = new Length(unit.times(Rational.of(start)));
    Length to = new Length(unit.times(Rational.of(end)));
    return notes.stream()
        .filter(child -> beams(child).beamed())
        .anyMatch(child -> child.onset().compareTo(from) >= 0 && child.onset().compareTo(to) < 0);
  }

  /** Beams over one unit alone are written whatever the groups are: most must join several. */
  private static boolean tell(List<Group> groups) {
    long joined = groups.stream().filter(group -> group.beamed && group.units > 1).count();
    long alone = groups.stream().filter(group -> group.beamed && group.units == 1).count();
    return joined > alone;
  }

  private static List<Group> withoutStrays(List<Group> groups) {
    List<Group> joined = new ArrayList<>(groups);
    for (int i = 0; joined.size() > 1 && i < joined.size(); i++) {
      if (joined.get(i).isStray()) {
        boolean before =
            i > 0
                && (i == joined.size() - 1
                    || joined.get(i - 1).units() <= joined.get(i + 1).units());
        int left = before ? i - 1 : i;
        joined.set(left, new Group(joined.get(left).units() + joined.get(left + 1).units(), true));
        joined.remove(left + 1);
        i = left;
      }
    }
    return joined;
  }

  /** Empty if the groups say nothing: if there is one, or each is a unit. */
  private Optional<Meter> meterOf(List<Group> groups) {
    boolean tells = groups.size() > 1 && groups.size() < meter.beats().size();
    return tells
        ? Optional.of(
            new Meter(
                groups.stream()
                    .flatMap(BarGroups::parts)
                    .map(units -> new Length(unit.times(Rational.of(units))))
                    .toList()))
        : Optional.empty();
  }

  /** Twos, the last a three where the number is odd, of a long stretch without beams. */
  private static Stream<Integer> parts(Group group) {
    if (group.beamed() || group.units() <= 3) {
      return Stream.of(group.units());
    }
    int twos = group.units() / 2;
    int odd = group.units() % 2;
    return Stream.iterate(1, i -> i <= twos, i -> i + 1).map(i -> i == twos ? 2 + odd : 2);
  }
}

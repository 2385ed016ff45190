package stafette.score;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import stafette.time.Bars;
import stafette.time.Position;
import stafette.time.Span;

/**
 * What is written of a line beside its notes: hairpins, words for its character, such as "sempre
 * stacc.", and beams.
 *
 * @param hairpins by onset
 * @param words by onset; the last before the line too, if they hold where it begins
 * @param beams how its notes are beamed, by onset; none where hands share it
 * @param slashed its notes with slashes, by onset; none where hands share it
 */
public record Expression(
    List<Hairpin> hairpins, List<Words> words, List<Span> beams, List<SlashedSpan> slashed) {
  public static final Expression NONE = new Expression(List.of(), List.of(), List.of(), List.of());

  private static final String HOLDS_ON = "sempre";

  public Expression {
    hairpins = List.copyOf(hairpins);
    words = List.copyOf(words);
    beams = List.copyOf(beams);
    slashed = List.copyOf(slashed);
  }

  /**
   * A note with slashes through its stem, or two with slashes between them.
   *
   * @param span of the note, or of both
   * @param alternates whether there are two
   */
  public record SlashedSpan(Span span, boolean alternates) {}

  /**
   * What is meant for a line. A staff follows its own marks; staves that have none follow all of
   * the part, as those of keyboards share theirs.
   */
  static Expression of(Part part, Strands strands, Span line, Bars bars) {
    List<Hairpin> hairpins =
        ofStaves(part.marks().hairpins(), Hairpin::staff, strands).stream()
            .filter(hairpin -> hairpin.span().overlaps(line))
            .toList();
    List<Words> all =
        ofStaves(
            part.marks().words().stream()
                .filter(words -> words.areForCharacter() && !isHairpin(words, part))
                .filter(words -> words.at().isBefore(line.end()))
                .toList(),
            Words::staff,
            strands);
    List<Words> words = new ArrayList<>();
    all.stream()
        .filter(each -> each.at().isBefore(line.start()))
        .reduce((one, later) -> later)
        .filter(each -> holds(each, part, strands, line.start(), bars))
        .ifPresent(words::add);
    all.stream().filter(each -> !each.at().isBefore(line.start())).forEach(words::add);
    List<Span> beams =
        part.marks().beams().stream()
            .filter(beamed -> !strands.isShared() && strands.all().contains(beamed.strand()))
            .map(PartMarks.Beamed::span)
            .filter(span -> span.overlaps(line))
            .toList();
    List<SlashedSpan> slashed =
        part.marks().trembled().stream()
            .filter(each -> !strands.isShared() && strands.all().contains(each.strand()))
            .map(PartMarks.Trembled::slashed)
            .filter(each -> each.span().overlaps(line))
            .toList();
    return new Expression(hairpins, words, beams, slashed);
  }

  private static boolean isHairpin(Words words, Part part) {
    return part.marks().hairpins().stream()
        .anyMatch(
            hairpin ->
                hairpin.span().start().equals(words.at())
                    && hairpin.words().equals(Optional.of(words.text())));
  }

  private static <T> List<T> ofStaves(List<T> all, Function<T, Integer> staff, Strands strands) {
    List<T> own = all.stream().filter(each -> strands.isOn(staff.apply(each))).toList();
    return own.isEmpty() ? all : own;
  }

  /** Until the music pauses for a bar, or for good where they say so. */
  private static boolean holds(Words words, Part part, Strands strands, Position until, Bars bars) {
    if (words.text().toLowerCase(Locale.ROOT).contains(HOLDS_ON)) {
      return bars.movementOf(bars.at(words.at())).equals(bars.movementOf(bars.at(until)));
    }
    Set<Integer> sounding =
        part.voices().stream()
            .filter(voice -> strands.has(voice.staff(), voice.name()))
            .flatMap(voice -> voice.within(new Span(words.at(), until)).stream())
            .map(stroke -> bars.at(stroke.onset()).index())
            .collect(Collectors.toSet());
    for (int bar = bars.at(words.at()).index() + 1; bar < bars.at(until).index(); bar++) {
      if (!sounding.contains(bar)) {
        return false;
      }
    }
    return true;
  }

  /** The same where each stroke is written for itself. */
  public Expression withoutSlashes() {
    return new Expression(hairpins, words, beams, List.of());
  }

  /** The words that hold at a place: the last before it. */
  public Optional<Words> wordsAt(Position place) {
    return words.stream().filter(each -> !each.at().isAfter(place)).reduce((one, later) -> later);
  }
}

package stafette.musicxml.write;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.BiFunction;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import stafette.chairs.ChairMark;
import stafette.musicxml.make.Fragments;
import stafette.musicxml.share.Assigned;
import stafette.musicxml.share.Sign;
import stafette.musicxml.text.Origin;
import stafette.musicxml.text.Origin.ElementText;
import stafette.musicxml.text.Origin.MeasureText;
import stafette.musicxml.text.Origin.NoteText;
import stafette.musicxml.text.Origin.PartText;
import stafette.musicxml.text.Replacement;
import stafette.score.Part;
import stafette.score.Words;
import stafette.time.Position;

/** Words of a part that hold for its own notes: said again after others that were written. */
final class FormerWords {
  /** What is said of the character of notes where the part had no words before. */
  private static final String AS_BEFORE = "come prima";

  private final Origin origin;
  private final PartText part;
  private final NavigableMap<Position, String> standing = new TreeMap<>();
  private final String otherwise;
  private final BiFunction<Position, String, Sign> sign;
  private final Predicate<MeasureText> needsNone;

  /**
   * @param otherwise what holds where nothing was said before
   * @param needsNone measures that say it by themselves
   */
  private FormerWords(
      Origin origin,
      PartText part,
      Part voices,
      Predicate<Words> isMeant,
      String otherwise,
      BiFunction<Position, String, Sign> sign,
      Predicate<MeasureText> needsNone) {
    this.origin = origin;
    this.part = part;
    this.otherwise = otherwise;
    this.sign = sign;
    this.needsNone = needsNone;
    voices.marks().words().stream()
        .filter(isMeant)
        .forEach(words -> standing.put(words.at(), words.text()));
  }

  /**
   * Who plays the notes that a staff of several players has already.
   *
   * @param voices the part as it was read
   * @param all what says that all play
   */
  static FormerWords labels(Origin origin, PartText part, Part voices, String all) {
    return new FormerWords(
        origin,
        part,
        voices,
        words -> words.voice().isEmpty() && ChairMark.in(words.text()).isPresent(),
        all,
        Sign::words,
        measure -> voicesIn(measure) > 1);
  }

  /**
   * In what character a part's notes are played.
   *
   * @param voices the part as it was read
   */
  static FormerWords character(Origin origin, PartText part, Part voices) {
    return new FormerWords(
        origin, part, voices, Words::areForCharacter, AS_BEFORE, Sign::character, measure -> false);
  }

  /**
   * Signs before the part's own notes that would be read with words that were written.
   *
   * @param said what was written of the kind, by place
   * @param isOfLine whether a note is one of the line's, whoever plays it
   */
  List<Replacement> restored(
      Map<Position, String> said,
      Assigned assigned,
      Predicate<ElementText> isOfLine,
      Fragments fragments) {
    NavigableMap<Position, String> written = new TreeMap<>(said);
    NavigableMap<Position, String> former = new TreeMap<>(standing);
    written.forEach((at, words) -> former.remove(at, words));
    List<Replacement> restored = new ArrayList<>();
    SignText text = new SignText(origin, fragments);
    for (MeasureText measure : part.measures()) {
      if (needsNone.test(measure)) {
        continue;
      }
      List<ElementText> notes =
          measure.elements().stream()
              .filter(element -> assigned.leaves(element) && !isOfLine.test(element))
              .sorted(Comparator.comparing(ElementText::onset))
              .toList();
      for (ElementText note : notes) {
        Optional<String> lost = lost(note.onset(), written, former);
        if (lost.isPresent()) {
          written.put(note.onset(), lost.get());
          restored.add(text.before(note, measure, sign.apply(note.onset(), lost.get())));
        }
      }
    }
    return restored;
  }

  /** Two voices say by themselves who plays. */
  private static long voicesIn(MeasureText measure) {
    return measure.elements().stream()
        .flatMap(element -> element.note().stream())
        .filter(note -> !note.rest())
        .map(NoteText::voice)
        .collect(Collectors.toCollection(TreeSet::new))
        .size();
  }

  /** What was said, where the last words before a note are others. */
  private Optional<String> lost(
      Position at, NavigableMap<Position, String> written, NavigableMap<Position, String> former) {
    Map.Entry<Position, String> last = written.floorEntry(at);
    Map.Entry<Position, String> said = former.floorEntry(at);
    boolean saidSince = last != null && said != null && !said.getKey().isBefore(last.getKey());
    if (last == null || saidSince) {
      return Optional.empty();
    }
    String should = said == null ? otherwise : said.getValue();
    return Optional.of(should).filter(words -> !words.equals(last.getValue()));
  }
}

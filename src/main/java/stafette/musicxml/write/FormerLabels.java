package stafette.musicxml.write;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import stafette.chairs.ChairMark;
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

/**
 * Who plays the notes that a staff of several players has already: said again after labels that
 * would be taken for theirs.
 */
final class FormerLabels {
  private final Origin origin;
  private final PartText part;
  private final NavigableMap<Position, String> standing = new TreeMap<>();
  private final String all;

  /**
   * @param voices the part as it was read
   * @param all what says that all play, where nothing was said before
   */
  FormerLabels(Origin origin, PartText part, Part voices, String all) {
    this.origin = origin;
    this.part = part;
    this.all = all;
    for (Words words : voices.marks().words()) {
      if (words.voice().isEmpty() && ChairMark.in(words.text()).isPresent()) {
        standing.put(words.at(), words.text());
      }
    }
  }

  /**
   * Signs before the part's own notes that would be read with a label that was written.
   *
   * @param isOfLine whether a note is one of the line's, whoever plays it
   */
  List<Replacement> restored(
      Assigned assigned, Predicate<ElementText> isOfLine, Fragments fragments) {
    NavigableMap<Position, String> written = new TreeMap<>(assigned.labels());
    NavigableMap<Position, String> former = new TreeMap<>(standing);
    written.forEach((at, label) -> former.remove(at, label));
    List<Replacement> restored = new ArrayList<>();
    SignText text = new SignText(origin, fragments);
    for (MeasureText measure : part.measures()) {
      if (voicesIn(measure) > 1) {
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
          Sign sign = Sign.words(note.onset(), lost.get());
          written.put(note.onset(), lost.get());
          restored.add(text.before(note, measure, sign));
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

  /** What was said, where the last label before a note says something else. */
  private Optional<String> lost(
      Position at, NavigableMap<Position, String> written, NavigableMap<Position, String> former) {
    Map.Entry<Position, String> last = written.floorEntry(at);
    Map.Entry<Position, String> said = former.floorEntry(at);
    boolean saidSince = last != null && said != null && !said.getKey().isBefore(last.getKey());
    if (last == null || saidSince) {
      return Optional.empty();
    }
    String should = said == null ? all : said.getValue();
    return Optional.of(should).filter(words -> !words.equals(last.getValue()));
  }
}

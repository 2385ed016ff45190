package stafette.musicxml.write;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;
import stafette.musicxml.share.Assigned;
import stafette.musicxml.share.Sign;
import stafette.musicxml.text.Origin;
import stafette.musicxml.text.Origin.ElementText;
import stafette.musicxml.text.Origin.MeasureText;
import stafette.musicxml.text.Origin.PartText;
import stafette.musicxml.text.Replacement;
import stafette.score.Part;
import stafette.score.Words;
import stafette.time.Position;

/** The character of a part's own notes, said again where they go on after notes of another one. */
final class FormerCharacter {
  /** Where the part had no words before. */
  private static final String AS_BEFORE = "come prima";

  private final Origin origin;
  private final PartText part;
  private final NavigableMap<Position, String> standing = new TreeMap<>();

  /**
   * @param voices the part as it was read
   */
  FormerCharacter(Origin origin, PartText part, Part voices) {
    this.origin = origin;
    this.part = part;
    voices.marks().words().stream()
        .filter(Words::areForCharacter)
        .forEach(words -> standing.put(words.at(), words.text()));
  }

  /** Signs before the part's own notes that would be read with words that were written. */
  List<Replacement> restored(Assigned assigned, Fragments fragments) {
    NavigableMap<Position, String> written = new TreeMap<>();
    assigned.touched().stream()
        .flatMap(bar -> assigned.signs(bar).stream())
        .filter(sign -> sign.kind() == Sign.SignKind.CHARACTER)
        .forEach(sign -> written.put(sign.at(), sign.text()));
    NavigableMap<Position, String> former = new TreeMap<>(standing);
    written.forEach((at, words) -> former.remove(at, words));
    List<Replacement> restored = new ArrayList<>();
    SignText text = new SignText(origin, fragments);
    for (MeasureText measure : part.measures()) {
      List<ElementText> notes =
          measure.elements().stream()
              .filter(assigned::leaves)
              .sorted(Comparator.comparing(ElementText::onset))
              .toList();
      for (ElementText note : notes) {
        Optional<String> lost = lost(note.onset(), written, former);
        if (lost.isPresent()) {
          written.put(note.onset(), lost.get());
          restored.add(text.before(note, measure, Sign.character(note.onset(), lost.get())));
        }
      }
    }
    return restored;
  }

  /** What was said, where the last words before a note are others. */
  private static Optional<String> lost(
      Position at, NavigableMap<Position, String> written, NavigableMap<Position, String> former) {
    Map.Entry<Position, String> last = written.floorEntry(at);
    Map.Entry<Position, String> said = former.floorEntry(at);
    boolean saidSince = last != null && said != null && !said.getKey().isBefore(last.getKey());
    if (last == null || saidSince) {
      return Optional.empty();
    }
    String should = said == null ? AS_BEFORE : said.getValue();
    return Optional.of(should).filter(words -> !words.equals(last.getValue()));
  }
}

package stafette.musicxml.write;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import stafette.musicxml.text.Origin.ElementText;
import stafette.musicxml.text.Origin.MeasureText;
import stafette.musicxml.text.Origin.NoteText;
import stafette.time.Bar;
import stafette.time.Length;
import stafette.time.Position;

/** A voice that a measure doesn't have yet, for a player whose neighbour on the staff plays. */
final class ExtraVoice {
  private static final int MOST = 8;

  private ExtraVoice() {}

  /**
   * A run of all of a bar, after all that stands there; empty where the measure ends in another
   * place than with a note.
   */
  static Optional<VoiceRun> in(MeasureText measure, Bar bar) {
    List<ElementText> elements = measure.elements();
    int end = elements.size();
    while (end > 0 && elements.get(end - 1).note().isEmpty()) {
      if (Set.of("backup", "forward").contains(elements.get(end - 1).name())) {
        return Optional.empty();
      }
      end--;
    }
    if (end == 0) {
      return Optional.empty();
    }
    ElementText last = elements.get(end - 1);
    Position cursor = last.onset().plus(last.note().orElseThrow().length());
    Length back = cursor.since(bar.span().start());
    int at = isBarline(elements) ? elements.size() - 1 : elements.size();
    int staff = last.note().orElseThrow().staff();
    return voice(measure)
        .map(name -> new VoiceRun(name, staff, at, at, bar.span(), Length.ZERO, back));
  }

  private static boolean isBarline(List<ElementText> elements) {
    return elements.get(elements.size() - 1).name().equals("barline");
  }

  private static Optional<String> voice(MeasureText measure) {
    Set<String> taken =
        measure.elements().stream()
            .flatMap(element -> element.note().stream())
            .map(NoteText::voice)
            .collect(Collectors.toSet());
    return IntStream.rangeClosed(2, MOST)
        .mapToObj(Integer::toString)
        .filter(name -> !taken.contains(name))
        .findFirst();
  }
}

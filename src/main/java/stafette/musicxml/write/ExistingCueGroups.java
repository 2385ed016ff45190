package stafette.musicxml.write;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stafette.musicxml.make.NoteRewrite;
import stafette.musicxml.text.Origin;
import stafette.musicxml.text.Origin.ElementText;
import stafette.musicxml.text.Origin.MeasureText;
import stafette.musicxml.text.Origin.NoteText;

/** The cue notes of a measure, those that share a chord, a beam or a tuplet side by side. */
final class ExistingCueGroups {
  private ExistingCueGroups() {}

  static List<List<ElementText>> of(Origin origin, MeasureText measure) {
    List<List<ElementText>> groups = new ArrayList<>();
    Optional<ElementText> last = Optional.empty();
    for (ElementText element : measure.elements()) {
      if (element.note().filter(NoteText::cue).isPresent()) {
        if (last.isEmpty() || !goesOn(origin, last.get(), element)) {
          groups.add(new ArrayList<>());
        }
        groups.get(groups.size() - 1).add(element);
        last = Optional.of(element);
      } else if (element.note().isPresent()) {
        last = Optional.empty();
      }
    }
    return groups;
  }

  private static boolean goesOn(Origin origin, ElementText before, ElementText cue) {
    String earlier = before.span().in(origin.text());
    String text = cue.span().in(origin.text());
    boolean beamed = List.of("continue", "end").contains(NoteRewrite.firstBeam(text));
    boolean inTuplet =
        earlier.contains("<time-modification")
            && text.contains("<time-modification")
            && !earlier.matches("(?s).*<tuplet[^>]*type\\s*=\\s*[\"']stop.*");
    boolean grace = before.note().filter(NoteText::grace).isPresent();
    return cue.note().filter(NoteText::chord).isPresent() || beamed || inTuplet || grace;
  }
}

package stafette.musicxml.write;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import stafette.musicxml.make.Fragments;
import stafette.musicxml.read.DynamicMark;
import stafette.musicxml.share.Assigned;
import stafette.musicxml.share.Sign;
import stafette.musicxml.text.Origin;
import stafette.musicxml.text.Origin.ElementText;
import stafette.musicxml.text.Origin.MeasureText;
import stafette.musicxml.text.Origin.PartText;
import stafette.musicxml.text.Replacement;
import stafette.score.Dynamic;
import stafette.score.Part;
import stafette.score.Stroke;
import stafette.score.Voice;
import stafette.time.Position;

/**
 * The dynamics of a part into which a line is written: what stands there already, and what must be
 * said again where the part's own notes go on in another dynamic than the line's.
 */
final class FormerDynamics {
  private static final Pattern DYNAMICS =
      Pattern.compile("<dynamics(?:\\s[^>]*)?>\\s*<([a-z]+)\\s*/>");

  private static final Pattern STAFF = Pattern.compile("<staff>\\s*(\\d+)\\s*</staff>");

  private final Origin origin;
  private final PartText part;
  private final List<FormerMark> standing = new ArrayList<>();
  private final List<FormerMark> written = new ArrayList<>();

  /**
   * A dynamic mark.
   *
   * @param staff whose; empty for all of the part
   */
  private record FormerMark(Position at, Optional<Integer> staff, Dynamic dynamic) {
    boolean isOn(int number) {
      return staff.map(own -> own == number).orElse(true);
    }
  }

  FormerDynamics(Origin origin, PartText part) {
    this.origin = origin;
    this.part = part;
    for (MeasureText measure : part.measures()) {
      measure.elements().forEach(element -> mark(element).ifPresent(standing::add));
    }
  }

  private Optional<FormerMark> mark(ElementText element) {
    String text = element.span().in(origin.text());
    Matcher mark = DYNAMICS.matcher(text);
    if (!mark.find()) {
      return Optional.empty();
    }
    Matcher named = STAFF.matcher(text);
    Optional<Integer> staff =
        element
            .note()
            .map(Origin.NoteText::staff)
            .or(
                () ->
                    named.find()
                        ? Optional.of(Integer.parseInt(named.group(1)))
                        : Optional.empty());
    return DynamicMark.leftBy(mark.group(1))
        .map(dynamic -> new FormerMark(element.onset(), staff, dynamic));
  }

  /** Whether an element of the part says what a sign would say, in whatever form. */
  boolean says(ElementText element, Sign sign, int staff) {
    return element.name().equals("direction")
        && sign.dynamic().isPresent()
        && mark(element)
            .filter(mark -> mark.at().equals(sign.at()) && mark.isOn(staff))
            .filter(mark -> sign.dynamic().equals(Optional.of(mark.dynamic())))
            .isPresent();
  }

  /** Takes note of a dynamic that is written. */
  void add(Sign sign, Optional<Integer> staff) {
    sign.dynamic().ifPresent(dynamic -> written.add(new FormerMark(sign.at(), staff, dynamic)));
  }

  /**
   * Signs before the part's own notes that would be read with the dynamic of what was written.
   *
   * @param voices the part as it was read
   * @param assigned what is written; notes that are its own are none of the part's
   */
  List<Replacement> restored(Part voices, Assigned assigned, Fragments fragments) {
    List<Replacement> restored = new ArrayList<>();
    Map<Position, Map<Integer, Dynamic>> before = dynamics(voices);
    SignText text = new SignText(origin, fragments);
    for (MeasureText measure : part.measures()) {
      List<ElementText> notes =
          measure.elements().stream()
              .filter(assigned::leaves)
              .sorted(Comparator.comparing(ElementText::onset))
              .toList();
      for (ElementText note : notes) {
        int staff = note.note().orElseThrow().staff();
        Optional<Dynamic> former =
            Optional.ofNullable(before.getOrDefault(note.onset(), Map.of()).get(staff));
        if (former.filter(dynamic -> isLost(dynamic, note.onset(), staff)).isPresent()) {
          Sign sign = Sign.of(note.onset(), former.orElseThrow());
          add(sign, SignText.staffOf(note));
          restored.add(text.before(note, measure, sign));
        }
      }
    }
    return restored;
  }

  private static Map<Position, Map<Integer, Dynamic>> dynamics(Part voices) {
    Map<Position, Map<Integer, Dynamic>> dynamics = new HashMap<>();
    for (Voice voice : voices.voices()) {
      for (Stroke stroke : voice.strokes()) {
        dynamics
            .computeIfAbsent(stroke.onset(), at -> new HashMap<>())
            .put(voice.staff(), stroke.dynamic());
      }
    }
    return dynamics;
  }

  /** Whether the last mark before a note is one that was written, and says something else. */
  private boolean isLost(Dynamic former, Position at, int staff) {
    Optional<FormerMark> last =
        written.stream()
            .filter(mark -> mark.isOn(staff) && !mark.at().isAfter(at))
            .max(Comparator.comparing(FormerMark::at));
    return last.isPresent()
        && last.get().dynamic() != former
        && standing.stream()
            .noneMatch(
                mark ->
                    mark.isOn(staff)
                        && mark.at().isAfter(last.get().at())
                        && !mark.at().isAfter(at));
  }
}

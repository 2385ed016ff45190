package stafette.musicxml.write;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Predicate;
import stafette.musicxml.share.Assigned;
import stafette.musicxml.text.Origin.ElementText;
import stafette.musicxml.text.Origin.MeasureText;
import stafette.musicxml.text.Origin.NoteText;
import stafette.musicxml.text.TextSpan;
import stafette.score.Line;
import stafette.score.LineSource;
import stafette.score.Part;
import stafette.score.Reading;
import stafette.score.Strand;
import stafette.score.Stroke;
import stafette.score.Voice;
import stafette.time.Position;

/**
 * The notes of lines where they are written: which note holds which of their strokes. A note with
 * slashes holds several; one that is tied holds the stroke that it is tied to.
 */
final class LineNotes {
  private static final int OCTAVE = 12;

  private final LineSource source;
  private final List<Voice> voices;
  private final List<NavigableMap<Position, Stroke>> lines = new ArrayList<>();
  private final Map<TextSpan, List<Stroke>> held = new HashMap<>();
  private final Map<StrandKey, Sounding> sounding = new HashMap<>();

  /** A key of one voice. */
  private record StrandKey(Strand strand, int key) {
    static StrandKey of(NoteText note) {
      return new StrandKey(new Strand(note.staff(), note.voice()), note.key());
    }
  }

  /** The last note of a key, and what it holds. */
  private record Sounding(Position end, List<Stroke> strokes) {}

  /**
   * The notes of lines.
   *
   * @param part as it was read
   * @param lines of the same voices; one, or one for each tone of their chords
   * @param measures in which they stand
   */
  LineNotes(Part part, List<Line> lines, List<MeasureText> measures) {
    this.source = lines.get(0).source();
    this.voices =
        part.voices().stream()
            .filter(voice -> source.strands().has(voice.staff(), voice.name()))
            .toList();
    for (Line line : lines) {
      NavigableMap<Position, Stroke> strokes = new TreeMap<>();
      line.strokes().forEach(stroke -> strokes.put(stroke.onset(), stroke));
      this.lines.add(strokes);
    }
    measures.forEach(measure -> measure.elements().forEach(this::take));
  }

  private void take(ElementText element) {
    Optional<NoteText> note = element.note().filter(n -> !n.rest()).filter(this::isInVoice);
    if (note.isEmpty()) {
      return;
    }
    List<Stroke> strokes =
        note.get().grace() ? graced(element, note.get()) : sounded(element, note.get());
    if (!strokes.isEmpty()) {
      held.put(element.span(), strokes);
    }
    if (!note.get().grace()) {
      Position end = element.onset().plus(note.get().length());
      sounding.put(StrandKey.of(note.get()), new Sounding(end, strokes));
    }
  }

  private List<Stroke> graced(ElementText element, NoteText note) {
    return lines.stream()
        .flatMap(strokes -> Optional.ofNullable(strokes.get(element.onset())).stream())
        .filter(stroke -> !stroke.graces().isEmpty())
        .filter(stroke -> !isOfOthers(stroke, note, own -> !own.graces().isEmpty()))
        .toList();
  }

  private List<Stroke> sounded(ElementText element, NoteText note) {
    List<Stroke> found = new ArrayList<>();
    Position end = element.onset().plus(note.length());
    for (NavigableMap<Position, Stroke> strokes : lines) {
      Map.Entry<Position, Stroke> before = strokes.lowerEntry(element.onset());
      if (before != null && before.getValue().span().contains(element.onset())) {
        found.add(before.getValue());
      }
      found.addAll(strokes.subMap(element.onset(), true, end, false).values());
    }
    found.removeIf(
        stroke -> !isOf(note, stroke) || isOfOthers(stroke, note, struck -> isOf(note, struck)));
    return found.isEmpty() && note.tiedFrom() ? tied(element, note) : found;
  }

  /**
   * Whether a note is a tone of a stroke; of broken octaves that were read as one, in whatever
   * octave.
   */
  private boolean isOf(NoteText note, Stroke stroke) {
    return stroke.tones().stream()
        .map(tone -> tone.key() - note.key())
        .anyMatch(apart -> apart == 0 || (source.reading() != Reading.ALL && apart % OCTAVE == 0));
  }

  /** Whether a stroke of the lines is struck in other voices than that of a note, and not there. */
  private boolean isOfOthers(Stroke stroke, NoteText note, Predicate<Stroke> isMeant) {
    List<Voice> striking =
        voices.stream()
            .filter(voice -> voice.at(stroke.onset()).filter(isMeant).isPresent())
            .toList();
    return !striking.isEmpty()
        && striking.stream()
            .noneMatch(voice -> voice.staff() == note.staff() && voice.name().equals(note.voice()));
  }

  /** A tone that is held while others of its chord are struck anew. */
  private List<Stroke> tied(ElementText element, NoteText note) {
    return Optional.ofNullable(sounding.get(StrandKey.of(note)))
        .filter(before -> before.end().equals(element.onset()))
        .map(Sounding::strokes)
        .orElse(List.of());
  }

  boolean isInVoice(NoteText note) {
    return source.strands().has(note.staff(), note.voice());
  }

  /** The strokes that a note holds; none if it is not of the lines. */
  List<Stroke> in(ElementText element) {
    return held.getOrDefault(element.span(), List.of());
  }

  /** Whether a note is of the lines, and holds no stroke that the part's own player keeps. */
  boolean goes(ElementText element, Optional<Assigned> own) {
    List<Stroke> strokes = in(element);
    return !strokes.isEmpty()
        && own.map(assigned -> strokes.stream().noneMatch(assigned::plays)).orElse(true);
  }

  /** The strokes that sound at a place. */
  List<Stroke> at(Position place) {
    return lines.stream()
        .flatMap(strokes -> Optional.ofNullable(strokes.floorEntry(place)).stream())
        .map(Map.Entry::getValue)
        .filter(stroke -> stroke.span().contains(place))
        .toList();
  }

  /** All strokes that begin from one place up to another. */
  List<Stroke> between(Position from, Position to) {
    return lines.stream().flatMap(s -> s.subMap(from, true, to, false).values().stream()).toList();
  }
}

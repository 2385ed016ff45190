package stafette.sound;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import stafette.limits.Instrument;
import stafette.plan.Plan;
import stafette.plan.Played;
import stafette.plan.Segment;
import stafette.score.Drum;
import stafette.score.Line;
import stafette.score.LineSource;
import stafette.score.Part;
import stafette.score.Score;
import stafette.score.Stroke;
import stafette.score.Tone;
import stafette.time.Position;
import stafette.time.Span;

/**
 * What the score has beside the lines of a plan, as a quiet background: every stroke as written.
 * Left out is what the plan plays: the lines where they are written, and what a player's own part
 * already has of that player's segments. Others who double the line stay.
 *
 * @param score all of it
 * @param instruments of parts whose instrument is known, by the part's id; others sound as a piano,
 *     or as a drum
 */
public record RestOfScore(Score score, Map<String, Instrument> instruments) {
  public RestOfScore {
    instruments = Map.copyOf(instruments);
  }

  /** One voice for each part. */
  List<SoundingVoice> voices() {
    return score.parts().stream().map(this::voice).toList();
  }

  private SoundingVoice voice(Part part) {
    Instrument known = instruments.get(part.id());
    boolean drums =
        part.voices().stream()
            .flatMap(voice -> voice.strokes().stream())
            .flatMap(stroke -> stroke.tones().stream())
            .anyMatch(Drum.class::isInstance);
    return known != null && known.range().isPresent() != drums
        ? SoundingVoice.of(part.name(), known, SoundingVoice.MIDDLE, true)
        : new SoundingVoice(
            part.name(),
            0,
            drums ? OptionalInt.of(Drums.key(part.name())) : OptionalInt.empty(),
            SoundingVoice.MIDDLE,
            true);
  }

  /**
   * What sounds in an excerpt.
   *
   * @param plan at the tempo to be heard
   * @param first the number of the first part's voice
   */
  List<Note> notes(Plan plan, Span excerpt, int first) {
    List<SoundingVoice> voices = voices();
    List<Note> notes = new ArrayList<>();
    for (int i = 0; i < voices.size(); i++) {
      Part part = score.parts().get(i);
      for (stafette.score.Voice written : part.voices()) {
        List<Stroke> strokes = beside(own(plan, part, written), written.within(excerpt));
        add(notes, strokes, voices.get(i), first + i, plan.line(), excerpt);
      }
    }
    return notes;
  }

  private static void add(
      List<Note> notes,
      List<Stroke> strokes,
      SoundingVoice voice,
      int number,
      Line clock,
      Span excerpt) {
    long origin = clock.micros(excerpt.start());
    for (int j = 0; j < strokes.size(); j++) {
      Stroke stroke = strokes.get(j);
      long next =
          j + 1 < strokes.size()
              ? clock.micros(strokes.get(j + 1).onset()) - origin
              : Long.MAX_VALUE;
      notes.addAll(
          Touch.notes(
              stroke,
              voice,
              number,
              clock.micros(stroke.onset()) - origin,
              clock.micros(stroke.span().end()) - origin,
              next));
    }
  }

  /** The strokes without what is played for them; those that had no other tones are gone. */
  private static List<Stroke> beside(Map<Position, List<Tone>> played, List<Stroke> strokes) {
    List<Stroke> result = new ArrayList<>();
    for (Stroke stroke : strokes) {
      List<Tone> own = played.getOrDefault(stroke.onset(), List.of());
      List<Tone> others =
          stroke.tones().stream()
              .filter(tone -> own.stream().noneMatch(line -> line.key() == tone.key()))
              .toList();
      if (!others.isEmpty()) {
        result.add(stroke.withTones(others));
      }
    }
    return result;
  }

  /** What of a voice the plan plays: the lines taken from it, and what its own player has. */
  private static Map<Position, List<Tone>> own(Plan plan, Part part, stafette.score.Voice written) {
    Map<Position, List<Tone>> tones = new HashMap<>();
    for (Line line : plan.brief().lines()) {
      LineSource source = line.source();
      if (source.part().equals(part.id())
          && source.strands().has(written.staff(), written.name())) {
        add(tones, line.strokes());
      }
    }
    for (Segment segment : plan.segments()) {
      if (plan.player(segment).part().equals(Optional.of(part.id()))) {
        Played played = plan.played(segment);
        add(tones, played.all());
      }
    }
    return tones;
  }

  private static void add(Map<Position, List<Tone>> tones, List<Stroke> strokes) {
    for (Stroke stroke : strokes) {
      tones.computeIfAbsent(stroke.onset(), at -> new ArrayList<>()).addAll(stroke.tones());
    }
  }
}

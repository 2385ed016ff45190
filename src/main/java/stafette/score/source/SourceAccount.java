package stafette.score.source;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import stafette.score.Line;
import stafette.score.Part;
import stafette.score.Reading;
import stafette.score.Score;
import stafette.score.Strands;
import stafette.score.Stroke;
import stafette.score.Tone;
import stafette.score.Voice;
import stafette.score.source.SourceNote.Became;
import stafette.time.Length;
import stafette.time.Position;
import stafette.time.Span;

/**
 * What became of each note of the page from which a line was taken. Notes of the source are those
 * struck in the voices that have the line, in all of its bars, grace notes included; each is
 * accounted for once.
 *
 * @param notes by onset, then by staff
 * @param notHeld those of the line that the pedal lets sound on and nobody holds
 */
public record SourceAccount(List<SourceNote> notes, List<Resonance> notHeld) {
  private static final int OCTAVE = 12;

  public SourceAccount {
    notes = List.copyOf(notes);
    notHeld = List.copyOf(notHeld);
  }

  /**
   * Notes that sound on under one pedal.
   *
   * @param pedal where it is down
   * @param tones each once, from low to high
   */
  public record Resonance(Span pedal, List<Tone> tones) {
    public Resonance {
      tones = List.copyOf(tones);
    }
  }

  /**
   * The account of a line.
   *
   * @param lines the line, or one for each tone of its chords
   */
  public static SourceAccount of(Score score, List<Line> lines) {
    return score
        .part(lines.get(0).source().part())
        .map(part -> new Reckoning(score, part, lines).account())
        .orElse(new SourceAccount(List.of(), List.of()));
  }

  /** How many became that. */
  public int count(Became became) {
    return (int) notes.stream().filter(note -> note.became() == became).count();
  }

  /** Looks up who has what. */
  private record Reckoning(Score score, Part part, List<Line> lines) {
    SourceAccount account() {
      List<SourceNote> notes = new ArrayList<>();
      sourceVoices()
          .forEach(
              voice ->
                  voice.strokes().stream()
                      .filter(stroke -> isWithin(stroke.onset()))
                      .forEach(stroke -> take(stroke, voice, notes)));
      notes.sort(
          Comparator.comparing(SourceNote::at)
              .thenComparing(SourceNote::staff)
              .thenComparing(note -> note.tone().key()));
      return new SourceAccount(notes, notHeld());
    }

    private Stream<Voice> sourceVoices() {
      Strands strands = lines.get(0).source().strands();
      return part.voices().stream().filter(voice -> strands.has(voice.staff(), voice.name()));
    }

    private boolean isWithin(Position at) {
      int bar = score.bars().at(at).index();
      return lines.stream()
          .map(Line::source)
          .anyMatch(source -> source.firstBar() <= bar && bar <= source.lastBar());
    }

    private void take(Stroke stroke, Voice voice, List<SourceNote> notes) {
      Stream.concat(
              stroke.graces().stream().flatMap(grace -> grace.tones().stream()),
              stroke.tones().stream())
          .map(tone -> note(stroke.onset(), tone, voice))
          .forEach(notes::add);
    }

    private SourceNote note(Position at, Tone tone, Voice voice) {
      Optional<Integer> octaves = octaves(tone, taken(at), isMovable(at));
      Optional<String> other = octaves.isPresent() ? Optional.empty() : other(at, tone);
      Became became =
          octaves
              .map(moved -> moved == 0 ? Became.TAKEN : Became.MOVED)
              .orElse(other.isPresent() ? Became.GIVEN : Became.OMITTED);
      return new SourceNote(
          at, tone, voice.staff(), voice.name(), became, octaves.orElse(0), other);
    }

    /** What the line strikes at a place, grace notes before it included. */
    private List<Tone> taken(Position at) {
      return lines.stream()
          .flatMap(line -> line.strokes().stream())
          .filter(stroke -> stroke.onset().equals(at))
          .flatMap(
              stroke ->
                  Stream.concat(
                      stroke.graces().stream().flatMap(grace -> grace.tones().stream()),
                      stroke.tones().stream()))
          .toList();
    }

    /** Whether what is struck at a place may have been moved: of chords tones are chosen. */
    private boolean isMovable(Position at) {
      return lines.get(0).source().reading() != Reading.ALL
          && sourceVoices()
                  .flatMap(voice -> voice.at(at).stream())
                  .flatMap(stroke -> stroke.keys().stream())
                  .distinct()
                  .count()
              == 1;
    }

    /** By how many octaves the line has a tone higher; the nearest, empty if it has it not. */
    private static Optional<Integer> octaves(Tone tone, List<Tone> taken, boolean movable) {
      return taken.stream()
          .map(each -> each.key() - tone.key())
          .filter(apart -> apart == 0 || (movable && tone.key() > 0 && apart % OCTAVE == 0))
          .map(apart -> apart / OCTAVE)
          .min(Comparator.comparingInt(Math::abs));
    }

    /** Another part that strikes it there. */
    private Optional<String> other(Position at, Tone tone) {
      return score.parts().stream()
          .filter(other -> !other.id().equals(part.id()))
          .filter(
              other ->
                  other.voices().stream()
                      .flatMap(voice -> voice.at(at).stream())
                      .anyMatch(stroke -> stroke.sounds(tone)))
          .map(Part::name)
          .findFirst();
    }

    private List<Resonance> notHeld() {
      List<Resonance> resonances = new ArrayList<>();
      for (Span pedal : part.marks().pedal()) {
        Map<Integer, Stroke> last = new TreeMap<>();
        lines.stream()
            .flatMap(line -> line.strokes().stream())
            .filter(stroke -> pedal.contains(stroke.onset()))
            .forEach(
                stroke -> stroke.keys().forEach(key -> last.merge(key, stroke, Reckoning::later)));
        List<Tone> tones = new ArrayList<>();
        last.forEach(
            (key, stroke) -> {
              Tone tone =
                  stroke.tones().stream().filter(t -> t.key() == key).findFirst().orElseThrow();
              if (!lasts(stroke, pedal) && !isHeld(tone, pedal)) {
                tones.add(tone);
              }
            });
        if (!tones.isEmpty()) {
          resonances.add(new Resonance(pedal, tones));
        }
      }
      return resonances;
    }

    private static Stroke later(Stroke one, Stroke other) {
      return one.onset().isBefore(other.onset()) ? other : one;
    }

    /** Whether the line itself sounds a tone until shortly before the pedal goes up. */
    private static boolean lasts(Stroke last, Span pedal) {
      return !last.span().end().plus(Length.QUARTER).isBefore(pedal.end());
    }

    /**
     * Whether somebody else, or another voice of the part, sounds a tone until the pedal goes up.
     */
    private boolean isHeld(Tone tone, Span pedal) {
      Set<Voice> own = sourceVoices().collect(Collectors.toSet());
      return score.parts().stream()
          .flatMap(each -> each.voices().stream())
          .filter(voice -> !own.contains(voice))
          .flatMap(voice -> voice.strokes().stream())
          .anyMatch(
              stroke ->
                  stroke.sounds(tone)
                      && stroke.span().overlaps(pedal)
                      && !stroke.span().end().isBefore(pedal.end()));
    }
  }
}

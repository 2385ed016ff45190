package stafette.ask;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import stafette.keep.OpenScore;
import stafette.musicxml.write.HandoffWords;
import stafette.score.Line;
import stafette.score.LineChoice;
import stafette.score.LineSource;
import stafette.score.NoSuchLine;
import stafette.score.Part;
import stafette.score.Score;
import stafette.score.Stroke;
import stafette.score.Tone;
import stafette.time.Position;

/**
 * A score in which a line was relayed before. Where its own player took part, only that player's
 * share sounds in its part any more; what was others' stands there as cue notes, or not at all.
 *
 * <p>Cue notes count as notes of the line if nothing else is there, or if other parts have them all
 * and a relay left its traces: words at a handoff, or a chord of which only some tones are cued.
 * Cue notes that quote another part leave none.
 */
public final class FormerRelay {
  private final OpenScore score;
  private final LineChoice choice;

  public FormerRelay(OpenScore score, LineChoice choice) {
    this.score = score;
    this.choice = choice;
  }

  /**
   * The line with the cue notes that a relay left of it.
   *
   * @throws NoSuchLine if it is not there with cue notes either
   */
  public Line line() throws NoSuchLine {
    Optional<Line> sounding = taken(score.score());
    Optional<Line> cued = score.withCues().flatMap(this::taken);
    if (cued.isPresent() && sounding.map(line -> isLeftOf(line, cued.get())).orElse(true)) {
      return coveredAsSounding(cued.get());
    }
    return sounding.isPresent() ? sounding.get() : choice.take(score.score());
  }

  private Optional<Line> taken(Score from) {
    try {
      return Optional.of(choice.take(from));
    } catch (NoSuchLine notThere) {
      return Optional.empty();
    }
  }

  /** Cue notes of other parts cover no handoff. */
  private Line coveredAsSounding(Line line) {
    Part part = score.score().part(line.source().part()).orElseThrow();
    LineSource source = line.source();
    return score
        .score()
        .line(part, source.strands(), line.strokes(), source.tone())
        .read(source.reading());
  }

  /** Whether what sounds is what a relay left of the line with cues. */
  private boolean isLeftOf(Line sounding, Line cued) {
    Set<List<Object>> there = new HashSet<>();
    sounding.strokes().forEach(stroke -> there.add(heard(stroke)));
    List<Stroke> others =
        cued.strokes().stream().filter(stroke -> !there.contains(heard(stroke))).toList();
    return !others.isEmpty()
        && areElsewhere(others, cued)
        && (isPartOfChords(sounding, cued, others) || hasWords(cued));
  }

  private static List<Object> heard(Stroke stroke) {
    return List.of(stroke.onset(), stroke.tones().stream().map(Tone::key).sorted().toList());
  }

  /** Whether other parts sound all of these strokes. */
  private boolean areElsewhere(List<Stroke> strokes, Line line) {
    Map<Position, Set<Integer>> keys = new HashMap<>();
    score.score().parts().stream()
        .filter(part -> !part.id().equals(line.source().part()))
        .flatMap(part -> part.voices().stream())
        .flatMap(voice -> voice.within(line.span()).stream())
        .forEach(
            stroke ->
                stroke
                    .tones()
                    .forEach(
                        tone ->
                            keys.computeIfAbsent(stroke.onset(), at -> new HashSet<>())
                                .add(tone.key())));
    return strokes.stream()
        .allMatch(
            stroke ->
                stroke.tones().stream()
                    .allMatch(
                        tone -> keys.getOrDefault(stroke.onset(), Set.of()).contains(tone.key())));
  }

  /** Whether what is cued stands in chords with what sounds. */
  private static boolean isPartOfChords(Line sounding, Line cued, List<Stroke> others) {
    Set<Position> onsets = onsets(sounding);
    return sounding.source().strands().equals(cued.source().strands())
        && others.stream().map(Stroke::onset).anyMatch(onsets::contains);
  }

  private static Set<Position> onsets(Line line) {
    return line.strokes().stream().map(Stroke::onset).collect(Collectors.toSet());
  }

  private boolean hasWords(Line line) {
    Set<Position> onsets = onsets(line);
    return HandoffWords.in(score.document()).stream()
        .anyMatch(words -> onsets.contains(words.at()));
  }
}

package stafette.score;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import stafette.time.Span;
import stafette.words.Sentence;
import stafette.words.Settable;

/**
 * A line as people ask for it.
 *
 * @param part the part's id or name
 * @param bars which bars; all of them if empty
 * @param staves counted from 1; any if empty; several share the line
 * @param voices by name; any if empty; several share the line
 * @param tone which tones of chords; needed only where there are chords
 * @param reading how broken octaves and chords are read
 */
public record LineChoice(
    String part,
    Optional<BarChoice> bars,
    List<Integer> staves,
    List<String> voices,
    Optional<ToneChoice> tone,
    Reading reading) {
  public LineChoice {
    staves = List.copyOf(staves);
    voices = List.copyOf(voices);
  }

  /** A line of one voice, as it stands. */
  public LineChoice(
      String part,
      Optional<BarChoice> bars,
      OptionalInt staff,
      Optional<String> voice,
      Optional<ToneChoice> tone) {
    this(part, bars, staff.stream().boxed().toList(), voice.stream().toList(), tone, Reading.ALL);
  }

  /** The line that was taken from there. */
  public static LineChoice of(LineSource source) {
    return new LineChoice(
        source.part(),
        Optional.of(new BarChoice("#" + (source.firstBar() + 1) + "-#" + (source.lastBar() + 1))),
        source.strands().staves(),
        source.strands().voices(),
        Optional.of(source.tone()),
        source.reading());
  }

  /** The choice with other tones. */
  public LineChoice with(ToneChoice other) {
    return new LineChoice(part, bars, staves, voices, Optional.of(other), reading);
  }

  /** The choice read otherwise. */
  public LineChoice with(Reading other) {
    return new LineChoice(part, bars, staves, voices, tone, other);
  }

  /** The choice without a say in which tones are meant. */
  public LineChoice withoutTone() {
    return new LineChoice(part, bars, staves, voices, Optional.empty(), reading);
  }

  /**
   * The line in a score. Where several staves or voices are named it is what they have together;
   * where staff and voice leave a choice, it is the voice with the most attacks in these bars, the
   * upper one of equals; where neither is named and hands share a line of more, it is that.
   *
   * @throws NoSuchLine if part, bars, staff, voice or tone are not there, or chords leave open
   *     which tone is meant
   */
  public Line take(Score score) throws NoSuchLine {
    Part found = find(score);
    Span span = bars.isPresent() ? bars.get().in(score.bars()) : score.bars().span();
    List<Voice> chosen = voicesIn(found, score, span);
    List<Stroke> strokes =
        chosen.size() == 1 ? chosen.get(0).within(span) : Weave.of(chosen, span).strokes();
    Optional<Stroke> chord = strokes.stream().filter(Stroke::isChord).findFirst();
    if (chord.isPresent() && tone.isEmpty()) {
      throw new NoSuchLine(
          Sentence.of(
              "{0}: the line has chords; choose one of their tones{1}: top, bottom, a number counted"
                  + " from the top, or all",
              new Place(found.name(), score.bars().nameOf(chord.get().onset())), Settable.TONES));
    }
    ToneChoice tones = tone.orElse(new ToneChoice.All());
    List<Stroke> thinned =
        BrokenChords.read(strokes, reading).stream()
            .filter(stroke -> !tones.from(stroke.tones()).isEmpty())
            .map(stroke -> stroke.withTones(tones.from(stroke.tones())))
            .toList();
    if (thinned.isEmpty()) {
      throw new NoSuchLine(
          Sentence.of(
              "{0} has no chord with a tone number {1} from the top", where(found), tones.text()));
    }
    if (thinned.size() == 1 && strokes.size() > 1 && reading != Reading.ALL) {
      throw new NoSuchLine(
          reading == Reading.UPPER
              ? Sentence.of(
                  "{0} has only one upper note; read it as it stands{1}",
                  where(found), Settable.READING)
              : Sentence.of(
                  "{0} has only one lower note; read it as it stands{1}",
                  where(found), Settable.READING));
    }
    return score.line(found, Strands.of(chosen), thinned, tones).read(reading);
  }

  private Part find(Score score) throws NoSuchLine {
    return score
        .part(part)
        .orElseThrow(
            () ->
                new NoSuchLine(
                    Sentence.of(
                        "there is no part \"{0}\"; the score has {1}",
                        part,
                        Sentence.list(
                            score.parts().stream().map(p -> p.id() + " " + p.name()).toList()))));
  }

  private List<Voice> voicesIn(Part found, Score score, Span span) throws NoSuchLine {
    List<Voice> named =
        found.voices().stream()
            .filter(v -> staves.isEmpty() || staves.contains(v.staff()))
            .filter(v -> voices.isEmpty() || voices.contains(v.name()))
            .filter(v -> attacks(v, span) > 0)
            .toList();
    if (named.isEmpty()) {
      throw new NoSuchLine(
          voices.isEmpty() && staves.isEmpty()
              ? Sentence.of("{0} has no notes; there is no line to take", where(found))
              : Sentence.of(
                  "{0} has no notes there (its staves and voices: {1}); there is no line to take",
                  where(found), there(found)));
    }
    if (staves.size() > 1 || voices.size() > 1) {
      return named;
    }
    Voice fullest = fullest(named, span);
    boolean open = staves.isEmpty() && voices.isEmpty();
    Optional<Strands> shared =
        open ? shared(found, score, span, attacks(fullest, span)) : Optional.empty();
    return shared
        .map(all -> named.stream().filter(v -> all.has(v.staff(), v.name())).toList())
        .orElse(List.of(fullest));
  }

  /** The voices that share a line of more strokes than any single voice has. */
  private static Optional<Strands> shared(Part part, Score score, Span span, long single) {
    return SharedHands.in(part, span).stream()
        .flatMap(hands -> hands.atTempo(score.tempo()).stream())
        .filter(line -> line.strokes().size() > single)
        .max(Comparator.comparingInt(line -> line.strokes().size()))
        .map(SharedHands.SharedLine::strands);
  }

  private static Voice fullest(List<Voice> named, Span span) {
    return Collections.max(
        named,
        Comparator.comparingLong((Voice v) -> attacks(v, span)).thenComparing(v -> -v.staff()));
  }

  private static long attacks(Voice voice, Span span) {
    return voice.strokes().stream().filter(stroke -> span.contains(stroke.onset())).count();
  }

  private Sentence where(Part found) {
    List<Object> words = new ArrayList<>();
    words.add(
        bars.<Object>map(b -> Sentence.of("{0}, bars {1},", found.name(), b.text()))
            .orElse(found.name()));
    if (!staves.isEmpty()) {
      words.add(Sentence.of("staff {0}", joined(staves)));
    }
    if (!voices.isEmpty()) {
      words.add(Sentence.of("voice {0}", joined(voices)));
    }
    return Sentence.list(" ", words);
  }

  private static String joined(List<?> all) {
    return all.stream().map(String::valueOf).collect(Collectors.joining("+"));
  }

  private static Sentence there(Part found) {
    return Sentence.list(
        found.voices().stream()
            .map(v -> Sentence.of("staff {0} voice {1}", v.staff(), v.name()))
            .toList());
  }
}

package stafette.score;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import stafette.time.Span;
import stafette.words.Sentence;
import stafette.words.Settable;

/**
 * A line as people ask for it.
 *
 * @param part the part's id or name
 * @param bars which bars; all of them if empty
 * @param staff counted from 1; any if empty
 * @param voice any if empty
 * @param tone which tones of chords; needed only where there are chords
 */
public record LineChoice(
    String part,
    Optional<BarChoice> bars,
    OptionalInt staff,
    Optional<String> voice,
    Optional<ToneChoice> tone) {
  /** The line that was taken from there. */
  public static LineChoice of(LineSource source) {
    return new LineChoice(
        source.part(),
        Optional.of(new BarChoice("#" + (source.firstBar() + 1) + "-#" + (source.lastBar() + 1))),
        OptionalInt.of(source.staff()),
        Optional.of(source.voice()),
        Optional.of(source.tone()));
  }

  /** The choice with other tones. */
  public LineChoice with(ToneChoice other) {
    return new LineChoice(part, bars, staff, voice, Optional.of(other));
  }

  /**
   * The line in a score. Where staff and voice leave a choice, it is the voice with the most
   * attacks in these bars, the upper one of equals.
   *
   * @throws NoSuchLine if part, bars, staff, voice or tone are not there, or chords leave open
   *     which tone is meant
   */
  public Line take(Score score) throws NoSuchLine {
    Part found = find(score);
    Span span = bars.isPresent() ? bars.get().in(score.bars()) : wholeOf(score);
    Voice chosen = voiceIn(found, span);
    List<Stroke> strokes =
        chosen.strokes().stream().filter(stroke -> span.contains(stroke.onset())).toList();
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
        strokes.stream()
            .filter(stroke -> !tones.from(stroke.tones()).isEmpty())
            .map(stroke -> stroke.withTones(tones.from(stroke.tones())))
            .toList();
    if (thinned.isEmpty()) {
      throw new NoSuchLine(
          Sentence.of(
              "{0} has no chord with a tone number {1} from the top", where(found), tones.text()));
    }
    return score.line(found, chosen, thinned, tones);
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

  private Voice voiceIn(Part found, Span span) throws NoSuchLine {
    return found.voices().stream()
        .filter(v -> staff.isEmpty() || v.staff() == staff.getAsInt())
        .filter(v -> voice.isEmpty() || v.name().equals(voice.get()))
        .filter(v -> attacks(v, span) > 0)
        .max(Comparator.comparingLong((Voice v) -> attacks(v, span)).thenComparing(v -> -v.staff()))
        .orElseThrow(
            () ->
                new NoSuchLine(
                    voice.isEmpty() && staff.isEmpty()
                        ? Sentence.of("{0} has no notes; there is no line to take", where(found))
                        : Sentence.of(
                            "{0} has no notes there (its staves and voices: {1}); there is no line"
                                + " to take",
                            where(found), there(found))));
  }

  private static long attacks(Voice voice, Span span) {
    return voice.strokes().stream().filter(stroke -> span.contains(stroke.onset())).count();
  }

  private Sentence where(Part found) {
    List<Object> words = new ArrayList<>();
    words.add(
        bars.<Object>map(b -> Sentence.of("{0}, bars {1},", found.name(), b.text()))
            .orElse(found.name()));
    staff.ifPresent(number -> words.add(Sentence.of("staff {0}", number)));
    voice.ifPresent(name -> words.add(Sentence.of("voice {0}", name)));
    return Sentence.list(" ", words);
  }

  private static Sentence there(Part found) {
    return Sentence.list(
        found.voices().stream()
            .map(v -> Sentence.of("staff {0} voice {1}", v.staff(), v.name()))
            .toList());
  }

  private static Span wholeOf(Score score) {
    return new Span(
        score.bars().get(0).span().start(),
        score.bars().get(score.bars().count() - 1).span().end());
  }
}

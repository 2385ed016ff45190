package stafette.score;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import stafette.time.Span;

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

  /** The same with other tones. */
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
          new Place(found.name(), score.bars().nameOf(chord.get().onset()))
              + ": the line has chords; choose a tone with --tone top, bottom, a number counted from the top, or all");
    }
    ToneChoice tones = tone.orElse(new ToneChoice.All());
    List<Stroke> thinned =
        strokes.stream()
            .filter(stroke -> !tones.from(stroke.tones()).isEmpty())
            .map(stroke -> stroke.withTones(tones.from(stroke.tones())))
            .toList();
    if (thinned.isEmpty()) {
      throw new NoSuchLine(
          found.name()
              + where()
              + " has no chord with a tone number "
              + tones.text()
              + " from the top");
    }
    return score.line(found, chosen, thinned, tones);
  }

  private Part find(Score score) throws NoSuchLine {
    return score
        .part(part)
        .orElseThrow(
            () ->
                new NoSuchLine(
                    "there is no part \""
                        + part
                        + "\"; the score has "
                        + score.parts().stream()
                            .map(p -> p.id() + " " + p.name())
                            .collect(Collectors.joining(", "))));
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
                    found.name()
                        + where()
                        + " has no notes"
                        + there(found)
                        + "; there is no line to take"));
  }

  private static long attacks(Voice voice, Span span) {
    return voice.strokes().stream().filter(stroke -> span.contains(stroke.onset())).count();
  }

  private String where() {
    return bars.map(b -> ", bars " + b.text() + ",").orElse("")
        + (staff.isPresent() ? " staff " + staff.getAsInt() : "")
        + voice.map(v -> " voice " + v).orElse("");
  }

  private String there(Part found) {
    return voice.isEmpty() && staff.isEmpty()
        ? ""
        : " there (its staves and voices: "
            + found.voices().stream()
                .map(v -> "staff " + v.staff() + " voice " + v.name())
                .collect(Collectors.joining(", "))
            + ")";
  }

  private static Span wholeOf(Score score) {
    return new Span(
        score.bars().get(0).span().start(),
        score.bars().get(score.bars().count() - 1).span().end());
  }
}

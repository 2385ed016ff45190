package stafette.ask;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import stafette.keep.OpenScore;
import stafette.musicxml.write.HandoffWords;
import stafette.score.Line;
import stafette.score.LineChoice;
import stafette.score.NoSuchLine;
import stafette.score.Part;
import stafette.score.Place;
import stafette.score.Score;
import stafette.score.Stroke;
import stafette.score.Tone;
import stafette.score.Voice;
import stafette.time.Position;
import stafette.time.Span;
import stafette.words.Sentence;

/** What is to be said of a line that was relayed before, so that it may not be what it was. */
public final class LineRemarks {
  private final OpenScore score;
  private final Line line;
  private final LineChoice choice;
  private final Span asked;

  private LineRemarks(OpenScore score, Line line, LineChoice choice) {
    this.score = score;
    this.line = line;
    this.choice = choice;
    this.asked = asked(score.score(), choice);
  }

  /**
   * The remarks on a line, as it was found.
   *
   * @param request how it was asked for
   */
  public static List<Sentence> on(OpenScore score, Line line, LineRequest request) {
    LineRemarks remarks = new LineRemarks(score, line, request.choice());
    if (!remarks.sounds()) {
      return List.of(
          Sentence.of(
              "{0}: {1}: the line is read from the cue notes that stand there",
              score.file(), line.where("-")));
    }
    List<Sentence> all = new ArrayList<>();
    if (request.cues() && remarks.hasMoreCues()) {
      all.add(
          Sentence.of(
              "{0}: {1}: the cue notes that stand there are not taken for the line, as no relay"
                  + " left them",
              score.file(), line.where("-")));
    }
    remarks.brokenOff().ifPresent(words -> all.add(remarks.said(words)));
    return all;
  }

  private static Span asked(Score score, LineChoice choice) {
    Span whole = score.bars().span();
    try {
      return choice.bars().isPresent() ? choice.bars().get().in(score.bars()) : whole;
    } catch (NoSuchLine thereBefore) {
      return whole;
    }
  }

  private Sentence said(HandoffWords words) {
    return Sentence.of(
        "{0}: {1}: a relay was written here before (\"{2}\"), and only what {3} kept of the line is"
            + " split now; all of the line is in the score as it was before",
        score.file(),
        new Place(line.source().partName(), line.bars().nameOf(words.at())),
        words.text(),
        line.source().partName());
  }

  /** Whether all of the line sounds in its own part. */
  private boolean sounds() {
    Map<Position, List<Stroke>> there = new HashMap<>();
    for (Voice voice : own(score.score())) {
      for (Stroke stroke : voice.within(line.span())) {
        there.computeIfAbsent(stroke.onset(), at -> new ArrayList<>()).add(stroke);
      }
    }
    return line.strokes().stream()
        .allMatch(
            stroke ->
                stroke.tones().stream()
                    .allMatch(
                        tone ->
                            there.getOrDefault(stroke.onset(), List.of()).stream()
                                .anyMatch(other -> other.sounds(tone))));
  }

  /** The voices on the line's staff. */
  private List<Voice> own(Score from) {
    return from.part(line.source().part()).map(Part::voices).orElse(List.of()).stream()
        .filter(voice -> line.source().strands().isOn(voice.staff()))
        .toList();
  }

  private boolean hasMoreCues() {
    Set<List<Object>> sounding = heard(score.score());
    return score.withCues().filter(cues -> !sounding.containsAll(heard(cues))).isPresent();
  }

  private Set<List<Object>> heard(Score from) {
    Set<List<Object>> heard = new HashSet<>();
    for (Voice voice : askedFor(from)) {
      for (Stroke stroke : voice.within(asked)) {
        List<Integer> keys = stroke.tones().stream().map(Tone::key).toList();
        heard.add(List.of(voice.staff(), voice.name(), stroke.onset(), keys));
      }
    }
    return heard;
  }

  /** The voices of the line's part that were asked for: all of them if no staff was named. */
  private List<Voice> askedFor(Score from) {
    return !choice.staves().isEmpty()
        ? own(from)
        : from.part(line.source().part()).map(Part::voices).orElse(List.of());
  }

  /**
   * A handoff of the line's own player at which the line breaks off, or begins, within the bars.
   */
  private Optional<HandoffWords> brokenOff() {
    return HandoffWords.in(score.document()).stream()
        .filter(words -> words.part().equals(line.source().part()))
        .filter(this::isAtSilence)
        .findFirst();
  }

  /** Whether the line breaks off after a stroke, before its last. */
  private boolean isSilentLater(int index) {
    List<Stroke> strokes = line.strokes();
    return IntStream.range(index + 1, strokes.size())
        .anyMatch(i -> strokes.get(i - 1).span().end().isBefore(strokes.get(i).onset()));
  }

  private boolean isAtSilence(HandoffWords words) {
    List<Stroke> strokes = line.strokes();
    for (int i = 0; i < strokes.size(); i++) {
      if (strokes.get(i).onset().equals(words.at())) {
        Position before = i == 0 ? asked.start() : strokes.get(i - 1).span().end();
        Position after = i + 1 == strokes.size() ? asked.end() : strokes.get(i + 1).onset();
        boolean silentAfter = strokes.get(i).span().end().isBefore(after);
        return switch (words.kind()) {
          case TAKES_OVER -> before.isBefore(words.at());
          case HANDS_OVER -> silentAfter;
          case ALTERNATES -> before.isBefore(words.at()) || isSilentLater(i);
        };
      }
    }
    return false;
  }
}

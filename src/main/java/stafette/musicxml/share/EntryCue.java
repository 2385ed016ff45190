package stafette.musicxml.share;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.NavigableSet;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Stream;
import stafette.limits.Instrument;
import stafette.plan.Plan;
import stafette.plan.Player;
import stafette.plan.Segment;
import stafette.plan.written.LongRest;
import stafette.score.Part;
import stafette.score.Pitch;
import stafette.score.Score;
import stafette.score.Stroke;
import stafette.score.Tone;
import stafette.score.Value;
import stafette.score.Voice;
import stafette.time.Bar;
import stafette.time.Bars;
import stafette.time.Length;
import stafette.time.Position;
import stafette.time.Span;

/**
 * What a player hears before an entry after a long rest, to be written small: the last bar before
 * it, and of its own bar what comes first (common practice, no source).
 *
 * @param span up to the entry
 * @param notes in octaves that the player's instrument has
 */
public record EntryCue(Span span, Assigned notes) {
  /** Where the tempo changes players count no more bars than that without help. */
  private static final int BARS_AT_NEW_TEMPO = 2;

  private static final int MOST_OCTAVES = 4;

  /** What could be cued. */
  private record Quotation(String name, List<Stroke> strokes) {
    Length sounding() {
      return strokes.stream().map(Stroke::length).reduce(Length.ZERO, Length::plus);
    }
  }

  /** Who enters with a turn, and all who read the same staff. */
  private record Listening(Segment turn, List<Integer> players, Optional<Part> own) {
    boolean hears(Segment other) {
      return !players.contains(other.player()) && other.relay() == turn.relay();
    }
  }

  /**
   * The cues of a player of a plan, by place.
   *
   * @param own the player's part, if the score has it
   */
  public static List<EntryCue> of(
      Plan plan, int player, Score score, Optional<Part> own, WritingStyle style) {
    return of(plan, List.of(player), score, own, style);
  }

  /**
   * The cues in a staff that players share, before entries after a rest of them all.
   *
   * @param players those of the plan who share it, all with instruments of one kind
   */
  public static List<EntryCue> of(
      Plan plan, List<Integer> players, Score score, Optional<Part> own, WritingStyle style) {
    Bars bars = score.bars();
    NavigableSet<Integer> sounding = new TreeSet<>();
    own.stream()
        .flatMap(part -> part.voices().stream())
        .flatMap(voice -> voice.strokes().stream())
        .forEach(stroke -> sounding.add(bars.at(stroke.onset()).index()));
    List<EntryCue> cues = new ArrayList<>();
    for (Segment turn : turns(plan, players)) {
      Position entry = plan.played(turn).all().get(0).onset();
      Bar bar = bars.at(entry);
      Integer before = sounding.lower(bar.index());
      int silent = bar.index() - (before == null ? 0 : before + 1);
      if (bar.index() > 0 && silent > enough(score, bar, entry)) {
        Span span = new Span(bars.get(bar.index() - 1).span().start(), entry);
        heard(plan, new Listening(turn, players, own), score, span, style)
            .flatMap(heard -> cue(heard, span, plan.brief().players().get(turn.player()), bars))
            .ifPresent(cues::add);
      }
      plan.played(turn).all().forEach(stroke -> sounding.add(bars.at(stroke.onset()).index()));
    }
    return cues;
  }

  private static List<Segment> turns(Plan plan, List<Integer> players) {
    return plan.segments().stream()
        .filter(turn -> players.contains(turn.player()))
        .sorted(Comparator.comparing(turn -> plan.played(turn).all().get(0).onset()))
        .toList();
  }

  private static int enough(Score score, Bar bar, Position entry) {
    Position from = score.bars().get(Math.max(0, bar.index() - BARS_AT_NEW_TEMPO)).span().start();
    boolean newTempo =
        !score
            .tempo()
            .within(new Span(from, entry.plus(Length.ofQuarters(1, 8))))
            .tailMap(from, false)
            .isEmpty();
    return newTempo ? BARS_AT_NEW_TEMPO : LongRest.BARS_COUNTED;
  }

  /** The line, where others have it; else the part that sounds most. */
  private static Optional<Quotation> heard(
      Plan plan, Listening listening, Score score, Span span, WritingStyle style) {
    Optional<Quotation> relayed =
        plan.segments().stream()
            .filter(listening::hears)
            .map(
                other ->
                    new Quotation(
                        style.shortName().apply(plan.player(other)),
                        within(plan.played(other).all(), span)))
            .filter(heard -> !heard.strokes().isEmpty())
            .reduce((one, later) -> later);
    return relayed.or(
        () ->
            score.parts().stream()
                .filter(part -> listening.own().filter(part::equals).isEmpty())
                .flatMap(
                    part -> part.voices().stream().map(voice -> heard(part, voice, span, style)))
                .filter(heard -> !heard.strokes().isEmpty())
                .max(Comparator.comparing(Quotation::sounding)));
  }

  private static Quotation heard(Part part, Voice voice, Span span, WritingStyle style) {
    return new Quotation(style.partName().apply(part), within(voice.within(span), span));
  }

  /** Strokes with pitch that begin in a span, none beyond its end. */
  private static List<Stroke> within(List<Stroke> strokes, Span span) {
    return strokes.stream()
        .filter(stroke -> span.contains(stroke.onset()))
        .filter(stroke -> stroke.tones().stream().allMatch(Pitch.class::isInstance))
        .map(stroke -> until(stroke, span.end()))
        .toList();
  }

  private static Stroke until(Stroke stroke, Position end) {
    return stroke.span().end().isAfter(end)
        ? stroke.lasting(new Value(end.since(stroke.onset()), Optional.empty()))
        : stroke;
  }

  private static Optional<EntryCue> cue(Quotation heard, Span span, Player player, Bars bars) {
    return octaves(heard.strokes(), player.instrument())
        .map(
            octaves -> {
              List<Stroke> strokes =
                  heard.strokes().stream().map(stroke -> moved(stroke, octaves)).toList();
              return new EntryCue(span, Assigned.quoting(player, bars, strokes, heard.name()));
            });
  }

  /** By how many octaves all of it must move for the instrument; the fewest. */
  private static Optional<Integer> octaves(List<Stroke> strokes, Instrument instrument) {
    return Stream.iterate(0, i -> i <= MOST_OCTAVES, i -> i + 1)
        .flatMap(i -> Stream.of(i, -i))
        .filter(
            i ->
                strokes.stream()
                    .map(stroke -> moved(stroke, i))
                    .flatMap(stroke -> stroke.tones().stream())
                    .allMatch(instrument::reaches))
        .findFirst();
  }

  private static Stroke moved(Stroke stroke, int octaves) {
    List<Tone> tones =
        stroke.tones().stream()
            .map(Pitch.class::cast)
            .map(pitch -> new Pitch(pitch.step(), pitch.alter(), pitch.octave() + octaves))
            .map(Tone.class::cast)
            .toList();
    return stroke.quoted(tones);
  }
}

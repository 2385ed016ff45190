package stafette.sound;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.OptionalLong;
import stafette.plan.Halves;
import stafette.plan.Pattern;
import stafette.plan.Plan;
import stafette.plan.Played;
import stafette.plan.Segment;
import stafette.plan.Turn;
import stafette.score.Stroke;
import stafette.time.Span;

/** Plays the segments of a plan within an excerpt; times count from the excerpt's start. */
final class Performer {
  private final Plan plan;
  private final Span excerpt;
  private final Hearing hearing;
  private final Stage stage;
  private final List<long[]> onsets = new ArrayList<>();

  /**
   * @param plan at the tempo to be heard
   * @param stage where its players are
   */
  Performer(Plan plan, Span excerpt, Hearing hearing, Stage stage) {
    this.plan = plan;
    this.excerpt = excerpt;
    this.hearing = hearing;
    this.stage = stage;
    Ensemble ensemble = new Ensemble(hearing.timing(), hearing.seats());
    long origin = plan.line().micros(excerpt.start());
    for (int s = 0; s < plan.segments().size(); s++) {
      onsets.add(onsets(s, ensemble, origin));
    }
  }

  /** A player's strokes stay in order, and none comes before the excerpt. */
  private long[] onsets(int number, Ensemble ensemble, long origin) {
    Segment segment = plan.segments().get(number);
    Played played = plan.played(segment);
    long[] result = new long[played.strokes()];
    long earliest = Long.MIN_VALUE;
    for (int i = 0; i < result.length; i++) {
      int stroke = played.first() + i;
      long written = played.line().onsetMicros(stroke) - origin;
      long drawn = written + ensemble.lateMicros(plan.player(segment), number, stroke);
      result[i] = Math.max(written >= 0 ? Math.max(0, drawn) : drawn, earliest);
      earliest = result[i] + Touch.GAP_MICROS * 2;
    }
    return result;
  }

  /** What the players who are heard play, segment by segment. */
  List<Note> notes() {
    List<Note> notes = new ArrayList<>();
    for (int s = 0; s < plan.segments().size(); s++) {
      if (hearing.heard().contains(plan.segments().get(s).player())) {
        add(notes, s);
      }
    }
    return notes;
  }

  private void add(List<Note> notes, int number) {
    Segment segment = plan.segments().get(number);
    Played played = plan.played(segment);
    int voice = stage.voice(segment.player());
    long[] at = onsets.get(number);
    for (int i = 0; i < at.length; i++) {
      Stroke stroke = played.line().stroke(played.first() + i);
      if (excerpt.contains(stroke.onset())) {
        long written =
            played.line().endMicros(played.first() + i)
                - played.line().onsetMicros(played.first() + i);
        long next = i + 1 < at.length ? at[i + 1] : Long.MAX_VALUE;
        notes.addAll(
            Touch.notes(stroke, stage.voices().get(voice), voice, at[i], at[i] + written, next));
      }
    }
  }

  /**
   * When a stroke of a turn is heard.
   *
   * @param stroke as numbered in the relay's line
   * @return empty if nobody who is heard plays it in this turn within the excerpt
   */
  OptionalLong onset(Turn turn, int stroke) {
    for (Segment segment : turn.segments()) {
      OptionalInt own = ownNumber(segment, stroke);
      if (own.isPresent()
          && hearing.heard().contains(segment.player())
          && excerpt.contains(plan.line(segment).stroke(stroke).onset())) {
        return OptionalLong.of(onsets.get(plan.segments().indexOf(segment))[own.getAsInt()]);
      }
    }
    return OptionalLong.empty();
  }

  /** Its number among the strokes that a segment plays; empty if it is none of them. */
  private OptionalInt ownNumber(Segment segment, int stroke) {
    if (stroke < segment.first() || stroke > segment.last()) {
      return OptionalInt.empty();
    }
    if (segment.pattern() == Pattern.ALL) {
      return OptionalInt.of(stroke - segment.first());
    }
    Halves halves = plan.brief().halves(segment.relay());
    int half = halves.halfOf(segment);
    return halves.halfOf(stroke) == half
        ? OptionalInt.of(halves.from(half, stroke) - halves.from(half, segment.first()))
        : OptionalInt.empty();
  }
}

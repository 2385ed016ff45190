package stafette.picture.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalLong;
import java.util.stream.LongStream;
import stafette.check.Strain;
import stafette.limits.Breath;
import stafette.plan.Plan;
import stafette.plan.Played;
import stafette.plan.Player;
import stafette.plan.Segment;
import stafette.score.Line;
import stafette.words.Sentence;

/** Where a wind player breathes for a turn, and how much of the breath it takes. */
final class BreathWords {
  private static final int MOST_PLACES = 5;

  private BreathWords() {}

  /** What is said of one turn: before it, within it, how much is used. */
  static List<Sentence> of(Plan plan, TurnWords turn, Breath breath) {
    List<Sentence> words = new ArrayList<>();
    OptionalLong silence = silenceBefore(plan, turn.segment());
    words.add(before(silence, breath));
    silence.ifPresent(
        micros -> words.add(Sentence.of("after a rest of {0}", SheetFigures.seconds(micros))));
    List<Sentence> places = within(turn.played(), breath);
    if (!places.isEmpty()) {
      words.add(again(places));
    }
    words.add(Sentence.of("{0} used at most", Strain.percent(turn.breath())));
    return words;
  }

  private static Sentence again(List<Sentence> places) {
    int more = places.size() - MOST_PLACES;
    Sentence first = Sentence.list("; ", places.subList(0, Math.min(places.size(), MOST_PLACES)));
    if (more <= 0) {
      return Sentence.of("again at {0}", first);
    }
    return more == 1
        ? Sentence.of("again at {0} and in 1 more rest", first)
        : Sentence.of("again at {0} and in {1} more rests", first, more);
  }

  private static Sentence before(OptionalLong silenceMicros, Breath breath) {
    if (silenceMicros.isEmpty()) {
      return Sentence.of("full breath before");
    }
    double seconds = silenceMicros.getAsLong() / 1e6;
    if (seconds >= breath.fullSeconds()) {
      return Sentence.of("full breath before");
    }
    return seconds >= breath.catchSeconds()
        ? Sentence.of("quick breath before")
        : Sentence.of("no time to breathe before");
  }

  /** From the end of whatever the player has before, if it has anything. */
  private static OptionalLong silenceBefore(Plan plan, Segment segment) {
    Played own = plan.played(segment);
    long entry = own.line().onsetMicros(own.first());
    Player player = plan.player(segment);
    LongStream turns =
        plan.segmentsOf(segment.player()).stream()
            .filter(other -> !other.equals(segment))
            .map(plan::played)
            .filter(other -> other.line().onsetMicros(other.first()) < entry)
            .mapToLong(other -> other.line().endMicros(other.last()));
    LongStream given =
        player.busy().stream()
            .filter(busy -> busy.fromMicros() < entry)
            .mapToLong(busy -> busy.toMicros());
    OptionalLong last = LongStream.concat(turns, given).max();
    return last.isEmpty()
        ? OptionalLong.empty()
        : OptionalLong.of(Math.max(0, entry - last.getAsLong()));
  }

  /** Where silences begin within a turn that are long enough. */
  private static List<Sentence> within(Played played, Breath breath) {
    List<Sentence> places = new ArrayList<>();
    Line line = played.line();
    for (int j = played.first(); j < played.last(); j++) {
      if ((line.onsetMicros(j + 1) - line.endMicros(j)) / 1e6 >= breath.catchSeconds()) {
        var at = line.bars().nameOf(line.stroke(j).span().end());
        places.add(at.inShort());
      }
    }
    return places;
  }
}

package stafette.plan;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import stafette.score.Line;
import stafette.time.Bar;
import stafette.time.Position;
import stafette.time.Rational;
import stafette.time.Span;
import stafette.words.Sentence;

/**
 * How long the turns of one relay are, in the largest unit that they keep to: bars, half bars,
 * beats, else notes. A turn ends with its landing note; before a rest, and at the line's end, with
 * the unit in which it stops. A pickup joins the first turn.
 */
final class TurnLengths {
  /** So many are told one by one. */
  private static final int MOST_TOLD = 8;

  private final Line line;
  private final List<Turn> turns;

  TurnLengths(Line line, List<Turn> turns) {
    this.line = line;
    this.turns = turns;
  }

  /** What turns are counted in. */
  private enum Unit {
    BAR {
      @Override
      Rational count(Bar bar, Position at) {
        return share(bar.span(), at);
      }

      @Override
      int whole(Bar bar) {
        return 1;
      }
    },
    HALF_BAR {
      @Override
      Rational count(Bar bar, Position at) {
        return share(bar.span(), at).times(whole(bar));
      }

      @Override
      int whole(Bar bar) {
        return 2;
      }
    },
    BEAT {
      @Override
      Rational count(Bar bar, Position at) {
        List<Span> beats = bar.beats();
        int before = 0;
        while (before + 1 < beats.size() && !at.isBefore(beats.get(before).end())) {
          before++;
        }
        return share(beats.get(before), at).plus(Rational.of(before));
      }

      @Override
      int whole(Bar bar) {
        return bar.beats().size();
      }
    };

    /** How many of them a bar holds up to a position. */
    abstract Rational count(Bar bar, Position at);

    /** How many of them a bar holds. */
    abstract int whole(Bar bar);

    private static Rational share(Span span, Position at) {
      return at.since(span.start()).quarters().dividedBy(span.length().quarters());
    }
  }

  /** "2 bars each", "4, 4, 4 and 2 bars". */
  Sentence inWords() {
    List<Long> bars = counted(Unit.BAR).orElse(List.of());
    if (!bars.isEmpty()) {
      return inBars(bars);
    }
    if (isEqual(counted(Unit.HALF_BAR).orElse(List.of()), 1)) {
      return Sentence.of("half a bar each");
    }
    List<Long> beats = counted(Unit.BEAT).orElse(List.of());
    if (!beats.isEmpty()) {
      return inBeats(beats);
    }
    return inNotes(turns.stream().map(turn -> (long) (turn.last() - turn.first() + 1)).toList());
  }

  private static Sentence inBars(List<Long> bars) {
    long usual = bars.get(0);
    long last = bars.get(bars.size() - 1);
    if (isEqual(bars, usual)) {
      return usual == 1 ? Sentence.of("a bar each") : Sentence.of("{0} bars each", usual);
    }
    if (bars.size() > 2 && isEqual(bars.subList(0, bars.size() - 1), usual)) {
      return usual == 1
          ? Sentence.of("a bar each, the last {0}", last)
          : Sentence.of("{0} bars each, the last {1}", usual, last);
    }
    if (bars.size() <= MOST_TOLD) {
      return Sentence.of("{0} and {1} bars", allButLast(bars), last);
    }
    return Sentence.of("{0} to {1} bars each", Collections.min(bars), Collections.max(bars));
  }

  private static Sentence inBeats(List<Long> beats) {
    long least = Collections.min(beats);
    if (isEqual(beats, least)) {
      return least == 1 ? Sentence.of("a beat each") : Sentence.of("{0} beats each", least);
    }
    return beats.size() <= MOST_TOLD
        ? Sentence.of("{0} and {1} beats", allButLast(beats), beats.get(beats.size() - 1))
        : Sentence.of("{0} to {1} beats each", least, Collections.max(beats));
  }

  private static Sentence inNotes(List<Long> notes) {
    long least = Collections.min(notes);
    return isEqual(notes, least)
        ? Sentence.of("{0} notes each", least)
        : Sentence.of("{0} to {1} notes each", least, Collections.max(notes));
  }

  private static Sentence allButLast(List<Long> lengths) {
    return Sentence.list(lengths.subList(0, lengths.size() - 1));
  }

  private static boolean isEqual(List<Long> lengths, long length) {
    return !lengths.isEmpty() && lengths.stream().allMatch(each -> each == length);
  }

  /** The turns in whole units; empty if one begins or lands inside of one. */
  private Optional<List<Long>> counted(Unit unit) {
    List<Long> lengths = new ArrayList<>();
    for (int i = 0; i < turns.size(); i++) {
      Optional<Long> start = start(unit, i);
      Optional<Long> end = end(unit, i);
      if (start.isEmpty() || end.isEmpty() || end.get() <= start.get()) {
        return Optional.empty();
      }
      lengths.add(end.get() - start.get());
    }
    return Optional.of(withPickup(unit, lengths));
  }

  /** The first turn without the unit in which the line begins, where it is then like the next. */
  private List<Long> withPickup(Unit unit, List<Long> lengths) {
    boolean joins =
        lengths.size() > 1
            && (!at(unit, onset(0)).isWhole() || beginsInPickup())
            && lengths.get(0) - 1 == lengths.get(1);
    List<Long> joined = new ArrayList<>(lengths);
    if (joins) {
      joined.set(0, lengths.get(1));
    }
    return joined;
  }

  private boolean beginsInPickup() {
    return !line.bars().at(onset(0)).lead().isZero();
  }

  private Optional<Long> start(Unit unit, int turn) {
    if (turn > 0 && isJoined(turn)) {
      return whole(at(unit, onset(turns.get(turn - 1).last())));
    }
    return Optional.of(floor(at(unit, onset(turns.get(turn).first()))));
  }

  private Optional<Long> end(Unit unit, int turn) {
    int last = turns.get(turn).last();
    if (turn + 1 < turns.size() && isJoined(turn + 1)) {
      return whole(at(unit, onset(last)));
    }
    return Optional.of(-floor(at(unit, line.stroke(last).span().end()).negated()));
  }

  /** Whether a turn takes over from the one before on a shared note. */
  private boolean isJoined(int turn) {
    return new Handoff(turns.get(turn - 1), turns.get(turn)).shared() > 0;
  }

  private Position onset(int stroke) {
    return line.stroke(stroke).onset();
  }

  private static Optional<Long> whole(Rational count) {
    return count.isWhole() ? Optional.of(floor(count)) : Optional.empty();
  }

  private static long floor(Rational count) {
    return count.floor().longValueExact();
  }

  /** A position in units since the bar in which the line begins. */
  private Rational at(Unit unit, Position position) {
    int first = line.bars().at(onset(0)).index();
    Bar bar = line.bars().at(position);
    int before = IntStream.range(first, bar.index()).map(i -> unit.whole(line.bars().get(i))).sum();
    return unit.count(bar, position).plus(Rational.of(before));
  }
}

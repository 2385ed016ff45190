package stafette.work.who;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import stafette.chairs.Chair;
import stafette.chairs.Chairs;
import stafette.chairs.GivenNote;
import stafette.limits.Instrument;
import stafette.plan.Player;
import stafette.score.Line;
import stafette.score.Part;
import stafette.score.Words;
import stafette.time.Bar;
import stafette.time.Position;
import stafette.time.Span;
import stafette.words.Sentence;

/** What a player has around a line, and beside it, in the score. */
final class Surroundings {
  private static final Pattern SOLO = Pattern.compile("(?i).*\\bsol[oi]\\b.*");

  /** Who has rested for so long comes in cold (common practice, no source). */
  private static final int LONG_REST_BARS = 16;

  /** What comes within so many bars is right before, or after (our judgement). */
  private static final int NEAR_BARS = 4;

  private final Line line;
  private final Player player;
  private final Optional<Chair> chair;
  private final Chairs chairs;
  private final List<GivenNote> earlier = new ArrayList<>();
  private final List<GivenNote> beside = new ArrayList<>();
  private final List<GivenNote> later = new ArrayList<>();

  Surroundings(Line line, Player player, Optional<Chair> chair, Chairs chairs) {
    this.line = line;
    this.player = player;
    this.chair = chair;
    this.chairs = chairs;
    chair.map(chairs::given).orElse(List.of()).stream()
        .filter(note -> !isOfLine(note))
        .forEach(this::take);
  }

  private boolean isOfLine(GivenNote note) {
    return line.strokes().stream()
        .filter(stroke -> stroke.onset().equals(note.stroke().onset()))
        .anyMatch(stroke -> note.stroke().tones().stream().allMatch(stroke::sounds));
  }

  private void take(GivenNote note) {
    Span span = line.span();
    Span own = note.stroke().span();
    if (own.overlaps(span)) {
      beside.add(note);
    } else if (own.start().isBefore(span.start())) {
      earlier.add(note);
    } else {
      later.add(note);
    }
  }

  /** The bars of the line in which it has other notes, and in which part. */
  Optional<Sentence> busy() {
    List<Integer> bars = beside.stream().flatMap(this::bars).distinct().sorted().toList();
    if (bars.isEmpty()) {
      return Optional.empty();
    }
    List<String> stretches = new ArrayList<>();
    int from = 0;
    for (int i = 1; i <= bars.size(); i++) {
      if (i == bars.size() || bars.get(i) > bars.get(i - 1) + 1) {
        String first = number(bars.get(from));
        String last = number(bars.get(i - 1));
        stretches.add(first.equals(last) ? first : first + "-" + last);
        from = i;
      }
    }
    return Optional.of(Sentence.of("plays in {0}", Sentence.list(stretches)));
  }

  /** The bars of the line in which a note sounds. */
  private Stream<Integer> bars(GivenNote note) {
    int last = line.bars().at(note.stroke().span().end()).index();
    boolean into = line.bars().get(last).span().start().isBefore(note.stroke().span().end());
    return IntStream.rangeClosed(barOf(note).index(), into ? last : last - 1)
        .filter(bar -> bar >= line.source().firstBar() && bar <= line.source().lastBar())
        .boxed();
  }

  private String number(int bar) {
    return line.bars().get(bar).number();
  }

  private Bar barOf(GivenNote note) {
    return line.bars().at(note.stroke().onset());
  }

  /** What comes right before. */
  Optional<Sentence> before() {
    if (chair.isEmpty()) {
      return Optional.empty();
    }
    if (earlier.isEmpty()) {
      return line.source().firstBar() > LONG_REST_BARS
          ? Optional.of(Sentence.of("comes in cold"))
          : Optional.empty();
    }
    GivenNote last = earlier.get(earlier.size() - 1);
    int bars = line.source().firstBar() - barOf(last).index();
    if (bars > LONG_REST_BARS) {
      return Optional.of(Sentence.of("cold after {0} bars of rest", bars - 1));
    }
    return change(last)
        .or(
            () ->
                isNear(bars) && isSolo(last)
                    ? Optional.of(Sentence.of("a solo before"))
                    : Optional.empty());
  }

  /** What comes right after. */
  Optional<Sentence> after() {
    if (later.isEmpty()) {
      return Optional.empty();
    }
    GivenNote next = later.get(0);
    int bars = barOf(next).index() - line.source().lastBar();
    return isNear(bars) && isSolo(next)
        ? Optional.of(Sentence.of("a solo after, in bar {0}", barOf(next).number()))
        : isNear(bars) ? change(next) : Optional.empty();
  }

  private static boolean isNear(int bars) {
    return bars <= NEAR_BARS;
  }

  /** Another instrument, or a mute. */
  private Optional<Sentence> change(GivenNote note) {
    Optional<Instrument> other =
        note.instrument().filter(with -> !with.name().equals(player.instrument().name()));
    if (other.isPresent()) {
      return Optional.of(Sentence.of("has the {0} there", other.get()));
    }
    boolean muted = note.stroke().manner().muted();
    return muted == line.stroke(0).manner().muted()
        ? Optional.empty()
        : Optional.of(muted ? Sentence.of("muted there") : Sentence.of("without mute there"));
  }

  private boolean isSolo(GivenNote note) {
    Position at = note.stroke().onset();
    return chair.flatMap(own -> chairs.part(own)).map(Part::marks).stream()
        .flatMap(marks -> marks.words().stream())
        .filter(words -> !words.at().isAfter(at))
        .reduce((one, later) -> SOLO.matcher(later.text()).matches() || ends(later) ? later : one)
        .filter(words -> SOLO.matcher(words.text()).matches())
        .isPresent();
  }

  private static boolean ends(Words words) {
    return words.text().toLowerCase(Locale.ROOT).matches(".*(tutti|a 2|a2|unis).*");
  }
}

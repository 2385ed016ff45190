package stafette.notation;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.NavigableSet;
import java.util.Optional;
import java.util.Set;
import stafette.notation.BarItem.Edge;
import stafette.notation.BarItem.Ratio;
import stafette.notation.BarItem.SoundingItem;
import stafette.score.Tuplet;
import stafette.time.Bar;
import stafette.time.Length;
import stafette.time.Position;
import stafette.time.Rational;
import stafette.time.Span;

/**
 * Lays out a stretch of one voice in one bar: what sounds, as it was written in the line, and rests
 * for all the rest. The items follow one another without gap and fill the stretch exactly.
 *
 * <p>Values keep their shapes. A tuplet that is sounded in part is filled with rests of its own. A
 * value that no note can show is tied together from several; one that does not divide by halves and
 * has no complete tuplet to stand in is written with a time modification and without a bracket.
 */
public final class VoiceLayout {
  /** Each of two notes with slashes between them shows the value of both. */
  private static final Optional<Ratio> OF_TWO = Optional.of(new Ratio(2, 1, Optional.empty()));

  private final Bar bar;
  private final Span region;
  private final List<SoundingItem> sounds;
  private final NavigableSet<Position> breaks;
  private final List<Span> beams;
  private final List<BarItem> items = new ArrayList<>();
  private Position cursor;

  private VoiceLayout(
      Bar bar,
      Span region,
      List<SoundingItem> sounds,
      NavigableSet<Position> breaks,
      List<Span> beams) {
    this.bar = bar;
    this.region = region;
    this.sounds = sounds;
    this.breaks = breaks;
    this.beams = beams;
    this.cursor = region.start();
  }

  /**
   * The items of a stretch.
   *
   * @param region within the bar
   * @param sounds within the region, in order, without overlap
   * @param breaks places over which no rest may last
   * @param beams how the notes were beamed where they come from; the metre decides elsewhere
   */
  public static List<BarItem> of(
      Bar bar,
      Span region,
      List<SoundingItem> sounds,
      NavigableSet<Position> breaks,
      List<Span> beams) {
    if (sounds.isEmpty() && region.equals(bar.span())) {
      return List.of(rest(region, Optional.empty(), Optional.empty()));
    }
    return new VoiceLayout(bar, region, sounds, breaks, beams).lay();
  }

  /** The tuplet in which a sound can be written whole within a bar, if it has one. */
  public static Optional<Tuplet> groupIn(Span within, SoundingItem sound) {
    return sound
        .tuplet()
        .filter(
            t ->
                !t.span().start().isBefore(within.start())
                    && !t.span().end().isAfter(within.end())
                    && !sound.span().start().isBefore(t.span().start())
                    && !sound.span().end().isAfter(t.span().end())
                    && !NoteShape.chain(written(t, t.span().length().quarters())).isEmpty());
  }

  private List<BarItem> lay() {
    Set<Tuplet> whole = completeGroups();
    int next = 0;
    while (next < sounds.size()) {
      SoundingItem sound = sounds.get(next);
      Optional<Tuplet> group = sound.tuplet().filter(whole::contains);
      if (group.isPresent()) {
        int end = next + 1;
        while (end < sounds.size() && sounds.get(end).tuplet().equals(group)) {
          end++;
        }
        fillTo(group.get().span().start());
        layGroup(group.get(), sounds.subList(next, end));
        next = end;
      } else {
        fillTo(sound.span().start());
        layLoose(sound);
        next++;
      }
    }
    fillTo(region.end());
    return Beams.on(bar, items, beams);
  }

  /** Tuplets that lie in the region, hold only their own sounds, and share no time. */
  private Set<Tuplet> completeGroups() {
    Set<Tuplet> groups = new HashSet<>();
    for (SoundingItem sound : sounds) {
      groupIn(region, sound).filter(this::holdsOnlyItsOwn).ifPresent(groups::add);
    }
    return groups;
  }

  private boolean holdsOnlyItsOwn(Tuplet group) {
    for (SoundingItem sound : sounds) {
      boolean inside = sound.span().overlaps(group.span());
      boolean own = sound.tuplet().filter(group::equals).isPresent();
      if (inside != own || (own && !fitsGrid(group, sound))) {
        return false;
      }
      boolean rival =
          !own && groupIn(region, sound).filter(o -> o.span().overlaps(group.span())).isPresent();
      if (rival) {
        return false;
      }
    }
    return true;
  }

  private static boolean fitsGrid(Tuplet group, SoundingItem sound) {
    Rational into = sound.span().start().since(group.span().start()).quarters();
    return !NoteShape.chain(written(group, sound.span().length().quarters())).isEmpty()
        && (into.signum() == 0 || !NoteShape.chain(written(group, into)).isEmpty());
  }

  private void fillTo(Position end) {
    if (cursor.isBefore(end)) {
      for (Span rest : RestFill.of(bar, new Span(cursor, end), breaks)) {
        Rational quarters = rest.length().quarters();
        Optional<Ratio> ratio = looseRatio(quarters, Optional.empty());
        addRests(chained(unscaled(quarters, ratio)), ratio);
      }
    }
  }

  private void addRests(List<Rational> written, Optional<Ratio> ratio) {
    for (Rational rest : written) {
      Span span = Span.of(cursor, new Length(scaled(rest, ratio)));
      items.add(rest(span, NoteShape.of(rest), ratio));
      cursor = span.end();
    }
  }

  private void layGroup(Tuplet group, List<SoundingItem> members) {
    int first = items.size();
    Ratio ratio =
        new Ratio(
            group.actual(),
            group.normal(),
            NoteShape.of(group.span().length().quarters().dividedBy(group.normal()))
                .filter(shape -> shape.dots() == 0)
                .map(NoteShape::type));
    for (SoundingItem sound : members) {
      restInGroup(group, ratio, sound.span().start());
      lay(sound, Optional.of(ratio));
    }
    restInGroup(group, ratio, group.span().end());
    int last = items.size() - 1;
    items.set(
        first, items.get(first).withEdge(first == last ? Edge.STARTS_AND_STOPS : Edge.STARTS));
    if (last > first) {
      items.set(last, items.get(last).withEdge(Edge.STOPS));
    }
  }

  private void restInGroup(Tuplet group, Ratio ratio, Position end) {
    while (cursor.isBefore(end)) {
      Position start = group.span().start();
      Position stop = nextOnGrid(group, end);
      Rational from = written(group, cursor.since(start).quarters());
      Rational to = written(group, stop.since(start).quarters());
      for (Rational rest : RestFill.written(from, to)) {
        addRests(chained(rest), Optional.of(ratio));
      }
    }
  }

  /** The next break, or the end, that a chain of the tuplet's own values reaches. */
  private Position nextOnGrid(Tuplet group, Position end) {
    for (Position next : breaks.tailSet(cursor, false)) {
      if (!next.isBefore(end)) {
        return end;
      }
      if (!NoteShape.chain(written(group, next.since(cursor).quarters())).isEmpty()) {
        return next;
      }
    }
    return end;
  }

  private void layLoose(SoundingItem sound) {
    boolean ofTwo = sound.tremolo().filter(TremoloSign::isOfTwo).isPresent();
    lay(sound, ofTwo ? OF_TWO : looseRatio(sound.span().length().quarters(), sound.tuplet()));
  }

  private void lay(SoundingItem sound, Optional<Ratio> ratio) {
    Rational written = unscaled(sound.span().length().quarters(), ratio);
    List<Rational> pieces = chained(written);
    for (int i = 0; i < pieces.size(); i++) {
      Span span = Span.of(cursor, new Length(scaled(pieces.get(i), ratio)));
      SoundingItem piece = sound.over(span, i == 0, i == pieces.size() - 1);
      items.add(
          new BarItem(
              span, NoteShape.of(pieces.get(i)), ratio, Edge.NONE, Optional.of(piece), List.of()));
      cursor = span.end();
    }
  }

  /** Lengths with a shape each; the length itself if it can't be made of such. */
  private static List<Rational> chained(Rational written) {
    List<Rational> chain = NoteShape.chain(written);
    return chain.isEmpty() ? List.of(written) : chain;
  }

  /**
   * A ratio under which a length that does not divide by halves has a shape; none where it would be
   * too large to be read again.
   */
  private static Optional<Ratio> looseRatio(Rational quarters, Optional<Tuplet> tuplet) {
    if (tuplet.isPresent() && !NoteShape.chain(written(tuplet.get(), quarters)).isEmpty()) {
      return tuplet.map(t -> new Ratio(t.actual(), t.normal(), Optional.empty()));
    }
    int twos = quarters.denominator().getLowestSetBit();
    BigInteger odds = quarters.denominator().shiftRight(twos);
    int odd = odds.compareTo(BarItem.Ratio.MOST) > 0 ? 1 : odds.intValueExact();
    return odd == 1
        ? Optional.empty()
        : Optional.of(new Ratio(odd, Integer.highestOneBit(odd), Optional.empty()));
  }

  private static Rational written(Tuplet group, Rational quarters) {
    return quarters.times(group.actual()).dividedBy(group.normal());
  }

  private static Rational unscaled(Rational quarters, Optional<Ratio> ratio) {
    return ratio.map(r -> quarters.times(r.actual()).dividedBy(r.normal())).orElse(quarters);
  }

  private static Rational scaled(Rational written, Optional<Ratio> ratio) {
    return ratio.map(r -> written.times(r.normal()).dividedBy(r.actual())).orElse(written);
  }

  private static BarItem rest(Span span, Optional<NoteShape> shape, Optional<Ratio> ratio) {
    return new BarItem(span, shape, ratio, Edge.NONE, Optional.empty(), List.of());
  }
}

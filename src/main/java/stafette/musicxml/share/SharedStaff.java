package stafette.musicxml.share;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.NavigableSet;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;
import stafette.chairs.Chair;
import stafette.plan.Pattern;
import stafette.plan.Plan;
import stafette.plan.Played;
import stafette.plan.Player;
import stafette.plan.Segment;
import stafette.plan.written.Landings;
import stafette.score.Part;
import stafette.score.Stroke;
import stafette.score.Words;
import stafette.time.Position;

/**
 * Players of a plan who read from one staff. Where they meet they have the very same notes, so that
 * one stream with labels holds all of them.
 */
public final class SharedStaff {
  private final Plan plan;
  private final List<Integer> players;
  private final ChairLabels labels;
  private final List<Segment> segments;
  private final TreeSet<Position> spoilers = new TreeSet<>();

  /**
   * @param players of the plan, who read from that part
   * @param chairs all who do, from above
   * @param voices the part as it was read
   */
  public SharedStaff(Plan plan, List<Integer> players, List<Chair> chairs, Part voices) {
    this.plan = plan;
    this.players = players;
    List<Player> all = players.stream().map(plan.brief().players()::get).toList();
    this.labels = ChairLabels.of(all, chairs);
    this.segments =
        plan.segments().stream()
            .filter(segment -> players.contains(segment.player()))
            .sorted(Comparator.comparingInt(Segment::first))
            .toList();
    voices.marks().words().stream()
        .filter(words -> words.voice().isEmpty())
        .map(Words::at)
        .forEach(spoilers::add);
    spoilers.addAll(Landings.others(voices, plan));
  }

  /**
   * Whether all have the notes of one line whole, so that one stream can hold them; a hocket, and
   * tones of chords each with their own players, need voices of their own.
   */
  public boolean isOneStream() {
    return segments.stream().allMatch(segment -> segment.pattern() == Pattern.ALL)
        && segments.stream().map(segment -> plan.played(segment).line()).distinct().count() == 1;
  }

  public List<Integer> players() {
    return players;
  }

  /** Where words stand on the staff, or notes that are none of the line's. */
  public NavigableSet<Position> others() {
    return spoilers;
  }

  /** What they have; of one stream no stroke twice. */
  public List<Played> passages() {
    List<Played> passages = new ArrayList<>();
    for (Segment segment : segments) {
      Played next = plan.played(segment);
      int last = passages.size() - 1;
      Optional<Played> before = last < 0 ? Optional.empty() : Optional.of(passages.get(last));
      if (isOneStream() && before.isPresent() && next.first() <= before.get().last()) {
        int end = Math.max(before.get().last(), next.last());
        passages.set(last, new Played(next.line(), before.get().first(), end));
      } else {
        passages.add(next);
      }
    }
    return passages;
  }

  /**
   * What has to say at a stroke who plays; empty where it is known.
   *
   * @param strokes of {@link #passages}, one after the other
   * @param enters whether a passage begins there
   */
  public Optional<String> label(List<Stroke> strokes, int index, boolean enters) {
    Set<Integer> now = places(strokes.get(index));
    if (index == 0) {
      return Optional.of(labels.first(now));
    }
    Position before = strokes.get(index - 1).onset();
    Position here = strokes.get(index).onset();
    boolean spoilt = !spoilers.subSet(before, false, here, true).isEmpty();
    return enters || spoilt || !now.equals(places(strokes.get(index - 1)))
        ? Optional.of(labels.of(now))
        : Optional.empty();
  }

  /** Who has a stroke, by places from above. */
  private Set<Integer> places(Stroke stroke) {
    Set<Integer> places = new TreeSet<>();
    for (Segment segment : segments) {
      Played played = plan.played(segment);
      boolean has =
          IntStream.rangeClosed(played.first(), played.last())
              .mapToObj(played.line()::stroke)
              .anyMatch(own -> own.onset().equals(stroke.onset()) && own.isLike(stroke));
      if (has) {
        places.add(plan.player(segment).chair().orElse(1));
      }
    }
    return places;
  }

  /** For one of them alone. */
  public SharedStaff only(int player, List<Chair> chairs, Part voices) {
    return new SharedStaff(plan, List.of(player), chairs, voices);
  }

  /** What says that all of the staff play. */
  public String all() {
    return labels.all();
  }

  /** Players of a plan by their indices, who read from a part and share it. */
  public static List<Integer> in(Plan plan, String part) {
    List<Player> all = plan.brief().players();
    return IntStream.range(0, all.size())
        .filter(i -> all.get(i).part().equals(Optional.of(part)) && all.get(i).chair().isPresent())
        .filter(i -> !plan.segmentsOf(i).isEmpty())
        .boxed()
        .toList();
  }
}

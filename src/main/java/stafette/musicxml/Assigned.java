package stafette.musicxml;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import stafette.musicxml.BarItem.Sound;
import stafette.plan.Handoff;
import stafette.plan.Plan;
import stafette.plan.Player;
import stafette.plan.Segment;
import stafette.score.Dynamic;
import stafette.score.Line;
import stafette.score.Stroke;
import stafette.score.Value;
import stafette.time.Bar;
import stafette.time.Position;
import stafette.time.Span;

/** What one player has to play of the line: sounds and signs, bar by bar. */
final class Assigned {
  private final Plan plan;
  private final Line line;
  private final int index;
  private final Player player;
  private final List<Segment> segments;
  private final TreeMap<Integer, List<Sound>> sounds = new TreeMap<>();
  private final TreeMap<Integer, List<Sign>> signs = new TreeMap<>();

  /**
   * A sign above or below the staff.
   *
   * @param words what it says; empty if it is a dynamic
   * @param dynamic empty if it says words
   */
  record Sign(Position at, Optional<String> words, Optional<Dynamic> dynamic) {}

  Assigned(Plan plan, int player) {
    this.plan = plan;
    this.line = plan.line();
    this.index = player;
    this.player = plan.brief().players().get(player);
    this.segments = plan.segmentsOf(player);
    for (Segment segment : segments) {
      for (int j = segment.first(); j <= segment.last(); j++) {
        addSounds(j);
      }
    }
    addWords();
    segments.forEach(this::addDynamics);
  }

  Player player() {
    return player;
  }

  /** Indices of the bars in which there is something to write. */
  List<Integer> bars() {
    return List.copyOf(sounds.keySet());
  }

  List<Sound> sounds(int bar) {
    return sounds.getOrDefault(bar, List.of());
  }

  /** The signs of a bar in order; where several stand at one place, words first. */
  List<Sign> signs(int bar) {
    return signs.getOrDefault(bar, List.of());
  }

  boolean plays(int stroke) {
    return segments.stream().anyMatch(s -> s.first() <= stroke && stroke <= s.last());
  }

  /** Slurs that begin or end on a stroke, only where they lie wholly within a segment. */
  NotationsMaker.Slurs slurs(int stroke) {
    Segment segment =
        segments.stream()
            .filter(s -> s.first() <= stroke && stroke <= s.last())
            .findFirst()
            .orElseThrow();
    Stroke own = line.stroke(stroke);
    boolean goesOn =
        own.slurContinues() && stroke < segment.last() && line.stroke(stroke + 1).slurred();
    boolean comes = own.slurred() && stroke > segment.first();
    return new NotationsMaker.Slurs(goesOn && !comes, comes && !goesOn);
  }

  private void addSounds(int j) {
    Stroke stroke = line.stroke(j);
    Position at = stroke.onset();
    for (Value value : stroke.values()) {
      Position end = at.plus(value.length());
      while (at.isBefore(end)) {
        Bar bar = line.bars().at(at);
        boolean lastBar = bar.index() == line.bars().count() - 1;
        Position stop = end.isAfter(bar.span().end()) && !lastBar ? bar.span().end() : end;
        boolean first = at.equals(stroke.onset());
        boolean last = stop.equals(stroke.span().end());
        sounds
            .computeIfAbsent(bar.index(), index -> new ArrayList<>())
            .add(new Sound(j, new Span(at, stop), value.tuplet(), first, last));
        at = stop;
      }
    }
  }

  private void addWords() {
    for (Handoff handoff : plan.handoffs()) {
      if (handoff.enters().has(index)) {
        sign(handoff.enters().first(), "from " + plan.names(handoff.leaves()));
      }
      if (handoff.leaves().has(index)) {
        sign(handoff.leaves().last(), "to " + plan.names(handoff.enters()));
      }
    }
  }

  private void sign(int stroke, String words) {
    add(new Sign(line.stroke(stroke).onset(), Optional.of(words), Optional.empty()));
  }

  private void addDynamics(Segment segment) {
    Optional<Dynamic> inForce = Optional.empty();
    for (int j = segment.first(); j <= segment.last(); j++) {
      Dynamic own = line.stroke(j).dynamic();
      if (!inForce.equals(Optional.of(own))) {
        add(new Sign(line.stroke(j).onset(), Optional.empty(), Optional.of(own)));
        inForce = Optional.of(own);
      }
    }
  }

  private void add(Sign sign) {
    List<Sign> inBar =
        signs.computeIfAbsent(line.bars().at(sign.at()).index(), index -> new ArrayList<>());
    int place = 0;
    while (place < inBar.size() && !inBar.get(place).at().isAfter(sign.at())) {
      place++;
    }
    inBar.add(place, sign);
  }
}

package stafette.musicxml.write;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.IntPredicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import stafette.musicxml.text.Origin.ElementText;
import stafette.musicxml.text.Origin.NoteText;
import stafette.notation.BarItem.SoundingItem;
import stafette.plan.Handoff;
import stafette.plan.Plan;
import stafette.plan.Played;
import stafette.plan.Player;
import stafette.plan.Turn;
import stafette.score.Attack;
import stafette.score.Dynamic;
import stafette.score.Line;
import stafette.score.Stroke;
import stafette.time.Bars;
import stafette.time.Position;

/**
 * What one player has to play of the line: sounds and signs, bar by bar. Strokes are numbered among
 * the player's own, and silence may part them.
 */
final class Assigned {
  private final Player player;
  private final Bars bars;
  private final List<Stroke> strokes = new ArrayList<>();
  private final Map<Position, List<Stroke>> byOnset = new HashMap<>();
  private final Set<Integer> entries = new HashSet<>();
  private final List<Stroke> owned;
  private final Set<Integer> cleared = new TreeSet<>();
  private final TreeMap<Integer, List<SoundingItem>> sounds = new TreeMap<>();
  private final TreeMap<Integer, List<Sign>> signs = new TreeMap<>();

  /** Where who plays changes among those who share the staff, and what says so. */
  private final TreeMap<Position, String> labels = new TreeMap<>();

  /**
   * A sign above or below the staff.
   *
   * @param words what it says; empty if it is a dynamic
   * @param dynamic empty if it says words
   * @param voice for which alone it stands, if so
   */
  record Sign(
      Position at, Optional<String> words, Optional<Dynamic> dynamic, Optional<String> voice) {
    Sign(Position at, Optional<String> words, Optional<Dynamic> dynamic) {
      this(at, words, dynamic, Optional.empty());
    }
  }

  /** A player's share of a plan. Notes of its part that are this share may be written anew. */
  Assigned(Plan plan, int player) {
    this(plan, player, List.of());
  }

  /** The shares of players who read from one staff, as one stream of notes. */
  Assigned(Plan plan, SharedStaff staff) {
    this(
        plan.brief().players().get(staff.players().get(0)),
        plan.line().bars(),
        staff.passages(),
        List.of());
    List<Stroke> inOrder = inOrder();
    Set<Position> entering =
        entries.stream().map(entry -> strokes.get(entry).onset()).collect(Collectors.toSet());
    for (int i = 0; i < inOrder.size(); i++) {
      Stroke stroke = inOrder.get(i);
      Optional<String> label = staff.label(inOrder, i, entering.contains(stroke.onset()));
      if (label.isPresent()) {
        labels.put(stroke.onset(), label.get());
        sign(stroke, label.get());
      }
    }
    staff.players().forEach(player -> addWords(plan, player, staff.players()));
  }

  /** A background part. */
  Assigned(Background background) {
    this(background.plan(), 0, background.replaces().strokes());
    owned.forEach(stroke -> cleared.add(bars.at(stroke.onset()).index()));
  }

  private Assigned(Plan plan, int index, List<Stroke> replaced) {
    this(
        plan.brief().players().get(index),
        plan.line().bars(),
        plan.segmentsOf(index).stream().map(plan::played).toList(),
        replaced);
    addWords(plan, index, List.of(index));
  }

  private Assigned(Player player, Bars bars, List<Played> passages, List<Stroke> replaced) {
    this.player = player;
    this.bars = bars;
    passages.forEach(played -> take(played.line(), played.first(), played.last()));
    owned =
        Stream.concat(strokes.stream(), replaced.stream())
            .sorted(Comparator.comparing(Stroke::onset))
            .toList();
  }

  /** All of a line. */
  static Assigned all(Player player, Line line) {
    return new Assigned(
        player, line.bars(), List.of(new Played(line, 0, line.count() - 1)), List.of());
  }

  /** One passage: strokes of a line, with its dynamics. */
  private void take(Line from, int first, int last) {
    entries.add(strokes.size());
    Optional<Dynamic> inForce = Optional.empty();
    for (int j = first; j <= last; j++) {
      Stroke stroke = from.stroke(j);
      Position end = stroke.span().end();
      Position next = j < last ? from.stroke(j + 1).onset() : end;
      addSounds(strokes.size(), stroke, next.isBefore(end) ? next : end);
      strokes.add(stroke);
      byOnset.computeIfAbsent(stroke.onset(), at -> new ArrayList<>()).add(stroke);
      if (!inForce.equals(Optional.of(stroke.dynamic()))) {
        inForce = Optional.of(stroke.dynamic());
        add(new Sign(stroke.onset(), Optional.empty(), inForce));
      }
    }
  }

  Player player() {
    return player;
  }

  /** All that the player has to play. */
  List<Stroke> inOrder() {
    return strokes.stream().sorted(Comparator.comparing(Stroke::onset)).toList();
  }

  /** Indices of the bars in which there is something to write. */
  List<Integer> bars() {
    return List.copyOf(sounds.keySet());
  }

  /** Indices of the bars in which there may be something to write, or to take out. */
  Set<Integer> touched() {
    Set<Integer> touched = new TreeSet<>(sounds.keySet());
    touched.addAll(cleared);
    return touched;
  }

  /** Whether notes that may be written anew go where the player has nothing. */
  boolean clears() {
    return !cleared.isEmpty();
  }

  List<SoundingItem> sounds(int bar) {
    return sounds.getOrDefault(bar, List.of());
  }

  /** The signs of a bar in order; where several stand at one place, words first. */
  List<Sign> signs(int bar) {
    return signs.getOrDefault(bar, List.of());
  }

  Stroke stroke(int index) {
    return strokes.get(index);
  }

  /** Whether the player has that stroke of the line. */
  boolean plays(Stroke ofLine) {
    return byOnset.getOrDefault(ofLine.onset(), List.of()).stream()
        .anyMatch(stroke -> stroke.tones().stream().anyMatch(ofLine::sounds));
  }

  /** Whether a note that stands in the part is one that may be written anew. */
  boolean owns(Position onset, NoteText note) {
    int j = lastUpTo(onset);
    return j >= 0
        && owned.get(j).span().contains(onset)
        && (note.grace()
            || owned.get(j).tones().stream().anyMatch(tone -> tone.key() == note.key()));
  }

  /** Whether an element of the part strikes a note that is left as it is. */
  boolean leaves(ElementText element) {
    return element
        .note()
        .filter(note -> !note.rest() && !note.cue() && !note.tiedFrom() && !note.chord())
        .filter(note -> !owns(element.onset(), note))
        .isPresent();
  }

  /** The last owned stroke that begins no later than a position; -1 if all begin later. */
  private int lastUpTo(Position position) {
    int low = -1;
    int high = owned.size() - 1;
    while (low < high) {
      int middle = (low + high + 1) >> 1;
      if (owned.get(middle).onset().isAfter(position)) {
        high = middle - 1;
      } else {
        low = middle;
      }
    }
    return low;
  }

  /** What begins or ends on a stroke, only between strokes that follow one another. */
  NotationsMaker.NoteSpans spans(int index) {
    return new NotationsMaker.NoteSpans(
        reach(index, this::isJoined), reach(index, this::isTrilledOn));
  }

  /**
   * How strokes hang together at one of them.
   *
   * @param joined whether a stroke hangs together with the one before
   */
  private NotationsMaker.Reach reach(int index, IntPredicate joined) {
    boolean comes = joined.test(index);
    boolean goesOn = index + 1 < strokes.size() && joined.test(index + 1);
    return new NotationsMaker.Reach(goesOn && !comes, comes && !goesOn);
  }

  /**
   * What begins or ends of slurs on strokes under them, by onset.
   *
   * @param there where strokes stand to which a slur leads that is left out
   */
  Map<Position, NotationsMaker.Reach> slursBut(Set<Position> there) {
    IntPredicate joined = index -> isJoined(index) && !there.contains(strokes.get(index).onset());
    Map<Position, NotationsMaker.Reach> slurs = new HashMap<>();
    for (int i = 0; i < strokes.size(); i++) {
      if (joined.test(i) || (i + 1 < strokes.size() && joined.test(i + 1))) {
        slurs.put(strokes.get(i).onset(), reach(i, joined));
      }
    }
    return slurs;
  }

  /** Whether a slur leads to a stroke from the one before. */
  private boolean isJoined(int index) {
    return follows(index) && strokes.get(index).slurred() && strokes.get(index - 1).slurContinues();
  }

  /** Whether a stroke is one of a trill that has begun before it. */
  private boolean isTrilledOn(int index) {
    return follows(index) && strokes.get(index).manner().attack() == Attack.TRILLED;
  }

  private boolean follows(int index) {
    return !entries.contains(index)
        && strokes.get(index - 1).span().end().equals(strokes.get(index).onset());
  }

  private void addSounds(int index, Stroke stroke, Position until) {
    for (SoundingItem sound : SoundingItem.of(index, stroke, until, bars)) {
      sounds
          .computeIfAbsent(bars.at(sound.span().start()).index(), number -> new ArrayList<>())
          .add(sound);
    }
  }

  /**
   * Who hands over to a player, and to whom it does.
   *
   * @param together those of the same staff, whose labels say so
   */
  private void addWords(Plan plan, int index, List<Integer> together) {
    for (Handoff handoff : plan.handoffs()) {
      boolean within = isWithin(handoff.enters(), together) && isWithin(handoff.leaves(), together);
      boolean enters = handoff.enters().has(index) && !within;
      boolean leaves = handoff.leaves().has(index) && !within;
      if (enters && !leaves) {
        Played own = played(plan, index, handoff.enters());
        sign(own.line().stroke(own.first()), "from " + plan.names(handoff.leaves()));
      }
      if (leaves && !enters) {
        Played own = played(plan, index, handoff.leaves());
        sign(own.line().stroke(own.last()), "to " + plan.names(handoff.enters()));
      }
    }
  }

  private static boolean isWithin(Turn turn, List<Integer> players) {
    return turn.segments().stream().allMatch(segment -> players.contains(segment.player()));
  }

  /** Has a label stand where each passage begins. */
  void label(String words) {
    for (int entry : entries) {
      labels.put(strokes.get(entry).onset(), words);
      sign(strokes.get(entry), words);
    }
  }

  /** Has a label stand at a place, as the last one before counts there no more. */
  void labelAgain(Position at) {
    Map.Entry<Position, String> inForce = labels.floorEntry(at);
    if (inForce != null && !inForce.getKey().equals(at)) {
      add(new Sign(at, Optional.of(inForce.getValue()), Optional.empty()));
      labels.put(at, inForce.getValue());
    }
  }

  /** Has the labels of a bar stand for one voice alone, as another has notes beside it there. */
  void labelInVoice(int bar, String voice, Position first) {
    labelAgain(first);
    signs
        .getOrDefault(bar, List.of())
        .replaceAll(
            sign ->
                sign.words().isPresent()
                        && sign.words().equals(Optional.ofNullable(labels.get(sign.at())))
                    ? new Sign(sign.at(), sign.words(), sign.dynamic(), Optional.of(voice))
                    : sign);
  }

  /** Whether several share the staff for which it is written. */
  boolean isShared() {
    return !labels.isEmpty();
  }

  /** Whether a sign says who of those who share the staff plays. */
  boolean isLabel(Sign sign) {
    return sign.words().isPresent()
        && sign.words().equals(Optional.ofNullable(labels.get(sign.at())));
  }

  /** Where labels stand for all of the staff, and what they say. */
  NavigableMap<Position, String> labels() {
    TreeMap<Position, String> ofStaff = new TreeMap<>();
    signs.values().stream()
        .flatMap(List::stream)
        .filter(sign -> isLabel(sign) && sign.voice().isEmpty())
        .forEach(sign -> ofStaff.put(sign.at(), sign.words().orElseThrow()));
    return ofStaff;
  }

  /** What this player plays of a turn in which it takes part. */
  private static Played played(Plan plan, int index, Turn turn) {
    return turn.segments().stream()
        .filter(segment -> segment.player() == index)
        .map(plan::played)
        .findFirst()
        .orElseThrow();
  }

  /** Has words stand over a stroke. */
  void sign(Stroke stroke, String words) {
    add(new Sign(stroke.onset(), Optional.of(words), Optional.empty()));
  }

  private void add(Sign sign) {
    List<Sign> inBar =
        signs.computeIfAbsent(bars.at(sign.at()).index(), index -> new ArrayList<>());
    int place = 0;
    while (place < inBar.size() && !inBar.get(place).at().isAfter(sign.at())) {
      place++;
    }
    inBar.add(place, sign);
  }
}

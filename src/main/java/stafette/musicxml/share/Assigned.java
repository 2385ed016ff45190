package stafette.musicxml.share;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.NavigableSet;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.IntPredicate;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import stafette.limits.HarpPedals;
import stafette.musicxml.text.Origin.ElementText;
import stafette.musicxml.text.Origin.NoteText;
import stafette.notation.BarItem.SoundingItem;
import stafette.notation.NoteSpans;
import stafette.plan.HarpTurn;
import stafette.plan.Plan;
import stafette.plan.Player;
import stafette.plan.Segment;
import stafette.plan.written.Landings;
import stafette.plan.written.PassageMarks;
import stafette.plan.written.SlashedNote;
import stafette.plan.written.WrittenPassage;
import stafette.score.Attack;
import stafette.score.Line;
import stafette.score.Pitch;
import stafette.score.Stroke;
import stafette.score.Tone;
import stafette.time.Bars;
import stafette.time.Position;
import stafette.time.Span;

/**
 * What one player has to play of the line: sounds and signs, bar by bar. Strokes are numbered among
 * the player's own, and silence may part them.
 */
public final class Assigned {
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

  private final Set<Span> beams = new LinkedHashSet<>();
  private final List<EntryCue> cues = new ArrayList<>();

  /** A player's share of a plan. Notes of its part that are this share may be written anew. */
  public Assigned(Plan plan, int player) {
    this(plan, player, new TreeSet<>(), WritingStyle.PLAIN);
  }

  /**
   * A player's share of a plan that is written into a part.
   *
   * @param others where the part has notes that are none of the line's
   */
  public Assigned(Plan plan, int index, NavigableSet<Position> others, WritingStyle style) {
    this(plan, index, Landings.of(plan, List.of(index), others), HarpTurn.of(plan, index), style);
  }

  private Assigned(
      Plan plan, int index, Landings landings, Map<Segment, HarpTurn> harps, WritingStyle style) {
    this(
        plan.brief().players().get(index),
        plan.line().bars(),
        WrittenPassage.all(plan, index, landings, style.how(), harps),
        landings,
        List.of());
    RelayWords.of(plan, index, List.of(index), style).forEach(this::add);
    if (style.how().pedals()) {
      PedalSigns.of(harps.values()).forEach(this::add);
    }
  }

  /** The shares of players who read from one staff, as one stream of notes. */
  public Assigned(Plan plan, SharedStaff staff, WritingStyle style) {
    this(plan, staff, Landings.of(plan, staff.players(), staff.others()), style);
  }

  private Assigned(Plan plan, SharedStaff staff, Landings landings, WritingStyle style) {
    this(
        plan.brief().players().get(staff.players().get(0)),
        plan.line().bars(),
        staff.passages().stream()
            .map(
                played ->
                    WrittenPassage.plain(
                        played,
                        landings,
                        Optional.of(
                            plan.brief().players().get(staff.players().get(0)).instrument()),
                        WrittenPassage.isWrittenOut(style.how())))
            .toList(),
        landings,
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
    staff
        .players()
        .forEach(player -> RelayWords.of(plan, player, staff.players(), style).forEach(this::add));
  }

  /** A background part. */
  public Assigned(Background background, WritingStyle style) {
    this(background, HarpTurn.of(background.plan(), 0), style);
  }

  private Assigned(Background background, Map<Segment, HarpTurn> harps, WritingStyle style) {
    this(
        background.plan().brief().players().get(0),
        background.plan().line().bars(),
        WrittenPassage.all(background.plan(), 0, Landings.NONE, WritingStyle.PLAIN.how(), harps),
        Landings.NONE,
        background.replaces().strokes());
    owned.forEach(stroke -> cleared.add(bars.at(stroke.onset()).index()));
    if (style.how().pedals()) {
      PedalSigns.of(harps.values()).forEach(this::add);
    }
  }

  private Assigned(
      Player player,
      Bars bars,
      List<WrittenPassage> passages,
      Landings landings,
      List<Stroke> replaced) {
    this.player = player;
    this.bars = bars;
    List<PassageMarks> marks = PassageMarks.all(passages, landings);
    for (int i = 0; i < passages.size(); i++) {
      beams.addAll(passages.get(i).line().expression().beams());
      PassageSigns.of(marks.get(i)).forEach(this::add);
      play(passages.get(i).strokes(), passages.get(i).slashed());
    }
    owned =
        Stream.concat(strokes.stream(), replaced.stream())
            .sorted(Comparator.comparing(Stroke::onset))
            .toList();
  }

  /** All of a line, each stroke for itself. */
  public static Assigned all(Player player, Line line) {
    WrittenPassage whole = WrittenPassage.whole(line.expressed(line.expression().withoutSlashes()));
    return new Assigned(player, line.bars(), List.of(whole), Landings.NONE, List.of());
  }

  /**
   * Notes that others play, quoted under their name.
   *
   * @param quoted at least one
   */
  static Assigned quoting(Player player, Bars bars, List<Stroke> quoted, String name) {
    Assigned quotation = new Assigned(player, bars, List.of(), Landings.NONE, List.of());
    quotation.play(quoted, List.of());
    quotation.add(Sign.partner(quoted.get(0).onset(), name));
    return quotation;
  }

  /** Strokes without a break; none sounds beyond the next. */
  private void play(List<Stroke> all, List<SlashedNote> slashed) {
    entries.add(strokes.size());
    Map<Position, SlashedNote> bySpan =
        slashed.stream().collect(Collectors.toMap(note -> note.span().start(), note -> note));
    int held = 0;
    for (int i = 0; i < all.size(); i++) {
      Stroke stroke = all.get(i);
      SlashedNote note = bySpan.get(stroke.onset());
      if (note != null) {
        addSounds(note.sounds(strokes.size()));
        held = i + note.strokes();
      } else if (i >= held) {
        Position end = stroke.span().end();
        Position next = i + 1 < all.size() ? all.get(i + 1).onset() : end;
        addSounds(SoundingItem.of(strokes.size(), stroke, next.isBefore(end) ? next : end, bars));
      }
      strokes.add(stroke);
      byOnset.computeIfAbsent(stroke.onset(), at -> new ArrayList<>()).add(stroke);
    }
  }

  public Player player() {
    return player;
  }

  /** How the notes were beamed where they come from. */
  public List<Span> beams() {
    return List.copyOf(beams);
  }

  /** All that the player has to play. */
  public List<Stroke> inOrder() {
    return strokes.stream().sorted(Comparator.comparing(Stroke::onset)).toList();
  }

  /** Indices of the bars in which there is something to write. */
  public List<Integer> bars() {
    return List.copyOf(sounds.keySet());
  }

  /** Indices of the bars in which there may be something to write, or to take out. */
  public Set<Integer> touched() {
    Set<Integer> touched = new TreeSet<>(sounds.keySet());
    touched.addAll(cleared);
    return touched;
  }

  /** Whether notes that may be written anew go where the player has nothing. */
  public boolean clears() {
    return !cleared.isEmpty();
  }

  public List<SoundingItem> sounds(int bar) {
    return sounds.getOrDefault(bar, List.of());
  }

  /** The signs of a bar in order; where several stand at one place, words first. */
  public List<Sign> signs(int bar) {
    return signs.getOrDefault(bar, List.of());
  }

  public Stroke stroke(int index) {
    return strokes.get(index);
  }

  /**
   * Whether a tone at an entry must remind of its accidental, as the player had the same note with
   * another one last, or reads it so in the cue before it.
   */
  public boolean reminds(int stroke, Tone tone) {
    return entries.contains(stroke)
        && tone instanceof Pitch pitch
        && Stream.concat(
                cued(strokes.get(stroke).onset()),
                IntStream.range(0, stroke).map(i -> stroke - 1 - i).mapToObj(strokes::get))
            .flatMap(before -> before.tones().stream())
            .filter(Pitch.class::isInstance)
            .map(Pitch.class::cast)
            .filter(before -> before.diatonic() == pitch.diatonic())
            .findFirst()
            .filter(before -> before.alter() != pitch.alter())
            .isPresent();
  }

  /** What is read in a cue up to an entry, the last first. */
  private Stream<Stroke> cued(Position entry) {
    return cues.stream()
        .filter(cue -> cue.span().end().equals(entry))
        .map(cue -> cue.notes().strokes)
        .flatMap(
            heard ->
                IntStream.range(0, heard.size()).mapToObj(i -> heard.get(heard.size() - 1 - i)));
  }

  /** Takes note of the cues that stand before the entries. */
  public void read(List<EntryCue> before) {
    cues.addAll(before);
  }

  /**
   * How its pitches are written: those of a harp by the strings that sound them.
   *
   * @param ofPart how a part writes any sounding pitch
   */
  public UnaryOperator<Pitch> spelling(UnaryOperator<Pitch> ofPart) {
    boolean isHarp = player.instrument().isHarp();
    return pitch -> {
      Pitch usual = ofPart.apply(pitch);
      boolean isString = HarpPedals.hasString(pitch) && usual.midi() == pitch.midi();
      return isHarp && isString ? pitch : usual;
    };
  }

  /** Whether the player has that stroke of the line. */
  public boolean plays(Stroke ofLine) {
    return byOnset.getOrDefault(ofLine.onset(), List.of()).stream()
        .anyMatch(stroke -> stroke.tones().stream().anyMatch(ofLine::sounds));
  }

  /** Whether a note that stands in the part is one that may be written anew. */
  public boolean owns(Position onset, NoteText note) {
    int j = lastUpTo(onset);
    return j >= 0
        && owned.get(j).span().contains(onset)
        && (note.grace()
            || owned.get(j).tones().stream().anyMatch(tone -> tone.key() == note.key()));
  }

  /** Whether an element of the part strikes a note that is left as it is. */
  public boolean leaves(ElementText element) {
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
  public NoteSpans spans(int index) {
    return new NoteSpans(reach(index, this::isJoined), reach(index, this::isTrilledOn));
  }

  /**
   * How strokes hang together at one of them.
   *
   * @param joined whether a stroke hangs together with the one before
   */
  private NoteSpans.Reach reach(int index, IntPredicate joined) {
    boolean comes = joined.test(index);
    boolean goesOn = index + 1 < strokes.size() && joined.test(index + 1);
    return new NoteSpans.Reach(goesOn && !comes, comes && !goesOn);
  }

  /**
   * What begins or ends of slurs on strokes under them, by onset.
   *
   * @param there where strokes stand to which a slur leads that is left out
   */
  public Map<Position, NoteSpans.Reach> slursBut(Set<Position> there) {
    IntPredicate joined = index -> isJoined(index) && !there.contains(strokes.get(index).onset());
    Map<Position, NoteSpans.Reach> slurs = new HashMap<>();
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

  private void addSounds(List<SoundingItem> items) {
    for (SoundingItem sound : items) {
      sounds
          .computeIfAbsent(bars.at(sound.span().start()).index(), number -> new ArrayList<>())
          .add(sound);
    }
  }

  /** Has a label stand where each passage begins. */
  public void label(String words) {
    for (int entry : entries) {
      labels.put(strokes.get(entry).onset(), words);
      sign(strokes.get(entry), words);
    }
  }

  /** Has a label stand at a place, as the last one before counts there no more. */
  public void labelAgain(Position at) {
    Map.Entry<Position, String> inForce = labels.floorEntry(at);
    if (inForce != null && !inForce.getKey().equals(at)) {
      add(Sign.words(at, inForce.getValue()));
      labels.put(at, inForce.getValue());
    }
  }

  /** Has the labels of a bar stand for one voice alone, as another has notes beside it there. */
  public void labelInVoice(int bar, String voice, Position first) {
    labelAgain(first);
    signs.getOrDefault(bar, List.of()).replaceAll(sign -> isLabel(sign) ? sign.in(voice) : sign);
  }

  /** Whether a sign says who of those who share the staff plays. */
  public boolean isLabel(Sign sign) {
    return sign.words().isPresent()
        && sign.words().equals(Optional.ofNullable(labels.get(sign.at())));
  }

  /** Where labels stand for all of the staff, and what they say. */
  public NavigableMap<Position, String> labels() {
    TreeMap<Position, String> ofStaff = new TreeMap<>();
    signs.values().stream()
        .flatMap(List::stream)
        .filter(sign -> isLabel(sign) && sign.voice().isEmpty())
        .forEach(sign -> ofStaff.put(sign.at(), sign.words().orElseThrow()));
    return ofStaff;
  }

  /** Where words for its character stand, and what they say. */
  public Map<Position, String> characters() {
    Map<Position, String> characters = new TreeMap<>();
    signs.values().stream()
        .flatMap(List::stream)
        .filter(sign -> sign.kind() == Sign.SignKind.CHARACTER)
        .forEach(sign -> characters.put(sign.at(), sign.text()));
    return characters;
  }

  /** Has words stand over a stroke. */
  public void sign(Stroke stroke, String words) {
    add(Sign.words(stroke.onset(), words));
  }

  private void add(Sign sign) {
    List<Sign> inBar =
        signs.computeIfAbsent(bars.at(sign.note()).index(), index -> new ArrayList<>());
    int place = 0;
    while (place < inBar.size() && isBefore(inBar.get(place), sign)) {
      place++;
    }
    inBar.add(place, sign);
  }

  /** What ends stands before all else at its place. */
  private static boolean isBefore(Sign there, Sign added) {
    boolean comesFirst = added.kind().closes() && !there.kind().closes();
    return comesFirst ? there.at().isBefore(added.at()) : !there.at().isAfter(added.at());
  }
}

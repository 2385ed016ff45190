package stafette.musicxml.read;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Set;
import java.util.TreeMap;
import stafette.musicxml.read.Notations.Joined;
import stafette.score.Attack;
import stafette.score.Dynamic;
import stafette.score.Grace;
import stafette.score.Stroke;
import stafette.score.Tone;
import stafette.score.Value;
import stafette.score.Voice;
import stafette.time.Position;

/** Makes strokes of the chords of a part, voice by voice. */
final class PartStrokes {
  private final List<Chord> chords;
  private final Slurs slurs;
  private final Slashing slashing;
  private final AskedManners asked;
  private final TremoloReadings readings;
  private final Trills trills;
  private final Ties ties = new Ties();
  private final Map<VoiceKey, Pending> voices = new LinkedHashMap<>();
  private final Set<Integer> seconds = new HashSet<>();

  private PartStrokes(
      List<Chord> chords, AskedManners asked, Slashing slashing, TremoloReadings readings) {
    this.chords = chords;
    this.slurs = Slurs.of(chords);
    this.slashing = slashing;
    this.asked = asked;
    this.readings = readings;
    this.trills = Trills.of(chords);
  }

  private record VoiceKey(int staff, String name) {}

  /** A voice as far as it has been read, with grace notes that wait for their stroke. */
  private record Pending(List<StrokeDraft> strokes, List<Grace> graces) {
    List<Grace> takeGraces() {
      List<Grace> taken = List.copyOf(graces);
      graces.clear();
      return taken;
    }
  }

  /**
   * The voices of a part, by staff, then in order of appearance.
   *
   * @param readings how its tremolos are read
   * @param dynamics in force
   */
  static List<Voice> of(
      List<Chord> chords,
      AskedManners asked,
      Slashing slashing,
      TremoloReadings readings,
      MarksInForce<Dynamic> dynamics) {
    PartStrokes strokes = new PartStrokes(chords, asked, slashing, readings);
    for (int i = 0; i < chords.size(); i++) {
      strokes.add(i);
    }
    return strokes.finished(dynamics);
  }

  private void add(int index) {
    Chord chord = chords.get(index);
    if (chord.ornamental()) {
      voice(chord).graces().add(new Grace(chord.tones(), chord.first().slashed()));
    } else if (seconds.contains(index)) {
      return;
    } else if (readings.secondOf(index).isPresent()) {
      int second = readings.secondOf(index).get();
      seconds.add(second);
      alternate(index, second);
    } else if (chord.isJoined(Joined.NOTHING) && readings.counts(index)) {
      repeat(index);
    } else {
      strike(index);
    }
  }

  /** One stroke with those notes that no tie leads to; none if ties lead to all. */
  private void strike(int index) {
    Chord chord = chords.get(index);
    IdentityHashMap<WrittenNote, StrokeDraft> held = new IdentityHashMap<>();
    for (WrittenNote note : chord.notes()) {
      ties.take(note, chord).ifPresent(stroke -> held.put(note, stroke));
    }
    Value value = new Value(chord.length(), chord.tuplet());
    List<WrittenNote> struck =
        chord.notes().stream().filter(note -> !held.containsKey(note)).toList();
    if (struck.isEmpty()) {
      Set.copyOf(held.values()).stream()
          .filter(stroke -> stroke.end().equals(chord.onset()))
          .forEach(stroke -> stroke.prolong(value, slurs.goingOn(index)));
    } else {
      StrokeDraft stroke = begin(index, chord.onset(), Chord.tonesOf(struck));
      stroke.prolong(value, slurs.goingOn(index));
      struck.forEach(note -> held.put(note, stroke));
    }
    held.forEach((note, stroke) -> ties.leadOn(note, chord, stroke));
  }

  /** The strokes of a measured tremolo on one chord. */
  private void repeat(int index) {
    Chord chord = chords.get(index);
    List<Slashing.TremoloBeat> beats = Slashing.repeated(chord);
    boolean slurInside = slurs.under(index) || slurs.goingOn(index);
    for (int i = 0; i < beats.size(); i++) {
      boolean last = i == beats.size() - 1;
      StrokeDraft stroke =
          i == 0
              ? begin(index, chord.onset(), chord.tones())
              : goOn(index, beats.get(i).onset(), chord.tones(), slurInside);
      stroke.prolong(beats.get(i).value(), last ? slurs.goingOn(index) : slurInside);
      if (last) {
        chord.notes().forEach(note -> ties.leadOn(note, chord, stroke));
      }
    }
  }

  /** The strokes of a measured tremolo between two chords. */
  private void alternate(int first, int second) {
    Chord from = chords.get(first);
    Chord to = chords.get(second);
    List<Slashing.TremoloBeat> beats = Slashing.alternating(from, to);
    boolean slurInside = slashing.slursPairs() || slurs.goingOn(first);
    for (int i = 0; i < beats.size(); i++) {
      boolean last = i == beats.size() - 1;
      List<Tone> tones = i % 2 == 0 ? from.tones() : to.tones();
      StrokeDraft stroke =
          i == 0
              ? begin(first, from.onset(), tones)
              : goOn(first, beats.get(i).onset(), tones, slurInside);
      stroke.prolong(beats.get(i).value(), last ? slurs.goingOn(second) : slurInside);
    }
  }

  /** The stroke with which a chord begins: it takes the grace notes and the marks. */
  private StrokeDraft begin(int index, Position onset, List<Tone> tones) {
    Chord chord = chords.get(index);
    Pending voice = voice(chord);
    MannerInForce manner = asked.of(index);
    boolean trilled = trills.goOnAt(index);
    StrokeDraft stroke =
        new StrokeDraft(
            onset,
            tones,
            voice.takeGraces(),
            slurs.under(index),
            !trilled && readings.counts(index),
            chord.articulations(),
            trilled ? manner.manner().with(Attack.TRILLED) : manner.manner());
    voice.strokes().add(stroke);
    return stroke;
  }

  /** A further stroke of a tremolo. */
  private StrokeDraft goOn(int index, Position onset, List<Tone> tones, boolean slurred) {
    StrokeDraft stroke =
        new StrokeDraft(onset, tones, List.of(), slurred, true, Set.of(), asked.of(index).manner());
    voice(chords.get(index)).strokes().add(stroke);
    return stroke;
  }

  private Pending voice(Chord chord) {
    return voices.computeIfAbsent(
        new VoiceKey(chord.staff(), chord.voice()),
        key -> new Pending(new ArrayList<>(), new ArrayList<>()));
  }

  private List<Voice> finished(MarksInForce<Dynamic> dynamics) {
    List<Voice> result = new ArrayList<>();
    voices.forEach(
        (key, pending) -> {
          NavigableMap<Position, Dynamic> marks = dynamics.on(key.staff());
          NavigableMap<Position, Stroke> strokes = new TreeMap<>();
          pending
              .strokes()
              .forEach(draft -> strokes.putIfAbsent(draft.onset(), draft.finished(marks)));
          if (!strokes.isEmpty()) {
            result.add(new Voice(key.staff(), key.name(), List.copyOf(strokes.values())));
          }
        });
    result.sort(Comparator.comparingInt(Voice::staff));
    return result;
  }
}

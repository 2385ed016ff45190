package stafette.score;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import stafette.time.Length;
import stafette.time.Position;
import stafette.time.Span;

/**
 * One attack.
 *
 * @param onset when
 * @param tones what sounds, from low to high; several for a chord, at least one
 * @param values the written note values tied together, at least one; of a measured tremolo, the
 *     value of one of its strokes
 * @param graces grace notes before it, each an extra stroke
 * @param slurred whether it stands under a slur, not as its first note
 * @param slurContinues whether a slur goes on from here to the next note
 * @param measured false for an unmeasured tremolo, flutter-tonguing on slashes and the notes of a
 *     trill: noted, not judged
 * @param articulations marks on it
 * @param dynamic what is in force
 * @param manner how it is made
 */
public record Stroke(
    Position onset,
    List<Tone> tones,
    List<Value> values,
    List<Grace> graces,
    boolean slurred,
    boolean slurContinues,
    boolean measured,
    Set<Articulation> articulations,
    Dynamic dynamic,
    Manner manner) {
  /** A tone, in semitones. */
  private static final int LARGEST_STEP = 2;

  /**
   * @throws IllegalArgumentException if there is no tone or no value
   */
  public Stroke {
    tones = List.copyOf(tones);
    values = List.copyOf(values);
    graces = List.copyOf(graces);
    articulations = Set.copyOf(articulations);
    if (tones.isEmpty() || values.isEmpty()) {
      throw new IllegalArgumentException("a stroke needs a tone and a value: " + onset);
    }
  }

  /** How long it sounds as written, ties included. */
  public Length length() {
    Length length = values.get(0).length();
    for (Value tied : values.subList(1, values.size())) {
      length = length.plus(tied.length());
    }
    return length;
  }

  public Span span() {
    return Span.of(onset, length());
  }

  /** Whether it is an unmeasured tremolo: one stroke, made of many that nobody counts. */
  public boolean isTremolo() {
    return !measured && manner.attack() != Attack.TRILLED;
  }

  public boolean accented() {
    return articulations.stream().anyMatch(Articulation::accents);
  }

  public boolean isChord() {
    return tones.size() > 1;
  }

  /** Whether one of the tones is that one, whatever its spelling. */
  public boolean sounds(Tone tone) {
    return tones.stream().anyMatch(own -> own.key() == tone.key());
  }

  /** The keys or strings that its tones take, whatever their spelling. */
  public Set<Integer> keys() {
    return tones.size() == 1
        ? Set.of(tones.get(0).key())
        : tones.stream().map(Tone::key).collect(Collectors.toSet());
  }

  /** Whether just the same tones sound in another stroke, whatever their spelling. */
  public boolean isLike(Stroke other) {
    return keys().equals(other.keys());
  }

  /** The highest of its tones. */
  public Tone top() {
    return tones.get(tones.size() - 1);
  }

  /** Whether the highest pitch of another stroke lies more than a tone from that of this one. */
  public boolean leapsTo(Stroke other) {
    return top() instanceof Pitch here
        && other.top() instanceof Pitch there
        && Math.abs(here.midi() - there.midi()) > LARGEST_STEP;
  }

  /** The same stroke with only these of its tones. */
  public Stroke withTones(List<Tone> chosen) {
    return new Stroke(
        onset,
        chosen,
        values,
        graces,
        slurred,
        slurContinues,
        measured,
        articulations,
        dynamic,
        manner);
  }

  /** The same stroke as it is quoted for others: other tones, and no marks that bind a player. */
  public Stroke quoted(List<Tone> others) {
    return new Stroke(
        onset, others, values, List.of(), false, false, true, Set.of(), dynamic, Manner.PLAIN);
  }

  /** The same stroke with other marks on it. */
  public Stroke marked(Set<Articulation> marks) {
    return new Stroke(
        onset, tones, values, graces, slurred, slurContinues, measured, marks, dynamic, manner);
  }

  /** The same stroke, written with one value. */
  public Stroke lasting(Value value) {
    return new Stroke(
        onset,
        tones,
        List.of(value),
        graces,
        slurred,
        slurContinues,
        measured,
        articulations,
        dynamic,
        manner);
  }

  /** The same stroke under slurs or not. */
  Stroke slurred(boolean comes, boolean goesOn) {
    return new Stroke(
        onset, tones, values, graces, comes, goesOn, measured, articulations, dynamic, manner);
  }

  /** The same stroke, that ends where the next begins if it would last longer. */
  Stroke until(Position next) {
    return span().end().isAfter(next)
        ? new Stroke(
            onset,
            tones,
            Weave.until(values, onset, next),
            graces,
            slurred,
            slurContinues,
            measured,
            articulations,
            dynamic,
            manner)
        : this;
  }

  /**
   * This stroke with the tones, grace notes and marks of another at the same place; no tone twice.
   */
  Stroke with(Stroke other) {
    Map<Integer, Tone> both = new TreeMap<>();
    Stream.concat(tones.stream(), other.tones.stream())
        .forEach(tone -> both.putIfAbsent(tone.key(), tone));
    return new Stroke(
        onset,
        List.copyOf(both.values()),
        values,
        Stream.concat(graces.stream(), other.graces.stream()).toList(),
        slurred && other.slurred,
        slurContinues && other.slurContinues,
        measured && other.measured,
        Stream.concat(articulations.stream(), other.articulations.stream())
            .collect(Collectors.toSet()),
        dynamic,
        manner);
  }
}

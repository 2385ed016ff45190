package stafette.musicxml.read;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import stafette.musicxml.read.Notations.TrillSigns;
import stafette.score.Tone;
import stafette.time.Length;

/**
 * Trills that an exporter wrote out under their sign: quick notes that go to and fro between two
 * neighbouring pitches, all under a wavy line, or from a trill sign on.
 */
final class Trills {
  /** Fewer notes might be a turn of the melody. */
  private static final int LEAST_NOTES = 4;

  /** Slower notes under a wavy line have a trill each. */
  private static final Length SLOWEST_UNDER_LINE = Length.ofQuarters(1, 4);

  /** Slower notes after a sign may be the melody's own. */
  private static final Length SLOWEST_AFTER_SIGN = Length.ofQuarters(1, 8);

  /** In semitones. */
  private static final int WIDEST = 2;

  private final List<Chord> chords;
  private final Set<Integer> goingOn = new HashSet<>();

  private Trills(List<Chord> chords) {
    this.chords = chords;
  }

  private record VoiceOfStaff(int staff, String voice) {}

  /** The trills on chords that come by onset. */
  static Trills of(List<Chord> chords) {
    Trills trills = new Trills(chords);
    Map<VoiceOfStaff, List<Integer>> voices =
        IntStream.range(0, chords.size())
            .boxed()
            .filter(i -> !chords.get(i).ornamental())
            .collect(
                Collectors.groupingBy(
                    i -> new VoiceOfStaff(chords.get(i).staff(), chords.get(i).voice())));
    voices.values().forEach(trills::find);
    return trills;
  }

  /** Whether a chord is one of the quick notes of a trill, but its first. */
  boolean goOnAt(int chord) {
    return goingOn.contains(chord);
  }

  private void find(List<Integer> voice) {
    for (int first = 0; first < voice.size(); first++) {
      TrillSigns signs = signs(voice.get(first));
      if (signs.starts() || signs.marked()) {
        int end = toAndFro(voice, first, signs.starts());
        boolean whole = !signs.starts() || signs(voice.get(end - 1)).stops();
        if (whole && end - first >= LEAST_NOTES) {
          goingOn.addAll(voice.subList(first + 1, end));
        }
        first = end - 1;
      }
    }
  }

  /** Where equal notes end that follow one another to and fro, or the wavy line over them does. */
  private int toAndFro(List<Integer> voice, int first, boolean underLine) {
    Length slowest = underLine ? SLOWEST_UNDER_LINE : SLOWEST_AFTER_SIGN;
    int end = first + 1;
    while (end < voice.size()
        && !(underLine && signs(voice.get(end - 1)).stops())
        && goesOn(voice, first, end, slowest)) {
      end++;
    }
    return end;
  }

  private boolean goesOn(List<Integer> voice, int first, int index, Length slowest) {
    Chord before = chords.get(voice.get(index - 1));
    Chord chord = chords.get(voice.get(index));
    return chord.length().equals(before.length())
        && chord.length().compareTo(slowest) <= 0
        && before.end().equals(chord.onset())
        && areNeighbours(before.tones(), chord.tones())
        && (index < first + 2
            || keys(chord.tones()).equals(keys(chords.get(voice.get(index - 2)).tones())));
  }

  private static boolean areNeighbours(List<Tone> a, List<Tone> b) {
    int apart = a.get(0).key() - b.get(0).key();
    return a.size() == 1 && b.size() == 1 && apart != 0 && Math.abs(apart) <= WIDEST;
  }

  private static List<Integer> keys(List<Tone> tones) {
    return tones.stream().map(Tone::key).toList();
  }

  private TrillSigns signs(int chord) {
    List<TrillSigns> signs =
        chords.get(chord).notes().stream().map(note -> note.notations().trill()).toList();
    return new TrillSigns(
        signs.stream().anyMatch(TrillSigns::marked),
        signs.stream().anyMatch(TrillSigns::starts),
        signs.stream().anyMatch(TrillSigns::stops));
  }
}

package stafette.work;

import static stafette.work.GoldenScore.bars;
import static stafette.work.GoldenScore.dynamic;
import static stafette.work.GoldenScore.groups;
import static stafette.work.GoldenScore.metre;
import static stafette.work.GoldenScore.notes;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.function.IntFunction;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import stafette.work.GoldenScore.GoldenValue;

/** The lines of {@code golden-turns.txt}, in its order, as scores made up for it. */
final class GoldenLines {
  private static final List<String> STEPS = List.of("C", "D", "E", "F", "G", "A", "B");
  private static final List<String> SEMITONES =
      List.of("C", "C#", "D", "D#", "E", "F", "F#", "G", "G#", "A", "A#", "B");

  private GoldenLines() {}

  /**
   * A line and who is named for it.
   *
   * @param title of its entry in {@code golden-turns.txt}
   * @param part where the line stands
   * @param mostBreath the share of air that nobody passes
   * @param mostTired the tiredness that nobody passes
   */
  record GoldenLine(
      String title,
      GoldenScore score,
      String part,
      int bars,
      String players,
      double mostBreath,
      double mostTired) {
    GoldenLine in(String other) {
      return new GoldenLine(title, score, other, bars, players, mostBreath, mostTired);
    }

    GoldenLine within(double breath, double tired) {
      return new GoldenLine(title, score, part, bars, players, breath, tired);
    }
  }

  static List<GoldenLine> all() {
    return List.of(
        line("sextuplets, 12 bars", quick(104, 12), 12, "Flute 1, Flute 2, Flute 3"),
        line("sextuplets, 16 bars", quick(104, 16), 16, "Flute 1, Flute 2, Flute 3"),
        line("sextuplets and a clarinet", quick(104, 16), 16, "Flute 1, Flute 2, Clarinet 1"),
        line("low triplets", low(), 16, "Flute 1, Flute 2, Flute 3"),
        line("easy sixteenths", compound(54), 24, "Clarinet 1, Clarinet 2"),
        line("easy sixteenths, one busy", busy(), 24, "Flute 1, Flute 2, Flute 3").within(0.6, 0.9),
        line("true triplets", trueTriplets(), 16, "Trumpet 1, Trumpet 2, Trumpet 3")
            .in("Trumpet 1"),
        line("forte sixteenths", forte(), 32, "Trumpet 1, Trumpet 2, Trumpet 3"),
        line(
                "a section divided",
                section(),
                8,
                "Violins I outside = violin, Violins I inside = violin, Violins II")
            .in("Violins I")
            .within(0.9, 0.6),
        line("changing metre", changing(204), 18, "Flute 1, Flute 2, Flute 3"),
        line("changing metre, harps", harps(), 18, "Harp 1, Harp 2, Harp 3"),
        line("sevens and fives", odd(), 24, "Flute 1, Flute 2, Flute 3"),
        line(
            "a climb of four octaves",
            climb(),
            19,
            "Bassoon 1, Bassoon 2, Clarinet 1, Clarinet 2, Flute 1, Flute 2"),
        line("easy eighths", easy(), 8, "Clarinet 1, Clarinet 2"),
        line("two hands", hands(), 8, "Flute 1, Flute 2, Clarinet 1, Clarinet 2"),
        line("a chromatic run", run(), 2, "Flute 1, Oboe 1, Bassoon 1"));
  }

  private static GoldenLine line(String title, GoldenScore score, int bars, String players) {
    return new GoldenLine(title, score, "Piano", bars, players, 0.9, 0.9);
  }

  private static List<String> same(String pitch, int count) {
    return Collections.nCopies(count, pitch);
  }

  private static List<String> opening(String before, List<String> bars) {
    return Stream.concat(Stream.of(before + bars.get(0)), bars.stream().skip(1)).toList();
  }

  private static GoldenScore piano(String unit, int perMinute, String before, List<String> bars) {
    return new GoldenScore(unit, perMinute).with("Piano", opening(before, bars));
  }

  private static GoldenScore quick(int perMinute, int count) {
    return piano(
        "quarter",
        perMinute,
        metre("4", 4),
        bars(count, groups(GoldenValue.SEXTUPLET, same("A4", 24), List.of(6, 6, 6, 6), "")));
  }

  private static GoldenScore low() {
    List<Integer> threes = Collections.nCopies(8, 3);
    return piano(
        "quarter",
        90,
        metre("4", 4),
        bars(16, groups(GoldenValue.SIXTEENTH_TRIPLET, same("C4", 24), threes, "")));
  }

  private static String compoundBar(String pitch) {
    return groups(GoldenValue.SIXTEENTH, same(pitch, 12), List.of(6, 6), "");
  }

  private static GoldenScore compound(int perMinute) {
    return piano("dotted quarter", perMinute, metre("6", 8), bars(24, compoundBar("A4")));
  }

  /** The second flute has a tune in bars 6 to 9 and 15 to 16. */
  private static GoldenScore busy() {
    String tune = notes(GoldenValue.EIGHTH, List.of("D5", "C5", "B4", "A4", "B4", "C5"));
    String silence = notes(GoldenValue.EIGHTH, same("-", 6));
    List<String> second =
        IntStream.rangeClosed(1, 24)
            .mapToObj(bar -> (bar >= 6 && bar <= 9) || bar == 15 || bar == 16 ? tune : silence)
            .toList();
    return compound(72).with("Flute 2", opening(metre("6", 8), second));
  }

  private static GoldenScore trueTriplets() {
    List<Integer> threes = Collections.nCopies(4, 3);
    List<String> line =
        bars(16, groups(GoldenValue.EIGHTH_TRIPLET, same("G4", 12), threes, "accent"));
    List<String> silence = bars(16, notes(GoldenValue.WHOLE, same("-", 1)));
    return new GoldenScore("quarter", 176)
        .with("Trumpet 1", opening(metre("4", 4) + dynamic("f"), line))
        .with("Trumpet 2", opening(metre("4", 4), silence))
        .with("Trumpet 3", opening(metre("4", 4), silence));
  }

  private static GoldenScore forte() {
    return piano(
        "quarter",
        138,
        metre("4", 4) + dynamic("f"),
        bars(32, groups(GoldenValue.SIXTEENTH, same("G4", 16), List.of(4, 4, 4, 4), "")));
  }

  private static GoldenScore section() {
    List<String> line =
        bars(8, groups(GoldenValue.SIXTEENTH, same("D5", 16), List.of(4, 4, 4, 4), ""));
    List<String> held = bars(8, notes(GoldenValue.WHOLE, same("-", 1)));
    return new GoldenScore("quarter", 156)
        .with("Violins I", opening(metre("4", 4), line))
        .with("Violins II", opening(metre("4", 4), held));
  }

  /** 6/8, with 7/8 in bars 9 to 12. */
  private static GoldenScore changing(int perMinute) {
    return piano("dotted quarter", perMinute, metre("6", 8), changingBars(bar -> "A4"));
  }

  /** The same for harps, the pitch changing so that pedals must move. */
  private static GoldenScore harps() {
    List<String> pitches = List.of("E5", "Eb5");
    return piano(
        "dotted quarter", 150, metre("6", 8), changingBars(bar -> pitches.get(bar / 2 % 2)));
  }

  private static List<String> changingBars(IntFunction<String> pitch) {
    List<String> all = new ArrayList<>();
    for (int bar = 0; bar < 18; bar++) {
      boolean seven = bar >= 8 && bar < 12;
      String change = bar == 8 ? metre("7", 8) : bar == 12 ? metre("6", 8) : "";
      List<Integer> beams = seven ? List.of(2, 2, 3) : List.of(3, 3);
      all.add(
          change + groups(GoldenValue.EIGHTH, same(pitch.apply(bar), seven ? 7 : 6), beams, ""));
    }
    return all;
  }

  private static GoldenScore odd() {
    List<String> all = new ArrayList<>();
    for (int bar = 0; bar < 24; bar++) {
      boolean seven = bar < 12;
      List<Integer> beams = seven ? List.of(4, 4, 6) : List.of(4, 4, 4, 4, 4);
      all.add(
          (bar == 12 ? metre("5", 4) : "")
              + groups(GoldenValue.SIXTEENTH, same("A4", seven ? 14 : 20), beams, ""));
    }
    return piano("quarter", 132, metre("7", 8), all);
  }

  /** A figure of eight steps up and down, which begins three steps higher in every other bar. */
  private static GoldenScore climb() {
    List<String> all = new ArrayList<>();
    for (int bar = 0; bar < 19; bar++) {
      int from = bar * 3 / 2;
      List<String> pitches =
          IntStream.range(0, 16)
              .mapToObj(i -> step(from + (i < 9 ? i / 2 + i % 2 : 8 - i / 2 + i % 2)))
              .toList();
      all.add(groups(GoldenValue.SIXTEENTH, pitches, List.of(4, 4, 4, 4), "slur"));
    }
    return piano("quarter", 120, metre("4", 4), all);
  }

  private static String step(int above) {
    return STEPS.get(above % 7) + (2 + above / 7);
  }

  private static GoldenScore easy() {
    return piano(
        "quarter",
        120,
        metre("4", 4),
        bars(8, groups(GoldenValue.EIGHTH, same("G4", 8), List.of(4, 4), "")));
  }

  /** As one voice: two notes for each hand in turn, slurred. */
  private static GoldenScore hands() {
    List<String> beat = List.of("E5", "G5", "C5", "E5");
    List<String> bar = Stream.of(beat, beat, beat, beat).flatMap(List::stream).toList();
    return piano(
        "quarter",
        144,
        metre("4", 4),
        bars(8, groups(GoldenValue.SIXTEENTH, bar, Collections.nCopies(8, 2), "slur")));
  }

  /** Three octaves up in a bar, nine notes to a beat, to a note that is held. */
  private static GoldenScore run() {
    List<String> pitches =
        IntStream.range(0, 36).mapToObj(i -> SEMITONES.get(i % 12) + (3 + i / 12)).toList();
    return piano(
        "quarter",
        60,
        metre("4", 4),
        List.of(
            groups(GoldenValue.NONUPLET, pitches, List.of(9, 9, 9, 9), "slur"),
            notes(GoldenValue.WHOLE, List.of("C6"))));
  }
}

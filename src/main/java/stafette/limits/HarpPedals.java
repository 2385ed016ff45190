package stafette.limits;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import stafette.score.Pitch;
import stafette.score.Step;

/**
 * The pedals of the harp: which notes one setting of the seven pedals gives, and which of them on
 * two strings.
 *
 * <p>The harp has 47 strings, C1 to G7, seven to the octave. Each pedal holds all strings of its
 * letter flat, natural or sharp (Bligh, <i>Writing for the Pedal Harp</i>), so there are 3<sup>7
 * </sup> = 2,187 settings, and all are tried. A pitch is twinned where two neighbouring strings
 * sound it (C sharp and D flat, say); D, G and A natural never are (Kuntz, harp notes for
 * composers). All strings are taken to follow their pedals; on real harps the two lowest don't.
 */
public final class HarpPedals {
  private static final int LOWEST_STRING = 7;
  private static final int HIGHEST_STRING = 7 * 7 + Step.G.ordinal();
  private static final int LOWEST_MIDI = 23;
  private static final int HIGHEST_MIDI = 104;
  private static final int LETTERS = Step.values().length;
  private static final List<Choir> CHOIRS = allSettings();
  private static final int[][] ALTERS =
      CHOIRS.stream()
          .map(choir -> choir.setting.alters().stream().mapToInt(alter -> alter).toArray())
          .toArray(int[][]::new);
  private static final Map<Set<Integer>, BitSet> GIVING = new ConcurrentHashMap<>();

  /** How many pedals there are, numbered by their letters from C to B. */
  static final int PEDALS = LETTERS;

  private HarpPedals() {}

  /** Whether a string may be called so: pedals hold it flat, natural or sharp. */
  public static boolean hasString(Pitch pitch) {
    return Math.abs(pitch.alter()) <= 1;
  }

  /**
   * A setting of the pedals.
   *
   * @param alters for each letter from C to B: −1 flat, 0 natural, 1 sharp
   */
  public record Setting(List<Integer> alters) {
    private static final List<Step> LEFT = List.of(Step.D, Step.C, Step.B);
    private static final List<Step> RIGHT = List.of(Step.E, Step.F, Step.G, Step.A);

    /**
     * @throws IllegalArgumentException unless there are seven positions from −1 to 1
     */
    public Setting {
      alters = List.copyOf(alters);
      if (alters.size() != LETTERS || !alters.stream().allMatch(a -> -1 <= a && a <= 1)) {
        throw new IllegalArgumentException(
            "a setting has seven pedals, each from -1 to 1: " + alters);
      }
    }

    /** The pedals as the feet find them, left and right: "D C# B | E F G Ab". */
    @Override
    public String toString() {
      return side(LEFT) + " | " + side(RIGHT);
    }

    /** As a key signature has it: so many sharps, or flats if below zero. */
    public static Setting inKey(int fifths) {
      return new Setting(Stream.of(Step.values()).map(step -> step.alterIn(fifths)).toList());
    }

    /** The pedals as the feet find them from left to right: D C B, E F G A. */
    public List<Pedal> pedals() {
      return Stream.of(LEFT, RIGHT)
          .flatMap(List::stream)
          .map(letter -> new Pedal(letter, alters.get(letter.ordinal())))
          .toList();
    }

    /** The pedals that stand otherwise than in a setting before. */
    public List<Pedal> movedSince(Setting before) {
      return pedals().stream()
          .filter(pedal -> before.alters.get(pedal.letter.ordinal()) != pedal.alter)
          .toList();
    }

    /** Whether the strings of its letter stand as a pitch is spelled. */
    public boolean has(Pitch spelled) {
      return alters.get(spelled.step().ordinal()) == spelled.alter();
    }

    /** The strings that sound a note, from the lowest: none, one, or twins. */
    public List<Pitch> strings(int midi) {
      return pedals().stream()
          .filter(pedal -> Math.floorMod(midi - pedal.semitones(), 12) == 0)
          .map(pedal -> pedal.string(midi))
          .filter(pitch -> isString(pitch.diatonic()))
          .sorted()
          .toList();
    }

    int alter(int pedal) {
      return alters.get(pedal);
    }

    /** Whether a string of a pedal sounds one of these notes. */
    boolean uses(int pedal, Set<Integer> midiKeys) {
      int sounds = Step.values()[pedal].semitones() + alters.get(pedal);
      return midiKeys.stream().anyMatch(key -> Math.floorMod(key - sounds, 12) == 0);
    }

    private String side(List<Step> letters) {
      return pedals().stream()
          .filter(pedal -> letters.contains(pedal.letter))
          .map(Pedal::toString)
          .collect(Collectors.joining(" "));
    }

    private long moved() {
      return alters.stream().filter(alter -> alter != 0).count();
    }
  }

  /**
   * A pedal and how it stands.
   *
   * @param alter −1 flat, 0 natural, 1 sharp
   */
  public record Pedal(Step letter, int alter) {
    /** As it is told to a harpist: "B♯", "C♮", "E♭". */
    public String inWords() {
      return letter + List.of("♭", "♮", "♯").get(alter + 1);
    }

    /** "B#", "C", "Eb". */
    @Override
    public String toString() {
      return letter + List.of("b", "", "#").get(alter + 1);
    }

    private int semitones() {
      return letter.semitones() + alter;
    }

    private Pitch string(int midi) {
      return new Pitch(letter, alter, (midi - semitones()) / 12 - 1);
    }
  }

  /**
   * A setting that gives all these notes, and the twinned ones on two strings; among several the
   * one with most pedals at natural.
   *
   * @param midiKeys what has to sound, as MIDI numbers
   * @param twinnedMidiKeys what has to sound on two strings; need not be repeated in the former
   */
  public static Optional<Setting> settingFor(Set<Integer> midiKeys, Set<Integer> twinnedMidiKeys) {
    return serving(midiKeys, twinnedMidiKeys).findFirst();
  }

  /** All such settings, those with most pedals at natural first. */
  public static List<Setting> settingsFor(Set<Integer> midiKeys, Set<Integer> twinnedMidiKeys) {
    return serving(midiKeys, twinnedMidiKeys).toList();
  }

  private static Stream<Setting> serving(Set<Integer> midiKeys, Set<Integer> twinnedMidiKeys) {
    if (Stream.of(midiKeys, twinnedMidiKeys).flatMap(Set::stream).anyMatch(key -> !reaches(key))) {
      return Stream.empty();
    }
    return CHOIRS.stream()
        .filter(choir -> twinnedMidiKeys.stream().allMatch(choir.twinned::get))
        .filter(choir -> midiKeys.stream().allMatch(choir.sounding::get))
        .map(choir -> choir.setting);
  }

  /**
   * The numbers of the settings that give all these notes, those with most naturals first; not to
   * be changed.
   */
  static BitSet giving(Set<Integer> midiKeys) {
    return GIVING.computeIfAbsent(midiKeys, HarpPedals::settingsGiving);
  }

  private static BitSet settingsGiving(Set<Integer> midiKeys) {
    BitSet giving = new BitSet();
    for (int number = 0; number < CHOIRS.size(); number++) {
      Choir choir = CHOIRS.get(number);
      giving.set(
          number, midiKeys.stream().allMatch(key -> reaches(key) && choir.sounding.get(key)));
    }
    return giving;
  }

  /** How many pedals move from one setting to another. */
  static int moves(int one, int other) {
    int moves = 0;
    for (int pedal = 0; pedal < PEDALS; pedal++) {
      moves += ALTERS[one][pedal] == ALTERS[other][pedal] ? 0 : 1;
    }
    return moves;
  }

  /** The setting with a number. */
  static Setting setting(int number) {
    return CHOIRS.get(number).setting;
  }

  /** Whether the left foot has a pedal. */
  static boolean isLeft(int pedal) {
    return Setting.LEFT.contains(Step.values()[pedal]);
  }

  /** Whether there is such a setting. */
  public static boolean twinsPossible(Set<Integer> midiKeys, Set<Integer> twinnedMidiKeys) {
    return settingFor(midiKeys, twinnedMidiKeys).isPresent();
  }

  /** Whether some setting gives this note on two strings. */
  public static boolean hasTwin(int midi) {
    return twinsPossible(Set.of(), Set.of(midi));
  }

  private static boolean isString(int diatonic) {
    return LOWEST_STRING <= diatonic && diatonic <= HIGHEST_STRING;
  }

  private static boolean reaches(int midi) {
    return LOWEST_MIDI <= midi && midi <= HIGHEST_MIDI;
  }

  private static List<Choir> allSettings() {
    List<Choir> result = new ArrayList<>();
    int count = (int) Math.pow(3, LETTERS);
    for (int number = 0; number < count; number++) {
      List<Integer> alters = new ArrayList<>();
      for (int letter = 0, rest = number; letter < LETTERS; letter++, rest /= 3) {
        alters.add(rest % 3 - 1);
      }
      result.add(Choir.of(new Setting(alters)));
    }
    result.sort(Comparator.comparingLong(choir -> choir.setting.moved()));
    return List.copyOf(result);
  }

  /** What the strings sound under a setting. */
  private record Choir(Setting setting, BitSet sounding, BitSet twinned) {
    static Choir of(Setting setting) {
      BitSet sounding = new BitSet();
      BitSet twinned = new BitSet();
      for (int string = LOWEST_STRING; string <= HIGHEST_STRING; string++) {
        Step letter = Step.values()[string % LETTERS];
        int octave = string / LETTERS;
        int midi = 12 * (octave + 1) + letter.semitones() + setting.alters.get(letter.ordinal());
        if (sounding.get(midi)) {
          twinned.set(midi);
        }
        sounding.set(midi);
      }
      return new Choir(setting, sounding, twinned);
    }
  }
}

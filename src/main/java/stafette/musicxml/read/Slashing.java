package stafette.musicxml.read;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import stafette.musicxml.read.Notations.Joined;
import stafette.musicxml.read.Notations.Slashes;
import stafette.score.Attack;
import stafette.score.Tremolo;
import stafette.score.TremoloReading;
import stafette.score.Value;
import stafette.time.Length;
import stafette.time.Position;
import stafette.time.Rational;

/**
 * How the tremolos of one part are played. Slashes add to a note's own beams: a quarter with three
 * and an eighth with two go in thirty-seconds. Words may say that they are not counted: tremolo on
 * bows and in rolls, flutter-tonguing on winds. On bows and in rolls the tempo may say so too, and
 * on keys where two notes or chords alternate.
 */
final class Slashing {
  /** What three beams or slashes make of a note. */
  private static final Rational THIRTY_SECOND = Rational.of(1, 8);

  /** The branches whose slashes between two notes are finger changes in one breath. */
  private static final List<String> BLOWN = List.of("wind.", "brass.");

  /** Longer notes than that are not spelled out; nobody counts them. */
  private static final Length LONGEST = Length.ofQuarters(64, 1);

  /** Nor are more strokes than that: sixteen whole notes in hundred-twenty-eighths have less. */
  private static final Rational MOST_STROKES = Rational.of(4_096);

  /** The branches of MusicXML's list of standard sounds that are bowed, rolled or trembled. */
  private static final List<String> BOWED_OR_ROLLED =
      List.of(
          "strings.",
          "drum.",
          "metal.",
          "wood.",
          "pitched-percussion.",
          "rattle.",
          "pluck.mandolin");

  private static final Pattern BOWED_OR_ROLLED_NAMES =
      Pattern.compile(
          "violin|violon|viol[ae]\\b|cell[oi]|contrab|contreb|kontrab|double ?bass|geige|bratsche"
              + "|streich|\\bstrings?\\b|\\barchi\\b|\\bv(?:l|ln|la|lc|c)s?\\b|\\bvl[ae]\\b"
              + "|timpan|pauke|timbal|drum|trommel|tambur|cymbal|becken|piatti|gong|tam-?tam"
              + "|triang|tambourin|marimba|xylo|vibraphon|glockenspiel|percuss|schlag|snare"
              + "|block(?!fl)|cassa|caisse|crotal|castan|castag|kastag|nacch|[cz][iy]mbal|mandol");

  private static final Pattern BLOWN_NAMES =
      Pattern.compile(
          "fl[aöû]?u?t|piccol|ottavin|obo[ei]|hautbois|cor anglais|clar|klarin|basset|fag|basson?\\b"
              + "|bassoon|sax|sassof|horn|hörn|\\bcorn|\\bcors?\\b|trump|trompet|tromb|posaun|cornet|kornett"
              + "|euphon|eufon|\\btub[ae]|wagnertub|flicorn|genis|cimbass|recorder|\\b(?:picc|fl|ob|cl|bsn|hn|tpt|tbn)s?\\b");

  private static final List<String> KEYED = List.of("keyboard.");

  private static final Pattern KEYED_NAMES =
      Pattern.compile(
          "pian|klavier|clavi|flügel|cembal|harpsichord|celest|zelest|orgel|organ|orgue|harmonium");

  private final Tremolo tremolo;
  private final boolean bowedOrRolled;
  private final boolean blown;
  private final boolean keyed;

  private Slashing(Tremolo tremolo, boolean bowedOrRolled, boolean blown, boolean keyed) {
    this.tremolo = tremolo;
    this.bowedOrRolled = bowedOrRolled;
    this.blown = blown;
    this.keyed = keyed;
  }

  /** One stroke of a tremolo that is spelled out. */
  record TremoloBeat(Position onset, Value value) {}

  /** By the part's instrument sounds, else by its names. */
  static Slashing of(WrittenPart part, Tremolo tremolo) {
    PartList.ListedPart listed = part.listed();
    return new Slashing(
        tremolo,
        is(listed, BOWED_OR_ROLLED, BOWED_OR_ROLLED_NAMES),
        is(listed, BLOWN, BLOWN_NAMES),
        is(listed, KEYED, KEYED_NAMES));
  }

  private static boolean is(PartList.ListedPart listed, List<String> branches, Pattern names) {
    return listed.sounds().isEmpty()
        ? Stream.concat(Stream.of(listed.name()), listed.instrumentNames().stream())
            .anyMatch(name -> names.matcher(name.toLowerCase(Locale.ROOT)).find())
        : listed.sounds().stream().anyMatch(sound -> branches.stream().anyMatch(sound::startsWith));
  }

  /** Whether two notes that slashes join are slurred wherever no slur stands. */
  boolean slursPairs() {
    return blown;
  }

  /** Whether a chord without slashes is a tremolo, as a word has it. */
  boolean isBareTremolo(Chord chord, MannerInForce asked) {
    return bowedOrRolled && asked.trembling() && chord.slashes().isEmpty();
  }

  /**
   * How a tremolo is read, whatever the tempo; empty if the tempo decides.
   *
   * @param first its notes, or the first of two that alternate
   * @param length of all of it
   */
  Optional<TremoloReading> stated(Chord first, Length length, MannerInForce asked) {
    if (first.slashes().isEmpty()) {
      return Optional.of(TremoloReading.WORD);
    }
    if (!first.slashes().get().measured()) {
      return Optional.of(TremoloReading.MARKED);
    }
    if (length.compareTo(LONGEST) > 0
        || length.quarters().dividedBy(stroke(first)).compareTo(MOST_STROKES) > 0) {
      return Optional.of(TremoloReading.ENDLESS);
    }
    return switch (tremolo) {
      case MEASURED -> Optional.of(TremoloReading.MEASURED);
      case UNMEASURED -> Optional.of(TremoloReading.ASKED_FOR);
      case AS_WRITTEN ->
          bowedOrRolled || (keyed && !first.isJoined(Joined.NOTHING))
              ? onBows(asked)
              : Optional.of(onOthers(asked));
    };
  }

  private static Optional<TremoloReading> onBows(MannerInForce asked) {
    return asked.trembling() ? Optional.of(TremoloReading.WORD) : Optional.empty();
  }

  private static TremoloReading onOthers(MannerInForce asked) {
    return asked.manner().attack() == Attack.FLUTTERED
        ? TremoloReading.FLUTTER
        : TremoloReading.MEASURED;
  }

  /** Whether slashes and beams together are three or more. */
  static boolean isThree(Chord chord) {
    return unit(chord).compareTo(THIRTY_SECOND) <= 0;
  }

  /** The strokes of a measured tremolo on one note or chord. */
  static List<TremoloBeat> repeated(Chord chord) {
    return cut(chord, chord.length().quarters(), stroke(chord));
  }

  /**
   * The strokes of a measured tremolo between two notes or chords, alternately the first's and the
   * second's. Each is written with the value of both together; their time modification of 2:1 says
   * so and is no tuplet.
   */
  static List<TremoloBeat> alternating(Chord first, Chord second) {
    return cut(first, first.length().plus(second.length()).quarters(), stroke(first));
  }

  /** How long each stroke of a tremolo lasts. */
  static Rational stroke(Chord chord) {
    if (chord.isJoined(Joined.NOTHING)) {
      return unit(chord).times(chord.length().quarters()).dividedBy(chord.writtenQuarters());
    }
    Rational ratio = chord.ratio();
    return unit(chord).times(ratio.compareTo(Rational.of(1, 2)) <= 0 ? ratio.times(2) : ratio);
  }

  /** The value of a chord's beams and slashes together, without any tuplet. */
  private static Rational unit(Chord chord) {
    Rational unit = Rational.ONE;
    while (unit.compareTo(chord.writtenQuarters()) > 0) {
      unit = unit.dividedBy(2);
    }
    return unit.dividedBy(1L << chord.slashes().map(Slashes::count).orElse(0));
  }

  private static List<TremoloBeat> cut(Chord chord, Rational length, Rational unit) {
    List<TremoloBeat> beats = new ArrayList<>();
    for (Rational done = Rational.ZERO; done.compareTo(length) < 0; done = done.plus(unit)) {
      Length value = new Length(unit.min(length.minus(done)));
      beats.add(
          new TremoloBeat(chord.onset().plus(new Length(done)), new Value(value, chord.tuplet())));
    }
    return beats;
  }
}

package stafette.limits;

import java.util.List;
import java.util.Optional;
import stafette.score.Drum;
import stafette.score.Pitch;
import stafette.score.Tone;
import stafette.score.Transposition;
import stafette.words.Sayable;
import stafette.words.Sentence;

/**
 * One instrument.
 *
 * @param name with its key where there are several: "clarinet in B-flat"
 * @param aliases other names by which scores know it, instrument sounds of MusicXML 4.0 among them;
 *     in lower case
 * @param family "woodwind", "brass", "strings", "harp", "plucked", "keyboard" or "percussion"
 * @param range what it can sound; empty for an instrument without pitch
 * @param comfortable where it sounds without strain; empty for an instrument without pitch
 * @param transposition from written to sounding
 * @param clef as MusicXML has it: sign and line, "G2", "F4", "C3", "percussion"
 * @param levelDecibel how loud it is, against the others
 * @param breath for winds
 * @param midiProgram General MIDI program, 1 to 128
 * @param techniques in the order in which a player would choose them, at least one
 * @param source where ranges, level and breath come from
 * @param repertoire what open scores ask of it
 */
public record Instrument(
    String name,
    List<String> aliases,
    String family,
    Optional<Range> range,
    Optional<Range> comfortable,
    Transposition transposition,
    String clef,
    double levelDecibel,
    Optional<Breath> breath,
    int midiProgram,
    List<Technique> techniques,
    Source source,
    Repertoire repertoire)
    implements Sayable {
  /** Brass in the treble clef that goes below this, a horn, reads the bass clef too: E2. */
  private static final int DEEP = 40;

  public Instrument {
    aliases = List.copyOf(aliases);
    techniques = List.copyOf(techniques);
  }

  /** An instrument of whose repertoire nothing was counted. */
  public Instrument(
      String name,
      List<String> aliases,
      String family,
      Optional<Range> range,
      Optional<Range> comfortable,
      Transposition transposition,
      String clef,
      double levelDecibel,
      Optional<Breath> breath,
      int midiProgram,
      List<Technique> techniques,
      Source source) {
    this(
        name,
        aliases,
        family,
        range,
        comfortable,
        transposition,
        clef,
        levelDecibel,
        breath,
        midiProgram,
        techniques,
        source,
        Repertoire.NONE);
  }

  /**
   * Clefs that its players read beside the usual one, the likelier first (common practice, no
   * source).
   */
  public List<String> furtherClefs() {
    boolean deep = range.filter(notes -> notes.low() < DEEP).isPresent();
    return switch (clef) {
      case "F4" ->
          switch (family) {
            case "woodwind", "brass" -> List.of("C4");
            case "percussion" -> List.of();
            default -> List.of("C4", "G2");
          };
      case "C3" -> List.of("G2");
      case "G2" ->
          switch (family) {
            case "woodwind", "strings", "plucked" -> List.of();
            case "brass" -> deep ? List.of("F4") : List.of();
            default -> List.of("F4");
          };
      default -> List.of();
    };
  }

  @Override
  public Sentence inWords() {
    return Sentence.name(name);
  }

  /** Its name without its key: "clarinet" for one in whatever key. */
  public String bareName() {
    return TypedNames.withoutKey(name);
  }

  /** The shortest usual name in English scores, "Fl."; empty if the tables have none. */
  public Optional<String> abbreviation() {
    return aliases.stream()
        .filter(alias -> alias.matches("[a-z]{1,5}"))
        .findFirst()
        .map(alias -> TypedNames.capitalised(alias) + ".");
  }

  public boolean reaches(Tone tone) {
    if (tone instanceof Pitch pitch) {
      return range.isPresent() && range.get().contains(pitch.midi());
    }
    return tone instanceof Drum && range.isEmpty();
  }

  public boolean comfortableAt(Tone tone) {
    return !(tone instanceof Pitch pitch)
        || comfortable.isEmpty()
        || comfortable.get().contains(pitch.midi());
  }

  /** In the hands of somebody with other figures. */
  public Instrument with(double decibel, Optional<Breath> lungs, List<Technique> skills) {
    return with(decibel, lungs, skills, repertoire);
  }

  /** The same instrument with what is known of its repertoire. */
  public Instrument asked(Repertoire known) {
    return with(levelDecibel, breath, techniques, known);
  }

  /** In the hands of somebody who is at home between other notes, within its range. */
  public Instrument comfortableIn(Range where) {
    return new Instrument(
        name,
        aliases,
        family,
        range,
        Optional.of(where),
        transposition,
        clef,
        levelDecibel,
        breath,
        midiProgram,
        techniques,
        source,
        repertoire);
  }

  private Instrument with(
      double decibel, Optional<Breath> lungs, List<Technique> skills, Repertoire known) {
    return new Instrument(
        name,
        aliases,
        family,
        range,
        comfortable,
        transposition,
        clef,
        decibel,
        lungs,
        midiProgram,
        skills,
        source,
        known);
  }

  /** In the hands of somebody with whose air that share of the population, or more, manage. */
  public Instrument breathing(Assurance assurance) {
    return with(levelDecibel, breath.map(air -> air.at(Assurance.DEFAULT, assurance)), techniques);
  }

  public boolean isHarp() {
    return family.equals("harp");
  }

  public boolean isWind() {
    return breath.isPresent();
  }
}

package stafette.musicxml.write;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import org.audiveris.proxymusic.FormattedText;
import org.audiveris.proxymusic.MidiInstrument;
import org.audiveris.proxymusic.NameDisplay;
import org.audiveris.proxymusic.PartName;
import org.audiveris.proxymusic.ScoreInstrument;
import org.audiveris.proxymusic.ScorePart;
import stafette.chairs.ChairNumbers;
import stafette.limits.Instrument;
import stafette.limits.TypedNames;
import stafette.musicxml.text.Origin;
import stafette.musicxml.text.Origin.PartText;
import stafette.plan.Player;

/**
 * A new part's entry in the part list. Its names are its namesake's with the player's number, so
 * that "Flauto 2" stands beside "Flauto 1"; without a namesake they are the player's own.
 */
final class NewEntry {
  private static final Pattern SOUND = Pattern.compile("[a-z]+(?:\\.[a-z0-9-]+)+");

  /** What an abbreviation looks like among the names by which an instrument is known. */
  private static final Pattern SHORT = Pattern.compile("\\p{L}{2,5}|(?=.*\\.).{2,10}");

  private final Origin origin;
  private final Player player;
  private final Instrument instrument;
  private final Optional<ScorePart> namesake;
  private final Optional<Integer> number;

  NewEntry(Origin origin, Player player, Optional<PartText> namesake) {
    this.origin = origin;
    this.player = player;
    this.instrument = player.instrument();
    this.namesake =
        namesake
            .flatMap(PartText::scorePart)
            .map(span -> Fragments.read(span.in(origin.text()), ScorePart.class));
    this.number = ChairNumbers.in(player.name()).stream().findFirst();
  }

  /**
   * Builds it.
   *
   * @param id new in the score
   */
  ScorePart scorePart(String id, MidiChannels channels) {
    ScorePart part = new ScorePart();
    part.setId(id);
    part.setPartName(
        namesake
            .flatMap(like -> numbered(Optional.ofNullable(like.getPartName())))
            .orElse(named(player.name())));
    namesake
        .flatMap(like -> displayed(Optional.ofNullable(like.getPartNameDisplay())))
        .ifPresent(part::setPartNameDisplay);
    abbreviation().ifPresent(part::setPartAbbreviation);
    namesake
        .flatMap(like -> displayed(Optional.ofNullable(like.getPartAbbreviationDisplay())))
        .ifPresent(part::setPartAbbreviationDisplay);
    ScoreInstrument sounding = sounding(id + "-I1", part.getPartName().getValue());
    part.getScoreInstrument().add(sounding);
    part.getMidiDeviceAndMidiInstrument().add(midi(sounding, channels));
    return part;
  }

  /** The player's own name stays with a part that is called otherwise. */
  private ScoreInstrument sounding(String id, String partName) {
    ScoreInstrument sounding = new ScoreInstrument();
    sounding.setId(id);
    sounding.setInstrumentName(
        partName.equals(player.name()) ? capital(instrument.name()) : player.name());
    if (!origin.version().startsWith("1") && !origin.version().startsWith("2")) {
      sound().ifPresent(sounding::setInstrumentSound);
    }
    return sounding;
  }

  private MidiInstrument midi(ScoreInstrument sounding, MidiChannels channels) {
    MidiInstrument midi = new MidiInstrument();
    midi.setId(sounding);
    midi.setMidiChannel(instrument.range().isPresent() ? channels.next() : MidiChannels.PERCUSSION);
    midi.setMidiProgram(instrument.midiProgram());
    return midi;
  }

  /** The first that is known, or one that says more exactly which: "wind.reed.clarinet.bflat". */
  private Optional<String> sound() {
    return instrument.aliases().stream()
        .filter(SOUND.asMatchPredicate())
        .reduce((one, other) -> other.startsWith(one + ".") ? other : one);
  }

  /** None where no part of the score has one. */
  private Optional<PartName> abbreviation() {
    boolean wanted =
        origin.parts().stream()
            .flatMap(part -> part.scorePart().stream())
            .anyMatch(span -> span.in(origin.text()).contains("<part-abbreviation"));
    Optional<PartName> ofNamesake =
        namesake.flatMap(like -> numbered(Optional.ofNullable(like.getPartAbbreviation())));
    return wanted ? ofNamesake.or(() -> Optional.of(named(abbreviated()))) : Optional.empty();
  }

  /** Short if the player is called by the instrument, and that has a short name. */
  private String abbreviated() {
    Set<String> words = words(instrument.name());
    boolean isCalledByInstrument =
        words(player.name()).stream()
            .allMatch(word -> words.contains(word) || !ChairNumbers.in(word).isEmpty());
    return instrument.aliases().stream()
        .filter(SHORT.asMatchPredicate().and(SOUND.asMatchPredicate().negate()))
        .filter(alias -> !words.contains(alias.replaceFirst("s$", "")))
        .findFirst()
        .filter(any -> isCalledByInstrument)
        .map(NewEntry::pointed)
        .map(name -> number.map(own -> name + " " + own).orElse(name))
        .orElse(player.name());
  }

  private static Set<String> words(String name) {
    return Set.copyOf(Arrays.asList(TypedNames.plain(name).split(" ")));
  }

  private static String pointed(String alias) {
    return alias.endsWith(".") ? capital(alias) : capital(alias) + ".";
  }

  private static String capital(String name) {
    return name.substring(0, 1).toUpperCase(Locale.ROOT) + name.substring(1);
  }

  private Optional<PartName> numbered(Optional<PartName> name) {
    Optional<String> value = name.flatMap(own -> renumbered(own.getValue()));
    value.ifPresent(text -> name.orElseThrow().setValue(text));
    return value.isPresent() ? name : Optional.empty();
  }

  /** A name as it is printed; empty if not just one of its texts can take the number. */
  private Optional<NameDisplay> displayed(Optional<NameDisplay> display) {
    List<FormattedText> texts =
        display.stream()
            .flatMap(all -> all.getDisplayTextOrAccidentalText().stream())
            .filter(FormattedText.class::isInstance)
            .map(FormattedText.class::cast)
            .toList();
    List<FormattedText> numbers =
        texts.stream().filter(text -> !ChairNumbers.in(text.getValue()).isEmpty()).toList();
    Optional<FormattedText> one =
        (numbers.isEmpty() ? texts : numbers).stream().reduce((first, last) -> last);
    Optional<String> value = one.flatMap(text -> renumbered(text.getValue()));
    value.ifPresent(text -> one.orElseThrow().setValue(text));
    return numbers.size() > 1 || value.isEmpty() ? Optional.empty() : display;
  }

  private Optional<String> renumbered(String name) {
    return number.flatMap(own -> ChairNumbers.renumbered(name.strip(), own));
  }

  private static PartName named(String text) {
    PartName name = new PartName();
    name.setValue(text);
    return name;
  }
}

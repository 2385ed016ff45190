package stafette.musicxml.newparts;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
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
import stafette.musicxml.make.Fragments;
import stafette.musicxml.text.Origin;
import stafette.musicxml.text.Origin.PartText;
import stafette.plan.Player;

/**
 * A new part's entry in the part list. Its names are printed like its namesake's, so that "Flauto
 * 2" stands beside "Flauto 1".
 */
final class NewEntry {
  private static final Pattern SOUND = Pattern.compile("[a-z]+(?:\\.[a-z0-9-]+)+");

  private final Origin origin;
  private final Player player;
  private final Instrument instrument;
  private final PlayerNames names;
  private final Optional<ScorePart> namesake;

  NewEntry(Origin origin, Player player, PlayerNames names) {
    this.origin = origin;
    this.player = player;
    this.instrument = player.instrument();
    this.names = names;
    this.namesake =
        names
            .namesake(player)
            .flatMap(PartText::scorePart)
            .map(span -> Fragments.read(span.in(origin.text()), ScorePart.class));
  }

  /**
   * Builds it.
   *
   * @param id new in the score
   */
  ScorePart scorePart(String id, MidiChannels channels) {
    ScorePart part = new ScorePart();
    part.setId(id);
    part.setPartName(printed(names.ofPart(player), ScorePart::getPartName));
    displayed(ScorePart::getPartNameDisplay).ifPresent(part::setPartNameDisplay);
    names
        .abbreviation(player)
        .map(text -> printed(text, ScorePart::getPartAbbreviation))
        .ifPresent(part::setPartAbbreviation);
    displayed(ScorePart::getPartAbbreviationDisplay).ifPresent(part::setPartAbbreviationDisplay);
    ScoreInstrument sounding = sounding(id + "-I1");
    part.getScoreInstrument().add(sounding);
    part.getMidiDeviceAndMidiInstrument().add(midi(sounding, channels));
    return part;
  }

  private ScoreInstrument sounding(String id) {
    ScoreInstrument sounding = new ScoreInstrument();
    sounding.setId(id);
    sounding.setInstrumentName(TypedNames.capitalised(instrument.name()));
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

  /** A name that is printed as the namesake's is. */
  private PartName printed(String text, Function<ScorePart, PartName> like) {
    PartName name = namesake.map(like).orElseGet(PartName::new);
    name.setValue(text);
    return name;
  }

  /** The namesake's with the player's number, if just one of its texts can take that. */
  private Optional<NameDisplay> displayed(Function<ScorePart, NameDisplay> like) {
    Optional<NameDisplay> display = namesake.map(like);
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
    Optional<String> value = one.flatMap(text -> PlayerNames.numbered(text.getValue(), player));
    value.ifPresent(text -> one.orElseThrow().setValue(text));
    return numbers.size() > 1 || value.isEmpty() ? Optional.empty() : display;
  }
}

package stafette.chairs;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import stafette.limits.Catalogue;
import stafette.limits.Instrument;
import stafette.score.Part;
import stafette.score.Stroke;
import stafette.score.Tone;
import stafette.score.Voice;
import stafette.score.Words;
import stafette.time.Bars;
import stafette.time.Position;

/**
 * Deals out the notes of a part among its chairs: as marks say, else two voices of a bar and the
 * notes of a chord from above, else to all.
 */
final class PartGiven {
  private final Part part;
  private final List<Chair> chairs;
  private final Bars bars;
  private final Catalogue catalogue;
  private final Map<Integer, NavigableMap<Position, ChairMark>> ofStaves = new HashMap<>();
  private final Map<String, NavigableMap<Position, ChairMark>> ofVoices = new HashMap<>();

  PartGiven(Part part, List<Chair> chairs, Bars bars, Catalogue catalogue) {
    this.part = part;
    this.chairs = chairs;
    this.bars = bars;
    this.catalogue = catalogue;
    for (Words words : part.marks().words()) {
      ChairMark.in(words.text()).ifPresent(mark -> marks(words).put(words.at(), mark));
    }
  }

  private NavigableMap<Position, ChairMark> marks(Words words) {
    return words.voice().isPresent()
        ? ofVoices.computeIfAbsent(key(words.staff(), words.voice().get()), k -> new TreeMap<>())
        : ofStaves.computeIfAbsent(words.staff(), k -> new TreeMap<>());
  }

  private static String key(int staff, String voice) {
    return staff + " " + voice;
  }

  /** What one chair has to play, by onset. */
  List<GivenNote> of(Chair chair) {
    NavigableMap<Position, Instrument> held = held(chair);
    List<GivenNote> given = new ArrayList<>();
    for (Voice voice : part.voices()) {
      for (Stroke stroke : voice.strokes()) {
        List<Tone> tones = chair.isShared() ? tones(voice, stroke, chair) : stroke.tones();
        if (!tones.isEmpty()) {
          Optional<Instrument> instrument =
              Optional.ofNullable(held.floorEntry(stroke.onset())).map(Map.Entry::getValue);
          given.add(new GivenNote(stroke.withTones(tones), instrument));
        }
      }
    }
    given.sort(Comparator.comparing(note -> note.stroke().onset()));
    return given;
  }

  /** With what a chair plays from when on. */
  private NavigableMap<Position, Instrument> held(Chair chair) {
    NavigableMap<Position, Instrument> held = new TreeMap<>();
    chair.instruments().stream().findFirst().ifPresent(first -> held.put(Position.START, first));
    for (Words words : held.isEmpty() ? List.<Words>of() : part.marks().words()) {
      List<Integer> numbers = ChairNumbers.leading(words.text());
      boolean meant = numbers.isEmpty() || chair.number().map(numbers::contains).orElse(true);
      if (meant) {
        InstrumentCall.in(words.text(), held.lastEntry().getValue(), chair, catalogue)
            .ifPresent(instrument -> held.put(words.at(), instrument));
      }
    }
    return held;
  }

  /** The tones of a stroke that a chair plays; none if it is others'. */
  private List<Tone> tones(Voice voice, Stroke stroke, Chair chair) {
    List<Chair> players = players(voice, stroke.onset());
    int place = players.indexOf(chair);
    if (place < 0) {
      return List.of();
    }
    List<Tone> tones = stroke.tones();
    boolean one = tones.size() == players.size() && tones.size() > 1;
    return one ? List.of(tones.get(tones.size() - 1 - place)) : tones;
  }

  /** Who plays a voice at a place, from above. */
  private List<Chair> players(Voice voice, Position at) {
    List<Chair> onStaff = onStaff(voice.staff());
    Optional<ChairMark> own = ofVoice(voice, at);
    Optional<ChairMark> all = inForce(ofStaves.get(voice.staff()), at);
    List<Voice> beside = besideIn(voice.staff(), at);
    if (own.isPresent()) {
      return named(onStaff, own.get());
    }
    if (beside.size() < 2) {
      return all.map(mark -> named(onStaff, mark)).orElse(onStaff);
    }
    return fromAbove(onStaff, voice, beside, at);
  }

  /** The chairs of the voices that say nothing, from above; all where it can't be told. */
  private List<Chair> fromAbove(List<Chair> onStaff, Voice voice, List<Voice> beside, Position at) {
    List<Chair> left = new ArrayList<>(onStaff);
    List<Voice> unsaid = new ArrayList<>();
    for (Voice each : beside) {
      Optional<ChairMark> mark = ofVoice(each, at);
      mark.ifPresent(said -> left.removeAll(named(onStaff, said)));
      if (mark.isEmpty()) {
        unsaid.add(each);
      }
    }
    Map<Voice, Integer> sizes = new LinkedHashMap<>();
    unsaid.forEach(each -> sizes.put(each, most(each, at)));
    int needed = sizes.values().stream().mapToInt(Integer::intValue).sum();
    if (unsaid.size() == 1) {
      return left;
    }
    int from = 0;
    for (Voice each : unsaid) {
      int count = needed == left.size() ? sizes.get(each) : left.size() == unsaid.size() ? 1 : 0;
      if (each.equals(voice)) {
        return count == 0 ? left : left.subList(from, from + count);
      }
      from += count;
    }
    return left;
  }

  private List<Chair> named(List<Chair> onStaff, ChairMark mark) {
    List<Chair> found =
        onStaff.stream()
            .filter(chair -> mark.numbers().contains(chair.number().orElse(chair.place())))
            .toList();
    return mark.isForAll() || found.isEmpty() ? onStaff : found;
  }

  /** Where each pair of a section of winds has a staff of its own, those of that staff. */
  private List<Chair> onStaff(int staff) {
    List<Integer> staves = part.voices().stream().map(Voice::staff).distinct().sorted().toList();
    int each = chairs.size() / staves.size();
    int index = staves.indexOf(staff);
    return chairs.size() % staves.size() == 0
        ? chairs.subList(index * each, (index + 1) * each)
        : chairs;
  }

  /** The voices of a staff that have notes in the bar of a place; lower numbers stand above. */
  private List<Voice> besideIn(int staff, Position at) {
    return part.voices().stream()
        .filter(voice -> voice.staff() == staff)
        .filter(voice -> !voice.within(bars.at(at).span()).isEmpty())
        .sorted(
            Comparator.comparingInt((Voice voice) -> voice.name().length())
                .thenComparing(Voice::name))
        .toList();
  }

  private int most(Voice voice, Position at) {
    return voice.within(bars.at(at).span()).stream()
        .mapToInt(stroke -> stroke.tones().size())
        .max()
        .orElse(1);
  }

  /** A mark for one voice holds to the end of its bar. */
  private Optional<ChairMark> ofVoice(Voice voice, Position at) {
    return Optional.ofNullable(ofVoices.get(key(voice.staff(), voice.name())))
        .map(marks -> marks.floorEntry(at))
        .filter(mark -> bars.at(mark.getKey()).equals(bars.at(at)))
        .map(Map.Entry::getValue);
  }

  private static Optional<ChairMark> inForce(
      @Nullable NavigableMap<Position, ChairMark> marks, Position at) {
    return Optional.ofNullable(marks).map(all -> all.floorEntry(at)).map(Map.Entry::getValue);
  }
}

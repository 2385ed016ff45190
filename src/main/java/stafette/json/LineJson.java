package stafette.json;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import stafette.json.Means.Above;
import stafette.json.Means.Flat;
import stafette.json.Means.Items;
import stafette.json.Means.Least;
import stafette.json.Means.Like;
import stafette.json.Means.Missing;
import stafette.json.Means.Most;
import stafette.json.Means.Only;
import stafette.json.Means.Told;
import stafette.score.Drum;
import stafette.score.Dynamic;
import stafette.score.Line;
import stafette.score.LineSource;
import stafette.score.Reading;
import stafette.score.Slurring;
import stafette.score.Stroke;
import stafette.score.Tone;
import stafette.score.ToneChoice;
import stafette.score.source.SourceAccount;
import stafette.score.source.SourceNote;
import stafette.time.Bars;
import stafette.time.BeatUnit;
import stafette.time.Position;
import stafette.time.Rational;
import stafette.time.TempoMark;
import stafette.words.Sentence;

/** A line, stroke by stroke. */
@Means("The line that is split.")
public record LineJson(
    @Means("The part's id in the score.") String part,
    @Means("The part's name.") @Told String name,
    @Means("Staff, counted from 1; the uppermost of those that share the line.") @Least(1)
        int staff,
    @Means("The staves that share the line; missing if it stands on one.")
        @Items(least = 2)
        @Least(1)
        @Missing
        Optional<List<Integer>> staves,
    @Means("The voice's name; the first of those that share the line.") String voice,
    @Means("The voices that share the line; missing if all have one name.")
        @Items(least = 2)
        @Missing
        Optional<List<String>> voices,
    @Means("Which tones of chords: top, bottom, all, or a number counted from the top.")
        @Like("^(top|bottom|all|[1-9][0-9]?)$")
        ToneChoice tone,
    @Means(
            "Slurs that the line was given where its pitch changes, counted from each beat; missing if it has those of the score.")
        @Only({"two and two", "pairs", "fours"})
        @Missing
        Optional<Slurring> slurring,
    @Means("First and last bar as printed.") @Items(least = 2, most = 2) @Told List<String> bars,
    @Means("First and last bar counted from 1 through the whole score.")
        @Items(least = 2, most = 2)
        @Least(1)
        List<Integer> barsCounted,
    @Means("Metronome marks in force: the one at the start of the line first, then each change.")
        @Items(least = 1)
        List<TempoMarkJson> tempo,
    @Means("How broken octaves and chords were read; missing if as they stand.")
        @Only({"upper", "lower"})
        @Missing
        Optional<Reading> reading,
    @Means("All strokes; segments and handoffs count them from 0.") @Items(least = 1)
        List<StrokeJson> strokes,
    @Means(
            "Each note of the voices from which the line was taken, in all of its bars; missing where nothing is told of it.")
        @Missing
        @Told
        Optional<List<SourceNoteJson>> source,
    @Means(
            "Notes of the line that the pedal lets sound on and nobody holds; missing where nothing is told of it.")
        @Missing
        @Told
        Optional<List<ResonanceJson>> notHeld) {
  static LineJson of(Line line) {
    LineSource source = line.source();
    return new LineJson(
        source.part(),
        source.partName(),
        source.strands().staff(),
        Optional.of(source.strands().staves()).filter(staves -> staves.size() > 1),
        source.strands().voices().get(0),
        Optional.of(source.strands().voices()).filter(voices -> voices.size() > 1),
        source.tone(),
        Optional.of(source.slurring()).filter(how -> how != Slurring.AS_WRITTEN),
        bars(line),
        barsCounted(line),
        line.tempo().within(line.span()).entrySet().stream()
            .map(mark -> TempoMarkJson.of(line, mark.getKey(), mark.getValue()))
            .toList(),
        Optional.of(source.reading()).filter(how -> how != Reading.ALL),
        IntStream.range(0, line.count()).mapToObj(j -> StrokeJson.of(line, j)).toList(),
        Optional.empty(),
        Optional.empty());
  }

  /** The line with what became of its source. */
  LineJson with(SourceAccount account, Bars bars) {
    return new LineJson(
        part,
        name,
        staff,
        staves,
        voice,
        voices,
        tone,
        slurring,
        this.bars,
        barsCounted,
        tempo,
        reading,
        strokes,
        Optional.of(account.notes().stream().map(note -> SourceNoteJson.of(note, bars)).toList()),
        Optional.of(account.notHeld().stream().map(held -> ResonanceJson.of(held, bars)).toList()));
  }

  /** A note of the source. */
  @Means("A note of the source, and what became of it.")
  record SourceNoteJson(
      @Flat PlaceJson at,
      @Means("Its staff, counted from 1.") @Least(1) int staff,
      @Means("Its voice's name.") String voice,
      @Means("Its sounding name.") String note,
      @Means(
              "taken: it is in the line; moved: in the line in another octave; given: another part strikes it there; omitted: nobody has it.")
          SourceNote.Became became,
      @Means("By how many octaves it was moved upwards; 0 if it was not.") int octaves,
      @Means("The part that has it instead; missing if none.") @Missing Optional<String> by) {
    static SourceNoteJson of(SourceNote note, Bars bars) {
      return new SourceNoteJson(
          PlaceJson.of(bars.nameOf(note.at())),
          note.staff(),
          note.voice(),
          note.tone().inWords().toString(),
          note.became(),
          note.octaves(),
          note.by());
    }
  }

  /** What sounds on under one pedal. */
  @Means("Notes of the line that sound on under one pedal and are held by nobody.")
  record ResonanceJson(
      @Means("Where the pedal goes down.") PlaceJson from,
      @Means("Their sounding names, each once.") @Items(least = 1) List<String> notes) {
    static ResonanceJson of(SourceAccount.Resonance resonance, Bars bars) {
      return new ResonanceJson(
          PlaceJson.of(bars.nameOf(resonance.pedal().start())),
          resonance.tones().stream().map(tone -> tone.inWords().toString()).toList());
    }
  }

  /** How broken octaves and chords were read. */
  public Reading read() {
    return reading.orElse(Reading.ALL);
  }

  /** The printed numbers of the first and the last bar. */
  static List<String> bars(Line line) {
    return List.of(
        line.bars().get(line.source().firstBar()).number(),
        line.bars().get(line.source().lastBar()).number());
  }

  /** The first and the last bar, counted from 1. */
  static List<Integer> barsCounted(Line line) {
    return List.of(line.source().firstBar() + 1, line.source().lastBar() + 1);
  }

  /** Index of its first bar, from 0. */
  public int firstBar() {
    return barsCounted.get(0) - 1;
  }

  /** Index of its last bar, included. */
  public int lastBar() {
    return barsCounted.get(1) - 1;
  }

  /** The staves on which it stands, from above. */
  public List<Integer> onStaves() {
    return staves.orElse(List.of(staff));
  }

  /** The names of its voices. */
  public List<String> inVoices() {
    return voices.orElse(List.of(voice));
  }

  /** The slurs that it was given. */
  public Slurring slurs() {
    return slurring.orElse(Slurring.AS_WRITTEN);
  }

  /** The mark in force at its start, exactly. */
  TempoMark mark() {
    return new TempoMark(tempo.get(0).unit, tempo.get(0).perMinute);
  }

  void check(Spot spot) {
    if (lastBar() < firstBar()) {
      spot.tell(Sentence.of("barsCounted must be the first and the last bar, counted from 1"));
    }
  }

  /** A metronome mark, and from where it holds. */
  @Means("A metronome mark.")
  record TempoMarkJson(
      @Flat PlaceJson from,
      @Means("For people, with at most two decimals: \"dotted quarter = 92\".") @Told String mark,
      @Means("The note value counted: \"dotted quarter\".") BeatUnit unit,
      @Means("How many of them to a minute, an exact fraction.") @Like("^[0-9]+(/[0-9]+)?$")
          Rational perMinute) {
    static TempoMarkJson of(Line line, Position from, TempoMark mark) {
      return new TempoMarkJson(
          PlaceJson.of(line.bars().nameOf(from)), mark.toString(), mark.unit(), mark.perMinute());
    }
  }

  /** One attack. */
  @Means("One attack of the line.")
  @Told
  record StrokeJson(
      @Flat PlaceJson at,
      @Means("Quarter notes from the first stroke to this one, an exact fraction: \"0\", \"1/6\".")
          @Like("^[0-9]+(/[0-9]+)?$")
          String onset,
      @Means("Onset in seconds from the first stroke, to the microsecond.") @Least(0)
          double seconds,
      @Means("How long it sounds as written, ties included, in seconds.") @Least(0) double sounds,
      @Means("How long the beat lasts in which it falls, in seconds.") @Above(0) double beatSeconds,
      @Means(
              "Metrical rank: 0 first of a bar, 1 on a beat, 2 on half a beat (a third of one in compound time), 3 elsewhere.")
          @Least(0)
          @Most(3)
          int rank,
      @Means(
              "Number of its bar in its phrase, from 0 at the line's first full bar, anew where the metre, a section or the line's own pattern changes; bars before count back from -1.")
          int phrase,
      @Means("How long its bar lasts, an incomplete one as if it were full, in seconds.") @Above(0)
          double barSeconds,
      @Means(
              "Points that attacks of other parts take off a handoff that lands here, before the weight coverMost limits them.")
          @Least(0)
          int cover,
      @Means(
              "Sounding MIDI numbers from low to high, 60 for middle C; a negative number for each instrument without pitch. Equal sets are the same string, key, bar or drum.")
          @Items(least = 1)
          List<Integer> midi,
      @Means(
              "The same with their sounding names: \"F#5\"; \"unpitched C5\" names the place on the staff.")
          @Items(least = 1)
          List<String> pitches,
      @Means("Loudness in force.") Dynamic dynamic,
      @Means(
              "Under a slur, not as its first note. Where a technique has \"slurs\", such a stroke is a finger change and no stroke of tongue or bow, unless its pitch is that of the stroke before.")
          boolean slurred,
      @Means("A slur goes on from here to the next stroke.") boolean slurContinues,
      @Means(
              "False for an unmeasured tremolo, flutter-tonguing or the notes of a trill: it loads nothing.")
          boolean measured,
      @Means(
              "Grace notes before it: each is one more stroke of tiredness here, none in the test of peaks.")
          @Least(0)
          int graces,
      @Means(
              "Place in a group of three, 0 to 2, where the beat is divided into equal threes; else -1.")
          @Least(-1)
          @Most(2)
          int inThree,
      @Means(
              "Whether these threes are felt as such: triplets, or a sextuplet that is beamed or accented as two of them. Techniques in groups of 3 go only there.")
          boolean goesInThrees) {
    static StrokeJson of(Line line, int j) {
      Stroke stroke = line.stroke(j);
      return new StrokeJson(
          PlaceJson.of(line, j),
          stroke.onset().since(line.stroke(0).onset()).quarters().toString(),
          ofMicros(line.onsetMicros(j)),
          ofMicros(line.endMicros(j) - line.onsetMicros(j)),
          ofMicros(line.beatMicros(j)),
          line.rank(j).ordinal(),
          line.phrase(j),
          ofMicros(line.barMicros(j)),
          line.cover(j),
          stroke.tones().stream().map(Tone::key).toList(),
          stroke.tones().stream().map(StrokeJson::name).toList(),
          stroke.dynamic(),
          stroke.slurred(),
          stroke.slurContinues(),
          stroke.measured(),
          stroke.graces().size(),
          line.placeInThree(j),
          line.goesInThrees(j));
    }

    private static String name(Tone tone) {
      return tone instanceof Drum drum
          ? "unpitched " + drum.displayStep() + drum.displayOctave()
          : tone.toString();
    }
  }

  /** Microseconds as seconds. */
  static double ofMicros(long micros) {
    return micros / 1e6;
  }
}

package stafette.musicxml.read;

import java.util.List;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;
import stafette.score.Dynamic;
import stafette.score.Keys;
import stafette.score.Line;
import stafette.score.Part;
import stafette.score.PartMarks;
import stafette.score.Score;
import stafette.score.Spelling;
import stafette.score.ToneChoice;
import stafette.score.Tremolo;
import stafette.score.TremoloReading;
import stafette.score.TremoloRun;
import stafette.score.TremoloTrial;
import stafette.score.Voice;
import stafette.time.Bars;
import stafette.time.Position;
import stafette.time.TempoMap;

/**
 * Reads one part. Where the tempo decides how slashes are read, its strokes are made twice: with
 * all of them counted, for the trial to judge, and as it judged them.
 */
final class PartReading {
  private final WrittenPart written;
  private final Bars bars;
  private final TempoMap tempo;
  private final List<Chord> chords;
  private final AskedManners asked;
  private final Slashing slashing;
  private final TremoloReadings readings;
  private final MarksInForce<Dynamic> dynamics;
  private final PartMarks marks;

  private PartReading(
      WrittenPart written, Bars bars, TempoMap tempo, Tremolo tremolo, boolean withCues) {
    this.written = written;
    this.bars = bars;
    this.tempo = tempo;
    chords = Chords.of(written, bars, withCues);
    asked = AskedManners.of(chords, MarksInForce.manners(written, bars));
    slashing = Slashing.of(written, tremolo);
    readings = TremoloReadings.of(chords, asked, slashing, tempo);
    dynamics = MarksInForce.dynamics(written, bars);
    marks = MarksBeside.of(written, bars);
  }

  /**
   * A part that was read.
   *
   * @param tremolos those that are not counted, or in doubt
   */
  record ReadPart(Part part, List<TremoloRun> tremolos) {}

  static ReadPart of(
      WrittenPart written,
      Bars bars,
      TempoMap tempo,
      Tremolo tremolo,
      TremoloTrial trial,
      boolean withCues) {
    PartReading reading = new PartReading(written, bars, tempo, tremolo, withCues);
    Part counted = reading.part();
    boolean changed = reading.readings.decide(run -> reading.tried(counted, run, trial));
    return new ReadPart(changed ? reading.part() : counted, reading.tremolos());
  }

  private Part part() {
    return new Part(
        written.id(),
        written.listed().nameOr(written.id()),
        written.listed().instruments(),
        PartStrokes.of(chords, asked, slashing, readings, dynamics),
        keys(),
        marks);
  }

  private TremoloReading tried(Part counted, TremoloReadings.TremoloRow run, TremoloTrial trial) {
    Voice voice =
        counted.voices().stream()
            .filter(one -> one.staff() == run.staff() && one.name().equals(run.voice()))
            .findFirst()
            .orElseThrow();
    Line line =
        new Score(Optional.empty(), List.of(counted), bars, tempo, true)
            .line(counted, voice, voice.within(run.span()), new ToneChoice.All());
    return trial.of(counted, line, run.three());
  }

  private List<TremoloRun> tremolos() {
    return readings.told().stream()
        .map(
            run ->
                new TremoloRun(
                    written.id(),
                    written.listed().nameOr(written.id()),
                    run.staff(),
                    run.voice(),
                    bars.at(run.span().start()).index(),
                    bars.at(run.lastOnset()).index(),
                    run.reading()))
        .toList();
  }

  private Keys keys() {
    NavigableMap<Position, Integer> keys = new TreeMap<>();
    for (int i = 0; i < written.measures().size(); i++) {
      Position start = bars.get(i).span().start();
      for (WrittenMeasure.Child child : written.measures().get(i).elements()) {
        if (child.name().equals("attributes")) {
          keys.put(
              start.plus(child.onset()),
              Spelling.soundingKey(
                  child.attributes().fifths(), child.attributes().transposition()));
        }
      }
    }
    return new Keys(keys);
  }
}

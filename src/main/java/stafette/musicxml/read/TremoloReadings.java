package stafette.musicxml.read;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import stafette.musicxml.read.Notations.Joined;
import stafette.score.TremoloReading;
import stafette.time.Position;
import stafette.time.Rational;
import stafette.time.Span;
import stafette.time.TempoMap;
import stafette.time.TempoMark;

/**
 * How the tremolos of one part are read. Where the tempo decides, notes in a row whose strokes are
 * equally fast are one run, and one question; until it is answered their strokes are counted.
 */
final class TremoloReadings {
  private final List<Chord> chords;
  private final Map<Integer, Integer> secondOf = new HashMap<>();
  private final List<TremoloNote> tremolos = new ArrayList<>();
  private final Map<Integer, TremoloReading> ofChords = new HashMap<>();

  private TremoloReadings(List<Chord> chords) {
    this.chords = chords;
  }

  /** How fast the strokes of a tremolo are. */
  private record Pace(Rational stroke, TempoMark tempo) {}

  /**
   * A tremolo on one note, or between two.
   *
   * @param first the number of its chord, or of the first of two
   * @param last that of the last one
   * @param stated how it is read whatever the tempo; empty if the tempo decides
   */
  private record TremoloNote(
      int first, int last, Span span, Optional<TremoloReading> stated, Pace pace) {}

  /**
   * Tremolos of one voice in a row that are read alike.
   *
   * @param span from the first onset to the end of the last sound
   * @param lastOnset where the last of them begins
   * @param three whether slashes and beams together are three or more
   * @param reading how they are read
   */
  record TremoloRow(
      int staff,
      String voice,
      Span span,
      Position lastOnset,
      boolean three,
      TremoloReading reading) {}

  /** As slashes and words have it. */
  static TremoloReadings of(
      List<Chord> chords, AskedManners asked, Slashing slashing, TempoMap tempo) {
    TremoloReadings result = new TremoloReadings(chords);
    result.join();
    for (int i = 0; i < chords.size(); i++) {
      if (!chords.get(i).ornamental() && !result.ofChords.containsKey(i)) {
        result.read(i, asked.of(i), slashing, tempo);
      }
    }
    return result;
  }

  /** Finds for each first note of a two-note tremolo the second one. */
  private void join() {
    Map<String, Integer> waiting = new HashMap<>();
    for (int i = 0; i < chords.size(); i++) {
      Chord chord = chords.get(i);
      if (chord.ornamental()) {
        continue;
      }
      Integer first = waiting.remove(chord.voice());
      if (first != null
          && chord.isJoined(Joined.WITH_PREVIOUS)
          && chords.get(first).end().equals(chord.onset())) {
        secondOf.put(first, i);
      } else if (chord.isJoined(Joined.WITH_NEXT)) {
        waiting.put(chord.voice(), i);
      }
    }
  }

  private void read(int index, MannerInForce asked, Slashing slashing, TempoMap tempo) {
    Chord chord = chords.get(index);
    if (chord.slashes().isEmpty() && !slashing.isBareTremolo(chord, asked)) {
      return;
    }
    int last = secondOf.getOrDefault(index, index);
    Span span = new Span(chord.onset(), chords.get(last).end());
    boolean whole = chord.isJoined(Joined.NOTHING) || last != index;
    Optional<TremoloReading> stated =
        slashing
            .stated(chord, span.length(), asked)
            .or(() -> whole ? Optional.empty() : Optional.of(TremoloReading.MEASURED));
    Pace pace = new Pace(Slashing.stroke(chord), tempo.at(chord.onset()));
    TremoloNote slashed = new TremoloNote(index, last, span, stated, pace);
    tremolos.add(slashed);
    put(slashed, stated.orElse(TremoloReading.MEASURED));
  }

  private void put(TremoloNote slashed, TremoloReading reading) {
    ofChords.put(slashed.first(), reading);
    ofChords.put(slashed.last(), reading);
  }

  private TremoloReading of(TremoloNote slashed) {
    return ofChords.getOrDefault(slashed.first(), TremoloReading.MEASURED);
  }

  /** Whether a chord's strokes are counted; so are those of notes that are no tremolo. */
  boolean counts(int index) {
    return ofChords.getOrDefault(index, TremoloReading.MEASURED).counts();
  }

  /** For the first note of a counted tremolo between two notes the second one. */
  Optional<Integer> secondOf(int index) {
    return Optional.ofNullable(secondOf.get(index)).filter(second -> counts(index));
  }

  /**
   * Decides about what the tempo decides.
   *
   * @return whether there are strokes that are counted no more
   */
  boolean decide(Function<TremoloRow, TremoloReading> trial) {
    boolean changed = false;
    for (List<TremoloNote> row :
        inRows(tremolos.stream().filter(each -> each.stated().isEmpty()), TremoloNote::pace)) {
      TremoloReading reading = trial.apply(run(row));
      row.forEach(slashed -> put(slashed, reading));
      changed |= !reading.counts();
    }
    return changed;
  }

  /** All that is to be told: what is not counted, and what is in doubt. */
  List<TremoloRow> told() {
    return inRows(tremolos.stream().filter(each -> of(each) != TremoloReading.MEASURED), this::of)
        .stream()
        .map(this::run)
        .toList();
  }

  private TremoloRow run(List<TremoloNote> row) {
    TremoloNote first = row.get(0);
    TremoloNote last = row.get(row.size() - 1);
    Chord chord = chords.get(first.first());
    return new TremoloRow(
        chord.staff(),
        chord.voice(),
        new Span(first.span().start(), last.span().end()),
        chords.get(last.last()).onset(),
        Slashing.isThree(chord),
        of(first));
  }

  /** Tremolos that follow each other in their voice and are alike. */
  private List<List<TremoloNote>> inRows(
      Stream<TremoloNote> some, Function<TremoloNote, Object> alike) {
    Map<Object, List<TremoloNote>> going = new HashMap<>();
    List<List<TremoloNote>> rows = new ArrayList<>();
    some.forEach(
        slashed -> {
          Chord chord = chords.get(slashed.first());
          Object voice = List.of(chord.staff(), chord.voice());
          List<TremoloNote> row = going.getOrDefault(voice, List.of());
          if (!follows(row, slashed, alike)) {
            row = new ArrayList<>();
            rows.add(row);
            going.put(voice, row);
          }
          row.add(slashed);
        });
    return rows;
  }

  private static boolean follows(
      List<TremoloNote> row, TremoloNote slashed, Function<TremoloNote, Object> alike) {
    if (row.isEmpty()) {
      return false;
    }
    TremoloNote before = row.get(row.size() - 1);
    return before.span().end().equals(slashed.span().start())
        && alike.apply(before).equals(alike.apply(slashed));
  }
}

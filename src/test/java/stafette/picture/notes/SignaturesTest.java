package stafette.picture.notes;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.IntFunction;
import org.junit.jupiter.api.Test;
import stafette.Invented;
import stafette.limits.Instrument;
import stafette.limits.Range;
import stafette.picture.ink.Box;
import stafette.picture.ink.Face;
import stafette.picture.ink.Mark;
import stafette.plan.written.WrittenPassage;
import stafette.score.Keys;
import stafette.score.Line;
import stafette.score.LineSource;
import stafette.score.Pitch;
import stafette.score.Step;
import stafette.score.Stroke;
import stafette.score.ToneChoice;
import stafette.score.Transposition;
import stafette.time.Bar;
import stafette.time.Bars;
import stafette.time.BeatUnit;
import stafette.time.Length;
import stafette.time.Meter;
import stafette.time.Position;
import stafette.time.Rational;
import stafette.time.Span;
import stafette.time.TempoMap;
import stafette.time.TempoMark;

/** Signatures that change within a row, octave lines and other clefs. */
class SignaturesTest {
  private static final String SHARP = "\u266F";
  private static final String FLAT = "\u266D";
  private static final String NATURAL = "\u266E";
  private static final String OCTAVE_UP = Character.toString(0x1D136);
  private static final String OCTAVE_DOWN = Character.toString(0x1D137);
  private static final Pitch F_SHARP = new Pitch(Step.F, 1, 5);
  private static final double SPACE = 4;

  /** 4/4, then 3/4, then 3/4. */
  private static final List<Bar> BARS = bars(Meter.COMMON, Meter.of(List.of(3), 4), 2);

  @Test
  void a_time_signature_that_changes_within_a_row_stands_after_its_bar_line() {
    BarRow row = row(Keys.NONE, Transposition.NONE);
    List<Mark.Lettering> figures = figures(row, Keys.NONE);
    assertEquals(List.of("3", "4"), figures.stream().map(Mark.Lettering::text).toList());
    Bar second = BARS.get(1);
    for (Mark.Lettering figure : figures) {
      assertTrue(figure.bounds().left() > row.left(second));
      assertTrue(figure.bounds().right() < row.x(second.span().start()));
    }
  }

  @Test
  void where_a_row_leaves_no_room_for_signs_none_are_written_and_accidentals_are() {
    BarRow tight = new BarRow(BARS, 60, 40, 8);
    Keys keys = keys(Map.of(BARS.get(1).span().start(), 1));
    assertEquals(List.of(), figures(tight, keys));
    assertEquals(2, count(engraved(i -> F_SHARP, keys, Transposition.NONE, tight), SHARP) - 1);
  }

  @Test
  void a_new_key_is_written_at_its_bar_and_its_notes_need_no_accidentals_from_there() {
    Keys keys = keys(Map.of(BARS.get(1).span().start(), 2));
    BarRow row = row(keys, Transposition.NONE);
    List<Mark> marks = engraved(i -> F_SHARP, keys, Transposition.NONE, row);
    assertEquals(1 + 2, count(marks, SHARP));
  }

  @Test
  void a_key_without_signs_is_told_by_naturals() {
    Keys keys = keys(Map.of(Position.START, -3, BARS.get(1).span().start(), 0));
    BarRow row = row(keys, Transposition.NONE);
    List<Mark> marks = engraved(i -> Invented.A4, keys, Transposition.NONE, row);
    assertEquals(3, count(marks, FLAT));
    assertEquals(3 + 1, count(marks, NATURAL));
  }

  /** B major sounds; a clarinet in B flat reads C sharp major, seven sharps (from memory). */
  @Test
  void a_transposing_part_reads_its_own_key() {
    Transposition inB = new Transposition(-1, -2);
    Keys sounding = Keys.of(5);
    BarRow row = row(sounding.writtenBy(inB), inB);
    List<Mark> marks = engraved(i -> new Pitch(Step.D, 1, 5), sounding.writtenBy(inB), inB, row);
    assertEquals(7, count(marks, SHARP));
  }

  /** F sharp major would be eight sharps for a clarinet in B flat: it reads A flat major. */
  @Test
  void a_key_beyond_seven_is_written_the_other_way_round_with_its_notes() {
    Transposition inB = new Transposition(-1, -2);
    Keys written = Keys.of(6).writtenBy(inB);
    List<Mark> marks = engraved(i -> F_SHARP, written, inB, row(written, inB));
    assertEquals(4, count(marks, FLAT));
    assertEquals(0, count(marks, SHARP) + count(marks, NATURAL));
  }

  @Test
  void notes_with_many_ledger_lines_stand_an_octave_lower_under_an_octave_line() {
    BarRow row = row(Keys.NONE, Transposition.NONE);
    IntFunction<Pitch> high = i -> new Pitch(Step.C, 0, i < 8 ? 7 : 5);
    List<Mark> marks = engraved(high, Keys.NONE, Transposition.NONE, row);
    assertEquals(1, count(marks, OCTAVE_UP));
    Staff staff = staff(Transposition.NONE);
    List<NotatedItem> written = written(high, row);
    OctaveLines lines = OctaveLines.of(staff, row.bars(), written);
    assertEquals(List.of(new OctaveLines.OctaveLine(0, 7, true)), lines.lines());
    assertEquals(
        staff.step(new Pitch(Step.C, 0, 6)), StemGroup.lowest(staff, lines.notes().get(0)));
    assertEquals(written.get(8), lines.notes().get(8));
  }

  @Test
  void low_notes_get_their_octave_line_below_and_notes_at_hand_get_none() {
    BarRow row = row(Keys.NONE, Transposition.NONE);
    List<Mark> low = engraved(i -> new Pitch(Step.C, 0, 2), Keys.NONE, Transposition.NONE, row);
    assertEquals(1, count(low, OCTAVE_DOWN));
    List<Mark> usual = engraved(i -> new Pitch(Step.E, 0, 6), Keys.NONE, Transposition.NONE, row);
    assertEquals(0, count(usual, OCTAVE_UP) + count(usual, OCTAVE_DOWN));
  }

  @Test
  void an_octave_line_touches_nothing_that_it_spans() {
    BarRow row = row(Keys.NONE, Transposition.NONE);
    List<Mark> marks =
        engraved(i -> new Pitch(Step.values()[i % 7], 0, 7), Keys.NONE, Transposition.NONE, row);
    Mark.Lettering sign =
        words(marks).stream().filter(w -> w.text().equals(OCTAVE_UP)).findFirst().orElseThrow();
    int index = marks.indexOf(sign);
    Box box = sign.bounds();
    assertTrue(marks.subList(0, index).stream().noneMatch(m -> m.bounds().overlaps(box)));
  }

  @Test
  void a_high_bassoon_reads_the_tenor_clef_and_a_high_cello_the_treble_clef() {
    assertEquals(Clef.TENOR, clef("F4", "woodwind", i -> new Pitch(Step.C, 0, 5)));
    assertEquals(Clef.BASS, clef("F4", "woodwind", i -> new Pitch(Step.C, 0, 3)));
    assertEquals(Clef.TREBLE, clef("F4", "strings", i -> new Pitch(Step.G, 0, 5)));
    assertEquals(Clef.TREBLE, clef("C3", "strings", i -> new Pitch(Step.E, 0, 6)));
    assertEquals(Clef.BASS, clef("G2", "keyboard", i -> new Pitch(Step.C, 0, 3)));
    assertEquals(Clef.TREBLE, clef("G2", "woodwind", i -> new Pitch(Step.C, 0, 3)));
  }

  private static Clef clef(String own, String family, IntFunction<Pitch> pitch) {
    Instrument plain = Invented.instrument("pipe", new Range(24, 108), Optional.empty());
    Instrument instrument =
        new Instrument(
            "pipe",
            List.of(),
            family,
            plain.range(),
            plain.comfortable(),
            Transposition.NONE,
            own,
            90,
            Optional.empty(),
            74,
            plain.techniques(),
            plain.source());
    Line line = line(pitch, Keys.NONE);
    return ClefChoice.of(instrument, List.of(WrittenPassage.whole(line)), BARS.get(0).span());
  }

  private static BarRow row(Keys written, Transposition transposition) {
    Engraver.EngravedMusic music = music(line(i -> Invented.A4, Keys.NONE), written);
    Map<Integer, Double> rooms = new TreeMap<>();
    for (int i = 1; i < BARS.size(); i++) {
      double room = Engraver.signsWidth(music, staff(transposition), BARS.get(i - 1), BARS.get(i));
      rooms.put(i, room);
    }
    return new BarRow(BARS, 60, 40, 8, rooms);
  }

  private static List<Mark> engraved(
      IntFunction<Pitch> pitch, Keys written, Transposition transposition, BarRow row) {
    return Engraver.marks(music(line(pitch, Keys.NONE), written), staff(transposition), row);
  }

  private static List<NotatedItem> written(IntFunction<Pitch> pitch, BarRow row) {
    Line line = line(pitch, Keys.NONE);
    return Notation.of(List.of(WrittenPassage.whole(line)), List.of(), row.bars());
  }

  private static Engraver.EngravedMusic music(Line line, Keys written) {
    return new Engraver.EngravedMusic(
        List.of(WrittenPassage.whole(line)), List.of(), written, Optional.empty(), false);
  }

  private static Staff staff(Transposition transposition) {
    return new Staff(0, SPACE, Clef.TREBLE, transposition);
  }

  private static List<Mark.Lettering> figures(BarRow row, Keys keys) {
    return words(engraved(i -> Invented.A4, keys, Transposition.NONE, row)).stream()
        .filter(w -> w.face() == Face.FIGURES)
        .toList();
  }

  private static long count(List<Mark> marks, String sign) {
    return words(marks).stream().filter(w -> w.text().equals(sign)).count();
  }

  private static List<Mark.Lettering> words(List<Mark> marks) {
    return marks.stream()
        .filter(mark -> mark instanceof Mark.Lettering)
        .map(mark -> (Mark.Lettering) mark)
        .toList();
  }

  /** Eighths through all bars. */
  private static Line line(IntFunction<Pitch> pitch, Keys keys) {
    Length eighth = Length.ofQuarters(1, 2);
    List<Stroke> strokes = new ArrayList<>();
    for (int i = 0; i < 20; i++) {
      strokes.add(Invented.stroke(Position.ofQuarters(i, 2), eighth, pitch.apply(i)));
    }
    return new Line(
        new LineSource("P1", "Piano", 1, "1", new ToneChoice.All(), 0, BARS.size() - 1),
        strokes,
        Collections.nCopies(strokes.size(), 0),
        new Bars(BARS),
        TempoMap.constant(new TempoMark(BeatUnit.QUARTER, Rational.of(80))),
        keys);
  }

  private static Keys keys(Map<Position, Integer> from) {
    return new Keys(new TreeMap<>(from));
  }

  private static List<Bar> bars(Meter first, Meter then, int times) {
    List<Bar> bars = new ArrayList<>();
    Position start = Position.START;
    for (int i = 0; i <= times; i++) {
      Meter meter = i == 0 ? first : then;
      Span span = Span.of(start, meter.length());
      bars.add(new Bar(i, Integer.toString(i + 1), span, meter, Length.ZERO));
      start = span.end();
    }
    return List.copyOf(bars);
  }
}

package stafette.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;
import stafette.Harps;
import stafette.Invented;
import stafette.limits.HarpPedals;
import stafette.plan.HarpTurn.PedalChange;
import stafette.score.Keys;
import stafette.score.Line;
import stafette.score.Pitch;
import stafette.score.Step;
import stafette.score.Tone;

/** Which strings a harp strikes, and how its pedals stand (common practice, no source). */
class HarpTurnTest {
  @Test
  void repeated_notes_go_to_twin_strings_in_turn() {
    assertEquals("C5 B#4 C5 B#4", twins("C5 C5 C5 C5"));
    assertEquals("F5 E#5 F5 E#5", twins("F5 F5 F5 F5"));
    assertEquals("B4 Cb5 B4 Cb5", twins("B4 B4 B4 B4"));
    assertEquals("E5 Fb5 E5 Fb5", twins("E5 E5 E5 E5"));
    assertEquals("G#4 Ab4 G#4 Ab4", twins("G#4 G#4 G#4 G#4"));
    assertEquals("Ab4 G#4 Ab4 G#4", twins("Ab4 Ab4 Ab4 Ab4"));
  }

  @Test
  void twins_begin_with_the_string_whose_pedal_need_not_move() {
    assertEquals("C5 B#4", twins("B#4 B#4"));
    assertEquals("Ab4 G#4", spelled(line("G#4 G#4", Keys.of(-3)), Harps.TWINS));
  }

  @Test
  void a_note_keeps_to_its_turn_of_strings_over_others() {
    assertEquals("C5 B#4 D5 C5 B#4 C5 D5 B#4", twins("C5 C5 D5 C5 C5 C5 D5 C5"));
  }

  @Test
  void single_strings_are_called_as_the_line_spells_them() {
    String sharps = "G#4 B4 C#5 D#5";
    assertEquals(sharps, spelled(line(sharps, Keys.NONE), Harps.SINGLE));
    String flats = "Ab4 Bb4 Db5 Eb5";
    assertEquals(flats, spelled(line(flats, Keys.NONE), Harps.SINGLE));
  }

  @Test
  void strings_that_no_pedal_gives_are_called_by_those_it_does() {
    assertEquals("G4 G4", spelled(line("Fx4 Fx4", Keys.NONE), Harps.SINGLE));
  }

  @Test
  void without_twins_for_all_notes_they_are_as_the_line_has_them() {
    Line line = line("D5 D5 D5", Keys.NONE);
    HarpTurn turn = only(line, Harps.TWINS);
    assertEquals(List.of(), turn.setups());
    assertEquals("D5 D5 D5", spelled(line, Harps.TWINS));
    assertEquals(List.of(), turn.changes());
  }

  @Test
  void what_a_turn_needs_not_stands_as_the_key_has_it() {
    assertEquals("D C Bb | Eb F G Ab", first(line("G4 G4", Keys.of(-3)), Harps.SINGLE));
    assertEquals("D C# B# | E F# G# A", first(line("C5 C#5", Keys.of(3)), Harps.SINGLE));
  }

  @Test
  void all_pedals_are_set_before_the_first_turn_and_later_those_that_move() {
    Line line = line("C5 C5 C5 F5 F5 F5 A4 A4 Bb4 Bb4", Keys.NONE);
    List<Segment> turns =
        List.of(
            new Segment(0, Harps.TWINS, 0, 2),
            new Segment(0, Harps.TWINS, 3, 5),
            new Segment(0, Harps.SINGLE, 6, 7),
            new Segment(0, Harps.TWINS, 8, 9));
    Map<Segment, HarpTurn> harps = HarpTurn.of(plan(line, turns));
    assertEquals(
        List.of(
            "[D, C, B#, E, F, G, A] D C B# | E F G A",
            "[E#] D C B# | E# F G A",
            "",
            "[Bb, A#] D C Bb | E# F G A#"),
        turns.stream().map(turn -> said(Objects.requireNonNull(harps.get(turn)))).toList());
  }

  private static String said(HarpTurn turn) {
    return String.join(
        ", ",
        turn.changes().stream().map(change -> change.moved() + " " + change.setting()).toList());
  }

  @Test
  void up_to_two_pedals_are_named_and_of_more_the_whole_setting_told() {
    HarpPedals.Setting setting = HarpPedals.Setting.inKey(7);
    List<HarpPedals.Pedal> all = setting.pedals();
    assertEquals(
        List.of(false, false, true, true),
        IntStream.of(1, 2, 3, 7)
            .mapToObj(count -> new PedalChange(0, setting, all.subList(0, count)).setsAll())
            .toList());
  }

  /** From the pedals back to what they give; letters and signs stand in the notes' names. */
  @Property(tries = 300)
  void each_string_sounds_its_note_and_stands_so_and_no_twin_is_struck_twice_running(
      @ForAll @Size(min = 2, max = 24) List<@IntRange(min = 58, max = 66) Integer> keys) {
    Line line = Invented.line(keys.size(), 4, 60, i -> plain(keys.get(i)));
    for (int way : List.of(Harps.SINGLE, Harps.TWINS)) {
      HarpTurn turn = only(line, way);
      List<List<Tone>> tones = turn.tones();
      for (int j = 0; j < line.count(); j++) {
        Pitch string = (Pitch) tones.get(j).get(0);
        assertEquals(keys.get(j), string.midi());
        if (!turn.setups().isEmpty()) {
          int now = j;
          HarpPedals.Setting setting =
              turn.setups().stream()
                  .filter(setup -> setup.stroke() <= now)
                  .reduce((one, next) -> next)
                  .orElseThrow()
                  .setting();
          assertEquals(string.alter(), setting.alters().get(string.step().ordinal()));
        }
        boolean repeats = j > 0 && keys.get(j).equals(keys.get(j - 1));
        if (way == Harps.TWINS && repeats && !turn.setups().isEmpty()) {
          assertNotEquals(tones.get(j - 1), tones.get(j));
        }
      }
    }
  }

  @Test
  void other_instruments_have_no_pedals() {
    Player pipe = Invented.player("Pipe", Invented.instrument("pipe"), 8, 8, 8, 8);
    Plan pipes =
        new Plan(Invented.brief(line("C5 C5", Keys.NONE), pipe), List.of(new Segment(0, 0, 0, 1)));
    assertTrue(HarpTurn.of(pipes).isEmpty());
  }

  private static Pitch plain(int midi) {
    Step step =
        Arrays.stream(Step.values())
            .filter(each -> each.semitones() <= midi % 12)
            .reduce((one, next) -> next)
            .orElseThrow();
    return new Pitch(step, midi % 12 - step.semitones(), midi / 12 - 1);
  }

  private static String twins(String notes) {
    return spelled(line(notes, Keys.NONE), Harps.TWINS);
  }

  private static String first(Line line, int way) {
    return only(line, way).setups().get(0).setting().toString();
  }

  private static String spelled(Line line, int way) {
    return String.join(
        " ", only(line, way).tones().stream().map(tones -> tones.get(0).toString()).toList());
  }

  private static HarpTurn only(Line line, int way) {
    Segment all = new Segment(0, way, 0, line.count() - 1);
    return Objects.requireNonNull(HarpTurn.of(plan(line, List.of(all))).get(all));
  }

  private static Plan plan(Line line, List<Segment> turns) {
    return new Plan(Invented.brief(line, Harps.player("Harp", Optional.empty())), turns);
  }

  private static Line line(String notes, Keys keys) {
    List<Pitch> pitches = Arrays.stream(notes.split(" ")).map(HarpTurnTest::pitch).toList();
    Line line = Invented.line(pitches.size(), 4, 60, pitches::get);
    return new Line(
        line.source(),
        line.strokes(),
        IntStream.range(0, line.count()).mapToObj(line::cover).toList(),
        line.bars(),
        line.tempo(),
        keys);
  }

  private static Pitch pitch(String name) {
    int alter =
        switch (name.substring(1, name.length() - 1)) {
          case "b" -> -1;
          case "#" -> 1;
          case "x" -> 2;
          default -> 0;
        };
    return new Pitch(
        Step.valueOf(name.substring(0, 1)), alter, name.charAt(name.length() - 1) - '0');
  }
}

package stafette.limits;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;

/** The pedals against what harpists have written about them. */
class HarpPedalsTest {
  /** Kuntz, harp notes for composers: D, G and A have no enharmonic twin, the other nine do. */
  @Test
  void all_pitch_classes_but_d_g_and_a_have_a_twin() {
    Set<Integer> without =
        IntStream.range(60, 72)
            .filter(midi -> !HarpPedals.hasTwin(midi))
            .mapToObj(midi -> midi % 12)
            .collect(Collectors.toSet());
    assertEquals(Set.of(2, 7, 9), without);
  }

  /** Counted from 47 strings C1 to G7 (Bligh, Writing for the Pedal Harp), all with discs. */
  @Test
  void of_82_pitches_59_have_a_twin() {
    List<Integer> pitches =
        IntStream.rangeClosed(0, 127)
            .filter(midi -> HarpPedals.twinsPossible(Set.of(midi), Set.of()))
            .boxed()
            .toList();
    assertEquals(IntStream.rangeClosed(23, 104).boxed().toList(), pitches);
    assertEquals(59, pitches.stream().filter(HarpPedals::hasTwin).count());
  }

  @Test
  void the_edge_pitches_have_no_twin_although_their_pitch_classes_have() {
    for (int edge : List.of(23, 24, 104)) {
      assertFalse(HarpPedals.hasTwin(edge), "MIDI " + edge);
      assertTrue(HarpPedals.hasTwin(edge < 60 ? edge + 12 : edge - 12), "an octave inward");
    }
  }

  @Test
  void a_plain_scale_needs_no_pedal() {
    assertEquals(
        Optional.of("D C B | E F G A"),
        HarpPedals.settingFor(Set.of(60, 62, 64, 65, 67, 69, 71), Set.of()).map(Object::toString));
  }

  @Test
  void a_twinned_note_takes_its_neighbours_string() {
    assertEquals(
        Optional.of("Db C# B | E F G A"),
        HarpPedals.settingFor(Set.of(71), Set.of(61)).map(Object::toString));
  }

  @Test
  void a_twin_is_refused_where_the_other_notes_need_its_string() {
    assertTrue(HarpPedals.twinsPossible(Set.of(60, 61), Set.of(61)), "B sharp can be the C");
    assertFalse(HarpPedals.twinsPossible(Set.of(60, 61, 71), Set.of(61)), "then B is missing");
  }

  @Test
  void eight_different_notes_of_an_octave_are_too_many() {
    assertFalse(
        HarpPedals.twinsPossible(Set.of(60, 61, 62, 63, 64, 65, 66, 67), Set.of()),
        "there are seven letters");
  }

  @Test
  void notes_beyond_the_strings_have_no_setting() {
    assertFalse(HarpPedals.twinsPossible(Set.of(22), Set.of()));
    assertFalse(HarpPedals.twinsPossible(Set.of(), Set.of(105)));
  }

  @Test
  void a_setting_has_seven_pedals_of_three_positions() {
    assertThrows(IllegalArgumentException.class, () -> new HarpPedals.Setting(List.of(0, 0)));
    assertThrows(
        IllegalArgumentException.class, () -> new HarpPedals.Setting(List.of(0, 0, 0, 2, 0, 0, 0)));
  }

  /**
   * "For easiest reading, the pedal-tuning elements should follow standard harp pedal order, with
   * pedal-step values of D, C, B, E, F, G, and A" (MusicXML 4.0, harp-pedals).
   */
  @Test
  void pedals_stand_in_the_order_in_which_harp_diagrams_are_written() {
    HarpPedals.Setting setting = HarpPedals.Setting.inKey(0);
    assertEquals("[D, C, B, E, F, G, A]", setting.pedals().toString());
    assertEquals("D C B | E F G A", setting.toString());
  }

  @Test
  void a_key_signature_sets_its_sharps_or_flats() {
    assertEquals("D C# B | E F# G A", HarpPedals.Setting.inKey(2).toString());
    assertEquals("Db C Bb | Eb F G Ab", HarpPedals.Setting.inKey(-4).toString());
    assertEquals("Db Cb Bb | Eb Fb Gb Ab", HarpPedals.Setting.inKey(-9).toString());
  }

  @Test
  void only_what_moves_is_told_with_a_sign_for_natural() {
    List<HarpPedals.Pedal> moved =
        HarpPedals.Setting.inKey(-1).movedSince(HarpPedals.Setting.inKey(2));
    assertEquals(List.of("C♮", "B♭", "F♮"), moved.stream().map(p -> p.inWords()).toList());
  }

  @Test
  void twins_are_two_strings_called_by_neighbouring_letters() {
    HarpPedals.Setting setting = HarpPedals.settingFor(Set.of(), Set.of(60, 65)).orElseThrow();
    assertEquals("[B#3, C4]", setting.strings(60).toString());
    assertEquals("[E#4, F4]", setting.strings(65).toString());
    assertEquals(List.of(), setting.strings(64));
    assertEquals("[C1]", setting.strings(24).toString(), "there is no string below");
  }

  /** Another road to the same answer: from the setting back to what each letter sounds. */
  @Property
  void a_setting_gives_what_was_asked(
      @ForAll @Size(max = 4) Set<@IntRange(min = 36, max = 95) Integer> keys,
      @ForAll @Size(max = 2) Set<@IntRange(min = 36, max = 95) Integer> twinned) {
    HarpPedals.settingFor(keys, twinned)
        .ifPresent(
            setting -> {
              keys.forEach(key -> assertTrue(letters(setting, key) >= 1, setting + " " + key));
              twinned.forEach(key -> assertEquals(2, letters(setting, key), setting + " " + key));
            });
  }

  private static long letters(HarpPedals.Setting setting, int midi) {
    int[] naturals = {0, 2, 4, 5, 7, 9, 11};
    return IntStream.range(0, 7)
        .filter(i -> Math.floorMod(naturals[i] + setting.alters().get(i) - midi, 12) == 0)
        .count();
  }
}

package stafette.desktop.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import stafette.desktop.texts.Texts;
import stafette.limits.Assurance;
import stafette.plan.OverlapRule;
import stafette.score.ToneChoice;

/** What is typed for rules, without a screen. */
class TypedValueTest {
  private static final Texts ENGLISH = Texts.in(Locale.ENGLISH);
  private static final Texts GERMAN = Texts.in(Locale.GERMAN);

  private static void read(TypedValue<?> reading, Object expected) {
    assertEquals(Optional.of(expected), reading.value());
    assertEquals("", reading.problem());
  }

  private static void refused(TypedValue<?> reading, String words) {
    assertTrue(reading.value().isEmpty(), reading.toString());
    assertTrue(reading.problem().contains(words), reading.problem());
  }

  @Test
  void an_overlap_has_counts_or_ends_with_a_beat() {
    read(TypedValue.overlap("2", " 3 ", ENGLISH), new OverlapRule(2, OptionalInt.of(3)));
    read(TypedValue.overlap("2", "2", ENGLISH), new OverlapRule(2, OptionalInt.of(2)));
    read(TypedValue.overlap("1", " ", ENGLISH), OverlapRule.DEFAULT);
  }

  @Test
  void an_overlap_of_no_notes_of_halves_or_turned_round_is_refused_in_words() {
    refused(TypedValue.overlap("0", "2", ENGLISH), "from 1 on");
    refused(TypedValue.overlap("", "2", ENGLISH), "from 1 on");
    refused(TypedValue.overlap("1", "2.5", ENGLISH), "whole numbers");
    refused(TypedValue.overlap("1", "-2", GERMAN), "ganze Zahlen");
    refused(TypedValue.overlap("4", "3", ENGLISH), "can't be smaller");
    refused(TypedValue.overlap("1", "99999999999", ENGLISH), "whole numbers");
  }

  @Test
  void a_rest_is_read_with_a_comma_or_a_point_and_lasts_an_hour_at_most() {
    read(TypedValue.ready("0,75", GERMAN), 0.75);
    read(TypedValue.ready("0", ENGLISH), 0.0);
    read(TypedValue.ready("3600", ENGLISH), 3600.0);
    refused(TypedValue.ready("3601", ENGLISH), "0 to 3600");
    refused(TypedValue.ready("-1", ENGLISH), "0 to 3600");
    refused(TypedValue.ready("soon", GERMAN), "etwa 0,5");
  }

  @Test
  void an_assurance_lies_between_half_of_the_players_and_nearly_all() {
    read(TypedValue.assurance("95 %", ENGLISH), new Assurance(95));
    read(TypedValue.assurance("50", ENGLISH), new Assurance(50));
    read(TypedValue.assurance("97,5", GERMAN), new Assurance(97.5));
    refused(TypedValue.assurance("49.9", ENGLISH), "50 to 99");
    refused(TypedValue.assurance("100", ENGLISH), "50 to 99");
    refused(TypedValue.assurance("", GERMAN), "50 bis 99");
  }

  @Test
  void tones_can_be_chosen_only_among_those_that_chords_have() {
    assertEquals(1, Tones.among(1).size());
    assertEquals(
        List.of(
            "all, as written",
            "the top one",
            "number 2 from the top",
            "the lowest",
            "each with its own players"),
        Tones.among(2).stream().map(tones -> tones.words(ENGLISH)).toList());
    assertTrue(Tones.among(3).contains(new Tones(new ToneChoice.FromTop(3), false)));
    assertEquals(new Tones(new ToneChoice.All(), true), new Tones(new ToneChoice.FromTop(1), true));
  }
}

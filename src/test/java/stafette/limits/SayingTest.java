package stafette.limits;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stafette.words.Refusal;

/** What players say to manage, as musicians say it. */
class SayingTest {
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "sixteenths at 132 for 4 bars | 8.8 for 7.27",
        "Sixteenths at quarter = 132, for four bars | 8.8 for 7.27",
        "for 4 bars at 132: 16ths | 8.8 for 7.27",
        "16th notes, 132 bpm, 4 bars | 8.8 for 7.27",
        "semiquavers ♩=132 for 4 measures | 8.8 for 7.27",
        "semiquavers at crotchet = 132 for 4 bars | 8.8 for 7.27",
        "sixteenths at half = 66 for 4 bars | 8.8 for 7.27",
        "  SIXTEENTHS   at 132 ,  4 Bars | 8.8 for 7.27",
        "sixteenths, quarter = 132 a minute, for 4 bars | 8.8 for 7.27",
        "sixteenths at 132 | 8.8",
        "sixteenths at 132 for a moment | 8.8",
        "sixteenths at 126,5 for a minute | 8.43 for 60",
        "sixteenths at 132 for 2 bars of 3/4 | 8.8 for 2.73",
        "sixteenths in 6/8 at dotted quarter = 88 for 2 bars | 8.8 for 2.73",
        "sixteenths at ♩. = 88 for 2 bars in 6/8 | 8.8 for 2.73",
        "sixteenths at dotted quarter = 88 for 4 beats | 8.8 for 2.73",
        "sixteenths at 132 for eight beats | 8.8 for 3.64",
        "sixteenths at 132 for half a bar | 8.8 for 0.91",
        "eighths at 264 for 20 seconds | 8.8 for 20",
        "quavers at 264 for 20s | 8.8 for 20",
        "triplets at 176 for twenty seconds | 8.8 for 20",
        "triplet eighths at 176 for 20 sec | 8.8 for 20",
        "eighth-note triplets at 176 for 20 seconds | 8.8 for 20",
        "sextuplets at 88 for 20 seconds | 8.8 for 20",
        "sixteenth triplets at 88 for 20 seconds | 8.8 for 20",
        "quintuplets at 105.6 for 20 seconds | 8.8 for 20",
        "thirty-seconds at 66 for 20 seconds | 8.8 for 20",
        "thirty seconds at 66 for two bars | 8.8 for 7.27",
        "32nds at 66 for thirty seconds | 8.8 for 30",
        "demisemiquavers at 66 for 2 bars | 8.8 for 7.27",
        "sixteenths at 132 for 4 bars; at 144 for one bar | 9.6 for 1.67, 8.8 for 7.27",
        "sixteenths at 132 for 4 bars and at 144 for one bar | 9.6 for 1.67, 8.8 for 7.27",
        "sixteenths at 120 for 20 seconds; triplets at 180; | 9, 8 for 20",
        "Sechzehntel bei 132, 4 Takte lang | 8.8 for 7.27",
        "vier Takte Sechzehntel bei Viertel = 132 und für einen Takt bei 144 | 9.6 for 1.67, 8.8"
            + " for 7.27",
        "Achteltriolen bei 176 für zwanzig Sekunden | 8.8 for 20",
        "Zweiunddreißigstel bei 66, zwei Takte lang | 8.8 for 7.27",
        "doubles croches à 132 pendant quatre mesures | 8.8 for 7.27",
        "semicrome a 132 per quattro battute | 8.8 for 7.27",
      })
  void a_saying_is_read_as_rates_and_seconds(String words, String meant) throws Refusal {
    assertEquals(
        meant,
        Saying.parse(words).feats().stream()
            .map(SayingTest::shown)
            .collect(Collectors.joining(", ")));
  }

  private static String shown(Feat feat) {
    String rate = figure(feat.perSecond());
    return feat.seconds().isPresent() ? rate + " for " + figure(feat.lasting()) : rate;
  }

  private static String figure(double value) {
    return stafette.words.Sentence.decimal(value, 2).stripTrailingZeros().toPlainString();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '§',
      value = {
        "at 132 for 4 bars | say which notes are meant, as in \"sixteenths at 132 for 4 bars\"",
        "sixteenths for 4 bars | say the tempo, as in \"sixteenths at 132 for 4 bars\"",
        "sixteenths at 132 for some bars | \"some\" is not understood; write notes, tempo and how"
            + " long, as in \"sixteenths at 132 for 4 bars\"",
        "sixteenths at 132 at 144 | \"144\" is not understood; write notes, tempo and how long, as"
            + " in \"sixteenths at 132 for 4 bars\"",
        "fast | \"fast\" is not understood; write notes, tempo and how long, as in \"sixteenths at"
            + " 132 for 4 bars\"",
        "sixteenths, tempo = 132 | \"tempo\" is no note value; write half, quarter, eighth, 16th,"
            + " with \"dotted\" before it if it has a dot",
        "sixteenths at 1320 | \"sixteenths at 1320\" would be 88.0 notes a second; correct the notes"
            + " or the tempo",
        "sixteenths at 13200000 | \"13200000\" is not understood; write notes, tempo and how long, as"
            + " in \"sixteenths at 132 for 4 bars\"",
        "sixteenths at 0 | \"sixteenths at 0\" would be 0.0 notes a second; correct the notes or the"
            + " tempo",
        "sixteenths at 132 for 0 bars | \"for 0 bars\" must be longer than nothing, and an hour at"
            + " most",
        "sixteenths at 132 for 90 minutes | \"for 90 minutes\" must be longer than nothing, and an"
            + " hour at most",
        "sixteenths at 132 for 9 s; at 120 for 9 s | \"sixteenths at 132 for 9 s\" and \"at 120 for"
            + " 9 s\" are equally long; keep the faster one",
        "sixteenths at 132 for 4 bars; at 120 for one bar | \"sixteenths at 132 for 4 bars\" is"
            + " longer than \"at 120 for one bar\" and no slower; keep the longer one, or correct a"
            + " tempo",
        "sixteenths at 132 for 4 bars; at 60 for 10 seconds | \"at 60 for 10 seconds\" is longer"
            + " than \"sixteenths at 132 for 4 bars\" but has no more notes; raise its tempo, or"
            + " leave it out",
        "sixteenths at 132 for 4 bars; at 120 for 4 bars | \"at 120 for 4 bars\" is longer than"
            + " \"sixteenths at 132 for 4 bars\" but has no more notes; raise its tempo, or leave it"
            + " out",
      })
  void a_mistake_is_told_in_a_musicians_words(String words, String message) {
    assertEquals(message, assertThrows(Refusal.class, () -> Saying.parse(words)).getMessage());
  }

  @Test
  void nothing_said_asks_for_the_notes() {
    assertEquals(
        "say which notes are meant, as in \"sixteenths at 132 for 4 bars\"",
        assertThrows(Refusal.class, () -> Saying.parse("")).getMessage());
  }
}

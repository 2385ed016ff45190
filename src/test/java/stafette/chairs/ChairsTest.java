package stafette.chairs;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stafette.limits.Catalogue;
import stafette.limits.Instrument;
import stafette.score.Keys;
import stafette.score.Part;
import stafette.score.PartMarks;
import stafette.score.Score;
import stafette.score.Stroke;
import stafette.score.Tone;
import stafette.score.TwoHands;
import stafette.score.Voice;
import stafette.score.Words;
import stafette.tables.LimitTables;
import stafette.time.Position;

/** Who reads from a staff; parts of our own. */
class ChairsTest {
  private static final Catalogue CATALOGUE = LimitTables.builtIn().catalogue();

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '|',
      value = {
        "Flutes 1.2 | Flute 1, Flute 2",
        "Flutes 1 & 2 | Flute 1, Flute 2",
        "Flute I/II | Flute 1, Flute 2",
        "Flauti 1.2 | Flute 1, Flute 2",
        "2 Flöten | Flute 1, Flute 2",
        "Flûtes 1 et 2 | Flute 1, Flute 2",
        "1st and 2nd Flutes | Flute 1, Flute 2",
        "Trumpets in B-flat 1.2.3 | Trumpet 1, Trumpet 2, Trumpet 3",
        "4 Horns in F | Horn 1, Horn 2, Horn 3, Horn 4",
        "Horns in F 3.4 | Horn 3, Horn 4",
        "Horns 1-4 | Horn 1, Horn 2, Horn 3, Horn 4",
        "Corni I.II in F | Horn 1, Horn 2",
        "Hörner 1.3 | Horn 1, Horn 3",
        "Ob. I II | Oboe 1, Oboe 2",
        "2 Klarinetten in A | Clarinet 1, Clarinet 2",
        "Clarinetti in Si♭ I e II | Clarinet 1, Clarinet 2",
        "Fagotti 1.2. | Bassoon 1, Bassoon 2",
        "Bassons 1, 2 | Bassoon 1, Bassoon 2",
        "Posaunen 1.2 | Trombone 1, Trombone 2",
        "Oboes | Oboe 1, Oboe 2",
        "Flauto 2 | Flauto 2",
        "1. Flöte | 1. Flöte",
        "Flute | Flute",
        "Violini I | Violini I",
        "Piano | Piano",
        "Timpani | Timpani",
      })
  void a_part_is_read_by(String name, String chairs) {
    assertEquals(
        chairs,
        chairs(part(name)).all().stream().map(Chair::name).collect(Collectors.joining(", ")));
  }

  @ParameterizedTest(name = "{0} in {1}")
  @CsvSource({
    "Flute 2, Flutes 1.2, 2",
    "Flöte 2, Flauti 1.2, 2",
    "Flute I, Flutes 1.2, 1",
    "Clarinet 1, 2 Klarinetten in A, 1",
    "Horn 3, 4 Horns in F, 3",
    "Flute 1, Flauto 1, 1",
    "Flute, Flauto, 1",
    "Violin 1, Violini I, 1",
    "Piccolo, Flute 2/Piccolo, 1",
  })
  void a_name_finds_its_chair(String asked, String name, int place) {
    assertEquals(Optional.of(place), chairs(part(name)).named(asked).map(Chair::place));
  }

  @ParameterizedTest(name = "{0} in {1}")
  @CsvSource({
    "Flute 3, Flutes 1.2",
    "Flute, Flutes 1.2",
    "Flute 2, Flauto 1",
    "Solo violin, Violini I",
    "Alto flute 1, Flutes 1.2",
    "Violins I outside, Violini I",
  })
  void a_name_of_nobody_there_finds_none(String asked, String name) {
    assertEquals(Optional.empty(), chairs(part(name)).named(asked));
  }

  @Test
  void a_chair_holds_what_its_part_is_named_by() {
    assertEquals(List.of("flute", "piccolo"), held("Flute 2 / Piccolo"));
    assertEquals(List.of("oboe", "cor anglais"), held("Oboe and English Horn"));
    assertEquals(
        List.of("flute", "clarinet in B-flat", "alto saxophone"),
        held("Reed 1: Flute, Clarinet, Alto Saxophone"));
  }

  @Test
  void horns_are_high_and_low_in_turn() {
    List<Chair> horns = chairs(part("4 Horns in F")).all();
    Instrument horn = horns.get(0).instruments().get(0);
    assertTrue(highest(horns.get(0), horn) > highest(horns.get(1), horn));
    assertEquals(highest(horns.get(2), horn), highest(horns.get(0), horn));
    assertTrue(lowest(horns.get(3), horn) < lowest(horns.get(2), horn));
  }

  private static int highest(Chair chair, Instrument horn) {
    return chair.seated(horn).comfortable().orElseThrow().high();
  }

  private static int lowest(Chair chair, Instrument horn) {
    return chair.seated(horn).comfortable().orElseThrow().low();
  }

  @ParameterizedTest(name = "under {0} plays {1}")
  @CsvSource(
      delimiter = '|',
      value = {
        "1. | 1",
        "2. | 2",
        "II | 2",
        "1. solo | 1",
        "Solo | 1",
        "a 2 | 1 2",
        "a2 | 1 2",
        "à 2 | 1 2",
        "zu 2 | 1 2",
        "unis. | 1 2",
        "tutti | 1 2",
        "1.2. | 1 2",
        "dolce | 1 2",
        "div. | 1 2",
        "Più mosso 2 | 1 2",
      })
  void single_notes(String mark, String players) {
    Part part = part("Flutes 1.2", words(0, mark), TwoHands.voice(1, "1", "A5 . . ."));
    assertEquals(players, whoPlays(part, 0));
  }

  @Test
  void a_mark_holds_until_the_next() {
    Part part =
        new Part(
            "P1",
            "Flutes 1.2",
            List.of(),
            List.of(TwoHands.voice(1, "1", TwoHands.times(3, "A5_16" + " .".repeat(15)))),
            Keys.NONE,
            new PartMarks(List.of(word(0, "1."), word(8, "a 2")), List.of()));
    assertEquals("1", whoPlays(part, 0));
    assertEquals("1", whoPlays(part, 4));
    assertEquals("1 2", whoPlays(part, 8));
  }

  @Test
  void two_voices_are_its_players_from_above() {
    Part part =
        part(
            "Flutes 1.2",
            List.of(),
            TwoHands.voice(1, "1", "A5_4"),
            TwoHands.voice(1, "2", "F5_2"));
    Chairs chairs = chairs(part);
    assertEquals(List.of("A5"), tones(chairs, 0));
    assertEquals(List.of("F5"), tones(chairs, 1));
  }

  @Test
  void notes_of_a_chord_are_its_players_from_above() {
    Chairs chairs = chairs(part("Horns 1.2", List.of(), TwoHands.voice(1, "1", "C4+E4")));
    assertEquals(List.of("E4"), tones(chairs, 0));
    assertEquals(List.of("C4"), tones(chairs, 1));
  }

  @Test
  void a_mark_with_a_voice_is_for_that_voice_and_the_other_is_the_others() {
    Part part =
        new Part(
            "P1",
            "Flutes 1.2",
            List.of(),
            List.of(TwoHands.voice(1, "1", "F5_4"), TwoHands.voice(1, "2", "A5_2")),
            Keys.NONE,
            new PartMarks(
                List.of(new Words(Position.START, 1, Optional.of("2"), "1.")), List.of()));
    Chairs chairs = chairs(part);
    assertEquals(List.of("A5"), tones(chairs, 0));
    assertEquals(List.of("F5"), tones(chairs, 1));
  }

  @Test
  void where_it_cannot_be_told_all_play_it() {
    Chairs chairs = chairs(part("4 Horns in F", List.of(), TwoHands.voice(1, "1", "C4+E4")));
    for (int chair = 0; chair < 4; chair++) {
      assertEquals(List.of("C4", "E4"), tones(chairs, chair));
    }
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '|',
      value = {
        "Flute | muta in Piccolo | piccolo",
        "Flute | take Picc. | piccolo",
        "Flute | nimmt kleine Flöte | piccolo",
        "Flûte | prend la petite flûte | piccolo",
        "Flute | Piccolo | piccolo",
        "Oboe | change to English Horn | cor anglais",
        "Clarinet in B-flat | muta in A | clarinet in A",
        "Flute | wind.flutes.flute.piccolo | piccolo",
        "Flute | to Piccolo | flute",
        "Flute | to Clarinet 1 | flute",
        "Flute | dolce | flute",
        "Flute / Piccolo | Picc. | piccolo",
      })
  void an_instrument_is_taken_up_in_the_middle(String name, String mark, String instrument) {
    Chairs chairs = chairs(part(name, words(0, mark), TwoHands.voice(1, "1", "A5")));
    assertEquals(
        Optional.of(instrument),
        chairs.given(chairs.all().get(0)).get(0).instrument().map(Instrument::name));
  }

  @Property
  void every_tone_of_a_staff_is_given_to_somebody(
      @ForAll @Size(min = 1, max = 12) List<Fill> upper,
      @ForAll @Size(min = 1, max = 12) List<Fill> lower,
      @ForAll Mark mark) {
    Part part =
        part(
            "Trumpets 1.2.3",
            words(0, mark.text),
            TwoHands.voice(1, "1", "A4 " + Fill.text(upper)),
            TwoHands.voice(1, "2", "F4 " + Fill.text(lower)));
    Chairs chairs = chairs(part);
    for (Voice voice : part.voices()) {
      for (Stroke stroke : voice.strokes()) {
        for (Tone tone : stroke.tones()) {
          assertTrue(
              chairs.all().stream()
                  .flatMap(chair -> chairs.given(chair).stream())
                  .anyMatch(
                      note ->
                          note.stroke().onset().equals(stroke.onset())
                              && note.stroke().tones().contains(tone)));
        }
      }
    }
  }

  /** What stands on a sixteenth. */
  enum Fill {
    REST("."),
    NOTE("G4"),
    CHORD("C4+E4"),
    THREE("C4+E4+G4");

    private final String text;

    Fill(String text) {
      this.text = text;
    }

    static String text(List<Fill> fills) {
      return fills.stream().map(fill -> fill.text).collect(Collectors.joining(" "));
    }
  }

  /** A mark over the first note. */
  enum Mark {
    NONE("dolce"),
    FIRST("1."),
    SECOND("2."),
    PAIR("1.3."),
    ALL("a 3");

    private final String text;

    Mark(String text) {
      this.text = text;
    }
  }

  private static List<String> held(String name) {
    return chairs(part(name)).all().get(0).instruments().stream().map(Instrument::name).toList();
  }

  private static String whoPlays(Part part, int quarters) {
    Chairs chairs = chairs(part);
    return chairs.all().stream()
        .filter(
            chair ->
                chairs.given(chair).stream()
                    .anyMatch(
                        note -> note.stroke().onset().equals(Position.ofQuarters(quarters, 1))))
        .map(chair -> Integer.toString(chair.place()))
        .collect(Collectors.joining(" "));
  }

  private static List<String> tones(Chairs chairs, int chair) {
    return chairs.given(chairs.all().get(chair)).get(0).stroke().tones().stream()
        .map(Object::toString)
        .toList();
  }

  private static List<Words> words(int quarters, String text) {
    return List.of(word(quarters, text));
  }

  private static Words word(int quarters, String text) {
    return new Words(Position.ofQuarters(quarters, 1), 1, Optional.empty(), text);
  }

  private static Part part(String name) {
    return part(name, List.of(), TwoHands.voice(1, "1", "A4"));
  }

  private static Part part(String name, List<Words> words, Voice... voices) {
    return new Part(
        "P1", name, List.of(), List.of(voices), Keys.NONE, new PartMarks(words, List.of()));
  }

  private static Chairs chairs(Part part) {
    Score page =
        TwoHands.score(
            part.name(), Stream.of(part.voices()).findFirst().orElseThrow().toArray(Voice[]::new));
    Score score = new Score(Optional.empty(), List.of(part), page.bars(), page.tempo(), true);
    return Chairs.of(score, CATALOGUE);
  }
}

package stafette.score.source;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;
import stafette.score.Keys;
import stafette.score.Line;
import stafette.score.LineChoice;
import stafette.score.NoSuchLine;
import stafette.score.Part;
import stafette.score.PartMarks;
import stafette.score.Reading;
import stafette.score.Score;
import stafette.score.Stroke;
import stafette.score.Tone;
import stafette.score.ToneChoice;
import stafette.score.TwoHands;
import stafette.score.Voice;
import stafette.score.source.SourceNote.Became;
import stafette.time.Position;
import stafette.time.Span;
import stafette.words.Sentence;

/** What became of each note of invented pages. */
class SourceAccountTest {
  @Test
  void notes_of_both_hands_are_taken() throws NoSuchLine {
    SourceAccount account =
        account(TwoHands.piano(TwoHands.times(4, ". A4"), TwoHands.times(4, "E4 .")), "all");
    assertEquals("8 notes, all taken", SourceInWords.summary(account).toString());
  }

  @Test
  void what_the_tone_chosen_leaves_out_is_left_out() throws NoSuchLine {
    SourceAccount account =
        account(TwoHands.piano(TwoHands.times(4, ". A4+C5"), TwoHands.times(4, "E4 .")), "top");
    assertEquals("12 notes: 8 taken, 4 left out", SourceInWords.summary(account).toString());
  }

  @Test
  void what_another_part_strikes_there_is_played_by_it() throws NoSuchLine {
    Score page = TwoHands.piano(TwoHands.times(4, ". A4+C5"), TwoHands.times(4, "E4 ."));
    Part oboe =
        new Part("P2", "Oboe", List.of(), List.of(TwoHands.voice(1, "1", ". A4 . . . A4 . .")));
    Score score = with(page, page.parts().get(0), oboe);
    SourceAccount account = account(score, "top");
    assertEquals(
        List.of("bar 1: A4 played by Oboe; A4 left out"),
        SourceInWords.list(account, score.bars()).stream().map(Sentence::toString).toList());
    assertEquals(2, account.count(Became.GIVEN));
  }

  @Test
  void broken_octaves_are_moved() throws NoSuchLine {
    Score page = TwoHands.score("Piano", TwoHands.voice(1, "1", "C4 C5 D4 D5 E4 E5"));
    SourceAccount account = account(page, "all", Reading.UPPER);
    assertEquals("6 notes: 3 taken, 3 moved by octaves", SourceInWords.summary(account).toString());
    assertTrue(
        account.notes().stream()
            .filter(note -> note.became() == Became.MOVED)
            .allMatch(note -> note.octaves() == 1));
  }

  @Test
  void what_the_pedal_holds_and_nobody_else_is_told() throws NoSuchLine {
    Score page = TwoHands.piano(". A4 . A4 . C5 . C5 . C5 . C5", "E4 . E4 . E4 . E4 . E4 . E4 .");
    Span pedal = new Span(Position.START, Position.ofQuarters(3, 1));
    Part own = page.parts().get(0);
    Part piano =
        new Part(
            own.id(),
            own.name(),
            List.of(),
            own.voices(),
            Keys.NONE,
            new PartMarks(List.of(), List.of(pedal)));
    SourceAccount account = account(with(page, piano), "all");
    assertEquals(
        List.of(
            "pedalled from bar 1: A4 sounds on, and nobody holds it; give it to somebody who"
                + " sustains"),
        SourceInWords.notHeld(account, page.bars()).stream().map(Sentence::toString).toList());
    Part horn = new Part("P2", "Horn", List.of(), List.of(TwoHands.voice(1, "1", "A4_16")));
    assertEquals(List.of(), account(with(page, piano, horn), "all").notHeld());
  }

  @Property
  void every_note_is_accounted_for_once(
      @ForAll @Size(min = 1, max = 24) List<Struck> upper,
      @ForAll @Size(min = 1, max = 24) List<Struck> lower,
      @ForAll Reading reading,
      @ForAll Chosen tone)
      throws NoSuchLine {
    Score page = TwoHands.piano("C5 " + written(upper) + " C5", "A4 " + written(lower) + " A4 A4");
    Line line = lineOf(page, tone.text, reading);
    SourceAccount account = SourceAccount.of(page, List.of(line));
    List<String> struck = new ArrayList<>();
    for (Voice voice : page.parts().get(0).voices()) {
      for (Stroke stroke : voice.strokes()) {
        for (Tone each : stroke.tones()) {
          int bar = page.bars().at(stroke.onset()).index();
          boolean within = line.source().firstBar() <= bar && bar <= line.source().lastBar();
          if (within) {
            struck.add(voice.staff() + " " + stroke.onset().quarters() + " " + each);
          }
        }
      }
    }
    List<String> told =
        account.notes().stream()
            .map(note -> note.staff() + " " + note.at().quarters() + " " + note.tone())
            .toList();
    assertEquals(struck.stream().sorted().toList(), told.stream().sorted().toList());
    int sum = 0;
    for (Became became : Became.values()) {
      sum += account.count(became);
    }
    assertEquals(told.size(), sum);
    for (SourceNote note : account.notes()) {
      boolean sounds =
          line.strokes().stream()
              .anyMatch(s -> s.onset().equals(note.at()) && s.sounds(note.tone()));
      assertEquals(sounds, note.became() == Became.TAKEN, note.toString());
    }
  }

  /** What a hand strikes. */
  enum Struck {
    NOTHING("."),
    NOTE("A4"),
    OCTAVE("A5"),
    THIRD("C5"),
    CHORD("C4+E4"),
    LONG("E5_3");

    private final String text;

    Struck(String text) {
      this.text = text;
    }
  }

  /** Which tones. */
  enum Chosen {
    ALL("all"),
    TOP("top"),
    BOTTOM("bottom");

    private final String text;

    Chosen(String text) {
      this.text = text;
    }
  }

  private static String written(List<Struck> all) {
    return all.stream().map(each -> each.text).collect(Collectors.joining(" "));
  }

  private static Score with(Score page, Part... parts) {
    return new Score(Optional.empty(), List.of(parts), page.bars(), page.tempo(), true);
  }

  private static SourceAccount account(Score page, String tone) throws NoSuchLine {
    return account(page, tone, Reading.ALL);
  }

  private static SourceAccount account(Score page, String tone, Reading reading) throws NoSuchLine {
    return SourceAccount.of(page, List.of(line(page, tone, reading)));
  }

  /** A reading that leaves one note is refused, and then all are read. */
  private static Line lineOf(Score page, String tone, Reading reading) throws NoSuchLine {
    try {
      return line(page, tone, reading);
    } catch (NoSuchLine oneNote) {
      assertTrue(oneNote.inWords().toString().contains("has only one"), oneNote.getMessage());
      return line(page, tone, Reading.ALL);
    }
  }

  @Test
  void of_octaves_in_chords_the_tone_that_is_not_chosen_is_left_out_and_not_moved()
      throws NoSuchLine {
    Score page = TwoHands.piano("A5 B5 A5 B5", "A4 B4 A4 B4");
    for (Reading reading : Reading.values()) {
      SourceAccount account = account(page, "top", reading);
      assertEquals(4, account.count(Became.TAKEN));
      assertEquals(4, account.count(Became.OMITTED));
    }
  }

  @Test
  void a_reading_that_leaves_a_single_note_is_refused() {
    Score page = TwoHands.score("Piano", TwoHands.voice(1, "1", "C6 A5 F5 C5"));
    NoSuchLine refused = assertThrows(NoSuchLine.class, () -> line(page, "all", Reading.UPPER));
    assertEquals(
        "Piano staff 1 has only one upper note; read it as it stands", refused.getMessage());
  }

  private static Line line(Score page, String tone, Reading reading) throws NoSuchLine {
    List<Integer> staves =
        page.parts().get(0).voices().stream().map(Voice::staff).distinct().toList();
    return new LineChoice(
            "P1", Optional.empty(), staves, List.of(), ToneChoice.parse(tone), reading)
        .take(page);
  }
}

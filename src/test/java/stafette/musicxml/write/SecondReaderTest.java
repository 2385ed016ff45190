package stafette.musicxml.write;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.ByteArrayInputStream;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.audiveris.proxymusic.Note;
import org.audiveris.proxymusic.ScorePartwise;
import org.audiveris.proxymusic.util.Marshalling;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import stafette.musicxml.read.Document;
import stafette.musicxml.read.MusicXmlReader;
import stafette.musicxml.text.Origin;
import stafette.score.Pitch;
import stafette.score.Step;

/** ProxyMusic, an independent reader of MusicXML, finds the same notes in the same order. */
class SecondReaderTest {
  @ParameterizedTest
  @ValueSource(strings = {"lantern-run", "mill-stairs", "signal-hill", "weir-gate"})
  void both_readers_find_the_same_notes_and_durations(String sample) throws Exception {
    byte[] bytes = Files.readAllBytes(Path.of("samples", sample + ".musicxml"));
    Document ours = MusicXmlReader.read(bytes);
    ScorePartwise theirs = (ScorePartwise) Marshalling.unmarshal(new ByteArrayInputStream(bytes));
    for (int part = 0; part < ours.origin().parts().size(); part++) {
      assertEquals(theirsIn(theirs.getPart().get(part)), oursIn(ours.origin().parts().get(part)));
    }
  }

  private static List<String> oursIn(Origin.PartText part) {
    List<String> notes = new ArrayList<>();
    for (Origin.MeasureText measure : part.measures()) {
      for (Origin.ElementText element : measure.elements()) {
        element
            .note()
            .ifPresent(
                note -> {
                  int sounding = element.attributes().transposition().chromatic();
                  String what = note.rest() ? "rest" : Integer.toString(note.key() - sounding);
                  notes.add(
                      what
                          + " "
                          + note.length().quarters().times(element.attributes().divisions()));
                });
      }
    }
    return notes;
  }

  private static List<String> theirsIn(ScorePartwise.Part part) {
    List<String> notes = new ArrayList<>();
    for (ScorePartwise.Part.Measure measure : part.getMeasure()) {
      for (Object child : measure.getNoteOrBackupOrForward()) {
        if (child instanceof Note note) {
          String what = note.getPitch() == null ? "rest" : Integer.toString(midi(note.getPitch()));
          BigDecimal duration = note.getDuration();
          notes.add(
              what
                  + " "
                  + (duration == null ? "0" : duration.stripTrailingZeros().toPlainString()));
        }
      }
    }
    return notes;
  }

  private static int midi(org.audiveris.proxymusic.Pitch pitch) {
    int alter = pitch.getAlter() == null ? 0 : pitch.getAlter().intValue();
    return new Pitch(Step.valueOf(pitch.getStep().name()), alter, pitch.getOctave()).midi();
  }
}

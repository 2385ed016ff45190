package stafette.sound;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToIntFunction;
import stafette.score.Line;
import stafette.score.Part;
import stafette.score.Score;
import stafette.score.Stroke;
import stafette.score.Voice;

/** The rest of the score, quietly, while a line is played. */
public final class Background {
  private static final int VOLUME = 60;
  private static final double QUIETER = 0.6;
  private static final int MIDDLE = 64;

  private final Line line;
  private final Clock clock;

  private Background(Line line, Clock clock) {
    this.line = line;
    this.clock = clock;
  }

  /**
   * All that the score's parts play between the line's first and last sound, the line left out.
   *
   * @param program the General MIDI program of a part, 1 to 128
   */
  public static Performance of(Score score, Line line, Clock clock, ToIntFunction<Part> program) {
    Background background = new Background(line, clock);
    List<Chair> chairs = new ArrayList<>();
    List<Note> notes = new ArrayList<>();
    for (Part part : score.parts()) {
      List<Note> own = background.notes(part, chairs.size());
      if (!own.isEmpty()) {
        chairs.add(new Chair(part.name(), program.applyAsInt(part), MIDDLE, VOLUME, 0, true));
        notes.addAll(own);
      }
    }
    return new Performance(chairs, notes, clock.tempi(), clock.lengthMicros());
  }

  private List<Note> notes(Part part, int chair) {
    List<Note> notes = new ArrayList<>();
    for (Voice voice : part.voices()) {
      if (!isLine(part, voice)) {
        voice.within(line.span()).forEach(stroke -> notes.addAll(notes(stroke, chair)));
      }
    }
    return notes;
  }

  private boolean isLine(Part part, Voice voice) {
    return part.id().equals(line.source().part())
        && voice.staff() == line.source().staff()
        && voice.name().equals(line.source().voice());
  }

  private List<Note> notes(Stroke stroke, int chair) {
    long start = clock.performed(line.micros(stroke.onset()));
    long end = clock.performed(line.micros(stroke.span().end()));
    int velocity = (int) Math.max(1, Math.round(QUIETER * Loudness.velocity(stroke)));
    return Articulated.notes(chair, stroke, start, end - start, 0, velocity);
  }
}

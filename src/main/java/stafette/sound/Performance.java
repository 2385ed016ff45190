package stafette.sound;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.IntStream;

/**
 * Notes on a clock, with the tempi that a reader of bars and beats would want.
 *
 * @param chairs who plays
 * @param notes by start
 * @param tempi by start, the first at 0; at least one
 * @param lengthMicros when it is over
 */
public record Performance(
    List<Chair> chairs, List<Note> notes, List<Tempo> tempi, long lengthMicros) {
  public Performance {
    chairs = List.copyOf(chairs);
    notes =
        notes.stream()
            .sorted(
                Comparator.comparingLong(Note::startMicros)
                    .thenComparingInt(Note::chair)
                    .thenComparingInt(Note::key))
            .toList();
    tempi = List.copyOf(tempi);
  }

  /**
   * A tempo that begins to hold.
   *
   * @param quarterMicros how long a quarter note lasts
   */
  public record Tempo(long fromMicros, long quarterMicros) {}

  /** Only what some of the chairs play; the others stay, silent. */
  public Performance only(Predicate<Chair> who) {
    return with(notes.stream().filter(note -> who.test(chairs.get(note.chair()))).toList());
  }

  /** Only the sounds that begin in a stretch of time, which becomes the whole. */
  public Performance between(long fromMicros, long toMicros) {
    List<Note> kept =
        notes.stream()
            .filter(note -> note.startMicros() >= fromMicros && note.startMicros() < toMicros)
            .map(note -> note.later(-fromMicros))
            .toList();
    List<Tempo> tempi = new ArrayList<>();
    for (Tempo tempo : this.tempi) {
      if (tempo.fromMicros() <= fromMicros) {
        tempi.clear();
      }
      if (tempo.fromMicros() < toMicros) {
        tempi.add(new Tempo(Math.max(0, tempo.fromMicros() - fromMicros), tempo.quarterMicros()));
      }
    }
    return new Performance(chairs, kept, tempi, toMicros - fromMicros);
  }

  /** This one, and after a silence another one. */
  public Performance then(Performance next, long silenceMicros) {
    long shift = lengthMicros + silenceMicros;
    List<Chair> allChairs = new ArrayList<>(chairs);
    int[] numbers =
        IntStream.range(0, next.chairs.size())
            .map(
                i -> {
                  if (!allChairs.contains(next.chairs.get(i))) {
                    allChairs.add(next.chairs.get(i));
                  }
                  return allChairs.indexOf(next.chairs.get(i));
                })
            .toArray();
    List<Note> allNotes = new ArrayList<>(notes);
    next.notes.forEach(note -> allNotes.add(note.of(numbers[note.chair()]).later(shift)));
    List<Tempo> allTempi = new ArrayList<>(tempi);
    next.tempi.forEach(t -> allTempi.add(new Tempo(t.fromMicros() + shift, t.quarterMicros())));
    return new Performance(allChairs, allNotes, allTempi, shift + next.lengthMicros);
  }

  /** This one with another one sounding at the same time, on the same clock. */
  public Performance with(Performance beside) {
    List<Chair> allChairs = new ArrayList<>(chairs);
    allChairs.addAll(beside.chairs);
    List<Note> allNotes = new ArrayList<>(notes);
    beside.notes.forEach(note -> allNotes.add(note.of(note.chair() + chairs.size())));
    return new Performance(allChairs, allNotes, tempi, Math.max(lengthMicros, beside.lengthMicros));
  }

  private Performance with(List<Note> others) {
    return new Performance(chairs, others, tempi, lengthMicros);
  }
}

package stafette.picture.notes;

import java.util.Optional;
import java.util.function.UnaryOperator;
import stafette.score.Grace;
import stafette.score.Stroke;
import stafette.score.Tone;
import stafette.score.Tuplet;
import stafette.time.Position;
import stafette.time.Span;

/**
 * One note, chord or rest as it is written.
 *
 * @param span where
 * @param form its value
 * @param stroke what sounds; empty for a rest
 * @param part which of the stroke's tied values, from 0
 * @param tuplet the group to which it belongs
 * @param wholeBar whether it is the rest of a whole bar, written in its middle
 */
record NotatedItem(
    Span span,
    NoteForm form,
    Optional<Stroke> stroke,
    int part,
    Optional<Tuplet> tuplet,
    boolean wholeBar) {
  /** The item with other tones, those of grace notes included. */
  NotatedItem withTones(UnaryOperator<Tone> change) {
    if (isRest()) {
      return this;
    }
    Stroke before = sound();
    Stroke after =
        new Stroke(
            before.onset(),
            before.tones().stream().map(change).toList(),
            before.values(),
            before.graces().stream()
                .map(g -> new Grace(g.tones().stream().map(change).toList(), g.slashed()))
                .toList(),
            before.slurred(),
            before.slurContinues(),
            before.measured(),
            before.articulations(),
            before.dynamic(),
            before.manner());
    return new NotatedItem(span, form, Optional.of(after), part, tuplet, wholeBar);
  }

  boolean isRest() {
    return stroke.isEmpty();
  }

  Position onset() {
    return span.start();
  }

  Stroke sound() {
    return stroke.orElseThrow();
  }

  /** Whether it is the attack, not a note tied to it. */
  boolean attacks() {
    return part == 0 && !isRest();
  }

  boolean tiedOn() {
    return stroke.isPresent() && part + 1 < sound().values().size();
  }
}

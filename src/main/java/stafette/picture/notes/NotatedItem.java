package stafette.picture.notes;

import java.util.Optional;
import java.util.function.UnaryOperator;
import stafette.notation.BarItem;
import stafette.notation.BarItem.SoundingItem;
import stafette.notation.TremoloSign;
import stafette.score.Grace;
import stafette.score.Stroke;
import stafette.score.Tone;
import stafette.time.Position;
import stafette.time.Span;

/**
 * One note, chord or rest as it is drawn.
 *
 * @param item as it is written
 * @param stroke what sounds; empty for a rest
 * @param shown whether it is drawn, not only counted
 */
record NotatedItem(BarItem item, Optional<Stroke> stroke, boolean shown) {
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
    return new NotatedItem(item, Optional.of(after), shown);
  }

  boolean isRest() {
    return item.isRest();
  }

  /** Whether it is the rest of a whole bar, drawn in its middle. */
  boolean isWholeBar() {
    return isRest() && item.shape().isEmpty();
  }

  Span span() {
    return item.span();
  }

  Position onset() {
    return span().start();
  }

  NoteForm form() {
    return NoteForm.of(item);
  }

  Stroke sound() {
    return stroke.orElseThrow();
  }

  /** Whether it is the attack, not a note tied to it. */
  boolean attacks() {
    return item.sound().filter(SoundingItem::first).isPresent();
  }

  boolean tiedOn() {
    return item.sound().filter(sound -> !sound.last()).isPresent();
  }

  /** Slashes, if it holds several strokes or is one of two that alternate. */
  Optional<TremoloSign> tremolo() {
    return item.sound().flatMap(SoundingItem::tremolo);
  }

  /** Whether the first of its beams is that. */
  boolean hasBeam(String value) {
    return !item.beams().isEmpty() && item.beams().get(0).equals(value);
  }
}

package stafette.musicxml.write;

import static java.util.Map.entry;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import stafette.musicxml.write.ReadPage.Bar;
import stafette.musicxml.write.ReadPage.Note;
import stafette.musicxml.write.ReadPage.Part;
import stafette.musicxml.write.WrittenRule.Wrong;
import stafette.time.Rational;

/** How long things are, and what stands at once. */
final class LengthRules {
  private static final Map<String, Rational> QUARTERS =
      Map.ofEntries(
          entry("long", Rational.of(16)),
          entry("breve", Rational.of(8)),
          entry("whole", Rational.of(4)),
          entry("half", Rational.of(2)),
          entry("quarter", Rational.ONE),
          entry("eighth", Rational.of(1, 2)),
          entry("16th", Rational.of(1, 4)),
          entry("32nd", Rational.of(1, 8)),
          entry("64th", Rational.of(1, 16)),
          entry("128th", Rational.of(1, 32)),
          entry("256th", Rational.of(1, 64)));

  private static final int HIGHEST_KEY = 127;

  static final List<WrittenRule> ALL =
      List.of(
          new WrittenRule("a voice fills its bar", LengthRules::bars),
          new WrittenRule("a note lasts as long as it looks", LengthRules::looks),
          new WrittenRule("the notes of a chord last equally long", LengthRules::chords),
          new WrittenRule("a note is within the range of MIDI", LengthRules::range),
          new WrittenRule("a voice has one thing at a time", LengthRules::oneAtATime));

  private LengthRules() {}

  private static void bars(ReadPage source, ReadPage page, Part part, Wrong wrong) {
    for (Bar bar : part.bars()) {
      Rational length = source.length(bar);
      for (String voice : new TreeSet<>(bar.voices().keySet())) {
        Rational lasts =
            bar.runs().stream()
                .filter(run -> run.voices().contains(voice))
                .map(run -> run.end().minus(run.start()))
                .reduce(Rational.ZERO, Rational::plus);
        if (!lasts.equals(length)) {
          wrong.say(bar, "voice " + voice + " lasts " + lasts + " quarters instead of " + length);
        }
      }
    }
  }

  private static void looks(ReadPage source, ReadPage page, Part part, Wrong wrong) {
    for (Bar bar : part.bars()) {
      for (Note note : bar.notes()) {
        shape(note)
            .filter(looks -> !looks.equals(note.length()))
            .ifPresent(
                looks ->
                    wrong.say(
                        bar,
                        note.called()
                            + " at "
                            + note.onset()
                            + " looks like "
                            + looks
                            + " quarters and lasts "
                            + note.length()));
      }
    }
  }

  /** Nothing where it has no type, or looks otherwise for a reason. */
  private static Optional<Rational> shape(Note note) {
    boolean free =
        note.grace()
            || note.tag()
                .first("rest")
                .filter(r -> r.attribute("measure", "").equals("yes"))
                .isPresent()
            || note.notations("ornaments", "tremolo").stream()
                .anyMatch(tremolo -> !tremolo.attribute("type", "single").equals("single"));
    Rational type = QUARTERS.getOrDefault(note.tag().text("type", ""), Rational.ZERO);
    if (free || type.signum() == 0) {
      return Optional.empty();
    }
    int dots = note.tag().all("dot").size();
    Rational dotted = type.times(Rational.of((2L << dots) - 1, 1L << dots));
    return Optional.of(
        note.tag()
            .first("time-modification")
            .map(
                ratio ->
                    dotted
                        .times(Rational.parse(ratio.text("normal-notes", "1")))
                        .dividedBy(Rational.parse(ratio.text("actual-notes", "1"))))
            .orElse(dotted));
  }

  private static void chords(ReadPage source, ReadPage page, Part part, Wrong wrong) {
    for (Bar bar : part.bars()) {
      Rational first = Rational.ZERO;
      for (Note note : bar.notes()) {
        if (!note.chord()) {
          first = note.length();
        } else if (!note.length().equals(first)) {
          wrong.say(
              bar,
              note.called()
                  + " at "
                  + note.onset()
                  + " lasts "
                  + note.length()
                  + " quarters in a chord of "
                  + first);
        }
      }
    }
  }

  private static void range(ReadPage source, ReadPage page, Part part, Wrong wrong) {
    for (Bar bar : part.bars()) {
      for (Note note : bar.notes()) {
        note.pitch()
            .map(pitch -> pitch.key() + note.transposition())
            .filter(key -> key < 0 || key > HIGHEST_KEY)
            .ifPresent(
                key -> wrong.say(bar, note.called() + " at " + note.onset() + " is key " + key));
      }
    }
  }

  private static void oneAtATime(ReadPage source, ReadPage page, Part part, Wrong wrong) {
    for (Bar bar : part.bars()) {
      bar.voices()
          .forEach(
              (voice, notes) -> {
                for (int i = 1; i < notes.size(); i++) {
                  if (notes.get(i).onset().compareTo(notes.get(i - 1).end()) < 0) {
                    wrong.say(
                        bar,
                        notes.get(i).called()
                            + " at "
                            + notes.get(i).onset()
                            + " begins within "
                            + notes.get(i - 1).called()
                            + " of voice "
                            + voice);
                  }
                }
              });
    }
  }
}

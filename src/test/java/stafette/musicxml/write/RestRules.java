package stafette.musicxml.write;

import java.util.List;
import java.util.Optional;
import stafette.musicxml.write.ReadPage.Bar;
import stafette.musicxml.write.ReadPage.Metre;
import stafette.musicxml.write.ReadPage.Note;
import stafette.musicxml.write.ReadPage.Part;
import stafette.musicxml.write.WrittenRule.Wrong;
import stafette.time.Rational;

/** Rests are as long as the metre allows, and no longer. */
final class RestRules {
  private static final Rational HALF = Rational.of(2);

  static final List<WrittenRule> ALL =
      List.of(
          new WrittenRule("an empty bar is one rest", RestRules::empty),
          new WrittenRule("a half rest stands where a half of the bar begins", RestRules::halves),
          new WrittenRule("a silent beat is one rest", RestRules::beats));

  private RestRules() {}

  private static void empty(ReadPage source, ReadPage page, Part part, Wrong wrong) {
    for (Bar bar : part.bars()) {
      Rational length = source.length(bar);
      bar.voices()
          .forEach(
              (voice, notes) -> {
                boolean silent = notes.stream().allMatch(note -> note.rest() && !note.hidden());
                boolean one =
                    notes.size() == 1
                        && (notes.get(0).length().equals(length) || fillsItsBar(notes.get(0)));
                if (silent && !one) {
                  wrong.say(
                      bar,
                      "voice "
                          + voice
                          + " is silent in "
                          + notes.size()
                          + " rests of "
                          + notes.stream().map(Note::length).toList());
                }
              });
    }
  }

  private static boolean fillsItsBar(Note note) {
    return note.tag()
        .first("rest")
        .filter(rest -> rest.attribute("measure", "no").equals("yes"))
        .isPresent();
  }

  private static void halves(ReadPage source, ReadPage page, Part part, Wrong wrong) {
    for (Bar bar : part.bars()) {
      Optional<Metre> metre = bar.metre().filter(found -> !source.incomplete(bar));
      boolean four = metre.filter(found -> found.is(4, 4)).isPresent();
      boolean three = metre.filter(found -> found.is(3, 4)).isPresent();
      bar.notes().stream()
          .filter(note -> plain(note) && note.length().equals(HALF))
          .filter(note -> three || (four && note.onset().modulo(HALF).signum() != 0))
          .forEach(note -> wrong.say(bar, "a half rest stands at " + note.onset()));
    }
  }

  private static void beats(ReadPage source, ReadPage page, Part part, Wrong wrong) {
    for (Bar bar : part.bars()) {
      if (source.incomplete(bar)) {
        continue;
      }
      Metre metre = bar.metre().orElseThrow();
      for (List<Note> voice : bar.voices().values()) {
        for (int i = 1; i < voice.size(); i++) {
          Note one = voice.get(i - 1);
          Note other = voice.get(i);
          Rational together = one.length().times(2);
          boolean equal = plain(one) && plain(other) && one.length().equals(other.length());
          boolean adjacent = one.end().equals(other.onset());
          if (equal
              && adjacent
              && isGroup(metre, together)
              && one.onset().modulo(together).signum() == 0) {
            wrong.say(
                bar, "two rests of " + one.length() + " from " + one.onset() + " could be one");
          }
        }
      }
    }
  }

  private static boolean isGroup(Metre metre, Rational length) {
    return metre.beat().filter(length::equals).isPresent()
        || (metre.is(4, 4) && length.equals(HALF));
  }

  private static boolean plain(Note note) {
    return note.rest() && !note.hidden() && !note.modified();
  }
}

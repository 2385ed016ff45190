package stafette.musicxml.write;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.w3c.dom.Node;
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
          new WrittenRule(WrittenRules.EMPTY_BAR_IS_ONE_REST, RestRules::empty),
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
                boolean graced =
                    bar.notes().stream()
                        .anyMatch(note -> note.grace() && note.voice().equals(voice));
                if (silent && !one && !graced && !isCut(notes)) {
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

  /** Whether a clef or a key changes between the rests. */
  private static boolean isCut(List<Note> notes) {
    Node last = notes.get(notes.size() - 1).tag().element();
    for (Node at = notes.get(0).tag().element(); at != last; at = at.getNextSibling()) {
      if (at == null || at.getNodeName().equals("attributes")) {
        return true;
      }
    }
    return false;
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
        if (voice.stream().allMatch(Note::rest)) {
          continue;
        }
        metre.beat().ifPresent(beat -> groups(bar, beat, voice, metre.compound(), wrong));
        if (metre.is(4, 4)) {
          groups(bar, HALF, voice.stream().filter(RestRules::isQuarter).toList(), false, wrong);
        }
      }
    }
  }

  private static boolean isQuarter(Note note) {
    return note.length().equals(Rational.ONE);
  }

  /**
   * Finds groups of the metre that are filled by several rests.
   *
   * @param dotted whether a longer rest with a shorter one after it may stand for a dotted one
   */
  private static void groups(
      Bar bar, Rational length, List<Note> voice, boolean dotted, Wrong wrong) {
    Map<Rational, List<Note>> groups =
        voice.stream()
            .collect(
                Collectors.groupingBy(
                    note -> note.onset().minus(note.onset().modulo(length)),
                    TreeMap::new,
                    Collectors.toList()));
    groups.forEach(
        (start, notes) -> {
          List<Rational> lengths = notes.stream().map(Note::length).toList();
          boolean silent = notes.stream().allMatch(note -> note.rest() && !note.hidden());
          boolean filled = length.equals(lengths.stream().reduce(Rational.ZERO, Rational::plus));
          boolean alike = notes.stream().map(Note::modified).distinct().count() == 1;
          boolean asDotted =
              dotted && notes.size() == 2 && lengths.get(0).compareTo(lengths.get(1)) > 0;
          if (silent && alike && filled && notes.size() > 1 && !asDotted) {
            wrong.say(bar, "rests of " + lengths + " from " + start + " could be one");
          }
        });
  }

  private static boolean plain(Note note) {
    return note.rest() && !note.hidden() && !note.modified();
  }
}

package stafette.picture.sheet;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.time.format.FormatStyle;
import java.util.Optional;
import stafette.check.TempoWindow;
import stafette.check.Verdict;
import stafette.picture.ribbon.RelayContent;
import stafette.plan.Plan;
import stafette.plan.WrittenAs;
import stafette.words.Sayable;
import stafette.words.Sentence;

/**
 * What a sheet is made from.
 *
 * @param plan who plays what
 * @param how what is marked for its players
 * @param verdict what the judge says of that plan
 * @param window the tempi between which it holds, if it does
 * @param title of the score, if it has one
 * @param date to be printed
 * @param language in which it is printed
 */
public record SheetContent(
    Plan plan,
    WrittenAs how,
    Verdict verdict,
    Optional<TempoWindow> window,
    Optional<String> title,
    LocalDate date,
    SheetLanguage language) {

  /** The score's title, else what line it is. */
  String name() {
    return title.map(String::strip).filter(text -> !text.isEmpty()).orElseGet(() -> say(where()));
  }

  /** What the pictures on it show, in its language. */
  RelayContent relay() {
    return RelayContent.of(plan, verdict, window).marked(how).in(language.speech());
  }

  /** "25 November 2026". */
  String day() {
    return DateTimeFormatter.ofLocalizedDate(FormatStyle.LONG)
        .withLocale(language.locale())
        .format(date);
  }

  /** "Piano, staff 1, voice 1, bars 5–16". */
  Sentence where() {
    return SheetFigures.where(plan.line());
  }

  String say(Sayable what) {
    return language.say(what);
  }
}

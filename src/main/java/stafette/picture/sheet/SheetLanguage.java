package stafette.picture.sheet;

import java.util.Locale;
import java.util.function.Function;
import stafette.words.Sayable;

/**
 * In which language a sheet is printed.
 *
 * @param locale for its date
 * @param speech how anything is said
 */
public record SheetLanguage(Locale locale, Function<Sayable, String> speech) {
  public static final SheetLanguage ENGLISH =
      new SheetLanguage(Locale.UK, what -> what.inWords().toString());

  String say(Sayable what) {
    return speech.apply(what);
  }
}

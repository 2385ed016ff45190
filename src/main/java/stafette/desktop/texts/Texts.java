package stafette.desktop.texts;

import java.text.MessageFormat;
import java.util.Locale;
import java.util.ResourceBundle;
import stafette.check.Strain;
import stafette.score.ToneChoice;
import stafette.time.BarBeat;

/** All words of the desktop, in the user's language; English where there is no translation. */
public final class Texts {
  private static final String BUNDLE = "stafette.desktop.texts.desktop";

  private static final String DOTTED = "dotted ";

  private final Locale locale;
  private final ResourceBundle bundle;

  private Texts(Locale locale) {
    this.locale = locale;
    bundle =
        ResourceBundle.getBundle(
            BUNDLE,
            locale,
            ResourceBundle.Control.getNoFallbackControl(ResourceBundle.Control.FORMAT_DEFAULT));
  }

  public static Texts in(Locale locale) {
    return new Texts(locale);
  }

  /**
   * A text with its gaps filled, as {@link MessageFormat} has them.
   *
   * @throws java.util.MissingResourceException if there is no such text
   */
  public String get(String key, Object... fillings) {
    return new MessageFormat(bundle.getString(key), locale).format(fillings);
  }

  public Locale locale() {
    return locale;
  }

  /** A share in whole per cent, rounded up, so that nothing beyond a limit shows as 100 %. */
  public String percent(double share) {
    return get("percent", Strain.wholePercent(share));
  }

  /** "bar 34, beat 2". */
  public String place(BarBeat at) {
    return get("place", at.bar(), at.beatText());
  }

  /** Which tones of chords. */
  public String tone(ToneChoice choice) {
    if (choice instanceof ToneChoice.FromTop fromTop) {
      return fromTop.number() == 1 ? get("tone.top") : get("tone.number", fromTop.number());
    }
    return get(choice instanceof ToneChoice.Bottom ? "tone.bottom" : "tone.all");
  }

  /**
   * A metronome mark in the user's language.
   *
   * @param mark as the judge writes it: "dotted quarter = 92"; other words stay as they are
   */
  public String tempo(String mark) {
    int equals = mark.indexOf(" = ");
    return equals < 0
        ? mark
        : get("beat.mark", unit(mark.substring(0, equals)), mark.substring(equals + 3));
  }

  private String unit(String name) {
    return name.startsWith(DOTTED)
        ? get("beat.dotted", unit(name.substring(DOTTED.length())))
        : get("beat." + name);
  }
}

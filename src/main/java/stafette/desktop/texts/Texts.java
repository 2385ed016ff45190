package stafette.desktop.texts;

import java.math.BigDecimal;
import java.text.MessageFormat;
import java.text.NumberFormat;
import java.util.Locale;
import java.util.Optional;
import java.util.ResourceBundle;
import java.util.stream.Stream;
import stafette.check.Strain;
import stafette.score.ToneChoice;
import stafette.words.Sayable;
import stafette.words.Sentence;
import stafette.words.Settable;

/** All words of the desktop, in the user's language; English where there is no translation. */
public final class Texts {
  private static final String HERE = "stafette.desktop.texts.";

  private final Locale locale;
  private final ResourceBundle bundle;
  private final ResourceBundle sentences;
  private final ResourceBundle names;

  private Texts(Locale locale) {
    this.locale = locale;
    bundle = bundle("desktop", locale);
    sentences = bundle("sentences", locale);
    names = bundle("names", locale);
  }

  private static ResourceBundle bundle(String name, Locale locale) {
    return ResourceBundle.getBundle(
        HERE + name,
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

  /** What the judge and the others say, in the user's language; English where it can't be said. */
  public String say(Sayable what) {
    Sentence sentence = what.inWords();
    return Sentence.fill(translated(sentence.template()), sentence.facts(), this::said);
  }

  /** Which tones of chords. */
  public String tone(ToneChoice choice) {
    return choice.match(
        all -> get("tone.all"),
        bottom -> get("tone.bottom"),
        fromTop -> fromTop.number() == 1 ? get("tone.top") : get("tone.number", fromTop.number()));
  }

  /** An instrument or a technique in the user's language. */
  public String name(String name) {
    return say(Sentence.name(name));
  }

  private String translated(String template) {
    return Stream.of(sentences, names)
        .filter(words -> words.containsKey(template))
        .map(words -> words.getString(template))
        .findFirst()
        .orElse(template);
  }

  private String said(Object fact) {
    if (fact instanceof Settable settable) {
      return label(settable).map(key -> get("control", get(key))).orElse("");
    }
    if (fact instanceof Sayable sayable) {
      return say(sayable);
    }
    return fact instanceof BigDecimal decimal ? figure(decimal) : fact.toString();
  }

  /** The label of the control that sets it; the window has none for some. */
  private static Optional<String> label(Settable settable) {
    return switch (settable) {
      case TONES -> Optional.of("line.tone");
      case READING -> Optional.of("line.reading");
      case PLAYERS, TECHNIQUES, PLAYER_TECHNIQUES -> Optional.of("window.players");
      case OVERLAP -> Optional.of("rules.overlap");
      case REST -> Optional.of("rules.ready");
      case FAVOUR -> Optional.of("rules.favour");
      case HOCKET -> Optional.of("rules.hocket");
      case INSTRUMENTS, LIMITS, COLOUR, SOUNDBANK, COMPARISON, SOLO, MUTE, PAPER, REPLACING ->
          Optional.empty();
    };
  }

  private String figure(BigDecimal decimal) {
    NumberFormat format = NumberFormat.getNumberInstance(locale);
    format.setGroupingUsed(false);
    format.setMinimumFractionDigits(Math.max(0, decimal.scale()));
    format.setMaximumFractionDigits(Math.max(0, decimal.scale()));
    return format.format(decimal);
  }
}

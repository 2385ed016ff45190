package stafette.musicxml.write;

import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import stafette.limits.HarpPedals.Setting;
import stafette.musicxml.share.Sign;
import stafette.musicxml.text.Origin;
import stafette.musicxml.text.Origin.ElementText;

/** What a harp's part says of its pedals. */
final class PedalMarks {
  private static final Pattern TUNING =
      Pattern.compile(
          "<pedal-step>\\s*([A-G])\\s*</pedal-step>\\s*<pedal-alter>\\s*(-?[01])(?:\\.0*)?\\s*<");

  private PedalMarks() {}

  /** Whether an element of the part says what a sign would say, in whatever form. */
  static boolean says(ElementText element, Sign sign, Origin origin) {
    if (!element.onset().equals(sign.at()) || !element.name().equals("direction")) {
      return false;
    }
    String text = element.span().in(origin.text());
    return switch (sign.kind()) {
      case PEDALS -> sign.pedals().map(PedalMarks::tunings).equals(Optional.of(tunings(text)));
      case PEDAL_WORDS ->
          text.matches(
              "(?s).*<words(?:\\s[^>]*)?>\\s*" + Pattern.quote(sign.text()) + "\\s*</words>.*");
      default -> false;
    };
  }

  private static List<String> tunings(Setting setting) {
    return setting.pedals().stream().map(pedal -> pedal.letter() + " " + pedal.alter()).toList();
  }

  private static List<String> tunings(String text) {
    return TUNING
        .matcher(text)
        .results()
        .map(tuning -> tuning.group(1) + " " + tuning.group(2))
        .toList();
  }
}

package stafette.desktop.rules;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import stafette.desktop.texts.Texts;
import stafette.score.ToneChoice;

/**
 * Which tones of chords a line has.
 *
 * @param each whether each of them has players of its own
 */
public record Tones(ToneChoice choice, boolean each) {
  private static final Tones CHORDS = new Tones(new ToneChoice.All(), false);

  /** A choice as it is kept for a line: where each tone has its players, all are meant. */
  public Tones {
    choice = each ? new ToneChoice.All() : choice;
  }

  /** What can be chosen where the fullest chord has so many tones. */
  static List<Tones> among(int fullest) {
    List<Tones> all = new ArrayList<>(List.of(CHORDS));
    if (fullest > 1) {
      IntStream.rangeClosed(1, fullest)
          .forEach(number -> all.add(new Tones(new ToneChoice.FromTop(number), false)));
      all.add(new Tones(new ToneChoice.Bottom(), false));
      all.add(new Tones(new ToneChoice.All(), true));
    }
    return all;
  }

  String words(Texts texts) {
    return each ? texts.get("tone.each") : texts.tone(choice);
  }
}

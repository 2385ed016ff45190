package stafette.score;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import stafette.time.Bars;
import stafette.time.BeatUnit;
import stafette.time.Length;
import stafette.time.Meter;
import stafette.time.Position;
import stafette.time.Rational;
import stafette.time.TempoMap;
import stafette.time.TempoMark;

/**
 * Invented pages of two hands or voices. Each is written as sixteenths: "A4" a note, "C4+E4" a
 * chord, "." silence, "A4_4" a note of four sixteenths from there.
 */
public final class TwoHands {
  private static final long QUARTERS_PER_MINUTE = 138;

  private TwoHands() {}

  /** A piano with a staff for each hand. */
  public static Score piano(String upper, String lower) {
    return score("Piano", voice(1, "1", upper), voice(2, "5", lower));
  }

  /** Two voices of one staff. */
  public static Score staff(String name, String upper, String lower) {
    return score(name, voice(1, "1", upper), voice(1, "2", lower));
  }

  /** A part of some voices. */
  public static Score score(String name, Voice... voices) {
    Position end =
        Stream.of(voices)
            .map(voice -> voice.strokes().get(voice.strokes().size() - 1).span().end())
            .max(Position::compareTo)
            .orElseThrow();
    int bars = end.quarters().dividedBy(4).floor().intValue() + 1;
    return new Score(
        Optional.empty(),
        List.of(new Part("P1", name, List.of(), List.of(voices))),
        Bars.regular(Meter.COMMON, bars),
        TempoMap.constant(new TempoMark(BeatUnit.QUARTER, Rational.of(QUARTERS_PER_MINUTE))),
        true);
  }

  /** The same figure so many times. */
  public static String times(int count, String figure) {
    return String.join(" ", Collections.nCopies(count, figure));
  }

  public static Voice voice(int staff, String name, String sixteenths) {
    List<Stroke> strokes = new ArrayList<>();
    int at = 0;
    for (String each : Pattern.compile("\\s+").split(sixteenths.trim(), -1)) {
      if (!each.equals(".")) {
        strokes.add(stroke(at, each));
      }
      at++;
    }
    return new Voice(staff, name, strokes);
  }

  private static Stroke stroke(int at, String text) {
    String[] parts = text.split("_", -1);
    int sixteenths = parts.length > 1 ? Integer.parseInt(parts[1]) : 1;
    List<Tone> tones =
        Stream.of(parts[0].split("\\+", -1)).map(TwoHands::pitch).map(Tone.class::cast).toList();
    return new Stroke(
        Position.ofQuarters(at, 4),
        tones,
        List.of(new Value(Length.ofQuarters(sixteenths, 4), Optional.empty())),
        List.of(),
        false,
        false,
        true,
        Set.of(),
        Dynamic.MF,
        Manner.PLAIN);
  }

  private static Pitch pitch(String name) {
    return new Pitch(Step.valueOf(name.substring(0, 1)), 0, Integer.parseInt(name.substring(1)));
  }
}

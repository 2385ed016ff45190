package stafette.json;

import stafette.json.Means.Like;
import stafette.score.Line;
import stafette.time.BarBeat;

/** Where something stands, as people name it. */
@Means("Where something stands.")
record PlaceJson(
    @Means("Bar number as printed in the score; may repeat and need not be a number.") String bar,
    @Means(
            "Beat within the bar, counted from 1; inside a beat with the share of it that has passed: \"2+1/3\".")
        @Like("^[0-9]+(\\+[0-9]+/[0-9]+)?$")
        String beat) {
  static PlaceJson of(BarBeat at) {
    return new PlaceJson(at.bar(), at.beatText());
  }

  static PlaceJson of(Line line, int stroke) {
    return of(line.placeOf(stroke).at());
  }
}

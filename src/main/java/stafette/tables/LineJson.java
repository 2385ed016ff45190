package stafette.tables;

import com.google.gson.JsonArray;
import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonPrimitive;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import stafette.score.Drum;
import stafette.score.Line;
import stafette.score.LineSource;
import stafette.score.Stroke;
import stafette.score.Tone;
import stafette.time.TempoMark;

/** Writes a line, stroke by stroke. */
final class LineJson {
  private LineJson() {}

  static JsonObject of(Line line) {
    JsonObject json = source(line);
    json.add(
        "tempo",
        Json.array(
            line.tempo().within(line.span()).entrySet(),
            mark -> {
              JsonObject entry = Json.place(line.bars().nameOf(mark.getKey()));
              addMark(entry, mark.getValue());
              return entry;
            }));
    json.add(
        "strokes",
        Json.array(IntStream.range(0, line.count()).boxed().toList(), j -> stroke(line, j)));
    return json;
  }

  private static JsonObject source(Line line) {
    LineSource source = line.source();
    JsonObject json = new JsonObject();
    json.addProperty("part", source.part());
    json.addProperty("name", source.partName());
    json.addProperty("staff", source.staff());
    json.addProperty("voice", source.voice());
    json.addProperty("tone", source.tone().text());
    json.add("bars", bars(line));
    json.add("barsCounted", counted(line));
    return json;
  }

  /** The printed numbers of the first and the last bar. */
  static JsonArray bars(Line line) {
    return Json.words(
        List.of(
            line.bars().get(line.source().firstBar()).number(),
            line.bars().get(line.source().lastBar()).number()));
  }

  /** The first and the last bar, counted from 1. */
  static JsonArray counted(Line line) {
    return Json.numbers(List.of(line.source().firstBar() + 1, line.source().lastBar() + 1));
  }

  private static void addMark(JsonObject to, TempoMark mark) {
    to.addProperty("mark", mark.toString());
    to.addProperty("unit", mark.unit().name());
    to.addProperty("perMinute", mark.perMinute().toString());
  }

  private static JsonElement stroke(Line line, int j) {
    Stroke stroke = line.stroke(j);
    JsonObject json = Json.place(line.placeOf(j).at());
    json.addProperty("onset", stroke.onset().since(line.stroke(0).onset()).quarters().toString());
    json.add("seconds", Json.seconds(line.onsetMicros(j)));
    json.add("sounds", Json.seconds(line.endMicros(j) - line.onsetMicros(j)));
    json.add("beatSeconds", Json.seconds(line.beatMicros(j)));
    json.addProperty("rank", line.rank(j).ordinal());
    json.addProperty("cover", line.cover(j));
    json.add("midi", Json.array(stroke.tones(), tone -> new JsonPrimitive(tone.key())));
    json.add("pitches", Json.array(stroke.tones(), tone -> new JsonPrimitive(name(tone))));
    json.addProperty("dynamic", stroke.dynamic().name().toLowerCase(Locale.ROOT));
    json.addProperty("slurred", stroke.slurred());
    json.addProperty("slurContinues", stroke.slurContinues());
    json.addProperty("measured", stroke.measured());
    json.addProperty("graces", stroke.graces().size());
    json.addProperty("inThree", line.placeInThree(j));
    return json;
  }

  private static String name(Tone tone) {
    return tone instanceof Drum drum
        ? "unpitched " + drum.displayStep() + drum.displayOctave()
        : tone.toString();
  }
}

package stafette.musicxml.read;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stafette.musicxml.read.PartReading.ReadPart;
import stafette.musicxml.read.ScoreWalk.WalkedScore;
import stafette.musicxml.text.Container;
import stafette.musicxml.text.DecodedText;
import stafette.musicxml.text.Origin;
import stafette.musicxml.text.Origin.ElementText;
import stafette.musicxml.text.Origin.MeasureText;
import stafette.musicxml.text.Origin.PartText;
import stafette.musicxml.text.UnreadableScore;
import stafette.musicxml.text.ZippedScore;
import stafette.score.Score;
import stafette.score.Tremolo;
import stafette.score.TremoloTrial;
import stafette.time.Bars;
import stafette.time.Position;
import stafette.time.TempoMap;
import stafette.time.TempoMark;

/**
 * Reads MusicXML 0.6 to 4.0, plain or compressed, in the partwise form.
 *
 * <p>The bytes are unpacked ({@link ZippedScore}) and strictly decoded ({@link DecodedText}); one
 * pass over the text ({@link ScoreWalk}) takes down each measure as it is written, with the place
 * of every element. Only then is it known how long each bar is ({@link BarLayout}), and tempi,
 * strokes and the origin are laid into the bars; each part by {@link PartReading}.
 */
public final class MusicXmlReader {
  private final WalkedScore written;
  private final Bars bars;

  private MusicXmlReader(WalkedScore written) {
    this.written = written;
    this.bars = BarLayout.of(written.parts(), written.movementTitle());
  }

  /** Reads a file with its tremolos as their slashes have it and without its cue notes. */
  public static Document read(byte[] bytes) throws UnreadableScore {
    return read(bytes, Tremolo.AS_WRITTEN, false);
  }

  /** Reads a file whose tempo decides nothing about slashes. */
  public static Document read(byte[] bytes, Tremolo tremolo, boolean withCues)
      throws UnreadableScore {
    return read(bytes, tremolo, TremoloTrial.BY_SLASHES, withCues);
  }

  /**
   * Reads a file.
   *
   * @param bytes the whole file, not to be changed afterwards
   * @param tremolo how slashes through stems are read
   * @param trial what becomes of slashes about which the tempo decides
   * @param withCues whether cue notes count as strokes
   * @throws UnreadableScore if the bytes are no MusicXML score, or one that is damaged
   */
  public static Document read(byte[] bytes, Tremolo tremolo, TremoloTrial trial, boolean withCues)
      throws UnreadableScore {
    Optional<ZippedScore> zipped =
        ZippedScore.isZip(bytes) ? Optional.of(ZippedScore.in(bytes)) : Optional.empty();
    DecodedText decoded = DecodedText.of(zipped.map(ZippedScore::bytes).orElse(bytes));
    MusicXmlReader reader = new MusicXmlReader(ScoreWalk.read(decoded.text()));
    Map<Position, TempoMark> tempi = TempoLayout.of(reader.written.parts(), reader.bars);
    TempoMap tempo = TempoMap.of(tempi);
    List<ReadPart> parts =
        reader.written.parts().stream()
            .map(part -> PartReading.of(part, reader.bars, tempo, tremolo, trial, withCues))
            .toList();
    return new Document(
        new Container(bytes, zipped.map(ZippedScore::entry)),
        new Score(
            reader.written.title(),
            parts.stream().map(ReadPart::part).toList(),
            reader.bars,
            tempo,
            !tempi.isEmpty()),
        reader.origin(decoded),
        parts.stream().flatMap(part -> part.tremolos().stream()).toList());
  }

  private Origin origin(DecodedText decoded) {
    List<PartText> parts = new ArrayList<>();
    for (WrittenPart part : written.parts()) {
      List<MeasureText> measures = new ArrayList<>();
      for (int i = 0; i < part.measures().size(); i++) {
        measures.add(measureText(part.measures().get(i), bars.get(i).span().start()));
      }
      parts.add(new PartText(part.id(), part.whole(), part.listed().span(), measures));
    }
    return new Origin(
        decoded.text(),
        decoded.charset(),
        decoded.byteOrderMark(),
        written.version(),
        written.partListSpan(),
        parts);
  }

  private static MeasureText measureText(WrittenMeasure measure, Position start) {
    List<ElementText> elements = new ArrayList<>();
    for (WrittenMeasure.Child child : measure.elements()) {
      elements.add(
          new ElementText(
              child.name(),
              child.span(),
              start.plus(child.onset()),
              child.attributes(),
              child.note().map(WrittenNote::text)));
    }
    return new MeasureText(
        measure.whole(), measure.startTag(), measure.empty(), measure.attributes(), elements);
  }
}

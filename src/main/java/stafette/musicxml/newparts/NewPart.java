package stafette.musicxml.newparts;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.audiveris.proxymusic.Attributes;
import org.audiveris.proxymusic.Backup;
import org.audiveris.proxymusic.Key;
import org.audiveris.proxymusic.Note;
import org.audiveris.proxymusic.Time;
import org.audiveris.proxymusic.Transpose;
import stafette.limits.Instrument;
import stafette.musicxml.make.BarText;
import stafette.musicxml.make.BarText.BarPiece;
import stafette.musicxml.make.CueText;
import stafette.musicxml.make.Fragments;
import stafette.musicxml.make.NoteMaker;
import stafette.musicxml.make.UnwritablePlan;
import stafette.musicxml.share.Assigned;
import stafette.musicxml.share.EntryCue;
import stafette.musicxml.text.Origin;
import stafette.musicxml.text.Origin.ElementText;
import stafette.musicxml.text.Origin.MeasureText;
import stafette.musicxml.text.Origin.PartText;
import stafette.musicxml.text.TextStyle;
import stafette.notation.Accidentals;
import stafette.notation.BarItem;
import stafette.notation.VoiceLayout;
import stafette.score.Line;
import stafette.score.Pitch;
import stafette.score.Spelling;
import stafette.score.Transposition;
import stafette.score.Tuplet;
import stafette.time.Bar;
import stafette.time.Position;
import stafette.time.Rational;
import stafette.time.Span;

/**
 * A part that the score doesn't have yet, with bars like those of the part that the line was taken
 * from.
 */
final class NewPart {
  private static final Pattern TIME = Pattern.compile("<time[\\s>].*?</time>", Pattern.DOTALL);
  private static final Pattern KEPT_ATTRIBUTES =
      Pattern.compile("\\s(?:number|implicit|non-controlling)\\s*=\\s*(?:\"[^\"]*\"|'[^']*')");
  private static final Pattern ONE_LINE = Pattern.compile("<staff-lines>\\s*1\\s*</staff-lines>");
  private static final String WHOLE_REST = "<rest measure=\"yes\"";

  /** Of each staff, as exporters number them. */
  private static final List<String> VOICES = List.of("1", "5");

  private static final List<String> CUE_VOICES = List.of("2", "6");

  private final Origin origin;
  private final PartText model;
  private final Line line;
  private final Assigned assigned;
  private final Instrument instrument;
  private final Fragments fragments;
  private final TextStyle style;
  private final String id;
  private final List<EntryCue> cues;
  private final boolean saysTempi;
  private final NewStaves staves;

  /**
   * A part for a player.
   *
   * @param model the part whose bars, keys and metres it follows
   * @param cues before the player's entries
   * @param id new in the score
   * @param saysTempi whether tempi and rehearsal marks stand in it
   */
  NewPart(
      Origin origin,
      PartText model,
      Line line,
      Assigned assigned,
      List<EntryCue> cues,
      Fragments fragments,
      String id,
      boolean saysTempi) {
    this.origin = origin;
    this.model = model;
    this.line = line;
    this.assigned = assigned;
    this.instrument = assigned.player().instrument();
    this.cues = cues;
    this.fragments = fragments;
    this.style = TextStyle.of(origin);
    this.id = id;
    this.saysTempi = saysTempi;
    this.staves = new NewStaves(assigned, ONE_LINE.matcher(model.whole().in(origin.text())).find());
  }

  /**
   * The part itself, without indentation before the first line.
   *
   * @throws UnwritablePlan if its lengths have no common part
   */
  String part(String lineBreak) throws UnwritablePlan {
    StringBuilder text = new StringBuilder("<part id=\"" + id + "\">");
    String inner = style.deeper(lineBreak);
    int divisions = divisions();
    Optional<Integer> key = Optional.empty();
    for (Bar bar : line.bars()) {
      List<AttributeStretch> stretches = stretches(bar);
      text.append(inner).append(measure(bar, stretches, key, divisions, inner));
      key = Optional.of(writtenKey(stretches.get(stretches.size() - 1).inForce()));
    }
    return text.append(lineBreak).append("</part>").toString();
  }

  /**
   * A stretch of a bar in one key.
   *
   * @param inForce in the model part
   */
  private record AttributeStretch(Span span, Origin.Attributes inForce) {}

  /**
   * A bar, cut where the model's key changes within it, or as soon after it as no note and no
   * tuplet goes on.
   */
  private List<AttributeStretch> stretches(Bar bar) {
    MeasureText measure = modelOf(bar);
    List<AttributeStretch> stretches = new ArrayList<>();
    Position from = bar.span().start();
    Origin.Attributes inForce = atStart(measure, bar);
    for (ElementText element : measure.elements()) {
      boolean newKey = writtenKey(element.attributes()) != writtenKey(inForce);
      if (newKey && element.onset().isAfter(bar.span().start())) {
        Position at = afterWhatGoesOn(bar, element.onset());
        if (!at.isBefore(bar.span().end())) {
          break;
        }
        if (at.isAfter(from)) {
          stretches.add(new AttributeStretch(new Span(from, at), inForce));
          from = at;
        }
        inForce = element.attributes();
      }
    }
    stretches.add(new AttributeStretch(new Span(from, bar.span().end()), inForce));
    return stretches;
  }

  private Position afterWhatGoesOn(Bar bar, Position place) {
    Position at = place;
    for (BarItem.SoundingItem sound : assigned.sounds(bar.index())) {
      Span whole = sound.tuplet().map(Tuplet::span).orElse(sound.span());
      at = whole.start().isBefore(at) && at.isBefore(whole.end()) ? whole.end() : at;
    }
    return at;
  }

  /** The measure to follow; that of the longest part where the model has ended. */
  private MeasureText modelOf(Bar bar) {
    PartText longest =
        origin.parts().stream()
            .max(Comparator.comparingInt(part -> part.measures().size()))
            .orElseThrow();
    PartText followed = bar.index() < model.measures().size() ? model : longest;
    return followed.measures().get(bar.index());
  }

  private String measure(
      Bar bar,
      List<AttributeStretch> stretches,
      Optional<Integer> keyBefore,
      int divisions,
      String lineBreak) {
    MeasureText measure = modelOf(bar);
    ModelMarks marks = new ModelMarks(fragments, origin, measure, saysTempi);
    String inner = style.deeper(lineBreak);
    StringBuilder text = new StringBuilder("<measure");
    Matcher kept = KEPT_ATTRIBUTES.matcher(measure.startTag().in(origin.text()));
    while (kept.find()) {
      text.append(' ').append(kept.group().strip());
    }
    text.append('>');
    marks.barlines("left").forEach(barline -> text.append(inner).append(barline.text()));
    attributes(bar, keyBefore, stretches.get(0), divisions)
        .ifPresent(attributes -> text.append(inner).append(style.set(attributes, inner)));
    elements(bar, stretches, marks, divisions)
        .forEach(element -> text.append(inner).append(style.set(element, inner)));
    marks.barlines("right").forEach(barline -> text.append(inner).append(barline.text()));
    return text.append(lineBreak).append("</measure>").toString();
  }

  /** What stands in a bar between its attributes and its barline. */
  private List<String> elements(
      Bar bar, List<AttributeStretch> stretches, ModelMarks marks, int divisions) {
    List<String> elements = new ArrayList<>();
    marks
        .among(pieces(bar, stretches, marks, divisions), divisions, numbered(1))
        .forEach(piece -> elements.add(piece.text()));
    if (staves.count() > 1) {
      elements.addAll(otherStaff(bar, marks, divisions));
    }
    for (CueText cue : cues(bar, stretches)) {
      elements.addAll(cue.elements(divisions));
    }
    return elements;
  }

  /** What stands on the line's staff. */
  private List<BarPiece> pieces(
      Bar bar, List<AttributeStretch> stretches, ModelMarks marks, int divisions) {
    boolean rests = assigned.sounds(bar.index()).isEmpty();
    List<BarPiece> pieces = new ArrayList<>();
    for (AttributeStretch stretch : stretches) {
      if (!stretch.equals(stretches.get(0))) {
        newKey(stretch).ifPresent(key -> pieces.add(new BarPiece(stretch.span().start(), key)));
      }
      for (BarPiece piece : content(bar, stretch).pieces(divisions)) {
        pieces.add(
            rests && piece.text().contains(WHOLE_REST)
                ? new BarPiece(piece.at(), marks.held(piece.text()))
                : piece);
      }
    }
    return pieces;
  }

  /** The rest of a bar on the staff where the line does not stand. It follows that. */
  private List<String> otherStaff(Bar bar, ModelMarks marks, int divisions) {
    int other = 3 - staves.of(bar.index());
    Backup backup = new Backup();
    backup.setDuration(NoteMaker.duration(bar.span().length(), divisions));
    BarItem whole = VoiceLayout.of(bar, bar.span(), List.of(), new TreeSet<>(), List.of()).get(0);
    Note rest =
        NoteMaker.resting(VOICES.get(other - 1), numbered(other)).rest(whole, true, divisions);
    return List.of(
        fragments.text("backup", Backup.class, backup),
        marks.held(fragments.text("note", Note.class, rest)));
  }

  /** A staff, where the part has several. */
  private Optional<Integer> numbered(int staff) {
    return Optional.of(staff).filter(any -> staves.count() > 1);
  }

  /** Cues in a bar; none where the key changes within it. */
  private List<CueText> cues(Bar bar, List<AttributeStretch> stretches) {
    return stretches.size() > 1
        ? List.of()
        : cues.stream().flatMap(cue -> cue(bar, cue, stretches.get(0)).stream()).toList();
  }

  private Optional<CueText> cue(Bar bar, EntryCue cue, AttributeStretch stretch) {
    int staff = staves.of(cue.notes(), bar.index());
    return CueText.in(
        bar,
        cue,
        fragments,
        spelling(stretch.inForce()),
        writtenKey(stretch.inForce()),
        CUE_VOICES.get(staff - 1),
        numbered(staff),
        bar.span().length());
  }

  private BarText content(Bar bar, AttributeStretch stretch) {
    int staff = staves.of(bar.index());
    return new BarText(
        fragments,
        assigned,
        bar,
        stretch.span(),
        maker(stretch.inForce(), staff),
        numbered(staff),
        List.of());
  }

  /** What is in force once the attributes at a bar's start have been read. */
  private static Origin.Attributes atStart(MeasureText measure, Bar bar) {
    Origin.Attributes now = measure.attributes();
    for (ElementText element : measure.elements()) {
      if (element.name().equals("attributes") && element.onset().equals(bar.span().start())) {
        now = element.attributes();
      }
    }
    return now;
  }

  private Optional<String> attributes(
      Bar bar, Optional<Integer> keyBefore, AttributeStretch stretch, int divisions) {
    boolean first = bar.index() == 0;
    Optional<Time> time = newTime(bar);
    boolean newKey = !keyBefore.equals(Optional.of(writtenKey(stretch.inForce())));
    if (!first && !newKey && time.isEmpty() && !staves.changesClef(bar.index())) {
      return Optional.empty();
    }
    Attributes attributes = new Attributes();
    if (first) {
      attributes.setDivisions(BigDecimal.valueOf(divisions));
    }
    if (newKey) {
      key(stretch).ifPresent(attributes.getKey()::add);
    }
    time.ifPresent(attributes.getTime()::add);
    staves.describe(attributes, bar.index());
    if (first) {
      transpose().ifPresent(attributes.getTranspose()::add);
    }
    return Optional.of(fragments.text("attributes", Attributes.class, attributes));
  }

  private Optional<String> newKey(AttributeStretch stretch) {
    return key(stretch)
        .map(
            key -> {
              Attributes attributes = new Attributes();
              attributes.getKey().add(key);
              return fragments.text("attributes", Attributes.class, attributes);
            });
  }

  /** The key of a stretch; instruments without pitch have none. */
  private Optional<Key> key(AttributeStretch stretch) {
    if (instrument.range().isEmpty()) {
      return Optional.empty();
    }
    Key key = new Key();
    key.setFifths(BigInteger.valueOf(writtenKey(stretch.inForce())));
    return Optional.of(key);
  }

  private record TimeText(Position onset, String text) {
    boolean begins(Bar bar) {
      return onset.equals(bar.span().start());
    }

    Time time() {
      return Fragments.read(text, Time.class);
    }
  }

  /** A time that begins with the bar, or began within the one before. */
  private Optional<Time> newTime(Bar bar) {
    Optional<TimeText> here = times(bar).filter(time -> time.begins(bar)).findFirst();
    return here.or(() -> bar.index() == 0 ? Optional.empty() : within(before(bar)))
        .map(TimeText::time);
  }

  private Bar before(Bar bar) {
    return line.bars().get(bar.index() - 1);
  }

  private Optional<TimeText> within(Bar bar) {
    return times(bar).filter(time -> !time.begins(bar)).reduce((first, last) -> last);
  }

  private Stream<TimeText> times(Bar bar) {
    return modelOf(bar).elements().stream()
        .filter(element -> element.name().equals("attributes"))
        .flatMap(
            element ->
                TIME.matcher(element.span().in(origin.text()))
                    .results()
                    .map(found -> new TimeText(element.onset(), found.group())));
  }

  private Optional<Transpose> transpose() {
    Transposition interval = instrument.transposition();
    if (interval.equals(Transposition.NONE)) {
      return Optional.empty();
    }
    int octaves = interval.chromatic() / 12;
    Transpose transpose = new Transpose();
    transpose.setDiatonic(BigInteger.valueOf(interval.diatonic() - 7L * octaves));
    transpose.setChromatic(BigDecimal.valueOf(interval.chromatic() - 12L * octaves));
    if (octaves != 0) {
      transpose.setOctaveChange(BigInteger.valueOf(octaves));
    }
    return Optional.of(transpose);
  }

  private int writtenKey(Origin.Attributes now) {
    int sounding = Spelling.soundingKey(now.fifths(), now.transposition());
    return Spelling.writtenKey(sounding, instrument.transposition());
  }

  private NoteMaker maker(Origin.Attributes now, int staff) {
    int own = instrument.range().isPresent() ? writtenKey(now) : 0;
    return new NoteMaker(
        assigned.spelling(spelling(now)),
        new Accidentals(own),
        VOICES.get(staff - 1),
        numbered(staff));
  }

  private UnaryOperator<Pitch> spelling(Origin.Attributes now) {
    int sounding = Spelling.soundingKey(now.fifths(), now.transposition());
    int own = instrument.range().isPresent() ? writtenKey(now) : 0;
    return pitch -> Spelling.written(pitch, instrument.transposition(), sounding, own);
  }

  private int divisions() throws UnwritablePlan {
    int divisions = 1;
    for (Bar bar : line.bars()) {
      for (AttributeStretch stretch : stretches(bar)) {
        divisions = content(bar, stretch).divisions(Rational.of(divisions));
      }
      for (CueText cue : cues(bar, stretches(bar))) {
        divisions = cue.divisions(Rational.of(divisions));
      }
    }
    return divisions;
  }
}

package stafette.musicxml.newparts;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.audiveris.proxymusic.Direction;
import org.audiveris.proxymusic.DirectionType;
import org.audiveris.proxymusic.Fermata;
import org.audiveris.proxymusic.FormattedTextId;
import org.audiveris.proxymusic.Notations;
import org.audiveris.proxymusic.Note;
import org.audiveris.proxymusic.Offset;
import org.audiveris.proxymusic.Sound;
import org.audiveris.proxymusic.UprightInverted;
import org.audiveris.proxymusic.YesNo;
import stafette.musicxml.make.BarText.BarPiece;
import stafette.musicxml.make.Fragments;
import stafette.musicxml.text.Origin;
import stafette.musicxml.text.Origin.ElementText;
import stafette.musicxml.text.Origin.MeasureText;
import stafette.time.Position;
import stafette.time.Rational;

/**
 * What a new part takes over from a measure of its model beside metre and key: barlines, rehearsal
 * marks, tempi, signs of repetition, and fermatas where it rests for the whole bar.
 */
final class ModelMarks {
  private static final Pattern ID =
      Pattern.compile("\\s+id\\s*=\\s*(?:\"[^\"]*\"|'[^']*')(?=[^<]*>)");
  private static final Pattern LOCATION =
      Pattern.compile("^<barline[^>]*\\slocation\\s*=\\s*[\"'](\\w+)[\"']");

  private static final Pattern TEMPO_SIGN = Pattern.compile("<(?:rehearsal|metronome)\\b");

  /** Words that set or change a tempo, in Italian, German, French and English; the list is ours. */
  private static final Pattern TEMPO_WORDS =
      Pattern.compile(
          "(?iu)\\b(?:tempo|rit|ritard\\w*|riten\\w*|rall\\w*|accel\\w*|stringendo|allarg\\w*"
              + "|mosso|larg\\w*|lento|adag\\w*|andant\\w*|moderat\\w*|allegr\\w*|vivac\\w*|presto"
              + "|prestissimo|grave|langsam\\w*|schnell\\w*|lebhaft\\w*|mäßig\\w*|zeitmaß|lent|modéré"
              + "|vif|slow|slower|slowly|faster)\\b");

  private static final Pattern MAY_BE_MARK =
      Pattern.compile("<(?:rehearsal|metronome|segno|coda|words)\\b");

  private final Fragments fragments;
  private final Origin origin;
  private final MeasureText measure;
  private final boolean isTold;

  /**
   * The marks of a measure.
   *
   * @param isTold whether the part says tempi and rehearsal marks
   */
  ModelMarks(Fragments fragments, Origin origin, MeasureText measure, boolean isTold) {
    this.isTold = isTold;
    this.fragments = fragments;
    this.origin = origin;
    this.measure = measure;
  }

  /** Whether each part of a score says its tempi and rehearsal marks, not the top one alone. */
  static boolean standInEachPart(Origin origin) {
    return origin.parts().size() > 1
        && origin.parts().stream()
            .allMatch(part -> TEMPO_SIGN.matcher(part.whole().in(origin.text())).find());
  }

  /** The barlines at a place of the measure: "left", "middle" or "right". */
  List<BarPiece> barlines(String location) {
    return measure.elements().stream()
        .filter(element -> element.name().equals("barline"))
        .map(element -> new BarPiece(element.onset(), text(element)))
        .filter(piece -> locationOf(piece.text()).equals(location))
        .toList();
  }

  private static String locationOf(String barline) {
    return LOCATION
        .matcher(barline)
        .results()
        .findFirst()
        .map(found -> found.group(1))
        .orElse("right");
  }

  private String text(ElementText element) {
    return ID.matcher(element.span().in(origin.text())).replaceAll("");
  }

  /**
   * The elements of a bar with the marks among them. One that falls within an element stands before
   * it, with an offset.
   *
   * @param divisions of a quarter in the part
   * @param staff over which marks stand, where the part has several
   */
  List<BarPiece> among(List<BarPiece> pieces, int divisions, Optional<Integer> staff) {
    List<BarPiece> all = new ArrayList<>(pieces);
    List<ElementText> fromLast = new ArrayList<>(measure.elements());
    Collections.reverse(fromLast);
    for (ElementText element : isTold ? fromLast : List.<ElementText>of()) {
      if (element.name().equals("direction") && MAY_BE_MARK.matcher(text(element)).find()) {
        Direction direction = Fragments.read(text(element), Direction.class);
        Position at = at(element, direction);
        mark(direction, staff).ifPresent(mark -> place(mark, at, all, divisions));
      }
    }
    for (BarPiece barline : barlines("middle")) {
      int index = indexAt(barline.at(), all);
      if (all.get(index).at().equals(barline.at())) {
        all.add(index, barline);
      }
    }
    return all;
  }

  /** Where a direction holds: an offset that is none of the sound's is for the eye. */
  private static Position at(ElementText element, Direction direction) {
    Rational offset =
        Optional.ofNullable(direction.getOffset())
            .filter(given -> given.getSound() != YesNo.NO)
            .map(given -> Rational.of(given.getValue()).dividedBy(element.attributes().divisions()))
            .orElse(Rational.ZERO);
    return new Position(element.onset().quarters().plus(offset).max(Rational.ZERO));
  }

  /** What of a direction concerns all parts. */
  private static Optional<Direction> mark(Direction direction, Optional<Integer> staff) {
    List<DirectionType> kept =
        direction.getDirectionType().stream()
            .filter(type -> isSign(type) || !type.getWordsOrSymbol().isEmpty())
            .toList();
    boolean concernsAll =
        Optional.ofNullable(direction.getSound()).filter(ModelMarks::leads).isPresent()
            || kept.stream().anyMatch(type -> isSign(type) || saysTempo(type));
    if (kept.isEmpty() || !concernsAll) {
      return Optional.empty();
    }
    Direction mark = new Direction();
    mark.setPlacement(direction.getPlacement());
    mark.setDirective(direction.getDirective());
    mark.getDirectionType().addAll(kept);
    staff.ifPresent(number -> mark.setStaff(BigInteger.valueOf(number)));
    return Optional.of(mark);
  }

  private static boolean isSign(DirectionType type) {
    return type.getMetronome() != null
        || !type.getRehearsal().isEmpty()
        || !type.getSegno().isEmpty()
        || !type.getCoda().isEmpty();
  }

  private static boolean saysTempo(DirectionType type) {
    return type.getWordsOrSymbol().stream()
        .filter(FormattedTextId.class::isInstance)
        .map(words -> ((FormattedTextId) words).getValue())
        .anyMatch(words -> TEMPO_WORDS.matcher(words).find());
  }

  /** Whether a sound sets a tempo, or leads to another place. */
  private static boolean leads(Sound sound) {
    return Stream.of(
            sound.getTempo(),
            sound.getDacapo(),
            sound.getDalsegno(),
            sound.getTocoda(),
            sound.getFine(),
            sound.getSegno(),
            sound.getCoda())
        .anyMatch(Objects::nonNull);
  }

  private void place(Direction mark, Position at, List<BarPiece> pieces, int divisions) {
    int index = indexAt(at, pieces);
    Position beside = pieces.get(index).at();
    Rational offset = at.quarters().minus(beside.quarters()).times(divisions);
    if (offset.signum() != 0) {
      Offset parted = new Offset();
      parted.setValue(new BigDecimal(offset.numerator()));
      parted.setSound(YesNo.YES);
      mark.setOffset(parted);
    }
    if (offset.isWhole()) {
      String text = ID.matcher(fragments.text("direction", Direction.class, mark)).replaceAll("");
      pieces.add(index, new BarPiece(beside, text));
    }
  }

  /** The index of the first element at a place, or of the first of those that go on there. */
  private static int indexAt(Position at, List<BarPiece> pieces) {
    int index = 0;
    for (int i = 1; i < pieces.size(); i++) {
      boolean isLater = pieces.get(i).at().isAfter(pieces.get(index).at());
      index = isLater && !pieces.get(i).at().isAfter(at) ? i : index;
    }
    return index;
  }

  /** A rest of the whole bar, under a fermata if there is one in the measure. */
  String held(String rest) {
    boolean isHeld =
        measure.elements().stream()
            .anyMatch(element -> element.note().isPresent() && text(element).contains("<fermata"));
    if (!isHeld) {
      return rest;
    }
    Fermata fermata = new Fermata();
    fermata.setType(UprightInverted.UPRIGHT);
    Notations notations = new Notations();
    notations.getTiedOrSlurOrTuplet().add(fermata);
    Note note = Fragments.read(rest, Note.class);
    note.getNotations().add(notations);
    return fragments.text("note", Note.class, note);
  }
}

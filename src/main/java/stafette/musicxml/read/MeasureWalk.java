package stafette.musicxml.read;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import stafette.musicxml.read.WrittenMeasure.SectionMarks;
import stafette.musicxml.text.DecimalText;
import stafette.musicxml.text.Element;
import stafette.musicxml.text.Malformed;
import stafette.musicxml.text.Origin.Attributes;
import stafette.musicxml.text.TextSpan;
import stafette.musicxml.text.UnreadableScore;
import stafette.musicxml.text.XmlWalk;
import stafette.score.Dynamic;
import stafette.time.Landmarks.BarLine;
import stafette.time.Length;
import stafette.time.Meter;
import stafette.time.Rational;
import stafette.words.Sentence;

/** Reads one measure, keeping its cursor. */
final class MeasureWalk {
  /** A movement without bar lines has no more. */
  private static final Length LONGEST = Length.ofQuarters(4_096, 1);

  private static final Map<String, BarLine> BAR_LINES =
      Map.of(
          "light-light", BarLine.DOUBLE,
          "light-heavy", BarLine.FINAL,
          "heavy-light", BarLine.FINAL,
          "heavy-heavy", BarLine.FINAL);

  /** Words that change a tempo without a metronome mark (common practice, no source). */
  private static final Pattern TEMPO_CHANGE =
      Pattern.compile(
          "(?i)\\b(?:rit(?:\\.|ard|en)|rall|accel|string(?:\\.|endo)|allarg|a tempo|tempo (?:i\\b|primo)"
              + "|meno mosso|pi[uù] mosso|l.istesso)");

  private static final Map<String, WrittenMeasure.SwellSign> SWELLS =
      Map.of(
          "wedge crescendo", WrittenMeasure.SwellSign.LOUDER,
          "wedge diminuendo", WrittenMeasure.SwellSign.SOFTER,
          "wedge stop", WrittenMeasure.SwellSign.STOP,
          "dashes start", WrittenMeasure.SwellSign.DASHES,
          "dashes stop", WrittenMeasure.SwellSign.DASHES_STOP);

  private static final Map<String, WrittenMeasure.PedalSign> PEDALS =
      Map.of(
          "start", WrittenMeasure.PedalSign.PRESS,
          "stop", WrittenMeasure.PedalSign.STOP,
          "change", WrittenMeasure.PedalSign.CHANGE,
          "sostenuto", WrittenMeasure.PedalSign.MIDDLE,
          "discontinue", WrittenMeasure.PedalSign.BREAK,
          "resume", WrittenMeasure.PedalSign.RESUME);

  private final AttributesInForce attributes;
  private final boolean severalInstruments;
  private final List<WrittenMeasure.Child> children = new ArrayList<>();
  private final List<WrittenMeasure.PlacedTempo> tempi = new ArrayList<>();
  private final List<PlacedMark<Dynamic>> dynamics = new ArrayList<>();
  private final List<PlacedMark<MannerInForce>> manners = new ArrayList<>();
  private final List<WrittenMeasure.PlacedWords> words = new ArrayList<>();
  private final List<WrittenMeasure.PlacedPedal> pedals = new ArrayList<>();
  private final List<WrittenMeasure.PlacedSwell> swells = new ArrayList<>();
  private Length cursor = Length.ZERO;
  private Length lastOnset = Length.ZERO;
  private Length content = Length.ZERO;
  private Optional<String> rehearsal = Optional.empty();
  private final List<WrittenMeasure.PlacedWords> tempoWords = new ArrayList<>();
  private BarLine before = BarLine.PLAIN;
  private BarLine after = BarLine.PLAIN;

  private MeasureWalk(AttributesInForce attributes, boolean severalInstruments) {
    this.attributes = attributes;
    this.severalInstruments = severalInstruments;
  }

  /** Reads the measure on whose start tag the walk stands. */
  static WrittenMeasure read(
      XmlWalk walk, AttributesInForce attributes, boolean severalInstruments, String part)
      throws UnreadableScore {
    return new MeasureWalk(attributes, severalInstruments).read(walk, part);
  }

  private WrittenMeasure read(XmlWalk walk, String part) throws UnreadableScore {
    String number = walk.attribute("number").map(String::trim).orElse("");
    boolean implicit = walk.attribute("implicit").orElse("no").equals("yes");
    boolean empty = walk.isEmptyElement();
    TextSpan startTag = new TextSpan(walk.start(), walk.end());
    Attributes atStart = attributes.current();
    Optional<Meter> stated = attributes.takeStatedMeter();
    while (walk.nextChild()) {
      Element element = walk.element();
      try {
        read(element);
      } catch (Malformed e) {
        throw unreadable(e, part, number, walk.lineOf(element.span().start()));
      }
      if (cursor.isZero()) {
        Optional<Meter> earlier = stated;
        stated = attributes.takeStatedMeter().or(() -> earlier);
      }
    }
    return new WrittenMeasure(
        number,
        implicit,
        new TextSpan(startTag.start(), walk.end()),
        startTag,
        empty,
        atStart,
        stated,
        List.copyOf(children),
        List.copyOf(tempi),
        List.copyOf(dynamics),
        List.copyOf(manners),
        List.copyOf(words),
        List.copyOf(pedals),
        List.copyOf(swells),
        content,
        new SectionMarks(rehearsal, List.copyOf(tempoWords), before, after));
  }

  private static UnreadableScore unreadable(Malformed e, String part, String number, int line) {
    return new UnreadableScore(
        Sentence.of(
            "{0}, bar {1} (line {2}): {3}. Correct this place and export the score again.",
            part,
            number.length() > 20 ? number.substring(0, 20) + "…" : number,
            line,
            e.inWords()));
  }

  private void read(Element element) throws Malformed {
    Length onset = cursor;
    Optional<WrittenNote> note = Optional.empty();
    switch (element.name()) {
      case "note" -> {
        WrittenNote read = WrittenNote.of(element, attributes, severalInstruments);
        onset = advance(element, read);
        note = Optional.of(read);
      }
      case "backup" -> {
        Length back = WrittenNote.lengthOf(element, attributes);
        cursor = back.compareTo(cursor) >= 0 ? Length.ZERO : cursor.minus(back);
      }
      case "forward" -> moveTo(cursor.plus(WrittenNote.lengthOf(element, attributes)));
      case "attributes" -> attributes.read(element);
      case "direction" -> readDirection(element);
      case "barline" -> readBarLine(element);
      case "sound" -> readSound(element, offsetOf(element), Optional.empty());
      default -> {}
    }
    children.add(
        new WrittenMeasure.Child(
            element.name(), element.span(), onset, attributes.current(), note));
  }

  /** Moves the cursor past a note, and says where the note begins. */
  private Length advance(Element element, WrittenNote note) throws Malformed {
    Length onset = note.text().chord() ? lastOnset : cursor;
    note.notations()
        .dynamic()
        .ifPresent(
            dynamic ->
                dynamics.add(
                    new PlacedMark<>(
                        onset.quarters(), Optional.of(note.text().staff()), before -> dynamic)));
    if (!note.text().chord()) {
      lastOnset = cursor;
      Length end = cursor.plus(note.text().length());
      if (isBarRest(element) && end.compareTo(attributes.nominalLength()) > 0) {
        cursor = end;
        content = longer(content, attributes.nominalLength());
      } else {
        moveTo(end);
      }
    }
    return onset;
  }

  /** A rest for a whole bar is often given the length of a whole note, whatever the metre. */
  private static boolean isBarRest(Element note) {
    return note.child("rest").map(rest -> rest.says("measure", "yes")).orElse(false);
  }

  private void moveTo(Length place) throws Malformed {
    if (place.compareTo(LONGEST) > 0) {
      throw new Malformed(
          Sentence.of(
              "the bar lasts more than {0} quarters; no bar that long is read",
              LONGEST.quarters()));
    }
    cursor = place;
    content = longer(content, place);
  }

  private static Length longer(Length a, Length b) {
    return a.compareTo(b) >= 0 ? a : b;
  }

  private void readBarLine(Element line) {
    BarLine kind =
        line.has("repeat")
            ? BarLine.REPEAT
            : line.textOf("bar-style")
                .map(style -> BAR_LINES.getOrDefault(style, BarLine.PLAIN))
                .orElse(BarLine.PLAIN);
    switch (line.attribute("location").orElse("right")) {
      case "left" -> before = kind;
      case "right" -> after = kind;
      default -> {}
    }
  }

  private void readDirection(Element direction) throws Malformed {
    Rational offset = offsetOf(direction);
    Optional<Integer> staff =
        direction.has("staff")
            ? Optional.of(DecimalText.wholeOf(direction, "staff", 1, 99, 1))
            : Optional.empty();
    for (Element type : direction.all("direction-type")) {
      for (Element sign : type.children()) {
        if (sign.name().equals("rehearsal")) {
          rehearsal = rehearsal.or(() -> Optional.of(sign.text().trim()));
        } else if (sign.name().equals("metronome")) {
          TempoSign.ofMetronome(sign).ifPresent(tempo -> addTempo(offset, tempo));
        } else if (sign.name().equals("dynamics")) {
          DynamicMark.leftBy(sign)
              .ifPresent(left -> dynamics.add(new PlacedMark<>(offset, staff, before -> left)));
        } else if (sign.name().equals("pedal")) {
          addPedal(offset, sign.attribute("type").orElse(""));
        } else {
          addSwell(sign, offset, staff.orElse(1));
        }
      }
    }
    addWords(direction, offset, staff.orElse(1));
    addManners(offset, staff, MannerMark.inDirection(direction));
    Optional<Element> sound = direction.child("sound");
    if (sound.isPresent()) {
      readSound(sound.get(), sound.get().has("offset") ? offsetOf(sound.get()) : offset, staff);
    }
  }

  private void readSound(Element sound, Rational offset, Optional<Integer> staff) {
    TempoSign.ofSound(sound).ifPresent(tempo -> addTempo(offset, tempo));
    addManners(offset, staff, MannerMark.inSound(sound));
    sound
        .attribute("damper-pedal")
        .ifPresent(how -> addPedal(offset, how.equals("no") || how.equals("0") ? "stop" : "start"));
    for (Element change : sound.all("instrument-change")) {
      change
          .textOf("instrument-sound")
          .ifPresent(
              name ->
                  words.add(
                      new WrittenMeasure.PlacedWords(
                          offset, staff.orElse(1), Optional.empty(), name)));
    }
  }

  private void addWords(Element direction, Rational offset, int staff) {
    String text =
        direction.all("direction-type").stream()
            .flatMap(type -> type.all("words").stream())
            .map(Element::text)
            .collect(Collectors.joining(" "))
            .trim()
            .replaceAll("\\s+", " ");
    if (!text.isEmpty()) {
      WrittenMeasure.PlacedWords placed =
          new WrittenMeasure.PlacedWords(
              offset, staff, direction.textOf("voice").map(String::trim), text);
      words.add(placed);
      if (setsTempo(direction) || TEMPO_CHANGE.matcher(text).find()) {
        tempoWords.add(placed);
      }
    }
  }

  private static boolean setsTempo(Element direction) {
    return direction.child("sound").flatMap(TempoSign::ofSound).isPresent()
        || direction.all("direction-type").stream()
            .flatMap(type -> type.all("metronome").stream())
            .anyMatch(mark -> TempoSign.ofMetronome(mark).isPresent());
  }

  private void addSwell(Element sign, Rational offset, int staff) throws Malformed {
    String kind = sign.name() + " " + sign.attribute("type").orElse("");
    WrittenMeasure.SwellSign meant = SWELLS.get(kind);
    if (meant != null) {
      int number =
          sign.attribute("number").filter("\\d{1,2}"::matches).map(Integer::parseInt).orElse(1);
      swells.add(new WrittenMeasure.PlacedSwell(offset, staff, number, meant));
    }
  }

  private void addPedal(Rational offset, String type) {
    Optional.ofNullable(PEDALS.get(type))
        .ifPresent(sign -> pedals.add(new WrittenMeasure.PlacedPedal(offset, sign)));
  }

  private void addManners(Rational offset, Optional<Integer> staff, List<MannerMark> marks) {
    marks.forEach(mark -> manners.add(new PlacedMark<>(offset, staff, mark)));
  }

  private void addTempo(Rational offset, TempoSign sign) {
    tempi.add(new WrittenMeasure.PlacedTempo(offset, sign));
  }

  /** Where a direction holds; an offset that says that it is none of the sound's is for the eye. */
  private Rational offsetOf(Element direction) throws Malformed {
    Optional<Element> offset = direction.child("offset").filter(o -> !o.says("sound", "no"));
    return offset.isEmpty()
        ? cursor.quarters()
        : cursor.quarters().plus(attributes.quarters(DecimalText.of(offset.get())));
  }
}

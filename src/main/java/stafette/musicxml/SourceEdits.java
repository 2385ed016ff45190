package stafette.musicxml;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import stafette.musicxml.Origin.ElementText;
import stafette.musicxml.Origin.MeasureText;
import stafette.musicxml.Origin.NoteText;
import stafette.musicxml.Origin.PartText;
import stafette.plan.SourceTreatment;
import stafette.score.Line;
import stafette.score.Stroke;

/**
 * Turns the line's notes, where it was taken from, into cue notes or rests, by small changes to
 * their text.
 */
final class SourceEdits {
  private static final Pattern TIE =
      Pattern.compile("\\s*<tie\\s[^>]*/>|\\s*<tie\\s[^>]*>\\s*</tie>");
  private static final Pattern START_TAG = Pattern.compile("<note(?:\\s[^>]*)?>");
  private static final Pattern GRACE =
      Pattern.compile("<grace(?:\\s[^>]*)?/>|<grace(?:\\s[^>]*)?>\\s*</grace>");
  private static final Pattern SOUND =
      Pattern.compile("<(pitch|unpitched)[\\s>].*?</\\1>|<unpitched\\s*/>", Pattern.DOTALL);
  private static final Pattern CHORD = Pattern.compile("\\s*<chord\\s*/>");
  private static final Pattern SLUR = Pattern.compile("\\s*<slur\\s[^>]*/>");
  private static final Pattern TYPE = Pattern.compile("type\\s*=\\s*[\"'](\\w+)[\"']");
  private static final Pattern NUMBER = Pattern.compile("number\\s*=\\s*[\"'](\\d+)[\"']");

  /** What a rest keeps of the note that it replaces, in the schema's order. */
  private static final List<Pattern> KEPT_IN_RESTS =
      List.of(
          element("duration"),
          element("voice"),
          element("type"),
          Pattern.compile("<dot\\s*/>"),
          element("time-modification"),
          element("staff"));

  private static final Pattern TUPLET =
      Pattern.compile("<tuplet\\s[^>]*/>|<tuplet\\s[^>]*>.*?</tuplet>", Pattern.DOTALL);

  private final Origin origin;
  private final PartText part;
  private final Line line;
  private final Optional<Assigned> own;
  private final List<Replacement> replacements = new ArrayList<>();
  private final Set<String> openSlurs = new HashSet<>();

  /**
   * Edits to a part.
   *
   * @param own what the part's own player keeps of the line
   */
  SourceEdits(Origin origin, PartText part, Line line, Optional<Assigned> own) {
    this.origin = origin;
    this.part = part;
    this.line = line;
    this.own = own;
  }

  List<Replacement> replacements(SourceTreatment treatment) {
    int last = line.bars().at(line.span().end()).index();
    for (int bar = line.source().firstBar(); bar <= last; bar++) {
      MeasureText measure = part.measures().get(bar);
      if (treatment == SourceTreatment.CUE) {
        cue(measure);
      } else {
        remove(measure);
      }
    }
    if (treatment == SourceTreatment.REMOVE) {
      closeSlurs(last);
    }
    return replacements;
  }

  private void cue(MeasureText measure) {
    for (ElementText element : measure.elements()) {
      if (isOfLine(element) && !element.note().orElseThrow().cue()) {
        String text = element.span().in(origin.text());
        Matcher anchor = (element.note().get().grace() ? GRACE : START_TAG).matcher(text);
        if (anchor.find()) {
          String cued =
              text.substring(0, anchor.end())
                  + "<cue/>"
                  + TIE.matcher(text.substring(anchor.end())).replaceAll("");
          replacements.add(new Replacement(element.span(), cued));
        }
      }
    }
  }

  private void remove(MeasureText measure) {
    List<ElementText> elements = measure.elements();
    int i = 0;
    while (i < elements.size()) {
      int end = i + 1;
      if (elements.get(i).note().isPresent()) {
        while (end < elements.size()
            && elements.get(end).note().filter(NoteText::chord).isPresent()) {
          end++;
        }
        removeFrom(elements.subList(i, end));
      }
      i = end;
    }
  }

  /**
   * Takes the line's tones out of one chord; what is left of it stays, and if nothing is, a rest.
   */
  private void removeFrom(List<ElementText> chord) {
    List<ElementText> gone = chord.stream().filter(this::isOfLine).toList();
    if (gone.isEmpty()) {
      return;
    }
    List<ElementText> left = chord.stream().filter(element -> !gone.contains(element)).toList();
    ElementText foremost = chord.get(0);
    if (left.isEmpty()) {
      noteSlurs(foremost.span().in(origin.text()));
      boolean grace = foremost.note().orElseThrow().grace();
      gone.stream().skip(grace ? 0 : 1).forEach(this::delete);
      if (!grace) {
        replacements.add(new Replacement(foremost.span(), rest(foremost.span().in(origin.text()))));
      }
    } else if (gone.contains(foremost)) {
      replacements.add(
          new Replacement(
              foremost.span(),
              withSoundOf(
                  foremost.span().in(origin.text()), left.get(0).span().in(origin.text()))));
      delete(left.get(0));
      gone.stream().skip(1).forEach(this::delete);
    } else {
      gone.forEach(this::delete);
    }
  }

  /** Deletes an element with the white space before it. */
  private void delete(ElementText element) {
    int start = element.span().start();
    while (start > 0 && Character.isWhitespace(origin.text().charAt(start - 1))) {
      start--;
    }
    replacements.add(new Replacement(new TextSpan(start, element.span().end()), ""));
  }

  private static String rest(String note) {
    Matcher tag = START_TAG.matcher(note);
    StringBuilder rest = new StringBuilder(tag.find() ? tag.group() : "<note>").append("<rest/>");
    for (Pattern kept : KEPT_IN_RESTS) {
      Matcher found = kept.matcher(note);
      while (found.find()) {
        rest.append(found.group());
      }
    }
    Matcher tuplet = TUPLET.matcher(note);
    StringBuilder brackets = new StringBuilder();
    while (tuplet.find()) {
      brackets.append(tuplet.group());
    }
    if (!brackets.isEmpty()) {
      rest.append("<notations>").append(brackets).append("</notations>");
    }
    return rest.append("</note>").toString();
  }

  /** The first note of a chord with the tone of another one, whose own element goes. */
  private static String withSoundOf(String note, String other) {
    Matcher sound = SOUND.matcher(CHORD.matcher(other).replaceFirst(""));
    String tone = sound.find() ? sound.group() : "";
    String accidentals = "\\s*<accidental[\\s>].*?</accidental>";
    String without = note.replaceAll("(?s)" + accidentals, "");
    return SOUND.matcher(without).replaceFirst(Matcher.quoteReplacement(tone));
  }

  private void noteSlurs(String note) {
    Matcher slur = SLUR.matcher(note);
    while (slur.find()) {
      String number = numberOf(slur.group());
      if (isType(slur.group(), "start")) {
        openSlurs.add(number);
      } else if (isType(slur.group(), "stop")) {
        openSlurs.remove(number);
      }
    }
  }

  /** Slurs that began in what was taken out must not end after it. */
  private void closeSlurs(int lastBar) {
    for (int bar = lastBar; bar < part.measures().size() && !openSlurs.isEmpty(); bar++) {
      for (ElementText element : part.measures().get(bar).elements()) {
        if (element.note().isPresent() && !isOfLine(element) && isInVoice(element.note().get())) {
          closeSlurs(element);
        }
      }
    }
  }

  private void closeSlurs(ElementText element) {
    String text = element.span().in(origin.text());
    Matcher slur = SLUR.matcher(text);
    while (slur.find()) {
      if (isType(slur.group(), "stop") && openSlurs.remove(numberOf(slur.group()))) {
        int at = element.span().start();
        replacements.add(new Replacement(new TextSpan(at + slur.start(), at + slur.end()), ""));
      }
    }
  }

  private static boolean isType(String tag, String type) {
    Matcher found = TYPE.matcher(tag);
    return found.find() && found.group(1).equals(type);
  }

  private static String numberOf(String tag) {
    Matcher found = NUMBER.matcher(tag);
    return found.find() ? found.group(1) : "1";
  }

  private boolean isInVoice(NoteText note) {
    return note.voice().equals(line.source().voice()) && note.staff() == line.source().staff();
  }

  /** Whether a note element is one of the line's, and not one that its own player keeps. */
  private boolean isOfLine(ElementText element) {
    Optional<NoteText> note = element.note().filter(n -> !n.rest()).filter(this::isInVoice);
    if (note.isEmpty()) {
      return false;
    }
    for (int j = 0; j < line.count(); j++) {
      int stroke = j;
      if (isPartOf(element, note.get(), line.stroke(j))) {
        return own.filter(assigned -> assigned.plays(stroke)).isEmpty();
      }
    }
    return false;
  }

  /** Whether a note element holds a stroke, or is tied to it; one with slashes holds several. */
  private static boolean isPartOf(ElementText element, NoteText note, Stroke stroke) {
    if (note.grace()) {
      return element.onset().equals(stroke.onset()) && !stroke.graces().isEmpty();
    }
    boolean sounding = stroke.tones().stream().anyMatch(tone -> tone.key() == note.key());
    boolean holds =
        !stroke.onset().isBefore(element.onset())
            && stroke.onset().isBefore(element.onset().plus(note.length()));
    return sounding && (holds || stroke.span().contains(element.onset()));
  }

  private static Pattern element(String name) {
    return Pattern.compile("<" + name + "(?:\\s[^>]*)?>.*?</" + name + ">", Pattern.DOTALL);
  }
}

package stafette.musicxml.write;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import stafette.musicxml.make.BarText.BarPiece;
import stafette.musicxml.make.NoteRewrite;
import stafette.musicxml.text.Origin;
import stafette.musicxml.text.Origin.ElementText;
import stafette.musicxml.text.Origin.MeasureText;
import stafette.musicxml.text.Replacement;
import stafette.musicxml.text.TextSpan;
import stafette.time.Position;

/**
 * Beams of a part that lead into a stretch that is written anew, or out of it. Where its notes keep
 * their values they keep the beam; else what is left outside is beamed anew.
 */
final class BeamsAcross {
  private static final Pattern VALUE =
      Pattern.compile("<(type|dot|actual-notes|normal-notes)(?:\\s[^>]*)?(?:/>|>([^<]*))");
  private static final Pattern BEAMS =
      Pattern.compile(
          "\\s*<beam(?:\\s[^>]*)?>[^<]*</beam>(?:\\s*<beam(?:\\s[^>]*)?>[^<]*</beam>)*");
  private static final Pattern AFTER_BEAMS =
      Pattern.compile("(?=\\s*(?:<notations|<lyric|<play|<listen|</note>))");

  private final Origin origin;
  private final Set<ElementText> inside;
  private final List<List<ElementText>> broken = new ArrayList<>();

  /** The beams that notes of the stretch keep, by onset. */
  private final Map<Position, String> kept = new HashMap<>();

  /**
   * Looks at the beams of a run's voice.
   *
   * @param pieces what is written in the place of the run
   */
  BeamsAcross(Origin origin, MeasureText measure, VoiceRun run, List<BarPiece> pieces) {
    this.origin = origin;
    this.inside = new HashSet<>(measure.elements().subList(run.from(), run.to()));
    Map<Position, String> values = new HashMap<>();
    pieces.stream()
        .filter(piece -> isNote(piece.text()))
        .forEach(piece -> values.merge(piece.at(), value(piece.text()), (one, other) -> one));
    for (List<ElementText> group : groups(measure, run)) {
      if (group.stream().anyMatch(inside::contains) && !inside.containsAll(group)) {
        take(group, values);
      }
    }
  }

  private static boolean isNote(String text) {
    return text.startsWith("<note") && !text.contains("<grace") && !text.contains("<rest");
  }

  private void take(List<ElementText> group, Map<Position, String> values) {
    List<ElementText> anew = group.stream().filter(inside::contains).toList();
    boolean keeps = anew.stream().allMatch(old -> value(text(old)).equals(values.get(old.onset())));
    if (keeps) {
      anew.forEach(
          old ->
              BEAMS
                  .matcher(text(old))
                  .results()
                  .findFirst()
                  .ifPresent(beams -> kept.put(old.onset(), beams.group().strip())));
    } else {
      broken.add(group);
    }
  }

  /** The groups of notes under one beam, in a run's voice. */
  private List<List<ElementText>> groups(MeasureText measure, VoiceRun run) {
    List<List<ElementText>> groups = new ArrayList<>();
    List<ElementText> open = new ArrayList<>();
    for (ElementText element : measure.elements()) {
      boolean own =
          element
              .note()
              .filter(note -> note.voice().equals(run.voice()) && note.staff() == run.staff())
              .filter(note -> !note.chord() && !note.grace())
              .isPresent();
      String beam = own ? NoteRewrite.firstBeam(text(element)) : "";
      if (beam.equals("begin")) {
        open = new ArrayList<>();
      }
      if (!beam.isEmpty()) {
        open.add(element);
      }
      if (beam.equals("end")) {
        groups.add(open);
      }
    }
    return groups;
  }

  /** The pieces of the run, with the beams that they keep. */
  List<BarPiece> kept(List<BarPiece> pieces) {
    return pieces.stream()
        .map(
            piece ->
                isNote(piece.text())
                        && !piece.text().contains("<chord")
                        && kept.containsKey(piece.at())
                    ? new BarPiece(piece.at(), beamed(piece))
                    : piece)
        .toList();
  }

  private String beamed(BarPiece piece) {
    String bare = BEAMS.matcher(piece.text()).replaceFirst("");
    String beams = Optional.ofNullable(kept.get(piece.at())).orElseThrow();
    return AFTER_BEAMS.matcher(bare).replaceFirst(Matcher.quoteReplacement(beams));
  }

  /** What changes beside the run. */
  List<Replacement> beside() {
    List<Replacement> replacements = new ArrayList<>();
    for (List<ElementText> group : broken) {
      EditedPart edited = new EditedPart(origin);
      group.stream().filter(inside::contains).forEach(note -> edited.silence(note.span()));
      new BeamEdits(origin, edited).anew(group.stream().map(ElementText::span).toList());
      group.stream()
          .filter(note -> !inside.contains(note))
          .forEach(note -> replacements.addAll(beams(note.span(), edited.textOf(note.span()))));
    }
    return replacements;
  }

  /** A replacement of a note's beams alone, since other changes may go into its text too. */
  private List<Replacement> beams(TextSpan note, String text) {
    String now = BEAMS.matcher(text).results().findFirst().map(MatchResult::group).orElse("");
    return BEAMS
        .matcher(note.in(origin.text()))
        .results()
        .findFirst()
        .filter(found -> !found.group().equals(now))
        .map(
            found ->
                new Replacement(
                    new TextSpan(note.start() + found.start(), note.start() + found.end()), now))
        .stream()
        .toList();
  }

  /** What tells one written value from another: type, dots and tuplet. */
  private static String value(String note) {
    return VALUE
        .matcher(note)
        .results()
        .map(found -> found.group(1) + " " + found.group(2))
        .collect(Collectors.joining(", "));
  }

  private String text(ElementText element) {
    return element.span().in(origin.text());
  }
}

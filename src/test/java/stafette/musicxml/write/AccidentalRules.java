package stafette.musicxml.write;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import stafette.musicxml.write.ReadPage.Bar;
import stafette.musicxml.write.ReadPage.Note;
import stafette.musicxml.write.ReadPage.Part;
import stafette.musicxml.write.ReadPage.Pitch;
import stafette.musicxml.write.WrittenRule.Wrong;

/** Each note has the accidental that it needs on its staff, and none without a reason. */
final class AccidentalRules {
  private static final Wrong NOTHING = (bar, what) -> {};

  static final List<WrittenRule> ALL =
      List.of(
          new WrittenRule(
              "no accidental is missing or wrong",
              (source, page, part, wrong) -> judge(part, wrong, NOTHING)),
          new WrittenRule(
              WrittenRules.NO_IDLE_ACCIDENTAL,
              (source, page, part, wrong) -> judge(part, NOTHING, wrong)));

  private static final String SHARPS = "FCGDAEB";
  private static final Map<String, Integer> ALTERS =
      Map.of(
          "natural",
          0,
          "sharp",
          1,
          "flat",
          -1,
          "double-sharp",
          2,
          "sharp-sharp",
          2,
          "flat-flat",
          -2,
          "double-flat",
          -2,
          "natural-sharp",
          1,
          "natural-flat",
          -1);
  private static final List<String> MARKS =
      List.of("cautionary", "editorial", "parentheses", "bracket");

  private final Wrong missing;
  private final Wrong idle;
  private Set<Pitch> before = Set.of();
  private int fifthsBefore;

  private AccidentalRules(Wrong missing, Wrong idle) {
    this.missing = missing;
    this.idle = idle;
  }

  private static void judge(Part part, Wrong missing, Wrong idle) {
    Set<String> staves =
        part.bars().stream()
            .flatMap(bar -> bar.notes().stream())
            .map(Note::staff)
            .collect(Collectors.toCollection(TreeSet::new));
    for (String staff : staves) {
      AccidentalRules rules = new AccidentalRules(missing, idle);
      part.bars().forEach(bar -> rules.judge(bar, staff));
    }
  }

  private void judge(Bar bar, String staff) {
    Map<String, Integer> inForce = new HashMap<>();
    Set<Pitch> soFar = new HashSet<>();
    int fifths = fifthsBefore;
    for (Note note : bar.inTime()) {
      Optional<Pitch> pitch = note.pitch().filter(found -> note.staff().equals(staff));
      if (pitch.isPresent()) {
        fifths = note.fifths();
        judge(bar, note, pitch.get(), inForce, soFar);
        soFar.add(pitch.get());
      }
    }
    before = soFar;
    fifthsBefore = fifths;
  }

  private void judge(
      Bar bar, Note note, Pitch pitch, Map<String, Integer> inForce, Set<Pitch> soFar) {
    String place = pitch.step() + pitch.octave();
    int holds =
        Objects.requireNonNull(inForce.getOrDefault(place, byKey(pitch.step(), note.fifths())));
    Optional<Tag> shown = note.tag().first("accidental");
    String called = pitch + " at " + note.onset();
    if (shown.isEmpty() && tiedOver(note)) {
      return;
    }
    if (shown.isEmpty() && holds != pitch.alter()) {
      missing.say(bar, called + " lacks its accidental");
    }
    shown
        .filter(sign -> ALTERS.getOrDefault(sign.text(), pitch.alter()) != pitch.alter())
        .ifPresent(sign -> missing.say(bar, called + " has a " + sign.text()));
    shown
        .filter(sign -> holds == pitch.alter() && !reminds(sign, note, pitch, soFar))
        .ifPresent(sign -> idle.say(bar, called + " has a " + sign.text() + " that is in force"));
    inForce.put(place, pitch.alter());
  }

  private static boolean tiedOver(Note note) {
    return note.onset().signum() == 0
        && (note.tag().all("tie").stream().anyMatch(tie -> tie.attribute("type", "").equals("stop"))
            || note.notations("tied").stream()
                .anyMatch(tie -> tie.attribute("type", "").equals("stop")));
  }

  private boolean reminds(Tag sign, Note note, Pitch pitch, Set<Pitch> soFar) {
    return MARKS.stream().anyMatch(mark -> sign.attribute(mark, "no").equals("yes"))
        || fifthsBefore != note.fifths()
        || soFar.stream().anyMatch(other -> otherwise(other, pitch))
        || before.stream().anyMatch(other -> otherwise(other, pitch));
  }

  private static boolean otherwise(Pitch other, Pitch pitch) {
    return other.step().equals(pitch.step()) && other.alter() != pitch.alter();
  }

  private static int byKey(String step, int fifths) {
    int place = SHARPS.indexOf(step);
    return place < fifths ? 1 : SHARPS.length() - 1 - place < -fifths ? -1 : 0;
  }
}

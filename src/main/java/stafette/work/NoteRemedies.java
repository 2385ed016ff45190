package stafette.work;

import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import stafette.ask.Briefing;
import stafette.check.alone.Thinning;
import stafette.keep.LimitsInForce;
import stafette.keep.OpenScore;
import stafette.limits.Act;
import stafette.plan.Brief;
import stafette.score.Line;
import stafette.score.Pitch;
import stafette.score.Slurring;
import stafette.score.Stroke;
import stafette.score.Tremolo;
import stafette.score.Voice;
import stafette.words.Refusal;

/** Remedies that change the notes: slurs, tremolo, thinning. */
final class NoteRemedies {
  private final Briefing briefing;
  private final Brief brief;
  private final LimitsInForce limits;
  private final RemedyTrials trials;

  NoteRemedies(Briefing briefing, LimitsInForce limits, RemedyTrials trials) {
    this.briefing = briefing;
    this.brief = briefing.brief();
    this.limits = limits;
    this.trials = trials;
  }

  /** The fewest new slurs that are enough. */
  List<Remedy> slurred() throws Refusal {
    for (Slurring slurring : Slurring.changes()) {
      if (briefing.request().line().slurring() == Slurring.AS_WRITTEN) {
        Brief slurred = briefing.slurring(slurring);
        Optional<Remedy> remedy =
            slurred.hasNotesOf(brief)
                ? Optional.empty()
                : trials.remedy(new Change.Slurred(slurring), slurred);
        if (remedy.isPresent()) {
          return remedy.stream().toList();
        }
      }
    }
    return List.of();
  }

  /** Bows that shake where slashes were taken for counted strokes. */
  List<Remedy> tremolo() throws Refusal {
    boolean counted =
        briefing.request().line().tremolo() != Tremolo.UNMEASURED
            && brief.rules().locks().isEmpty()
            && brief.players().stream()
                .flatMap(player -> player.skills().stream())
                .anyMatch(skill -> skill.technique().act() == Act.BOW);
    if (!counted) {
      return List.of();
    }
    OpenScore again = OpenScore.open(briefing.score().file(), Tremolo.UNMEASURED, false, limits);
    Brief shaken = briefing.in(again, Tremolo.UNMEASURED).brief();
    return shaken.line().count() < brief.line().count()
        ? trials.remedy(new Change.Shaken(), shaken).stream().toList()
        : List.of();
  }

  /** The fullest pattern; locks speak of notes that it may leave out, so it needs a free plan. */
  List<Remedy> thinned() {
    if (!brief.rules().locks().isEmpty()
        || !brief.lines().stream().allMatch(brief.line()::equals)) {
      return List.of();
    }
    for (Thinning thinning : Thinning.partial()) {
      Optional<Remedy> remedy =
          thinning
              .of(brief.line())
              .flatMap(
                  line ->
                      trials.remedy(
                          new Change.Thinned(thinning),
                          thinned(line.withClockFrom(brief.line().clockStart()))));
      if (remedy.isPresent()) {
        return remedy.stream().toList();
      }
    }
    return List.of();
  }

  private Brief thinned(Line line) {
    return new Brief(
        Collections.nCopies(brief.lines().size(), line), brief.players(), brief.rules());
  }

  /**
   * Whether something else lies above most of the line's notes: then the ear follows that (common
   * practice, no source).
   */
  boolean areInBackground() {
    Line line = brief.line();
    boolean[] below = new boolean[line.count()];
    briefing.score().score().parts().stream()
        .flatMap(part -> part.voices().stream())
        .forEach(voice -> mark(below, line, voice));
    long count = IntStream.range(0, below.length).filter(j -> below[j]).count();
    return 2 * count > line.count();
  }

  /** Marks the strokes of the line that begin below a note of a voice. */
  private static void mark(boolean[] below, Line line, Voice voice) {
    int from = 0;
    for (Stroke other : voice.strokes()) {
      while (from < line.count() && line.stroke(from).onset().isBefore(other.onset())) {
        from++;
      }
      for (int j = from; j < line.count() && other.span().contains(line.stroke(j).onset()); j++) {
        below[j] |= isAbove(other, line.stroke(j));
      }
    }
  }

  private static boolean isAbove(Stroke other, Stroke stroke) {
    return other.top() instanceof Pitch there
        && stroke.top() instanceof Pitch here
        && there.midi() > here.midi();
  }
}

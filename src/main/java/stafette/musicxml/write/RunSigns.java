package stafette.musicxml.write;

import java.util.List;
import java.util.Optional;
import org.audiveris.proxymusic.Direction;
import stafette.musicxml.make.Fragments;
import stafette.musicxml.make.SignMaker;
import stafette.musicxml.share.Assigned;
import stafette.musicxml.share.Sign;
import stafette.musicxml.text.Origin;
import stafette.musicxml.text.Origin.ElementText;
import stafette.musicxml.text.Origin.MeasureText;
import stafette.musicxml.text.TextStyle;
import stafette.score.Hairpin;
import stafette.time.Bar;

/** The signs of runs that are written into a part: those to write, and those that stand already. */
final class RunSigns {
  private final Origin origin;
  private final Assigned assigned;
  private final Fragments fragments;
  private final FormerDynamics dynamics;
  private final SwellSigns swells;
  private final TextStyle style;

  /**
   * @param dynamics the part's own
   * @param hairpins the part's own
   */
  RunSigns(
      Origin origin,
      Assigned assigned,
      Fragments fragments,
      FormerDynamics dynamics,
      List<Hairpin> hairpins) {
    this.origin = origin;
    this.assigned = assigned;
    this.fragments = fragments;
    this.dynamics = dynamics;
    this.swells = new SwellSigns(origin, hairpins);
    this.style = TextStyle.of(origin);
  }

  /** The signs to write: all of the run's but those that stand there in another form. */
  List<Sign> in(MeasureText measure, VoiceRun run, Optional<Integer> staff, Bar bar) {
    return of(run, bar).stream()
        .filter(
            sign ->
                measure.elements().stream()
                    .noneMatch(
                        element -> isSaid(element, sign, run) && !isOwn(element, run, staff, bar)))
        .toList();
  }

  private boolean isSaid(ElementText element, Sign sign, VoiceRun run) {
    return dynamics.says(element, sign, run.staff())
        || MannerSigns.says(element, sign, origin)
        || PedalMarks.says(element, sign, origin)
        || swells.says(element, sign);
  }

  /** The signs of a run but hairpins where the part has others. */
  private List<Sign> of(VoiceRun run, Bar bar) {
    return assigned.signs(bar.index()).stream()
        .filter(sign -> run.span().contains(sign.note()) && !swells.exclude(sign))
        .toList();
  }

  /** The run with the signs around it that we would write ourselves. */
  VoiceRun around(MeasureText measure, VoiceRun run, Optional<Integer> staff, Bar bar) {
    if (!run.lead().isZero()) {
      return run;
    }
    List<ElementText> elements = measure.elements();
    int from = run.from();
    while (from > 0 && isOwn(elements.get(from - 1), run, staff, bar)) {
      from--;
    }
    int to = run.to();
    while (to > from && to < elements.size() && isOwn(elements.get(to), run, staff, bar)) {
      to++;
    }
    return run.within(from, to);
  }

  /** Whether an element is a sign of a run as we would write it. */
  boolean isOwn(ElementText element, VoiceRun run, Optional<Integer> staff, Bar bar) {
    if (!element.name().equals("direction")) {
      return false;
    }
    String text = TextStyle.bare(element.span().in(origin.text()));
    return of(run, bar).stream()
        .anyMatch(sign -> sign.at().equals(element.onset()) && bare(sign, staff).equals(text));
  }

  private String bare(Sign sign, Optional<Integer> staff) {
    return TextStyle.bare(
        style.set(
            fragments.text("direction", Direction.class, SignMaker.direction(sign, staff)), ""));
  }
}

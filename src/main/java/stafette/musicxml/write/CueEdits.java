package stafette.musicxml.write;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stafette.musicxml.make.CueText;
import stafette.musicxml.make.Fragments;
import stafette.musicxml.make.NoteMaker;
import stafette.musicxml.make.UnwritablePlan;
import stafette.musicxml.share.EntryCue;
import stafette.musicxml.text.Origin;
import stafette.musicxml.text.Origin.ElementText;
import stafette.musicxml.text.Origin.MeasureText;
import stafette.musicxml.text.Origin.PartText;
import stafette.musicxml.text.Replacement;
import stafette.musicxml.text.TextSpan;
import stafette.musicxml.text.TextStyle;
import stafette.score.Line;
import stafette.time.Bar;
import stafette.time.Rational;

/**
 * Writes cues before entries into a part that the score has: in a voice more, where its bar is
 * written out to the end and holds no cue yet.
 */
record CueEdits(Origin origin, PartText part, Line line, Fragments fragments) {
  /**
   * What is added, bar by bar.
   *
   * @throws UnwritablePlan if lengths have no common part that can be written
   */
  List<Replacement> replacements(List<EntryCue> cues) throws UnwritablePlan {
    List<Replacement> made = new ArrayList<>();
    for (EntryCue cue : cues) {
      int first = line.bars().at(cue.span().start()).index();
      for (int index = first; index <= first + 1; index++) {
        if (index < part.measures().size()) {
          in(line.bars().get(index), part.measures().get(index), cue).ifPresent(made::add);
        }
      }
    }
    return made;
  }

  private Optional<Replacement> in(Bar bar, MeasureText measure, EntryCue cue)
      throws UnwritablePlan {
    Optional<VoiceRun> run =
        CueText.standsIn(measure)
            ? Optional.empty()
            : ExtraVoice.in(measure, bar).filter(voice -> voice.lead().equals(bar.span().length()));
    if (run.isEmpty()) {
      return Optional.empty();
    }
    int at = run.get().from();
    ElementText last = measure.elements().get(at - 1);
    Origin.Attributes inForce = last.attributes();
    Optional<Integer> staff =
        inForce.staves() > 1 ? Optional.of(run.get().staff()) : Optional.empty();
    Optional<CueText> text =
        CueText.in(
            bar,
            cue,
            fragments,
            NoteMaker.spellingIn(inForce),
            inForce.fifths(),
            run.get().voice(),
            staff,
            run.get().lead());
    if (text.isEmpty() || !inForce.divisions().isWhole()) {
      return Optional.empty();
    }
    int divisions = text.get().divisions(inForce.divisions());
    if (!Rational.of(divisions).equals(inForce.divisions())) {
      return Optional.empty();
    }
    TextStyle style = TextStyle.of(origin);
    String lineBreak = style.breakWithin(origin.text(), measure);
    StringBuilder added = new StringBuilder();
    text.get()
        .elements(divisions)
        .forEach(each -> added.append(lineBreak).append(style.set(each, lineBreak)));
    int end = last.span().end();
    return Optional.of(new Replacement(new TextSpan(end, end), added.toString()));
  }
}

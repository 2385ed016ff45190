package stafette.musicxml.write;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import stafette.musicxml.make.NoteRewrite;
import stafette.musicxml.text.Origin;
import stafette.musicxml.text.Origin.ElementText;
import stafette.musicxml.text.Origin.MeasureText;
import stafette.musicxml.text.Origin.NoteText;
import stafette.musicxml.text.TextSpan;
import stafette.notation.Beams;

/** Draws beams that lose notes anew over those that stay side by side. */
final class BeamEdits {
  private final Origin origin;
  private final EditedPart part;

  BeamEdits(Origin origin, EditedPart part) {
    this.origin = origin;
    this.part = part;
  }

  void balance(MeasureText measure, Predicate<NoteText> inVoice) {
    List<TextSpan> group = new ArrayList<>();
    for (ElementText element : measure.elements()) {
      if (element.note().filter(n -> inVoice.test(n) && !n.chord() && !n.grace()).isPresent()) {
        String beam = NoteRewrite.firstBeam(element.span().in(origin.text()));
        if (beam.equals("begin")) {
          group.clear();
        }
        if (!beam.isEmpty()) {
          group.add(element.span());
        }
        if (beam.equals("end") && !group.stream().allMatch(part::stays)) {
          anew(group);
        }
      }
    }
  }

  private void anew(List<TextSpan> group) {
    int from = 0;
    while (from < group.size()) {
      int to = from;
      while (to < group.size() && part.stays(group.get(to))) {
        to++;
      }
      together(group.subList(from, to));
      from = to + 1;
    }
  }

  private void together(List<TextSpan> notes) {
    List<Integer> flags =
        notes.stream().map(note -> NoteRewrite.beams(note.in(origin.text()))).toList();
    List<List<String>> beams = Beams.over(flags);
    for (int i = 0; i < notes.size(); i++) {
      List<String> values = beams.get(i);
      part.edit(notes.get(i), text -> NoteRewrite.withBeams(text, values));
    }
  }
}

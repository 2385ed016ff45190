package stafette.picture;

import java.util.ArrayList;
import java.util.List;

/** Shows marks once more in the ink of what stands beside the matter. */
final class Greyed implements Mark.Hand {
  private final List<Mark> marks = new ArrayList<>();

  private Greyed() {}

  static List<Mark> of(List<Mark> marks) {
    Greyed greyed = new Greyed();
    marks.forEach(mark -> mark.show(greyed));
    return List.copyOf(greyed.marks);
  }

  @Override
  public void fill(Mark.Fill fill) {
    Ink ink = fill.ink() == Ink.PAPER ? Ink.PAPER : Ink.FAINT;
    marks.add(new Mark.Fill(fill.path(), ink));
  }

  @Override
  public void stroke(Mark.Stroke stroke) {
    marks.add(new Mark.Stroke(stroke.path(), stroke.width(), Ink.FAINT));
  }

  @Override
  public void words(Mark.Words words) {
    marks.add(
        new Mark.Words(words.text(), words.x(), words.y(), words.size(), words.face(), Ink.FAINT));
  }

  @Override
  public void group(Mark.Group group) {
    marks.add(new Mark.Group(group.id(), group.title(), group.data(), of(group.marks())));
  }
}

package stafette.picture.ink;

import java.util.ArrayList;
import java.util.List;

/** Shows marks once more in the ink of what stands beside the matter. */
public final class Greyed implements Mark.Hand {
  private final List<Mark> marks = new ArrayList<>();

  private Greyed() {}

  public static List<Mark> of(List<Mark> marks) {
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
  public void stroke(Mark.Outline stroke) {
    marks.add(new Mark.Outline(stroke.path(), stroke.width(), Ink.FAINT));
  }

  @Override
  public void words(Mark.Lettering words) {
    marks.add(
        new Mark.Lettering(
            words.text(), words.x(), words.y(), words.size(), words.face(), Ink.FAINT));
  }

  @Override
  public void group(Mark.MarkGroup group) {
    marks.add(new Mark.MarkGroup(group.id(), group.title(), group.data(), of(group.marks())));
  }
}

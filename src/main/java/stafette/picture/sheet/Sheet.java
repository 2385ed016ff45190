package stafette.picture.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import stafette.picture.ink.Drawing;
import stafette.picture.ink.Face;
import stafette.picture.ink.Ink;
import stafette.picture.ink.Mark;
import stafette.picture.ink.Paper;
import stafette.picture.ink.Path;
import stafette.words.Sentence;

/**
 * A plan on paper, for a first rehearsal: for the conductor the line, its tempi, the ribbon, the
 * handoffs in order and where it is tightest; then for each player who plays, in the brief's order,
 * when it enters and leaves, how, and its notes. Upright pages.
 */
public final class Sheet {
  private static final double HEAD = 42;
  private static final double FOOT = 22;
  private static final double CARE = 30;

  /** From line to line of a staff, in points: staffs of 8 to 7 mm, as printed parts have them. */
  private static final double[] SPACES = {5.6, 5.3, 5};

  /** As each page that somebody is given says: work at the limit can injure. */
  private static final Sentence CAUTION =
      Sentence.of(
          "Take care: limits differ from player to player; playing at one's limit can injure lips, tongue,"
              + " arms and hands. Ask the players; they, their teachers and medical advice have the"
              + " last word.");

  private static final TypeStyle SMALL = new TypeStyle(Face.PLAIN, 7.4, Ink.SOFT);

  private final SheetContent content;
  private final double width;
  private final double height;
  private final double right;

  private Sheet(SheetContent content, Paper paper) {
    this.content = content;
    width = paper.height();
    height = paper.width();
    right = width - Paper.MARGIN;
  }

  /**
   * Lays out the sheet.
   *
   * @param paper one with pages
   * @throws IllegalArgumentException if the paper has none
   */
  public static List<Drawing> of(SheetContent content, Paper paper) {
    if (!paper.hasPages()) {
      throw new IllegalArgumentException("a sheet needs pages: " + paper);
    }
    return new Sheet(content, paper).drawings();
  }

  /** A page of somebody's, without what stands on all pages. */
  private record Page(String whose, boolean first, List<Mark> marks) {}

  private List<Drawing> drawings() {
    double room = height - 2 * Paper.MARGIN - HEAD - FOOT - CARE;
    List<Page> pages =
        new ArrayList<>(
            pages(
                content.say(Sentence.of("Conductor")),
                onPages(new Conductor(content, right, room).blocks()).pages()));
    for (int player = 0; player < content.plan().brief().players().size(); player++) {
      if (!content.plan().segmentsOf(player).isEmpty()) {
        String name = content.plan().brief().players().get(player).name();
        pages.addAll(pages(name, best(new Strip(content, player, right))));
      }
    }
    return IntStream.range(0, pages.size())
        .mapToObj(i -> drawing(pages.get(i), i + 1, pages.size()))
        .toList();
  }

  /** With the largest notes that break into pages as well as smaller ones. */
  private List<List<Mark>> best(Strip strip) {
    return DoubleStream.of(SPACES)
        .mapToObj(space -> onPages(strip.blocks(space)))
        .min(Comparator.comparingDouble(Pages::cost))
        .orElseThrow()
        .pages();
  }

  private Pages onPages(List<Block> blocks) {
    double bottom = height - Paper.MARGIN - FOOT;
    return Pages.of(blocks, new Pages.PageRoom(Paper.MARGIN + HEAD, bottom, bottom - CARE));
  }

  private static List<Page> pages(String whose, List<List<Mark>> pages) {
    return IntStream.range(0, pages.size())
        .mapToObj(i -> new Page(whose, i == 0, pages.get(i)))
        .toList();
  }

  private Drawing drawing(Page page, int number, int of) {
    List<Mark> marks = new ArrayList<>();
    marks.addAll(head(page));
    marks.addAll(page.marks());
    if (page.first()) {
      double top = height - Paper.MARGIN - FOOT - CARE + 8;
      marks.addAll(
          SMALL.paragraph(content.say(CAUTION), Paper.MARGIN, right - Paper.MARGIN).at(top));
    }
    marks.addAll(foot(number, of));
    return new Drawing(width, height, content.name(), marks);
  }

  private List<Mark> head(Page page) {
    String who =
        page.first() ? page.whose() : content.say(Sentence.of("{0}, continued", page.whose()));
    double room = right - Paper.MARGIN;
    String shown = TypeStyle.TITLE.face().fitted(who, TypeStyle.TITLE.size(), room * 0.6);
    double used = TypeStyle.TITLE.width(shown) + 20;
    String title =
        TypeStyle.STRONG.face().fitted(content.name(), TypeStyle.STRONG.size(), room - used);
    double baseline = Paper.MARGIN + 19;
    List<Mark> marks = new ArrayList<>();
    marks.add(TypeStyle.TITLE.words(shown, Paper.MARGIN, baseline));
    marks.add(TypeStyle.STRONG.words(title, right - TypeStyle.STRONG.width(title), baseline));
    marks.add(rule(Paper.MARGIN + 30));
    return marks;
  }

  private List<Mark> foot(int number, int of) {
    double baseline = height - Paper.MARGIN - 3;
    String count = content.say(Sentence.of("page {0} of {1}", number, of));
    String what = content.say(content.where()) + "  ·  " + content.day();
    double room = right - Paper.MARGIN - SMALL.width(count) - 20;
    List<Mark> marks = new ArrayList<>();
    marks.add(rule(baseline - 12));
    marks.add(SMALL.words(SMALL.face().fitted(what, SMALL.size(), room), Paper.MARGIN, baseline));
    marks.add(SMALL.words(count, right - SMALL.width(count), baseline));
    return marks;
  }

  private Mark rule(double y) {
    return new Mark.Outline(Path.line(Paper.MARGIN, y, right, y), 0.6, Ink.FAINT);
  }
}

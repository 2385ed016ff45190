package stafette.picture.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import stafette.check.TempoWindow;
import stafette.check.alone.VerdictWords;
import stafette.limits.Demand;
import stafette.picture.ink.Mark;
import stafette.picture.ink.Paper;
import stafette.picture.ink.Piece;
import stafette.picture.ribbon.RibbonRows;
import stafette.picture.ribbon.TempoGauge;
import stafette.plan.Brief;
import stafette.plan.Handoff;
import stafette.plan.Plan;
import stafette.score.Line;

/** The pages for the conductor: the line, its tempi, the ribbon, the handoffs in order. */
final class Conductor {
  private static final double GAP = 14;
  private static final double APART = 24;

  /** Rows of ribbon on the first page, where they can still be read so. */
  private static final double RIBBON_SHARE = 0.42;

  private static final String FOLLOWING =
      "Each player enters while the one before still plays, a shade under and without accent. Who"
          + " leaves keeps the accent of the beat, and stops on the last note that both play.";

  private final SheetContent content;
  private final Plan plan;
  private final double left = Paper.MARGIN;
  private final double right;
  private final double height;

  /**
   * The pages to be laid out.
   *
   * @param right where marks end
   * @param height how much there is room for on a page
   */
  Conductor(SheetContent content, double right, double height) {
    this.content = content;
    this.plan = content.plan();
    this.right = right;
    this.height = height;
  }

  List<Block> blocks() {
    List<Block> blocks = new ArrayList<>();
    blocks.add(facts());
    if (!content.verdict().holds()) {
      blocks.addAll(findings());
    }
    blocks.add(tightSpots());
    blocks.addAll(ribbon());
    if (!plan.handoffs().isEmpty()) {
      blocks.addAll(handoffs());
    }
    return blocks;
  }

  private Block facts() {
    double room = right - left - TempoGauge.WIDTH - APART;
    Block words =
        text(content.where(), TypeStyle.STRONG, room)
            .with(text(figures(), TypeStyle.TEXT, room))
            .with(text(whoPlays(), TypeStyle.TEXT, room));
    return content.window().map(window -> beside(words, window)).orElse(words);
  }

  private Block beside(Block words, TempoWindow window) {
    double gaugeLeft = right - TempoGauge.WIDTH;
    Piece both =
        new Piece(
            Math.max(words.piece().height(), TempoGauge.HEIGHT),
            top -> {
              List<Mark> marks = new ArrayList<>(words.piece().at(top));
              marks.addAll(TempoGauge.of(window, plan.line(), gaugeLeft, top - 4));
              return marks;
            });
    return new Block(both, 0).with(text(tempi(window), TypeStyle.SOFT, right - left).after(4));
  }

  private String figures() {
    Line line = plan.line();
    double rate = Demand.usualRatePerSecond(line);
    return SheetFigures.counted(line.count(), "note", "notes")
        + " in "
        + SheetFigures.seconds(line.endMicros(line.count() - 1))
        + ", "
        + SheetFigures.perSecond(rate)
        + " ("
        + SheetFigures.mark(rate)
        + ")";
  }

  private String whoPlays() {
    Brief brief = plan.brief();
    String playing =
        IntStream.range(0, brief.players().size())
            .filter(player -> !plan.segmentsOf(player).isEmpty())
            .mapToObj(
                player ->
                    brief.players().get(player).name()
                        + " ("
                        + SheetFigures.counted(plan.segmentsOf(player).size(), "turn", "turns")
                        + ")")
            .collect(Collectors.joining(", "));
    String idle =
        IntStream.range(0, brief.players().size())
            .filter(player -> plan.segmentsOf(player).isEmpty())
            .mapToObj(player -> brief.players().get(player).name())
            .collect(Collectors.joining(", "));
    return playing + (idle.isEmpty() ? "" : "; not needed: " + idle);
  }

  private static String tempi(TempoWindow window) {
    String slowest =
        window.slowestFactor() == 0
            ? "at any slower tempo"
            : "down to " + window.slowestText() + " (below it, " + window.slowestLimit() + ")";
    String fastest =
        Double.isInfinite(window.fastestFactor())
            ? "at any faster tempo"
            : "up to " + window.fastestText() + " (above it, " + window.fastestLimit() + ")";
    return "The plan holds " + slowest + " and " + fastest + ".";
  }

  private List<Block> findings() {
    List<Block> all =
        content.verdict().findings().stream()
            .map(finding -> text(finding.message().toString(), TypeStyle.TEXT, right - left))
            .toList();
    return Block.headed(
        text("This plan does not hold", TypeStyle.SECTION, right - left).after(GAP), all);
  }

  private Block tightSpots() {
    Block all = text("Tightest spots", TypeStyle.SECTION, right - left).after(GAP);
    boolean first = true;
    for (String spot : TightSpots.of(plan, content.verdict())) {
      all = all.with(text(spot, TypeStyle.TEXT, right - left).after(first ? 3 : 0));
      first = false;
    }
    return all.with(text(share(), TypeStyle.SOFT, right - left).after(2));
  }

  private String share() {
    String words = VerdictWords.ofPlan(plan, content.verdict()).toString();
    return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1) + ".";
  }

  private List<Block> ribbon() {
    List<Piece> rows = RibbonRows.of(plan, content.verdict(), right, height, height * RIBBON_SHARE);
    List<Block> blocks = new ArrayList<>();
    for (int i = 0; i < rows.size(); i++) {
      blocks.add(new Block(rows.get(i), i == 0 ? GAP : 8));
    }
    int last = blocks.size() - 1;
    blocks.set(last, blocks.get(last).with(new Block(RibbonRows.legend(), 8)));
    return blocks;
  }

  private List<Block> handoffs() {
    boolean several = plan.brief().lines().size() > 1;
    List<String> heads = new ArrayList<>(List.of("No.", "Enters", "on", "Leaves", "after"));
    heads.addAll(List.of("Together", "Time", several ? "Relay, hints" : "Hints"));
    SheetTable grid = new SheetTable(left, right, heads, 22, 75, 80, 75, 80, 52, 42, 97);
    List<Handoff> all = new ArrayList<>(plan.handoffs());
    all.sort(Comparator.comparingLong(h -> new SheetHandoffs(plan, h).entryMicros()));
    for (int i = 0; i < all.size(); i++) {
      grid.add(cells(i + 1, all.get(i)));
    }
    Block title =
        text("Handoffs", TypeStyle.SECTION, right - left)
            .with(text(FOLLOWING, TypeStyle.SOFT, right - left))
            .after(GAP);
    return Block.headed(title, grid.blocks());
  }

  private List<SheetTable.TableCell> cells(int number, Handoff handoff) {
    SheetHandoffs words = new SheetHandoffs(plan, handoff);
    String relay = SheetHandoffs.relay(plan.brief(), handoff.enters().relay());
    String hint = words.hint();
    String last = relay + (relay.isEmpty() || hint.isEmpty() ? "" : "; ") + hint;
    return List.of(
        SheetTable.TableCell.of(TypeStyle.TEXT, Integer.toString(number)),
        SheetTable.TableCell.of(TypeStyle.STRONG, plan.names(handoff.enters())),
        SheetTable.TableCell.of(TypeStyle.TEXT, words.entry()),
        SheetTable.TableCell.of(TypeStyle.TEXT, plan.names(handoff.leaves())),
        SheetTable.TableCell.of(TypeStyle.TEXT, words.landing()),
        SheetTable.TableCell.of(TypeStyle.TEXT, words.together()),
        SheetTable.TableCell.of(TypeStyle.TEXT, words.time()),
        hints(last, words.toDo()));
  }

  private static SheetTable.TableCell hints(String hint, String toDo) {
    return new SheetTable.TableCell(
        Stream.of(
                new SheetTable.TableCell.TableLine(TypeStyle.LABEL, hint),
                new SheetTable.TableCell.TableLine(TypeStyle.NOTE, toDo))
            .filter(line -> !line.text().isEmpty())
            .toList());
  }

  private Block text(String text, TypeStyle type, double width) {
    return new Block(type.paragraph(text, left, width), 0);
  }
}

package stafette.picture.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import stafette.check.TempoWindow;
import stafette.check.alone.VerdictWords;
import stafette.check.join.LevelBalance;
import stafette.limits.Demand;
import stafette.picture.ink.Mark;
import stafette.picture.ink.Paper;
import stafette.picture.ink.Piece;
import stafette.picture.ribbon.RelayContent;
import stafette.picture.ribbon.RibbonRows;
import stafette.picture.ribbon.TempoGauge;
import stafette.plan.Handoff;
import stafette.plan.Joins;
import stafette.plan.Plan;
import stafette.plan.Player;
import stafette.score.Line;
import stafette.words.Sayable;
import stafette.words.Sentence;

/** The pages for the conductor: the line, its tempi, the ribbon, the handoffs in order. */
final class Conductor {
  private static final double GAP = 14;
  private static final double APART = 24;

  /** Rows of ribbon on the first page, where they can still be read so. */
  private static final double RIBBON_SHARE = 0.42;

  private static final Sentence FOLLOWING =
      Sentence.of(
          "Each player enters while the one before still plays, a shade under and without accent. Who"
              + " leaves keeps the accent of the beat, and stops on the last note that both play.");

  private static final Sentence SHADED =
      Sentence.of(
          "Each player enters while the one before still plays. The parts have it so: who enters does so"
              + " without accent and a step softer until who leaves is gone; who leaves keeps the accent"
              + " of the beat, fades where the two share three notes or more, and stops on the last note"
              + " that both play.");

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
              marks.addAll(
                  TempoGauge.of(
                      window, plan.line(), content.language().speech(), gaugeLeft, top - 4));
              return marks;
            });
    return new Block(both, 0).with(text(tempi(window), TypeStyle.SOFT, right - left).after(4));
  }

  private Sentence figures() {
    Line line = plan.line();
    double rate = Demand.usualRatePerSecond(line);
    return Sentence.of(
        "{0} in {1}, {2} ({3})",
        SheetFigures.notes(line.count()),
        SheetFigures.seconds(line.endMicros(line.count() - 1)),
        SheetFigures.perSecond(rate),
        SheetFigures.mark(rate));
  }

  private Sentence whoPlays() {
    List<Player> players = plan.brief().players();
    List<Sentence> playing = new ArrayList<>();
    List<String> idle = new ArrayList<>();
    for (int i = 0; i < players.size(); i++) {
      int turns = plan.segmentsOf(i).size();
      if (turns == 0) {
        idle.add(players.get(i).name());
      } else {
        playing.add(
            turns == 1
                ? Sentence.of("{0} (1 turn)", players.get(i).name())
                : Sentence.of("{0} ({1} turns)", players.get(i).name(), turns));
      }
    }
    return idle.isEmpty()
        ? Sentence.list(playing)
        : Sentence.of("{0}; not needed: {1}", Sentence.list(playing), Sentence.list(idle));
  }

  private static Sentence tempi(TempoWindow window) {
    Sentence slowest =
        window.slowestFactor() == 0
            ? Sentence.of("at any slower tempo")
            : Sentence.of(
                "down to {0} (below it, {1})", window.slowestText(), window.slowestLimit());
    Sentence fastest =
        Double.isInfinite(window.fastestFactor())
            ? Sentence.of("at any faster tempo")
            : Sentence.of("up to {0} (above it, {1})", window.fastestText(), window.fastestLimit());
    return Sentence.of("The plan holds {0} and {1}.", slowest, fastest);
  }

  private List<Block> findings() {
    List<Block> all =
        content.verdict().findings().stream()
            .map(finding -> text(finding.message(), TypeStyle.TEXT, right - left))
            .toList();
    return Block.headed(
        text(Sentence.of("This plan does not hold"), TypeStyle.SECTION, right - left).after(GAP),
        all);
  }

  private Block tightSpots() {
    Block all = text(Sentence.of("Tightest spots"), TypeStyle.SECTION, right - left).after(GAP);
    boolean first = true;
    for (Sentence spot : TightSpots.of(plan, content.verdict())) {
      all = all.with(text(spot, TypeStyle.TEXT, right - left).after(first ? 3 : 0));
      first = false;
    }
    return all.with(paragraph(share(), TypeStyle.SOFT, right - left).after(2));
  }

  private String share() {
    String words = content.say(VerdictWords.ofPlan(plan, content.verdict()));
    return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1) + ".";
  }

  private List<Block> ribbon() {
    RelayContent relay = content.relay();
    List<Piece> rows = RibbonRows.of(relay, right, height, height * RIBBON_SHARE);
    List<Block> blocks = new ArrayList<>();
    for (int i = 0; i < rows.size(); i++) {
      blocks.add(new Block(rows.get(i), i == 0 ? GAP : 8));
    }
    int last = blocks.size() - 1;
    blocks.set(last, blocks.get(last).with(new Block(RibbonRows.legend(relay), 8)));
    return blocks;
  }

  private List<Block> handoffs() {
    boolean several = plan.brief().lines().size() > 1;
    List<Sentence> heads =
        List.of(
            Sentence.of("No."),
            Sentence.of("Enters"),
            Sentence.of("on"),
            Sentence.of("Leaves"),
            Sentence.of("after"),
            Sentence.of("Together"),
            Sentence.of("Time"),
            several ? Sentence.of("Relay, hints") : Sentence.of("Hints"));
    SheetTable grid =
        new SheetTable(
            left, right, heads.stream().map(content::say).toList(), 22, 75, 80, 75, 80, 52, 42, 97);
    List<Handoff> all = new ArrayList<>(plan.handoffs());
    all.sort(Comparator.comparingLong(handoff -> of(handoff).entryMicros()));
    for (int i = 0; i < all.size(); i++) {
      grid.add(cells(i + 1, all.get(i)));
    }
    Block title =
        text(Sentence.of("Handoffs"), TypeStyle.SECTION, right - left)
            .with(text(shaded() ? SHADED : FOLLOWING, TypeStyle.SOFT, right - left))
            .with(text(balance(), TypeStyle.SOFT, right - left))
            .after(GAP);
    return Block.headed(title, grid.blocks());
  }

  private boolean shaded() {
    return content.how().joins() == Joins.SHADED;
  }

  /** What the parts have of it; nothing where they are as the line is written. */
  private Sentence balance() {
    List<LevelBalance> balances = content.how().balanced() ? LevelBalance.written(plan) : List.of();
    return balances.isEmpty()
        ? Sentence.NONE
        : Sentence.of("Balanced in the parts: {0}.", Sentence.list(balances));
  }

  private SheetHandoffs of(Handoff handoff) {
    return new SheetHandoffs(plan, handoff, content.how());
  }

  private List<SheetTable.TableCell> cells(int number, Handoff handoff) {
    SheetHandoffs words = of(handoff);
    Sentence relay = SheetHandoffs.relay(plan.brief(), handoff.enters().relay());
    List<Sentence> last =
        Stream.concat(Stream.of(relay), words.hints().stream())
            .filter(each -> !each.isEmpty())
            .toList();
    return List.of(
        SheetTable.TableCell.of(TypeStyle.TEXT, Integer.toString(number)),
        cell(TypeStyle.STRONG, plan.who(handoff.enters())),
        cell(TypeStyle.TEXT, words.entry()),
        cell(TypeStyle.TEXT, plan.who(handoff.leaves())),
        cell(TypeStyle.TEXT, words.landing()),
        cell(TypeStyle.TEXT, words.together()),
        cell(TypeStyle.TEXT, words.time()),
        hints(
            content.say(Sentence.list("; ", last)),
            content.say(Sentence.list("; ", words.toDo()))));
  }

  private SheetTable.TableCell cell(TypeStyle type, Sayable what) {
    return SheetTable.TableCell.of(type, content.say(what));
  }

  private static SheetTable.TableCell hints(String hint, String toDo) {
    return new SheetTable.TableCell(
        Stream.of(
                new SheetTable.TableCell.TableLine(TypeStyle.LABEL, hint),
                new SheetTable.TableCell.TableLine(TypeStyle.NOTE, toDo))
            .filter(line -> !line.text().isEmpty())
            .toList());
  }

  private Block text(Sayable text, TypeStyle type, double width) {
    return paragraph(content.say(text), type, width);
  }

  private Block paragraph(String text, TypeStyle type, double width) {
    return new Block(type.paragraph(text, left, width), 0);
  }
}

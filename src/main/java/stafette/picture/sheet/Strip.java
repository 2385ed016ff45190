package stafette.picture.sheet;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import stafette.limits.Breath;
import stafette.picture.ink.Paper;
import stafette.plan.HarpTurn;
import stafette.plan.Plan;
import stafette.plan.Player;
import stafette.plan.Segment;
import stafette.score.Line;
import stafette.words.Sayable;
import stafette.words.Sentence;

/** The page of one player: its turns, and what it plays as music. */
final class Strip {
  private static final double GAP = 13;

  private final SheetContent content;
  private final Plan plan;
  private final int player;
  private final Player who;
  private final List<TurnWords> turns;
  private final Map<Segment, HarpTurn> harps;
  private final double left = Paper.MARGIN;
  private final double right;

  /**
   * A page to be laid out.
   *
   * @param player index among the brief's players; one who plays
   * @param right where marks end
   */
  Strip(SheetContent content, int player, double right) {
    this.content = content;
    this.player = player;
    this.right = right;
    plan = content.plan();
    who = plan.brief().players().get(player);
    harps = HarpTurn.of(plan, player);
    turns =
        plan.segmentsOf(player).stream()
            .map(plan.segments()::indexOf)
            .map(index -> new TurnWords(plan, content.verdict().segments().get(index)))
            .toList();
  }

  /**
   * What stands on it.
   *
   * @param space from line to line of a staff, in points
   */
  List<Block> blocks(double space) {
    List<Block> blocks = new ArrayList<>();
    blocks.add(facts());
    blocks.addAll(turns());
    Block title =
        text(Sentence.of("Your notes"), TypeStyle.SECTION)
            .with(text(explained(), TypeStyle.SOFT))
            .after(GAP);
    PlayerMusic music = PlayerMusic.of(content.relay(), player, space, left, right);
    blocks.addAll(
        Block.headed(title, new MusicBlocks(content, music, turns, left, right).blocks()));
    return blocks;
  }

  private Block facts() {
    Line line = plan.line();
    Sentence what =
        Sentence.of("{0}, at {1}", content.where(), line.tempo().at(line.stroke(0).onset()));
    String name = capital(content.say(who.instrument()));
    String pitch = content.say(PitchWords.of(who.instrument()));
    return text(what, TypeStyle.STRONG).with(paragraph(name + ". " + pitch, TypeStyle.TEXT));
  }

  private static String capital(String text) {
    return text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
  }

  private Sentence explained() {
    Sentence words =
        Sentence.of(
            "A bracket: you both play these notes. Grey notes: what you hear before you enter.");
    return who.busy().isEmpty()
        ? words
        : Sentence.of("{0} Hatched: your part has something else.", words);
  }

  private List<Block> turns() {
    Optional<Breath> breath = who.instrument().breath();
    List<Sentence> all =
        List.of(
            Sentence.of("Turn"),
            Sentence.of("You enter"),
            Sentence.of("You leave after"),
            Sentence.of("How"),
            Sentence.of("Fastest notes"),
            Sentence.of("Of your limit"),
            Sentence.of("Breath"));
    List<String> heads =
        all.subList(0, breath.isPresent() ? all.size() : all.size() - 1).stream()
            .map(content::say)
            .toList();
    double[] shares = {26, 84, 84, 88, 104, 58, 88};
    SheetTable grid = new SheetTable(left, right, heads, Arrays.copyOf(shares, heads.size()));
    for (int i = 0; i < turns.size(); i++) {
      grid.add(cells(i + 1, turns.get(i), breath));
    }
    Block title = text(Sentence.of("Your turns"), TypeStyle.SECTION).after(GAP);
    return Block.headed(title, grid.blocks());
  }

  private List<SheetTable.TableCell> cells(int number, TurnWords turn, Optional<Breath> breath) {
    List<SheetTable.TableCell> cells = new ArrayList<>();
    cells.add(SheetTable.TableCell.of(TypeStyle.STRONG, Integer.toString(number)));
    cells.add(cell(turn.entryPlace(), turn.counted(), turn.from(), turn.sharedAtEntry()));
    cells.add(cell(turn.exitPlace(), turn.to(), turn.sharedAtExit()));
    cells.add(cell(turn.technique(), turn.hocket(), turn.length(), turn.remarks()));
    cells.add(cell(turn.rate(), turn.perSecond(), pedals(turn)));
    cells.add(cell(Sentence.list(List.of(turn.share())), turn.shares().toArray(Sayable[]::new)));
    breath.ifPresent(
        lungs -> {
          List<Sentence> words = BreathWords.of(plan, turn, lungs);
          cells.add(cell(words.get(0), words.subList(1, words.size()).toArray(Sayable[]::new)));
        });
    return cells;
  }

  private SheetTable.TableCell cell(Sayable strong, Sayable... soft) {
    return SheetTable.TableCell.of(
        content.say(strong), Arrays.stream(soft).map(content::say).toArray(String[]::new));
  }

  private Sentence pedals(TurnWords turn) {
    return Optional.ofNullable(harps.get(turn.segment())).map(PedalWords::of).orElse(Sentence.NONE);
  }

  private Block text(Sayable text, TypeStyle type) {
    return paragraph(content.say(text), type);
  }

  private Block paragraph(String text, TypeStyle type) {
    return new Block(type.paragraph(text, left, right - left), 0);
  }
}

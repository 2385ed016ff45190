package stafette.work;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.LockSupport;
import java.util.function.BooleanSupplier;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stafette.ask.Briefing;
import stafette.ask.LineRequest;
import stafette.ask.PlayerWish;
import stafette.ask.SplitRequest;
import stafette.keep.LimitsInForce;
import stafette.musicxml.read.Xml;
import stafette.score.BarChoice;
import stafette.score.LineChoice;
import stafette.split.Workbench;
import stafette.words.Refusal;

/** What would help where there is no plan. */
class RemediesTest {
  private static final double HOUR_SECONDS = 3600;

  @Test
  void a_machine_that_is_held_up_now_and_then_finds_the_same() throws Refusal {
    int[] asked = new int[1];
    BooleanSupplier heldUp =
        () -> {
          if (++asked[0] % 2000 == 0) {
            LockSupport.parkNanos(TimeUnit.MILLISECONDS.toNanos(3));
          }
          return false;
        };
    List<String> once = found(() -> false);
    assertFalse(once.isEmpty());
    assertEquals(once, found(heldUp));
  }

  /**
   * The remedy stands or falls with the roster: whether it makes outside and inside players of a
   * section that is named so.
   */
  @Test
  void a_section_of_bows_is_divided_where_its_name_is_understood_as_two(@TempDir Path folder)
      throws Refusal, IOException {
    String tempo =
        "<direction><direction-type><words>vivo</words></direction-type>"
            + "<sound tempo=\"173\"/></direction>";
    String bar = Xml.note("A", 4, 3, "").repeat(16);
    String[] bars = new String[30];
    Arrays.fill(bars, bar);
    bars[0] = Xml.ATTRIBUTES + tempo + bar;
    Path score =
        Files.writeString(
            folder.resolve("section.musicxml"),
            Xml.scoreOf("<part-name>Violins I</part-name>", bars));
    LimitsInForce limits = LimitsInForce.load(Optional.empty());
    LineRequest line = LineRequest.whole(score).with(choice("Violins I", "1-30"));
    Briefing whole = Briefing.of(asked(line, "Violins I"), limits);
    List<Remedy> remedies = outcome(whole, limits, () -> false).remedies();
    assertFalse(remedies.isEmpty());
    assertEquals(
        isUnderstood(line, limits),
        remedies.stream().anyMatch(remedy -> remedy.change() instanceof Change.Divided));
    assertEquals(
        "with Violins I divided, in turn and half as loud",
        new Change.Divided(
                named("Violins I"),
                named("Violins I div. a 2"),
                named("Violins I div. a 2").players())
            .inWords()
            .toString());
  }

  private static boolean isUnderstood(LineRequest line, LimitsInForce limits) {
    try {
      return Briefing.of(asked(line, "Violins I div. a 2"), limits).brief().players().size() == 2;
    } catch (Refusal notAtAll) {
      return false;
    }
  }

  private static PlayerWish named(String name) {
    return new PlayerWish(name, Optional.empty());
  }

  private static List<String> found(BooleanSupplier stop) throws Refusal {
    LimitsInForce limits = LimitsInForce.load(Optional.empty());
    LineRequest line =
        LineRequest.whole(Path.of("samples", "lantern-run.musicxml")).with(choice("Piano", "5-8"));
    Briefing briefing = Briefing.of(asked(line, "Clarinet 1, Clarinet 2"), limits);
    return outcome(briefing, limits, stop).remedies().stream()
        .map(remedy -> remedy.sentence() + " " + remedy.plan().plan().segments())
        .toList();
  }

  private static SplitLine.SplitOutcome outcome(
      Briefing briefing, LimitsInForce limits, BooleanSupplier stop) throws Refusal {
    return SplitLine.split(briefing, limits, new Workbench(), stop, progress -> {});
  }

  private static SplitRequest asked(LineRequest line, String players) throws Refusal {
    return SplitRequest.usual(line).with(PlayerWish.parse(players), List.of()).within(HOUR_SECONDS);
  }

  private static LineChoice choice(String part, String bars) {
    return new LineChoice(
        part,
        Optional.of(new BarChoice(bars)),
        OptionalInt.of(1),
        Optional.empty(),
        Optional.empty());
  }
}

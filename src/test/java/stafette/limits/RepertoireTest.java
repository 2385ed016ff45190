package stafette.limits;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import stafette.Invented;
import stafette.score.Attack;
import stafette.score.Line;
import stafette.score.Manner;
import stafette.score.Pitch;
import stafette.score.Step;
import stafette.score.Stroke;

/** How a line stands among what open scores ask. */
class RepertoireTest {
  private static final Instrument PIPE = Invented.instrument("pipe");

  private static Repertoire.Row row(int of100, double ratePerSecond) {
    return new Repertoire.Row(Stroking.REPEATED, 40, 50, of100, ratePerSecond, 5, 40);
  }

  private static final Repertoire KNOWN = new Repertoire(List.of(row(50, 7), row(97, 9)));

  private static Line repeated(long quartersPerMinute) {
    return Invented.line(2, 4, quartersPerMinute);
  }

  @Test
  void a_line_outruns_the_largest_share_whose_rate_it_exceeds() {
    assertEquals(Optional.empty(), KNOWN.outrun(repeated(105)));
    assertEquals(50, KNOWN.outrun(repeated(120)).orElseThrow().of100());
    assertEquals(50, KNOWN.outrun(repeated(135)).orElseThrow().of100(), "9 exactly is no more");
    assertEquals(97, KNOWN.outrun(repeated(150)).orElseThrow().of100());
    assertEquals(
        "faster than 97 of 100 fast passages of repeated notes for the pipe in 40 scores",
        KNOWN.inWords(repeated(150), PIPE).orElseThrow().toString());
  }

  @Test
  void few_passages_or_none_of_its_kind_say_nothing() {
    Repertoire few =
        new Repertoire(List.of(new Repertoire.Row(Stroking.REPEATED, 40, 29, 50, 7, 5, 40)));
    assertEquals(Optional.empty(), few.outrun(repeated(150)));
    Line scale = Invented.line(32, 4, 150, i -> new Pitch(Step.values()[i % 7], 0, 5));
    assertEquals(Stroking.SEPARATE, Stroking.of(scale));
    assertEquals(Optional.empty(), KNOWN.outrun(scale));
    assertEquals(Optional.empty(), Repertoire.NONE.inWords(repeated(150), PIPE));
  }

  @Property
  void a_faster_line_outruns_no_less(
      @ForAll @IntRange(min = 60, max = 240) int one,
      @ForAll @IntRange(min = 60, max = 240) int other) {
    int slow = KNOWN.outrun(repeated(Math.min(one, other))).map(Repertoire.Row::of100).orElse(0);
    int fast = KNOWN.outrun(repeated(Math.max(one, other))).map(Repertoire.Row::of100).orElse(0);
    assertTrue(slow <= fast);
  }

  @Test
  void stroking_is_what_most_notes_are() {
    assertEquals(Stroking.REPEATED, Stroking.of(repeated(120)));
    assertEquals(Stroking.SLURRED, Stroking.of(line(true, Attack.PLAIN)));
    assertEquals(Stroking.SEPARATE, Stroking.of(line(false, Attack.PLAIN)));
    assertEquals(Stroking.PLUCKED, Stroking.of(line(false, Attack.PLUCKED)));
  }

  private static Line line(boolean slurred, Attack attack) {
    List<Stroke> strokes = new ArrayList<>();
    for (Stroke plain :
        Invented.line(16, 4, 120, i -> new Pitch(Step.values()[i % 7], 0, 5)).strokes()) {
      strokes.add(
          new Stroke(
              plain.onset(),
              plain.tones(),
              plain.values(),
              List.of(),
              slurred && !strokes.isEmpty(),
              false,
              true,
              Set.of(),
              plain.dynamic(),
              Manner.PLAIN.with(attack)));
    }
    return Invented.lineOf(strokes, 120);
  }

  /** What nine of ten passages ask must be within reach of half: a statement of kind asked. */
  @Test
  void nine_of_ten_passages_are_a_statement() {
    Repertoire asked = new Repertoire(List.of(row(90, 11), row(97, 20)));
    List<Statement> statements = asked.statements(PIPE);
    assertEquals(1, statements.size());
    assertEquals(StatementKind.ASKED, statements.get(0).kind());
    assertEquals(11, statements.get(0).lowPerSecond());
    assertEquals(List.of("tonguing"), statements.get(0).techniques());
    assertTrue(
        new Evidence(statements).about(PIPE).stream().noneMatch(Stance::contradicts), "12 of 11");
    List<Statement> faster = new Repertoire(List.of(row(90, 13))).statements(PIPE);
    assertTrue(new Evidence(faster).about(PIPE).get(0).isOpen(), "12 of 13");
  }
}

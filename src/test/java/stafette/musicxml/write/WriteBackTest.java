package stafette.musicxml.write;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import stafette.musicxml.make.UnwritablePlan;
import stafette.musicxml.newparts.PlayerNames;
import stafette.musicxml.read.Document;
import stafette.musicxml.read.MusicXmlReader;
import stafette.musicxml.share.Assigned;
import stafette.musicxml.text.Origin;
import stafette.musicxml.text.Replacement;
import stafette.musicxml.text.UnreadableScore;
import stafette.plan.Handoff;
import stafette.plan.Plan;
import stafette.plan.Player;
import stafette.plan.Segment;
import stafette.plan.SourceTreatment;
import stafette.score.NoSuchLine;
import stafette.score.Part;
import stafette.score.Stroke;
import stafette.score.Tone;
import stafette.score.Words;

/** What is written can be read again, and nothing else has changed. */
class WriteBackTest {
  private static final Map<String, Case> CASES = new ConcurrentHashMap<>();

  /** A sample before and after its plan was written into it. */
  private record Case(Document before, Plan plan, WrittenScore written, Document after) {
    static Case of(String sample) {
      return CASES.computeIfAbsent(sample, Case::written);
    }

    private static Case written(String sample) {
      try {
        Document before = ByHand.sample(sample);
        Plan plan = ByHand.planFor(sample, before.score());
        WrittenScore written = write(before, plan);
        return new Case(before, plan, written, MusicXmlReader.read(written.bytes()));
      } catch (IOException | UnreadableScore | NoSuchLine e) {
        throw new IllegalStateException(sample, e);
      }
    }

    List<Player> players() {
      return plan.brief().players();
    }
  }

  private static WrittenScore write(Document document, Plan plan) {
    try {
      return ScoreWriter.write(document, plan, SourceTreatment.KEEP, player -> Optional.empty());
    } catch (UnwritablePlan e) {
      throw new AssertionError(e);
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"lantern-run", "signal-hill"})
  void each_player_has_the_strokes_of_the_plan_and_what_was_there_before(String sample) {
    Case both = Case.of(sample);
    for (int i = 0; i < both.players().size(); i++) {
      Player player = both.players().get(i);
      List<String> expected = new ArrayList<>();
      player
          .part()
          .flatMap(both.before.score()::part)
          .ifPresent(part -> strokesOf(part).forEach(stroke -> expected.add(heard(stroke))));
      for (Segment segment : both.plan.segmentsOf(i)) {
        ByHand.written(both.plan, segment, both.before.score())
            .forEach(stroke -> expected.add(heard(stroke)));
      }
      List<String> found =
          strokesOf(ByHand.partOf(player, both.after.score())).stream()
              .map(WriteBackTest::heard)
              .toList();
      assertEquals(
          expected.stream().sorted().toList(), found.stream().sorted().toList(), player.name());
    }
  }

  private static List<Stroke> strokesOf(Part part) {
    return part.voices().stream().flatMap(voice -> voice.strokes().stream()).toList();
  }

  private static String heard(Stroke stroke) {
    return stroke.onset()
        + " "
        + stroke.tones().stream().map(Tone::key).toList()
        + " "
        + stroke.length()
        + " "
        + stroke.graces().stream().map(g -> g.tones().get(0).key()).toList()
        + stroke.articulations().stream().sorted().toList();
  }

  @ParameterizedTest
  @ValueSource(strings = {"lantern-run", "signal-hill"})
  void the_first_note_of_each_segment_has_the_dynamic_of_the_line(String sample) {
    Case both = Case.of(sample);
    for (Segment segment : both.plan.segments()) {
      Part part = ByHand.partOf(both.plan.player(segment), both.after.score());
      for (int j = segment.first(); j <= segment.last(); j++) {
        Stroke asked = both.plan.line().stroke(j);
        Stroke found =
            strokesOf(part).stream()
                .filter(stroke -> stroke.onset().equals(asked.onset()))
                .findFirst()
                .orElseThrow();
        assertEquals(asked.dynamic(), found.dynamic(), part.name() + " " + asked.onset());
      }
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"lantern-run", "signal-hill"})
  void slurs_within_a_segment_are_read_again(String sample) {
    Case both = Case.of(sample);
    for (Segment segment : both.plan.segments()) {
      Part part = ByHand.partOf(both.plan.player(segment), both.after.score());
      for (int j = segment.first() + 1; j <= segment.last(); j++) {
        Stroke asked = both.plan.line().stroke(j);
        boolean found =
            strokesOf(part).stream()
                .filter(stroke -> stroke.onset().equals(asked.onset()))
                .anyMatch(Stroke::slurred);
        assertEquals(asked.slurred(), found, part.name() + " " + asked.onset());
      }
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"lantern-run", "signal-hill"})
  void bars_keep_their_numbers_lengths_and_metres(String sample) {
    Case both = Case.of(sample);
    for (int i = 0; i < both.before.score().bars().count(); i++) {
      assertEquals(both.before.score().bars().get(i), both.after.score().bars().get(i));
    }
    assertEquals(both.before.score().bars().count(), both.after.score().bars().count());
  }

  @ParameterizedTest
  @ValueSource(strings = {"lantern-run", "signal-hill"})
  void all_other_parts_keep_their_text(String sample) {
    Case both = Case.of(sample);
    List<String> changed = new ArrayList<>();
    for (Origin.PartText part : both.before.origin().parts()) {
      Origin.PartText later =
          both.after.origin().parts().stream()
              .filter(p -> p.id().equals(part.id()))
              .findFirst()
              .orElseThrow();
      for (int i = 0; i < part.measures().size(); i++) {
        String old = part.measures().get(i).whole().in(both.before.origin().text());
        if (!old.equals(later.measures().get(i).whole().in(both.after.origin().text()))) {
          changed.add(part.id() + " " + i);
        }
      }
    }
    List<String> planned = new ArrayList<>();
    for (int i = 0; i < both.players().size(); i++) {
      Assigned assigned = new Assigned(both.plan, i);
      assigned
          .player()
          .part()
          .ifPresent(id -> assigned.bars().forEach(bar -> planned.add(id + " " + bar)));
    }
    assertEquals(planned.stream().sorted().toList(), changed.stream().sorted().toList());
  }

  @ParameterizedTest
  @ValueSource(strings = {"lantern-run", "signal-hill"})
  void undoing_the_replacements_gives_the_input(String sample) {
    Case both = Case.of(sample);
    StringBuilder text = new StringBuilder(both.after.origin().text());
    List<Replacement> changes = both.written.replacements();
    int shift = changes.stream().mapToInt(WriteBackTest::growth).sum();
    for (int i = changes.size() - 1; i >= 0; i--) {
      Replacement change = changes.get(i);
      shift -= growth(change);
      int start = change.span().start() + shift;
      text.replace(
          start, start + change.text().length(), change.span().in(both.before.origin().text()));
    }
    assertEquals(both.before.origin().text(), text.toString());
  }

  private static int growth(Replacement change) {
    return change.text().length() - (change.span().end() - change.span().start());
  }

  @ParameterizedTest
  @ValueSource(strings = {"lantern-run", "signal-hill"})
  void writing_the_same_plan_again_changes_nothing(String sample) throws NoSuchLine {
    Case both = Case.of(sample);
    Plan again = ByHand.planFor(sample, both.after.score());
    assertTrue(again.brief().players().stream().allMatch(player -> player.part().isPresent()));
    WrittenScore second = write(both.after, again);
    assertEquals(List.of(), second.replacements());
    assertEquals(List.of(), second.changes());
    assertArrayEquals(both.written.bytes(), second.bytes());
  }

  @ParameterizedTest
  @ValueSource(strings = {"lantern-run", "signal-hill"})
  void each_player_is_told_with_whom_it_relays_where_that_changes(String sample) {
    Case both = Case.of(sample);
    Function<Player, String> names =
        new PlayerNames(both.before.origin(), player -> Optional.empty())::of;
    for (int i = 0; i < both.players().size(); i++) {
      Part part = ByHand.partOf(both.players().get(i), both.after.score());
      List<String> told =
          part.marks().words().stream()
              .map(Words::text)
              .filter(text -> text.matches("(from|to|alternating with) .*"))
              .toList();
      for (int j = 1; j < told.size(); j++) {
        assertNotEquals(told.get(j - 1), told.get(j));
      }
      for (Handoff handoff : both.plan.handoffs()) {
        if (handoff.enters().has(i)) {
          String from =
              handoff.leaves().segments().stream()
                  .map(segment -> names.apply(both.plan.player(segment)))
                  .collect(Collectors.joining(" and "));
          assertTrue(told.stream().anyMatch(text -> text.contains(from)), told + " " + from);
        }
      }
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"lantern-run", "signal-hill"})
  void a_sentence_says_what_became_of_each_part(String sample) {
    Case both = Case.of(sample);
    assertEquals(both.players().size(), both.written.changes().size());
    for (int i = 0; i < both.players().size(); i++) {
      String sentence = both.written.changes().get(i).toString();
      assertTrue(sentence.startsWith(both.players().get(i).name() + ": "), sentence);
    }
  }
}

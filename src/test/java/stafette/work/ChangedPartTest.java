package stafette.work;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import stafette.desktop.SplitSample;
import stafette.plan.SourceTreatment;
import stafette.words.Refusal;

/** What writing would change, read back. */
class ChangedPartTest {
  @Test
  void the_source_changes_only_if_its_notes_are_taken_out() throws Refusal {
    assertEquals(List.of(), named(SplitSample.changed(SourceTreatment.KEEP), "Piano"));
    ChangedPart piano = named(SplitSample.changed(SourceTreatment.REMOVE), "Piano").get(0);
    assertTrue(piano.strokesAfter() < piano.strokesBefore());
  }

  @Test
  void players_gain_notes_in_the_bars_that_they_play() throws Refusal {
    List<ChangedPart> changed = SplitSample.changed(SourceTreatment.KEEP);
    assertTrue(changed.size() >= 2, "a relay needs two players");
    for (ChangedPart part : changed) {
      assertTrue(part.strokesAfter() > part.strokesBefore(), part.name());
      assertTrue(
          part.bars().stream()
              .mapToInt(bar -> Integer.parseInt(bar.number()))
              .allMatch(bar -> bar >= 5 && bar <= 16),
          part.name());
    }
  }

  private static List<ChangedPart> named(List<ChangedPart> parts, String name) {
    return parts.stream().filter(part -> part.name().equals(name)).toList();
  }
}

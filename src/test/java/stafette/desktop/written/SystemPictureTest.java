package stafette.desktop.written;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import stafette.desktop.SplitSample;
import stafette.picture.ink.Mark;
import stafette.plan.SourceTreatment;
import stafette.words.Refusal;
import stafette.work.ChangedPart;

/** Rows of music as they would be written. */
class SystemPictureTest {
  private static final String SHARP = "\u266F";

  /** The sample stands in D major; its line has no accidental in these bars. */
  @Test
  void each_row_shows_the_key_that_the_part_is_written_in_and_no_other_accidentals()
      throws Refusal {
    for (ChangedPart part : SplitSample.changed(SourceTreatment.KEEP)) {
      int sharps = part.name().startsWith("Clarinet") ? 4 : 2;
      List<SystemPicture> rows =
          SystemPicture.all(part, 900, new SystemPicture.Headings("before", "after"));
      assertTrue(rows.size() > 1, part.name());
      for (SystemPicture row : rows) {
        assertEquals(sharps, count(row.after()), part.name());
        assertEquals(part.isNew() ? 0 : sharps, count(row.before()), part.name());
      }
    }
  }

  private static long count(List<Mark> marks) {
    return marks.stream()
        .filter(mark -> mark instanceof Mark.Lettering sign && sign.text().equals(SHARP))
        .count();
  }
}

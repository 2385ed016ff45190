package stafette.desktop;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Seen from afar, a broken window is unlike a whole one. */
class CoarseTest {
  private static final Coarse WHOLE = Coarse.known("window-2-planned");

  @Test
  void a_picture_is_like_itself() {
    assertEquals(1, WHOLE.likeness(WHOLE));
  }

  @Test
  void an_empty_picture_is_unlike_any() {
    BufferedImage empty = new BufferedImage(1360, 820, BufferedImage.TYPE_INT_RGB);
    assertTrue(WHOLE.likeness(Coarse.of(new Snapshot(empty))) < 0.1);
  }

  @Test
  void a_missing_panel_is_noticed() {
    List<String> cut = WHOLE.rows().stream().map(row -> row.substring(0, 30)).toList();
    assertTrue(WHOLE.likeness(new Coarse(cut)) < 0.55);
  }
}

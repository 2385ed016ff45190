package stafette.musicxml.text;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;

class SpliceTest {
  @Property
  void the_text_between_changes_stays_and_changes_stand_in_its_place(
      @ForAll @Size(min = 1, max = 8) List<String> kept,
      @ForAll @Size(8) List<String> old,
      @ForAll @Size(8) List<String> fresh,
      @ForAll Random chance) {
    StringBuilder before = new StringBuilder();
    StringBuilder after = new StringBuilder();
    List<Replacement> changes = new ArrayList<>();
    for (int i = 0; i < kept.size(); i++) {
      before.append(kept.get(i)).append('|');
      after.append(kept.get(i)).append('|');
      int start = before.length();
      before.append(old.get(i));
      after.append(fresh.get(i));
      changes.add(new Replacement(new TextSpan(start, before.length()), fresh.get(i)));
    }
    Collections.shuffle(changes, chance);
    assertEquals(after.toString(), Splice.of(before.toString(), changes).changed());
  }

  @Test
  void changes_that_overlap_are_refused() {
    List<Replacement> two =
        List.of(new Replacement(new TextSpan(0, 3), "x"), new Replacement(new TextSpan(2, 4), "y"));
    assertThrows(IllegalStateException.class, () -> Splice.of("abcdef", two));
  }
}

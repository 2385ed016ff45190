package stafette.words;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import org.junit.jupiter.api.Test;

/** Where the program was at fault. */
class FaultTest {
  private static <E extends Exception> Fault at(Fault.FaultyWork<Integer, E> work) {
    return assertThrows(
        Fault.class,
        () ->
            Fault.at(
                () -> Sentence.of("{0}", "run.musicxml"),
                () -> Fault.at(() -> Sentence.of("{0}, bar {1}", "Flute 1", "12"), work)));
  }

  @Test
  void places_are_told_from_the_outside_to_the_inside() {
    IllegalStateException what = new IllegalStateException("negative");
    Fault fault =
        at(
            () -> {
              throw what;
            });
    assertEquals("run.musicxml, Flute 1, bar 12", Fault.where(fault).toString());
    assertSame(what, Fault.what(fault));
  }

  @Test
  void errors_of_the_machine_have_a_place_too() {
    StackOverflowError what = new StackOverflowError();
    Fault fault =
        at(
            () -> {
              throw what;
            });
    assertSame(what, Fault.what(fault));
  }

  @Test
  void what_is_no_fault_passes() throws IOException {
    assertEquals(1, Fault.at(() -> Sentence.NONE, () -> 1));
    IOException checked = new IOException();
    assertSame(
        checked,
        assertThrows(
            IOException.class,
            () ->
                Fault.<Integer, IOException>at(
                    () -> Sentence.NONE,
                    () -> {
                      throw checked;
                    })));
    assertEquals(Sentence.NONE, Fault.where(checked));
  }
}

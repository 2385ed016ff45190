package stafette.musicxml.write;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import stafette.musicxml.read.Document;
import stafette.musicxml.read.Xml;
import stafette.plan.SourceTreatment;

/** What is written is as valid as what was read. */
class SchemaTest {
  @TestFactory
  Stream<DynamicTest> writing_adds_no_error_of_the_schema() {
    return Stream.of("lantern-run", "signal-hill")
        .flatMap(
            sample ->
                Stream.of(SourceTreatment.values())
                    .map(
                        treatment ->
                            DynamicTest.dynamicTest(
                                sample + " " + treatment, () -> addsNone(sample, treatment))));
  }

  private static void addsNone(String sample, SourceTreatment treatment) throws Exception {
    Document document = ByHand.sample(sample);
    WrittenScore written =
        ScoreWriter.write(
            document,
            ByHand.planFor(sample, document.score()),
            treatment,
            player -> Optional.empty());
    List<String> added = new ArrayList<>(OfficialSchema.errors(written.bytes()));
    OfficialSchema.errors(document.container().bytes()).forEach(added::remove);
    assertEquals(List.of(), added);
  }

  @Test
  void the_schema_finds_an_element_that_stands_out_of_order() throws Exception {
    String wrong =
        Xml.score(
            Xml.ATTRIBUTES
                + "<note><duration>48</duration><pitch><step>A</step><octave>4</octave></pitch></note>");
    assertFalse(OfficialSchema.errors(wrong.getBytes(StandardCharsets.UTF_8)).isEmpty());
  }
}

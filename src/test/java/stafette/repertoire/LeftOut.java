package stafette.repertoire;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import stafette.score.Line;

/**
 * Passages that are not judged, each with its reason: what the encoder of the score put there, and
 * nobody plays.
 */
final class LeftOut {
  private static final String TABLE = "/stafette/repertoire/left-out.csv";

  private final List<CSVRecord> rows;

  private LeftOut(List<CSVRecord> rows) {
    this.rows = rows;
  }

  static LeftOut read() {
    try (Reader reader =
        new InputStreamReader(
            Objects.requireNonNull(LeftOut.class.getResourceAsStream(TABLE)),
            StandardCharsets.UTF_8)) {
      return new LeftOut(
          CSVFormat.RFC4180
              .builder()
              .setHeader()
              .setSkipHeaderRecord(true)
              .get()
              .parse(reader)
              .getRecords());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Why a passage is left out, if it is. */
  Optional<String> reason(Corpora.File file, Line line) {
    int bar = line.source().firstBar() + 1;
    return rows.stream()
        .filter(row -> file.name().contains(row.get("file")))
        .filter(
            row -> row.get("part").isEmpty() || line.source().partName().equals(row.get("part")))
        .filter(row -> bar >= number(row, "first bar", 1))
        .filter(row -> bar <= number(row, "last bar", Integer.MAX_VALUE))
        .map(row -> row.get("reason"))
        .findFirst();
  }

  private static int number(CSVRecord row, String column, int otherwise) {
    return row.get(column).isEmpty() ? otherwise : Integer.parseInt(row.get(column));
  }
}

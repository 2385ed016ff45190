package stafette.cli;

import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;
import stafette.check.JudgedPlan;
import stafette.keep.OpenScore;
import stafette.keep.Outputs;
import stafette.words.Refusal;
import stafette.work.PrintSheet;

/** Options that ask for a sheet to rehearse from. */
final class SheetOptions {
  @Option(
      names = "--sheet",
      paramLabel = "FILE",
      description =
          "Prints a sheet for the rehearsal into FILE.pdf: a page for the conductor, one for each player.")
  private @Nullable Path sheet;

  @Option(
      names = "--date",
      paramLabel = "DATE",
      description = "Of the sheet: the date on it, such as 2026-11-25; today if not given.")
  private @Nullable LocalDate date;

  /** Whether a sheet is asked for. */
  boolean asked() {
    return sheet != null;
  }

  /** Says before the search what would make printing impossible after it. */
  void refuseWhatCannotBe(PictureOptions picture, Outputs outputs) throws Refusal {
    Optional<PrintSheet.SheetRequest> request = request(picture);
    if (request.isPresent()) {
      request.get().refuseWhatCannotBe(outputs);
    } else if (date != null) {
      throw Refusal.wrongUse("--date: goes with --sheet FILE.pdf");
    }
  }

  void print(JudgedPlan judged, OpenScore score, PictureOptions picture, Output output)
      throws Refusal {
    Optional<PrintSheet.SheetRequest> request = request(picture);
    if (request.isPresent()) {
      PrintSheet.print(judged, score.score().title(), request.get());
      output.out().println("Printed    " + request.get().file());
    }
  }

  private Optional<PrintSheet.SheetRequest> request(PictureOptions picture) {
    LocalDate day = date == null ? LocalDate.now(ZoneId.systemDefault()) : date;
    return Optional.ofNullable(sheet)
        .map(
            file ->
                new PrintSheet.SheetRequest(file, picture.sheetPaper(), day, picture.replaces()));
  }
}

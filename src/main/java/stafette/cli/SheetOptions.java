package stafette.cli;

import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import stafette.check.JudgedPlan;
import stafette.keep.OpenScore;
import stafette.keep.Outputs;
import stafette.plan.Joins;
import stafette.plan.SourceTreatment;
import stafette.plan.WrittenAs;
import stafette.words.Refusal;
import stafette.work.PrintSheet;

/** Options that ask for a sheet to rehearse from. */
final class SheetOptions {
  @Mixin private MarkingOptions marking = new MarkingOptions();

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
    } else if (marking.isAsked()) {
      throw Refusal.wrongUse("--joins and --balance: go with --sheet FILE.pdf");
    }
  }

  void print(JudgedPlan judged, OpenScore score, PictureOptions picture, Output output)
      throws Refusal {
    Optional<PrintSheet.SheetRequest> request = request(picture);
    if (request.isPresent()) {
      WrittenAs how = marking.how(SourceTreatment.KEEP, true);
      PrintSheet.print(judged, how, score.score().title(), request.get());
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

  /** Options that say how what players are given is marked. */
  static final class MarkingOptions {
    @Option(
        names = "--joins",
        paramLabel = "HOW",
        description =
            "How notes are marked that two players share: as-written (default), or shaded (who enters"
                + " without accent and a step softer, who leaves fading).")
    private Joins joins = Joins.AS_WRITTEN;

    @Option(
        names = "--balance",
        description = "Marks louder instruments softer, in the dynamics that are written.")
    private boolean balance;

    static Joins joins(String text) throws Refusal {
      return Joins.parse(text).orElseThrow(() -> Refusal.wrongUse("write as-written or shaded"));
    }

    /** Whether anything is to be marked otherwise than the line is written. */
    boolean isAsked() {
      return joins != Joins.AS_WRITTEN || balance;
    }

    /**
     * How a plan is written.
     *
     * @param source what becomes of the line in the part it was taken from
     * @param pedals whether harps are told how to set their pedals
     */
    WrittenAs how(SourceTreatment source, boolean pedals) {
      return new WrittenAs(source, joins, balance, pedals);
    }
  }
}

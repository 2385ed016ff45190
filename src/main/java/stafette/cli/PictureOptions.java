package stafette.cli;

import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;
import stafette.check.JudgedPlan;
import stafette.keep.Outputs;
import stafette.words.Refusal;
import stafette.work.DrawPlan;

/** Options that say what to draw, and into which file. */
final class PictureOptions {
  @Option(
      names = "--timeline",
      paramLabel = "FILE",
      description = "Draws the timeline into FILE.svg, FILE.png or FILE.pdf.")
  private @Nullable Path timeline;

  @Option(
      names = "--paper",
      paramLabel = "SIZE",
      description =
          "Of the timeline: a4 (default in PDF), letter, sheet (one sheet, default elsewhere), wide (one row). Of the sheet: a4 (default), letter.")
  private String paper = "";

  @Option(names = "--notes", description = "Writes each segment as music into the timeline.")
  private boolean notes;

  @Option(names = "--force", description = "Replaces FILE if it is there already.")
  private boolean force;

  /** Says before the search what would make drawing impossible after it. */
  void refuseWhatCannotBe(boolean withSheet, Outputs outputs) throws Refusal {
    Optional<DrawPlan.PictureRequest> request = request(withSheet);
    if (request.isPresent()) {
      request.get().refuseWhatCannotBe(outputs);
    }
  }

  /**
   * Draws what is asked for.
   *
   * @param withSheet whether the paper may be meant for a sheet alone
   */
  void draw(JudgedPlan judged, boolean withSheet, Output output) throws Refusal {
    Optional<DrawPlan.PictureRequest> request = request(withSheet);
    if (request.isPresent()) {
      DrawPlan.timeline(judged, request.get());
      output.out().println("Drawn      " + request.get().file());
    }
  }

  /** The paper of a sheet: what is asked for, unless only the timeline can be drawn on it. */
  String sheetPaper() {
    boolean onlyTimeline = timeline != null && !paper.isEmpty() && !hasPages();
    return onlyTimeline ? "" : paper;
  }

  private boolean hasPages() {
    return paper.equalsIgnoreCase("a4") || paper.equalsIgnoreCase("letter");
  }

  /** Whether files that are there may be replaced. */
  boolean replaces() {
    return force;
  }

  private Optional<DrawPlan.PictureRequest> request(boolean withSheet) {
    return Optional.ofNullable(timeline)
        .map(file -> new DrawPlan.PictureRequest(file, paperOf(file, withSheet), notes, force));
  }

  private String paperOf(Path file, boolean withSheet) {
    boolean onlySheet =
        withSheet && hasPages() && !file.toString().toLowerCase(Locale.ROOT).endsWith(".pdf");
    return onlySheet ? "" : paper;
  }
}

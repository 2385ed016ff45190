package stafette.cli;

import java.nio.file.Path;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;
import stafette.work.DrawPlan;
import stafette.work.JudgedPlan;
import stafette.work.Refusal;

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
          "Of the timeline: a4 (default in PDF), letter, sheet (one sheet, default elsewhere), wide (one row).")
  private String paper = "";

  @Option(names = "--notes", description = "Writes each segment as music into the timeline.")
  private boolean notes;

  @Option(names = "--force", description = "Replaces FILE if it is there already.")
  private boolean force;

  /** Says before the search what would make drawing impossible after it. */
  void refuseWhatCannotBe() throws Refusal {
    if (request().isPresent()) {
      request().get().refuseWhatCannotBe();
    }
  }

  void draw(JudgedPlan judged, Output output) throws Refusal {
    if (request().isPresent()) {
      DrawPlan.timeline(judged, request().get());
      output.out().println("Drawn      " + request().get().file());
    }
  }

  /** Whether files that are there may be replaced. */
  boolean replaces() {
    return force;
  }

  private Optional<DrawPlan.Request> request() {
    return Optional.ofNullable(timeline)
        .map(file -> new DrawPlan.Request(file, paper, notes, force));
  }
}

package stafette.work;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import stafette.time.Rational;

/** Makes files of a plan as they are usually wanted; a file that is there is replaced. */
public final class ExportPlan {
  private ExportPlan() {}

  /**
   * The timeline with music, by the ending of the file's name.
   *
   * @throws Refusal as {@link DrawPlan#timeline} does
   */
  public static void timeline(JudgedPlan judged, Path file) throws Refusal {
    DrawPlan.timeline(judged, new DrawPlan.Request(file, "", true, true));
  }

  /**
   * The sound of the players alone, by the ending of the file's name.
   *
   * @throws Refusal as {@link PlayPlan#play} does
   */
  public static void sound(JudgedPlan judged, OpenLine line, Path file, LimitsInForce limits)
      throws Refusal {
    PlayPlan.play(
        new PlayPlan.Piece(judged, line.score(), line.seats()),
        limits,
        new PlayPlan.Request(
            file,
            false,
            true,
            Optional.empty(),
            List.of(),
            List.of(),
            Rational.ONE,
            false,
            Optional.empty(),
            true));
  }
}

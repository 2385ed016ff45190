package stafette.work;

import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.Function;
import stafette.check.JudgedPlan;
import stafette.keep.LimitsInForce;
import stafette.keep.Outputs;
import stafette.picture.sheet.SheetLanguage;
import stafette.plan.WrittenAs;
import stafette.time.Rational;
import stafette.words.Refusal;
import stafette.words.Sayable;

/** Makes files of a plan as they are usually wanted; a file that is there is replaced. */
public final class ExportPlan {
  private ExportPlan() {}

  /**
   * The timeline with music, by the ending of the file's name.
   *
   * @param speech how anything is said
   * @throws Refusal as {@link DrawPlan#timeline(JudgedPlan, DrawPlan.PictureRequest)} does
   */
  public static void timeline(JudgedPlan judged, Path file, Function<Sayable, String> speech)
      throws Refusal {
    DrawPlan.timeline(judged, new DrawPlan.PictureRequest(file, "", true, true), speech);
  }

  /**
   * The sheet for conductor and players, dated today.
   *
   * @param how the plan is written into the score, which the sheet tells
   * @param locale of its date
   * @param speech how anything is said
   * @throws Refusal if the file's name doesn't end as a PDF's, or it can't be written
   */
  public static void sheet(
      JudgedPlan judged,
      WrittenAs how,
      OpenLine line,
      Path file,
      Locale locale,
      Function<Sayable, String> speech)
      throws Refusal {
    LocalDate today = LocalDate.now(ZoneId.systemDefault());
    PrintSheet.SheetRequest request = new PrintSheet.SheetRequest(file, "", today, true);
    request.refuseWhatCannotBe(Outputs.beside(List.of(line.score().file())));
    PrintSheet.print(
        judged, how, line.score().score().title(), request, new SheetLanguage(locale, speech));
  }

  /**
   * What is to be heard.
   *
   * @param players by name, at least one who plays in the plan
   * @param withScore whether the rest of the score is heard behind them
   * @param speed factor on all tempi
   */
  public record HeardAs(List<String> players, boolean withScore, Rational speed) {
    /**
     * @throws IllegalArgumentException if nobody is heard
     */
    public HeardAs {
      players = List.copyOf(players);
      if (players.isEmpty()) {
        throw new IllegalArgumentException("nobody is heard");
      }
    }
  }

  /**
   * The sound, by the ending of the file's name.
   *
   * @param stop asked often; once it says yes there is no file
   * @return whether there is one
   * @throws Refusal as {@link PlayPlan#play} does
   */
  public static boolean sound(
      JudgedPlan judged,
      OpenLine line,
      Path file,
      HeardAs heard,
      LimitsInForce limits,
      BooleanSupplier stop)
      throws Refusal {
    return PlayPlan.render(
        new PlayPlan.PlayedPiece(judged, line.score(), line.seats()),
        limits,
        new PlayPlan.SoundRequest(
            file,
            heard.withScore(),
            true,
            Optional.empty(),
            heard.players(),
            List.of(),
            heard.speed(),
            false,
            Optional.empty(),
            true),
        stop);
  }
}

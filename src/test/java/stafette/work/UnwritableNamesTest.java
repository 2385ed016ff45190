package stafette.work;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import stafette.ask.LineRequest;
import stafette.ask.MeasuredPlayers;
import stafette.ask.PlayerWish;
import stafette.ask.SplitRequest;
import stafette.keep.LimitsInForce;
import stafette.keep.OpenScore;
import stafette.score.BarChoice;
import stafette.score.LineChoice;
import stafette.score.Tremolo;
import stafette.words.Refusal;

/** Names that no score can hold are refused in words before anything is planned. */
class UnwritableNamesTest {
  private static final Path SAMPLE = Path.of("samples/signal-hill.musicxml");

  @TempDir private Path folder = Path.of("");

  @ParameterizedTest
  @ValueSource(
      strings = {"Fl\u0007ute 1, Flute 2", "Anna\ud800 = flute", "Flute 2, \u001b[2J=oboe"})
  void a_list_of_players_with_such_a_name(String players) {
    Refusal refusal = assertThrows(Refusal.class, () -> PlayerWish.parse(players));
    assertEquals(Refusal.Cause.WRONG_USE, refusal.cause());
    assertTrue(String.valueOf(refusal.getMessage()).contains("no score can hold the character U+"));
  }

  @Test
  void a_player_named_by_whoever_asks() throws Exception {
    SplitRequest request =
        SplitRequest.usual(LineRequest.whole(SAMPLE))
            .with(List.of(new PlayerWish("Flute \u0001", Optional.of("flute"))), List.of())
            .with(trumpet());
    Refusal refusal = assertThrows(Refusal.class, () -> SplitLine.split(request, limits()));
    assertTrue(String.valueOf(refusal.getMessage()).contains("U+0001"), refusal.getMessage());
  }

  @Test
  void a_players_file_with_such_a_name() throws Exception {
    Path file = folder.resolve("players.json");
    Files.writeString(
        file,
        """
        {"format": "stafette-players", "version": 1, "players": [
          {"name": "Ada \\ud834", "instrument": "flute", "techniques": []}]}
        """);
    Refusal refusal =
        assertThrows(Refusal.class, () -> MeasuredPlayers.load(Optional.of(file), limits()));
    assertTrue(
        String.valueOf(refusal.getMessage()).contains("no score can hold the character U+D834"),
        refusal.getMessage());
  }

  @Test
  void two_names_of_one_part() throws Exception {
    SplitRequest request =
        SplitRequest.usual(LineRequest.whole(SAMPLE))
            .with(PlayerWish.parse("P1, Flute 1"), List.of())
            .with(trumpet());
    Refusal refusal = assertThrows(Refusal.class, () -> SplitLine.split(request, limits()));
    assertEquals(
        "P1 and Flute 1 are the same player of the score, Flute 1; name it once",
        refusal.getMessage());
  }

  private static LineRequest trumpet() {
    return LineRequest.whole(SAMPLE)
        .with(
            new LineChoice(
                "Trumpet 1",
                Optional.of(new BarChoice("9-12")),
                OptionalInt.empty(),
                Optional.empty(),
                Optional.empty()));
  }

  private static LimitsInForce limits() throws Refusal {
    return LimitsInForce.load(Optional.empty());
  }

  @Test
  void what_was_written_is_read_again_whole() throws Exception {
    OpenScore score = OpenScore.open(SAMPLE, Tremolo.AS_WRITTEN, false, limits());
    String text = Files.readString(SAMPLE);
    assertEquals(score.score().parts(), WriteScore.readAgain(bytes(text), score).parts());
    for (String spoilt :
        List.of(
            text.substring(0, text.length() / 2),
            text.replaceFirst("<part-name>Flute 1", "<part-name>Flute\u0007 1"),
            text.replaceFirst("(?s)<part id=\"P2\">.*?</part>", ""),
            text.replaceAll("(?s)<measure number=\"20\".*?</measure>", ""),
            text.replaceFirst("(?s)(<measure number=\"3\".*?<duration>)", "$19"))) {
      assertThrows(IllegalStateException.class, () -> WriteScore.readAgain(bytes(spoilt), score));
    }
  }

  private static byte[] bytes(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }
}

package stafette.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stafette.limits.Instrument;
import stafette.plan.Busy;
import stafette.plan.Played;
import stafette.plan.Player;
import stafette.score.Line;
import stafette.time.Bar;
import stafette.time.Span;

/** The music that each player of a relay plays, as it stands under the ribbon. */
final class StaffLines {
  static final double SPACE = 3.9;

  /** Room between a bar line and the first note. */
  static final double LEAD = Engraver.LEAD_SPACES * SPACE;

  private static final double MOST_POINTS_PER_QUARTER = 150;

  private final Relay relay;

  StaffLines(Relay relay) {
    this.relay = relay;
  }

  /** Whether a player has something to play in a row. */
  boolean plays(int player, Row row) {
    return relay.plan().segmentsOf(player).stream()
        .anyMatch(segment -> relay.span(segment).overlaps(row.span()));
  }

  List<Mark> marks(int player, Row row, double top) {
    return Engraver.marks(music(player, row), staff(player, top), row);
  }

  /** The widest header of any player's staff. */
  double headerWidth(List<Integer> players, Bar first) {
    return players.stream()
        .mapToDouble(player -> StaffHeader.width(staff(player, 0), 0, Optional.of(first.meter())))
        .max()
        .orElse(0);
  }

  private Engraver.Music music(int player, Row row) {
    List<Played> plays =
        relay.plan().segmentsOf(player).stream().map(relay.plan()::played).toList();
    Bar first = row.bars().get(0);
    boolean newMeter =
        first.equals(relay.bars().get(0))
            || !relay.line().bars().get(first.index() - 1).meter().equals(first.meter());
    return new Engraver.Music(
        plays,
        given(relay.plan().brief().players().get(player), row),
        0,
        newMeter ? Optional.of(first.meter()) : Optional.empty());
  }

  private Staff staff(int player, double top) {
    Instrument instrument = relay.plan().brief().players().get(player).instrument();
    return new Staff(top, SPACE, Clef.of(instrument.clef()), instrument.transposition());
  }

  /** The beats in which the score gives the player something. */
  private List<Span> given(Player player, Row row) {
    Line line = relay.line();
    List<Span> spans = new ArrayList<>();
    for (Bar bar : row.bars()) {
      for (Span beat : bar.beats()) {
        long from = line.micros(beat.start());
        long to = line.micros(beat.end());
        for (Busy busy : player.busy()) {
          if (busy.fromMicros() < to && from < busy.toMicros()) {
            spans.add(beat);
          }
        }
      }
    }
    return spans;
  }

  /** The least width of a quarter note at which no two notes of the relay touch. */
  double pointsPerQuarter() {
    return Math.min(
        MOST_POINTS_PER_QUARTER,
        relay.plan().brief().lines().stream()
            .mapToDouble(line -> Engraver.leastPointsPerQuarter(line, SPACE))
            .max()
            .orElse(0));
  }
}

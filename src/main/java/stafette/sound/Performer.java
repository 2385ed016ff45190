package stafette.sound;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import stafette.plan.Plan;
import stafette.plan.Played;
import stafette.plan.Player;
import stafette.plan.Seat;
import stafette.plan.Segment;
import stafette.plan.Turn;
import stafette.score.Line;

/** Plays plans: every stroke of every player, as people would. */
public final class Performer {
  private static final long SEED = 20_251_125L;
  private static final int MIDDLE = 64;
  private static final int MOST_ASIDE = 48;
  private static final double[] CENTS = {0, 2.5, -2.5, 4, -4, 1.2, -1.2};

  private final Plan plan;
  private final Manner manner;
  private final Clock clock;

  public Performer(Plan plan, Manner manner) {
    this.plan = plan;
    this.manner = manner;
    this.clock = new Clock(plan.line(), manner.speed());
  }

  public Clock clock() {
    return clock;
  }

  /** The plan as it stands. */
  public Performance asPlanned() {
    List<Note> notes = new ArrayList<>();
    People people = new People(manner, SEED);
    for (Segment segment : plan.segments()) {
      play(segment, Long.MAX_VALUE, people, notes);
    }
    return performance(notes);
  }

  /** The plan with everybody leaving where the next one enters. */
  public Performance withoutOverlaps() {
    List<Note> notes = new ArrayList<>();
    People people = new People(manner, SEED);
    for (List<Turn> turns : plan.relays()) {
      for (int i = 0; i < turns.size(); i++) {
        Line line = plan.brief().line(turns.get(i).relay());
        long until =
            i + 1 < turns.size() ? line.onsetMicros(turns.get(i + 1).first()) : Long.MAX_VALUE;
        for (Segment segment : turns.get(i).segments()) {
          play(segment, until, people, notes);
        }
      }
    }
    return performance(notes);
  }

  /** The line by the first player alone, who never tires: as no player could. */
  public Performance byOneAlone() {
    List<Note> notes = new ArrayList<>();
    People people = new People(manner, SEED);
    Line line = plan.line();
    int first = plan.segments().get(0).player();
    play(first, new Played(line, 0, line.count() - 1), Long.MAX_VALUE, people, notes);
    return performance(notes);
  }

  private Performance performance(List<Note> notes) {
    List<Chair> chairs =
        IntStream.range(0, plan.brief().players().size()).mapToObj(this::chair).toList();
    return new Performance(chairs, unentangled(notes), clock.tempi(), clock.lengthMicros());
  }

  private Chair chair(int number) {
    List<Player> players = plan.brief().players();
    Player player = players.get(number);
    return new Chair(
        player.name(),
        player.instrument().midiProgram(),
        pan(number),
        Loudness.volume(player, players),
        CENTS[number % CENTS.length],
        false);
  }

  /** By the seat, as seen from the front of the stage; else from left to right as listed. */
  private int pan(int number) {
    List<Player> players = plan.brief().players();
    Seat seat = manner.seats().get(players.get(number).name());
    if (seat != null) {
      double angle = Math.atan2(seat.acrossMetres(), Math.max(1, seat.backMetres()));
      return MIDDLE + (int) Math.round(MOST_ASIDE * angle / (Math.PI / 2));
    }
    double step = players.size() < 2 ? 0 : 2.0 * MOST_ASIDE / (players.size() - 1);
    return players.size() < 2 ? MIDDLE : (int) Math.round(MIDDLE - MOST_ASIDE + number * step);
  }

  private void play(Segment segment, long until, People people, List<Note> notes) {
    play(segment.player(), plan.played(segment), until, people, notes);
  }

  private void play(int number, Played played, long until, People people, List<Note> notes) {
    Player player = plan.brief().players().get(number);
    Line line = played.line();
    people.enter(player);
    for (int j = played.first(); j <= played.last(); j++) {
      long late = people.lateMicros(player);
      if (line.onsetMicros(j) < until) {
        long start = clock.performed(line.onsetMicros(j));
        long gap = j == played.first() ? start : start - clock.performed(line.onsetMicros(j - 1));
        notes.addAll(
            Articulated.notes(
                number,
                line.stroke(j),
                start + late,
                clock.performed(line.endMicros(j)) - start,
                gap,
                Loudness.velocity(line.stroke(j))));
      }
    }
  }

  /** No key is struck again before it was let go. */
  private static List<Note> unentangled(List<Note> notes) {
    Map<List<Integer>, Note> sounding = new HashMap<>();
    List<Note> result = new ArrayList<>();
    List<Note> byStart =
        notes.stream()
            .sorted((one, other) -> Long.compare(one.startMicros(), other.startMicros()))
            .toList();
    for (Note note : byStart) {
      Note before = sounding.put(List.of(note.chair(), note.key()), note);
      if (before != null) {
        result.add(
            before.endMicros() > note.startMicros() ? before.until(note.startMicros()) : before);
      }
    }
    result.addAll(sounding.values());
    return result;
  }
}

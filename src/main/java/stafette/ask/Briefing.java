package stafette.ask;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import stafette.chairs.Chairs;
import stafette.keep.LimitsInForce;
import stafette.keep.OpenScore;
import stafette.limits.Capability;
import stafette.limits.Saying;
import stafette.plan.Brief;
import stafette.plan.Lock;
import stafette.plan.Player;
import stafette.plan.Rules;
import stafette.plan.Seat;
import stafette.score.Line;
import stafette.score.Slurring;
import stafette.score.Tremolo;
import stafette.time.TempoMap;
import stafette.time.TempoMark;
import stafette.words.Refusal;
import stafette.words.Sentence;

/**
 * What is asked, in full, at any tempo. Techniques that apply and what the score already gives the
 * players are found anew at each.
 */
public final class Briefing {
  private final SplitRequest request;
  private final LimitsInForce limits;
  private final MeasuredPlayers measured;
  private final LineRequest.FoundLine found;
  private final OpenScore score;
  private final Chairs chairs;
  private final Brief brief;
  private final Map<String, Seat> seats;

  private Briefing(
      SplitRequest request,
      LimitsInForce limits,
      MeasuredPlayers measured,
      LineRequest.FoundLine found,
      Chairs chairs,
      List<Line> lines)
      throws Refusal {
    this.request = request;
    this.limits = limits;
    this.measured = measured;
    this.found = found;
    this.score = found.score();
    this.chairs = chairs;
    this.brief = brief(lines);
    this.seats = Seats.of(brief.players(), request.seats(), measured.file().seats());
  }

  /**
   * @throws Refusal if the score, the line or a player is not there, or a seat is asked for nobody
   */
  public static Briefing of(SplitRequest request, LimitsInForce limits) throws Refusal {
    return of(request, limits, request.line().find(limits));
  }

  /** A briefing on a line that was found before. */
  public static Briefing of(SplitRequest request, LimitsInForce limits, LineRequest.FoundLine found)
      throws Refusal {
    return of(request, limits, found, MeasuredPlayers.load(request.playersFile(), limits));
  }

  /** A briefing with players of whom more is known than a file says. */
  public static Briefing of(
      SplitRequest request,
      LimitsInForce limits,
      LineRequest.FoundLine found,
      MeasuredPlayers measured)
      throws Refusal {
    Chairs chairs = Chairs.of(found.score().score(), limits.catalogue());
    return of(request, limits, found, measured, chairs);
  }

  /** A briefing on a score of which it is known who plays in it. */
  public static Briefing of(
      SplitRequest request,
      LimitsInForce limits,
      LineRequest.FoundLine found,
      MeasuredPlayers measured,
      Chairs chairs)
      throws Refusal {
    List<Line> lines = request.relaying().lines(found.line());
    return new Briefing(request, limits, measured, found, chairs, lines);
  }

  /**
   * Something else asked of the same score. The lines stay the very same where they can, so that
   * what was worked out for them holds on.
   */
  public Briefing with(SplitRequest other) throws Refusal {
    return with(other, measured);
  }

  /** With what somebody is said to be capable of. */
  public Briefing measuring(String player, Map<String, Capability> capabilities) throws Refusal {
    return with(request, measured.with(player, capabilities));
  }

  /**
   * With what is said of a technique of somebody.
   *
   * @param saying nothing any more if empty
   */
  public Briefing saying(String player, String technique, Optional<Saying> saying) throws Refusal {
    return with(request, measured.saying(player, technique, saying));
  }

  /** With a player who leaves out what the score gives, or doesn't. */
  public Briefing freeing(String player, boolean free) throws Refusal {
    return with(request, measured.freeing(player, free));
  }

  /** In its score read again, with nothing locked. */
  public Briefing in(OpenScore again, Tremolo tremolo) throws Refusal {
    SplitRequest free = request.with(request.relaying().with(List.<LockWish>of()));
    SplitRequest other = free.with(free.line().with(tremolo));
    LineRequest.FoundLine line = other.line().in(again);
    return new Briefing(
        other,
        limits,
        measured,
        line,
        Chairs.of(again.score(), limits.catalogue()),
        other.relaying().lines(line.line()));
  }

  private Briefing with(SplitRequest other, MeasuredPlayers players) throws Refusal {
    boolean sameLine = other.line().equals(request.line());
    LineRequest.FoundLine line = sameLine ? found : other.line().in(score);
    boolean sameLines =
        sameLine
            && other.relaying().together() == request.relaying().together()
            && other.relaying().eachTone() == request.relaying().eachTone();
    return new Briefing(
        other,
        limits,
        players,
        line,
        chairs,
        sameLines ? brief.lines() : other.relaying().lines(line.line()));
  }

  public SplitRequest request() {
    return request;
  }

  public MeasuredPlayers measured() {
    return measured;
  }

  public OpenScore score() {
    return score;
  }

  /** Of the players whose seats are known, by name. */
  public Map<String, Seat> seats() {
    return seats;
  }

  /** At the tempo asked for. */
  public Brief brief() {
    return brief;
  }

  /**
   * With the tempo at the line's start brought to a mark, all others scaled with it. Relays of one
   * line stay relays of one line.
   */
  public Brief at(TempoMark mark) {
    Line line = brief.line();
    TempoMap tempi = line.tempo().scaledTo(line.stroke(0).onset(), mark);
    try {
      return brief(brief.linesAt(tempi));
    } catch (Refusal e) {
      throw new IllegalStateException("players don't come and go with the tempo " + mark, e);
    }
  }

  /** With more players. */
  public Brief adding(List<PlayerWish> more) throws Refusal {
    List<PlayerWish> wishes = Stream.concat(wishes().stream(), more.stream()).toList();
    return asking(request.with(wishes, request.allowances()));
  }

  /** With others in the place of somebody. */
  public Brief with(PlayerWish one, List<PlayerWish> others) throws Refusal {
    List<PlayerWish> wishes =
        wishes().stream()
            .flatMap(wish -> wish.equals(one) ? others.stream() : Stream.of(wish))
            .toList();
    return asking(request.with(wishes, request.allowances()));
  }

  /** With one more technique. */
  public Brief allowing(Allowance more) throws Refusal {
    return asking(
        request.with(
            request.players(),
            Stream.concat(request.allowances().stream(), Stream.of(more)).toList()));
  }

  /** With other slurs beside those of the score. */
  public Brief slurring(Slurring other) throws Refusal {
    return asking(request.with(request.line().with(other)));
  }

  private Brief asking(SplitRequest other) throws Refusal {
    return with(other).brief();
  }

  /** Who plays in the score. */
  public Chairs chairs() {
    return chairs;
  }

  /** Who is to play: those asked for, or all of the file if nobody is; chair by chair. */
  public List<PlayerWish> wishes() {
    List<PlayerWish> all = request.players().isEmpty() ? measured.wishes() : request.players();
    return all.stream().flatMap(wish -> wish.seated(chairs).stream()).toList();
  }

  private Brief brief(List<Line> lines) throws Refusal {
    Roster roster =
        new Roster(
            score.score(),
            chairs,
            lines,
            limits,
            measured,
            request.assurance(),
            request.allowances());
    List<Player> players = roster.of(wishes());
    Rules rules =
        new Rules(
            request.assurance(),
            request.overlap(),
            request.readySeconds(),
            request.favour(),
            limits.weights().favouring(request.favour()),
            request.relaying().hocket(),
            List.of(),
            request.margin());
    Brief free = new Brief(lines, players, rules);
    List<Lock> locks = new ArrayList<>();
    for (LockWish wish : request.relaying().locks()) {
      locks.add(locked(wish, free));
    }
    return free.with(rules.with(locks));
  }

  /** A note that is to be locked may be gone because a relay was written before. */
  private Lock locked(LockWish wish, Brief free) throws Refusal {
    try {
      return wish.in(free);
    } catch (Refusal e) {
      List<Sentence> all = new ArrayList<>(List.of(e.inWords()));
      all.addAll(LineRemarks.on(score, free.line(), request.line()));
      throw Refusal.wrongUse(Sentence.list("\n", all));
    }
  }
}

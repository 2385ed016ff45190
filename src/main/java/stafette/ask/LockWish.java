package stafette.ask;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import stafette.limits.TypedNames;
import stafette.limits.Way;
import stafette.plan.Brief;
import stafette.plan.Lock;
import stafette.plan.Player;
import stafette.score.Line;
import stafette.time.BarBeat;
import stafette.words.Refusal;
import stafette.words.Sentence;
import stafette.words.Settable;

/**
 * What a plan must keep, as people ask for it: bars and beats, both ends included.
 *
 * <ul>
 *   <li>{@code Flute 1: 12.1-13.1}: one segment of Flute 1 covers the stretch
 *   <li>{@code Flute 1 = 12.1-13.1}: just this stretch is a segment of Flute 1; {@code with double
 *       tonguing} may follow
 *   <li>{@code not Flute 1: 12.1-13.1}: no segment of Flute 1 touches the stretch
 *   <li>{@code handoff: 13.1}: somebody enters and somebody leaves on this note; {@code handoff:
 *       12.4-13.1}: one enters on the first and the other leaves on the second
 * </ul>
 *
 * {@code @2} at the end means the second relay; {@code #14.1} means the bar counted from 1 where a
 * number is printed more than once.
 *
 * @param text as typed
 * @param kind what is to be kept
 * @param player whose; empty for a handoff
 * @param technique with which technique, if that is said
 * @param from bar and beat
 * @param to bar and beat
 * @param relay from 0
 */
public record LockWish(
    String text,
    LockKind kind,
    Optional<String> player,
    Optional<String> technique,
    String from,
    String to,
    int relay) {
  private static final Pattern FORM =
      Pattern.compile(
          "(not\\s+)?(.+?)\\s*([:=])\\s*([^\\s:=-]+)(?:\\s*-\\s*([^\\s:=-]+))?"
              + "(?:\\s+with\\s+(.+?))?\\s*(?:@\\s*([1-9]))?\\s*");

  /** The kinds of locks. */
  public enum LockKind {
    HANDOFF("", ": "),
    SEGMENT("", " = "),
    IN("", ": "),
    OUT("not ", ": ");

    private final String before;
    private final String sign;

    LockKind(String before, String sign) {
      this.before = before;
      this.sign = sign;
    }
  }

  /**
   * @throws Refusal if the text is none of the forms
   */
  public static LockWish parse(String text) throws Refusal {
    Matcher form = FORM.matcher(text.trim());
    if (!form.matches()) {
      throw malformed();
    }
    boolean not = form.group(1) != null;
    String name = form.group(2).trim();
    boolean exactly = form.group(3).equals("=");
    boolean handoff = name.toLowerCase(Locale.ROOT).equals("handoff");
    if ((not && exactly) || (handoff && (not || exactly)) || (form.group(6) != null && !exactly)) {
      throw malformed();
    }
    LockKind kind =
        handoff ? LockKind.HANDOFF : not ? LockKind.OUT : exactly ? LockKind.SEGMENT : LockKind.IN;
    return new LockWish(
        text,
        kind,
        handoff ? Optional.empty() : Optional.of(name),
        Optional.ofNullable(form.group(6)),
        form.group(4),
        form.group(5) == null ? form.group(4) : form.group(5),
        form.group(7) == null ? 0 : Integer.parseInt(form.group(7)) - 1);
  }

  /** What somebody would have typed for a lock. */
  public static LockWish of(Lock lock, Brief brief) {
    Line line = brief.line(lock.relay());
    String from = named(line, lock.first());
    String to = named(line, Math.min(lock.last(), line.count() - 1));
    Optional<String> player =
        Lock.player(lock).stream().mapToObj(i -> brief.players().get(i).name()).findFirst();
    Optional<String> technique =
        lock.match(
            at -> Optional.empty(),
            exactly -> technique(exactly, brief),
            in -> Optional.empty(),
            out -> Optional.empty());
    LockKind kind =
        lock.match(
            at -> LockKind.HANDOFF,
            exactly -> LockKind.SEGMENT,
            in -> LockKind.IN,
            out -> LockKind.OUT);
    String text =
        kind.before
            + player.orElse("handoff")
            + kind.sign
            + from
            + "-"
            + to
            + technique.map(name -> " with " + name).orElse("")
            + (lock.relay() > 0 ? " @" + (lock.relay() + 1) : "");
    return new LockWish(text, kind, player, technique, from, to, lock.relay());
  }

  /** By a technique of the way, where the player has several ways. */
  private static Optional<String> technique(Lock.Exactly lock, Brief brief) {
    List<Way> ways = brief.players().get(lock.player()).ways();
    return lock.way().stream()
        .filter(way -> ways.size() > 1)
        .mapToObj(way -> ways.get(way).skills().get(0).technique().name())
        .findFirst();
  }

  private static Refusal malformed() {
    return Refusal.wrongUse(
        Sentence.of(
            "write \"Flute 1: 12.1-13.1\" (plays there), \"Flute 1 = 12.1-13.1\" (just there), \"not"
                + " Flute 1: 12.1-13.1\", or \"handoff: 13.1\"; bar, point, beat"));
  }

  /**
   * The lock in a brief.
   *
   * @throws Refusal if the player, the technique, a note or the relay is not there
   */
  Lock in(Brief brief) throws Refusal {
    if (relay >= brief.lines().size()) {
      throw refused(
          Sentence.of("there is no relay {0}, only {1}", relay + 1, brief.lines().size()));
    }
    int first = stroke(brief.line(relay), from);
    int last = stroke(brief.line(relay), to);
    if (kind == LockKind.HANDOFF) {
      return handoff(brief.line(relay), first, last);
    }
    if (last < first) {
      throw refused(Sentence.of("the stretch ends before it begins"));
    }
    int who = player(brief);
    return switch (kind) {
      case SEGMENT -> new Lock.Exactly(relay, who, way(brief.players().get(who)), first, last);
      case IN -> new Lock.In(relay, who, first, last);
      default -> new Lock.Out(relay, who, first, last);
    };
  }

  private Lock handoff(Line line, int first, int last) throws Refusal {
    if (first == 0) {
      throw refused(
          Sentence.of(
              "there is no handoff on the line's first note, as nobody plays before it; lock a later"
                  + " one, or who plays there"));
    }
    if (last == line.count() - 1) {
      throw refused(
          Sentence.of(
              "there is no handoff on the line's last note, as nobody plays after it; lock an earlier"
                  + " one, or who plays there"));
    }
    if (last < first - 1 || (last == first - 1 && !line.restsBefore(first))) {
      throw refused(
          Sentence.of(
              "who leaves would be gone before the other enters; write first where one enters, then"
                  + " where the other leaves, at least one note shared"));
    }
    return new Lock.At(relay, first, last);
  }

  /** Whether a brief has all that the lock speaks of. */
  public boolean fits(Brief brief) {
    try {
      return in(brief).relay() == relay;
    } catch (Refusal nothingToKeep) {
      return false;
    }
  }

  private int player(Brief brief) throws Refusal {
    List<String> names = brief.players().stream().map(Player::name).toList();
    return IntStream.range(0, names.size())
        .filter(i -> names.get(i).equalsIgnoreCase(player.orElse("")))
        .findFirst()
        .orElseThrow(
            () ->
                refused(
                    Sentence.of(
                        "there is no player {0}; there are {1}",
                        player.orElse(""), Sentence.list(names))));
  }

  /** Which of several ways a technique belongs to. */
  private OptionalInt way(Player who) throws Refusal {
    if (technique.isEmpty()) {
      return OptionalInt.empty();
    }
    List<Way> ways = who.ways();
    for (int i = 0; ways.size() > 1 && i < ways.size(); i++) {
      if (ways.get(i).skills().stream()
          .anyMatch(skill -> TypedNames.same(skill.technique().name(), technique.get()))) {
        return OptionalInt.of(i);
      }
    }
    throw refused(
        ways.size() > 1
            ? Sentence.of("{0} has no {1}", who.name(), Sentence.name(technique.get()))
            : Sentence.of(
                "{0} changes between techniques as the music asks; leave out \"with {1}\", or set"
                    + " the player's techniques for the whole line{2}",
                who.name(), Sentence.name(technique.get()), Settable.PLAYER_TECHNIQUES));
  }

  private int stroke(Line line, String place) throws Refusal {
    for (int j = 0; j < line.count(); j++) {
      BarBeat at = line.placeOf(j).at();
      String bare = at.dotted();
      if (bare.equals(place)
          || (at.beatText().equals("1") && at.bar().equals(place))
          || counted(line, j).equals(place)) {
        return j;
      }
    }
    throw refused(
        Sentence.of(
            "the line has no note at {0} (it runs from {1} to {2}; bar, point, beat, as in 12.1 or"
                + " 12.2+1/2)",
            place, named(line, 0), named(line, line.count() - 1)));
  }

  /** By the printed number of its bar, if that is printed once. */
  private static String named(Line line, int stroke) {
    BarBeat at = line.placeOf(stroke).at();
    return line.bars().isPrintedOnce(at.bar()) ? at.dotted() : counted(line, stroke);
  }

  private static String counted(Line line, int stroke) {
    BarBeat at = line.placeOf(stroke).at();
    return "#" + (line.bars().at(line.stroke(stroke).onset()).index() + 1) + "." + at.beatText();
  }

  private Refusal refused(Sentence why) {
    return Refusal.wrongUse(Sentence.of("lock \"{0}\": {1}", text, why));
  }
}

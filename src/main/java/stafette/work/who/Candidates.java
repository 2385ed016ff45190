package stafette.work.who;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import stafette.ask.Allowance;
import stafette.ask.MeasuredPlayers;
import stafette.ask.PlayerWish;
import stafette.ask.Roster;
import stafette.ask.SplitRequest;
import stafette.chairs.Chair;
import stafette.chairs.Chairs;
import stafette.check.alone.LineTrial;
import stafette.check.alone.LineVerdict;
import stafette.check.alone.VerdictWords;
import stafette.keep.LimitsInForce;
import stafette.limits.Instrument;
import stafette.limits.Register;
import stafette.limits.Technique;
import stafette.limits.TypedNames;
import stafette.plan.GivenStretch;
import stafette.plan.Player;
import stafette.score.Line;
import stafette.score.Pitch;
import stafette.score.Score;
import stafette.score.Stroke;
import stafette.score.Tone;
import stafette.words.Refusal;
import stafette.words.Sentence;

/** Finds who might play a line: every player of the score, and the usual neighbours. */
final class Candidates {
  /** Who is at hand in an orchestra as a rule, beside whom the score has; our list. */
  private static final List<String> USUAL =
      List.of("flute", "oboe", "clarinet in B-flat", "bassoon", "trumpet in B-flat", "violin");

  private static final int NEW_OF_EACH = 2;
  private static final int MOST_OF_A_KIND = 3;
  private static final int MOST_STRETCHES = 8;
  private static final double NOBODY = Double.POSITIVE_INFINITY;

  private final Chairs chairs;
  private final SplitRequest request;
  private final LimitsInForce limits;
  private final Line line;
  private final List<Line> stretches;
  private final Optional<Instrument> source;
  private final Roster roster;
  private final Map<String, List<Candidate.StretchShare>> shares = new LinkedHashMap<>();

  Candidates(
      Score score,
      Chairs chairs,
      Line line,
      SplitRequest request,
      LimitsInForce limits,
      MeasuredPlayers measured) {
    this.chairs = chairs;
    this.request = request;
    this.limits = limits;
    this.line = line;
    this.stretches = stretches(line);
    this.source = score.part(line.source().part()).flatMap(limits.catalogue()::of);
    this.roster =
        new Roster(
            score,
            chairs,
            List.of(line),
            limits,
            measured,
            request.assurance(),
            request.allowances());
  }

  /** Each bar, or as many bars together as make few stretches. */
  private static List<Line> stretches(Line line) {
    int bars = line.source().lastBar() - line.source().firstBar() + 1;
    int each = Math.max(1, (bars + MOST_STRETCHES - 1) / MOST_STRETCHES);
    Map<Integer, List<Integer>> strokes =
        IntStream.range(0, line.count())
            .boxed()
            .collect(
                Collectors.groupingBy(
                    j ->
                        (line.bars().at(line.stroke(j).onset()).index() - line.source().firstBar())
                            / each,
                    LinkedHashMap::new,
                    Collectors.toList()));
    return strokes.values().stream().map(kept -> line.only(kept, true)).toList();
  }

  /** Those of the score first, then newcomers, each kind in the order of the score or of ours. */
  List<Candidate> all() throws Refusal {
    List<Candidate> all = new ArrayList<>();
    for (Chair chair : chairs.all()) {
      if (!chair.instruments().isEmpty()) {
        all.add(candidate(new PlayerWish(chair.name(), Optional.empty()), Optional.of(chair)));
        for (Instrument other : chair.instruments().subList(1, chair.instruments().size())) {
          Optional<Chair> holder = chairs.named(other.name());
          if (holder.equals(Optional.of(chair))) {
            PlayerWish wish =
                new PlayerWish(TypedNames.capitalised(other.name()), Optional.empty());
            all.add(candidate(wish, holder));
          }
        }
      }
    }
    List<PlayerWish> newcomers = new ArrayList<>();
    for (String kind : kindsOfWinds(all)) {
      newcomers.addAll(next(kind, all));
    }
    for (String usual : USUAL) {
      if (all.stream().noneMatch(one -> one.kind().equals(TypedNames.withoutKey(usual)))) {
        newcomers.addAll(newcomers(usual));
      }
    }
    for (PlayerWish wish : newcomers) {
      all.add(candidate(wish, Optional.empty()));
    }
    return all;
  }

  private static List<String> kindsOfWinds(List<Candidate> all) {
    return all.stream()
        .filter(one -> one.player().instrument().isWind())
        .map(one -> one.player().instrument().name())
        .distinct()
        .toList();
  }

  /** The next chair of a kind of which the score has one or two. */
  private static List<PlayerWish> next(String instrument, List<Candidate> all) {
    long there =
        all.stream().filter(one -> one.player().instrument().name().equals(instrument)).count();
    return there < MOST_OF_A_KIND
        ? List.of(new PlayerWish(chair(instrument, (int) there + 1), Optional.of(instrument)))
        : List.of();
  }

  private static List<PlayerWish> newcomers(String instrument) {
    return IntStream.rangeClosed(1, NEW_OF_EACH)
        .mapToObj(number -> new PlayerWish(chair(instrument, number), Optional.of(instrument)))
        .toList();
  }

  private static String chair(String instrument, int number) {
    return TypedNames.capitalised(TypedNames.withoutKey(instrument)) + " " + number;
  }

  private Candidate candidate(PlayerWish wish, Optional<Chair> chair) throws Refusal {
    Player player = roster.beside(List.of(wish)).get(0);
    Instrument instrument = player.instrument();
    BitSet within = new BitSet();
    BitSet free = new BitSet();
    for (int j = 0; j < line.count(); j++) {
      boolean reaches = line.stroke(j).tones().stream().allMatch(instrument::reaches);
      within.set(j, reaches);
      free.set(j, reaches && !isTaken(player.busy(), line.onsetMicros(j)));
    }
    Surroundings around = new Surroundings(line, player, chair, chairs);
    return new Candidate(
        wish,
        player,
        chair,
        shares(instrument, wish.name()),
        within,
        free,
        managed(free, shares(instrument, wish.name())),
        strain(instrument, wish.name(), within),
        register(instrument),
        around.busy(),
        around.before(),
        around.after(),
        source.map(own -> levelIn(instrument) - levelIn(own)),
        source.map(own -> limits.weights().blend(own, instrument)).orElse(0),
        written(instrument));
  }

  /** The free strokes in stretches that so many manage as were asked for. */
  private BitSet managed(BitSet free, List<Candidate.StretchShare> shares) {
    BitSet managed = new BitSet();
    int stroke = 0;
    for (int i = 0; i < stretches.size(); i++) {
      int end = stroke + stretches.get(i).count();
      managed.set(stroke, end, isManaged(shares.get(i)));
      stroke = end;
    }
    managed.and(free);
    return managed;
  }

  private boolean isManaged(Candidate.StretchShare share) {
    return share.share() >= request.assurance().percent();
  }

  /** On the notes that it has. */
  private double strain(Instrument instrument, String name, BitSet within) {
    if (within.isEmpty()) {
      return NOBODY;
    }
    Line own = line.only(within.stream().boxed().toList(), true);
    List<Technique> usable = Allowance.usable(request.allowances(), name, instrument, List.of(own));
    return LineTrial.leastUse(own, instrument, request.assurance(), usable).orElse(NOBODY);
  }

  private static boolean isTaken(List<GivenStretch> busy, long micros) {
    return busy.stream()
        .anyMatch(given -> given.fromMicros() <= micros && micros < given.toMicros());
  }

  private List<Candidate.StretchShare> shares(Instrument instrument, String name) {
    return shares.computeIfAbsent(
        instrument.name(), any -> stretches.stream().map(s -> share(s, instrument, name)).toList());
  }

  private Candidate.StretchShare share(Line stretch, Instrument instrument, String name) {
    List<Integer> within =
        IntStream.range(0, stretch.count())
            .filter(j -> stretch.stroke(j).tones().stream().allMatch(instrument::reaches))
            .boxed()
            .toList();
    int share = within.isEmpty() ? 0 : share(stretch.only(within, true), name, instrument);
    return new Candidate.StretchShare(bars(stretch), share, within.size() == stretch.count());
  }

  private int share(Line playable, String name, Instrument instrument) {
    List<Technique> usable =
        Allowance.usable(request.allowances(), name, instrument, List.of(playable));
    LineVerdict verdict =
        LineTrial.of(
            playable,
            instrument,
            request.assurance(),
            usable.isEmpty() ? instrument.techniques() : usable);
    return VerdictWords.toldShare(verdict);
  }

  private static String bars(Line stretch) {
    String first = stretch.bars().at(stretch.stroke(0).onset()).number();
    String last = stretch.bars().at(stretch.stroke(stretch.count() - 1).onset()).number();
    return first.equals(last) ? first : first + "-" + last;
  }

  /** Where its middle note lies, in the words of the tables, else by thirds of what is easy. */
  private Sentence register(Instrument instrument) {
    OptionalInt middle = middle();
    if (middle.isEmpty() || instrument.comfortable().isEmpty()) {
      return Sentence.NONE;
    }
    Optional<Register> known = limits.registers().of(instrument, middle.getAsInt());
    if (known.isPresent()) {
      return Sentence.of("{0}", Sentence.name(known.get().word()));
    }
    int low = instrument.comfortable().get().low();
    int high = instrument.comfortable().get().high();
    int third = Math.floorDiv(3 * (middle.getAsInt() - low), Math.max(1, high - low + 1));
    return third <= 0
        ? Sentence.of("low")
        : third == 1 ? Sentence.of("middle") : Sentence.of("high");
  }

  /** In the register of the line. */
  private double levelIn(Instrument instrument) {
    OptionalInt middle = middle();
    double more =
        middle.isEmpty()
            ? 0
            : limits
                .registers()
                .of(instrument, middle.getAsInt())
                .map(Register::decibel)
                .orElse(0.0);
    return instrument.levelDecibel() + more;
  }

  private OptionalInt middle() {
    List<Integer> keys =
        line.strokes().stream()
            .map(Stroke::top)
            .filter(Pitch.class::isInstance)
            .map(Tone::key)
            .sorted(Comparator.naturalOrder())
            .toList();
    return keys.isEmpty() ? OptionalInt.empty() : OptionalInt.of(keys.get(keys.size() / 2));
  }

  private static Optional<Sentence> written(Instrument instrument) {
    int chromatic = instrument.transposition().chromatic();
    return chromatic == 0
        ? Optional.empty()
        : Optional.of(
            chromatic < 0
                ? Sentence.of("written {0} semitones higher", -chromatic)
                : Sentence.of("written {0} semitones lower", chromatic));
  }
}

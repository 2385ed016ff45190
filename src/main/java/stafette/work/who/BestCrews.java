package stafette.work.who;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BooleanSupplier;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import stafette.ask.Allowance;
import stafette.ask.Briefing;
import stafette.ask.LineRequest;
import stafette.ask.MeasuredPlayers;
import stafette.ask.PlayerWish;
import stafette.ask.SplitRequest;
import stafette.chairs.Chair;
import stafette.chairs.Chairs;
import stafette.chairs.Sections;
import stafette.check.Judge;
import stafette.check.JudgedPlan;
import stafette.check.alone.Ease;
import stafette.keep.LimitsInForce;
import stafette.limits.Act;
import stafette.plan.Plan;
import stafette.plan.Player;
import stafette.split.Workbench;
import stafette.split.nearest.NearestPlan;
import stafette.words.Refusal;

/**
 * The best few crews for a line, unlike each other: the players of one instrument, two instruments
 * in turn, a section divided, those who together reach from the lowest note to the highest. Each is
 * solved; those that hold come first, then those from the score, then the easier ones, then the
 * cheaper ones, where each player is paid for as one whom the program proposed.
 */
final class BestCrews {
  private static final int MOST = 6;
  private static final int MOST_SOLVED = 12;
  private static final int MOST_PLAYERS = 4;
  private static final int KINDS_IN_PAIRS = 4;
  private static final String DIVIDED = " div. a 2";

  /** So often a search may ask whether to stop. */
  private static final int LOOKS = 60_000;

  private final LineRequest.FoundLine found;
  private final SplitRequest request;
  private final LimitsInForce limits;
  private final MeasuredPlayers measured;
  private final Chairs chairs;

  /** A keyboard gives its line away, and nobody has to sound like it. */
  private final boolean isOfKeys;

  private final List<Candidate> everybody;
  private final List<Candidate> all;
  private final Workbench workbench = new Workbench();

  BestCrews(
      LineRequest.FoundLine found,
      SplitRequest request,
      LimitsInForce limits,
      MeasuredPlayers measured,
      Chairs chairs,
      List<Candidate> candidates) {
    this.found = found;
    this.request = request;
    this.limits = limits;
    this.measured = measured;
    this.chairs = chairs;
    this.isOfKeys = candidates.stream().anyMatch(one -> isSource(one) && hasKeys(one));
    this.everybody = candidates.stream().filter(one -> !isOfKeys || !isSource(one)).toList();
    this.all = everybody.stream().filter(Candidate::isAble).toList();
  }

  private boolean isSource(Candidate one) {
    return one.chair().map(Chair::part).equals(Optional.of(found.line().source().part()));
  }

  private static boolean hasKeys(Candidate one) {
    return one.player().instrument().techniques().stream().anyMatch(each -> each.act() == Act.KEY);
  }

  /** At most six, the best first; none where nobody's plan holds even for a few. */
  List<SolvedCrew> best() throws Refusal {
    List<SolvedCrew> solved = new ArrayList<>();
    for (PossibleCrew possible : possible(all, Candidate::managed)) {
      solved(possible, false).ifPresent(solved::add);
    }
    if (solved.isEmpty()) {
      List<PossibleCrew> any =
          possible(
              everybody.stream().filter(one -> !one.free().isEmpty()).toList(), Candidate::free);
      for (PossibleCrew possible : any.subList(0, Math.min(MOST, any.size()))) {
        solved(possible, true).ifPresent(solved::add);
      }
    }
    solved.sort(
        Comparator.comparing((SolvedCrew crew) -> !crew.holds())
            .thenComparing(crew -> crew.holds() ? 0 : -crew.share())
            .thenComparing(crew -> !crew.keepsMargin())
            .thenComparing(crew -> crew.judged().plan().playing().size() == 1)
            .thenComparing(SolvedCrew::newcomers)
            .thenComparing(crew -> !isOwnSection(crew))
            .thenComparing(BestCrews::callsStrings)
            .thenComparing(crew -> Ease.of(crew.share()))
            .thenComparing(this::price));
    return unlike(solved);
  }

  /**
   * Who comes nearest to it where no crew has a plan: at most two of a kind who have all of its
   * notes, those who are least strained by them, else those who together reach most of it.
   */
  List<PlayerWish> likeliest() {
    int strokes = found.line().count();
    Map<String, List<Candidate>> whole =
        everybody.stream()
            .filter(one -> one.within().cardinality() == strokes && !one.free().isEmpty())
            .sorted(Comparator.comparingDouble(Candidate::strain))
            .collect(
                Collectors.groupingBy(Candidate::kind, LinkedHashMap::new, Collectors.toList()));
    List<Candidate> some =
        whole.values().stream()
            .flatMap(kind -> kind.stream().limit(2))
            .limit(MOST_PLAYERS)
            .toList();
    return crew(some.size() > 1 ? some : together(everybody, Candidate::within)).wishes();
  }

  private int price(SolvedCrew crew) {
    int players = crew.judged().plan().playing().size();
    int unlike =
        crew.members().stream().mapToInt(member -> isOfKeys ? 0 : member.blend()).max().orElse(0);
    return crew.judged().verdict().cost().total() + players * limits.weights().player() + unlike;
  }

  /** Strings that can play a line seldom need a relay for it. */
  private static boolean callsStrings(SolvedCrew crew) {
    return crew.members().stream()
        .anyMatch(member -> !member.isInScore() && Sections.isBowed(member.player().instrument()));
  }

  /** A section divides before it calls somebody else. */
  private boolean isOwnSection(SolvedCrew crew) {
    return crew.members().stream()
        .allMatch(
            member ->
                member
                    .chair()
                    .filter(Chair::isSection)
                    .map(Chair::part)
                    .equals(Optional.of(found.line().source().part())));
  }

  /** The first of those in whom the same instruments, or the same players, play. */
  private static List<SolvedCrew> unlike(List<SolvedCrew> sorted) {
    Set<Object> kinds = new HashSet<>();
    Set<Object> players = new HashSet<>();
    List<SolvedCrew> unlike = new ArrayList<>();
    for (SolvedCrew crew : sorted) {
      Set<String> kind =
          crew.members().stream()
              .map(
                  member ->
                      member
                          .chair()
                          .filter(Chair::isSection)
                          .map(Chair::name)
                          .orElse(member.kind()))
              .collect(Collectors.toSet());
      boolean newKind = kinds.add(kind);
      boolean newPlayers = players.add(Set.copyOf(crew.judged().plan().playing()));
      boolean alone = crew.judged().plan().playing().size() == 1 && !unlike.isEmpty();
      if (newKind && newPlayers && !alone && unlike.size() < MOST) {
        unlike.add(crew);
      }
    }
    return unlike;
  }

  /**
   * Who might be asked together.
   *
   * @param wishes how to ask for them, one or more for each of the members
   */
  private record PossibleCrew(List<Candidate> members, List<PlayerWish> wishes) {
    int newcomers() {
      return (int) members.stream().filter(member -> !member.isInScore()).count();
    }

    int missing(int strokes, Function<Candidate, BitSet> what) {
      BitSet reached = new BitSet();
      members.forEach(member -> reached.or(what.apply(member)));
      return strokes - reached.cardinality();
    }

    double strain() {
      return members.stream().mapToDouble(Candidate::strain).max().orElse(0);
    }
  }

  /**
   * Those who together can play all of it, the likeliest first.
   *
   * @param what which strokes each of them counts for
   */
  private List<PossibleCrew> possible(List<Candidate> some, Function<Candidate, BitSet> what)
      throws Refusal {
    Map<String, List<Candidate>> kinds = new LinkedHashMap<>();
    some.stream()
        .sorted(
            Comparator.comparing((Candidate one) -> !one.isInScore())
                .thenComparing(one -> -what.apply(one).cardinality())
                .thenComparing(Candidate::strain))
        .forEach(one -> kinds.computeIfAbsent(one.kind(), k -> new ArrayList<>()).add(one));
    Set<PossibleCrew> crews = new LinkedHashSet<>();
    for (List<Candidate> kind : kinds.values()) {
      crews.addAll(ofOneKind(kind));
    }
    List<List<Candidate>> first = kinds.values().stream().limit(KINDS_IN_PAIRS).toList();
    for (int i = 0; i < first.size(); i++) {
      for (int j = i + 1; j < first.size(); j++) {
        crews.add(
            crew(
                Stream.concat(first.get(i).stream().limit(2), first.get(j).stream().limit(2))
                    .toList()));
      }
    }
    crews.add(crew(together(some.stream().filter(Candidate::isInScore).toList(), what)));
    crews.add(crew(together(some, what)));
    crews.add(
        crew(
            together(
                some.stream().filter(one -> one.player().instrument().isWind()).toList(), what)));
    int strokes = found.line().count();
    List<PossibleCrew> complete =
        crews.stream().filter(crew -> crew.missing(strokes, what) == 0).toList();
    return complete.stream()
        .filter(crew -> crew.wishes.size() > 1 || crew.members.size() == 1)
        .sorted(
            Comparator.comparingInt(PossibleCrew::newcomers)
                .thenComparingDouble(PossibleCrew::strain))
        .limit(MOST_SOLVED)
        .toList();
  }

  /** In the order of the score, so that the principal starts; nobody on two instruments. */
  private PossibleCrew crew(List<Candidate> some) {
    List<Candidate> members = new ArrayList<>();
    for (Candidate one : everybody) {
      boolean seated =
          one.isInScore() && members.stream().anyMatch(other -> other.chair().equals(one.chair()));
      if (some.contains(one) && !seated) {
        members.add(one);
      }
    }
    return new PossibleCrew(members, members.stream().map(Candidate::wish).toList());
  }

  /** Each section divided, or all of the winds that are there, two at least. */
  private List<PossibleCrew> ofOneKind(List<Candidate> kind) throws Refusal {
    List<PossibleCrew> found = new ArrayList<>();
    for (Candidate one : kind) {
      if (one.chair().filter(Chair::isSection).isPresent()) {
        found.add(
            new PossibleCrew(
                List.of(one),
                new PlayerWish(one.wish().name() + DIVIDED, one.wish().instrument()).players()));
      }
    }
    List<Candidate> there = kind.stream().filter(Candidate::isInScore).toList();
    int enough = Math.max(2, Math.min(MOST_PLAYERS, there.size()));
    found.add(crew(kind.stream().limit(enough).toList()));
    return found;
  }

  /** One after the other who adds most to what the others reach; of equals, the least strained. */
  private static List<Candidate> together(List<Candidate> some, Function<Candidate, BitSet> what) {
    List<Candidate> left = new ArrayList<>(some);
    List<Candidate> chosen = new ArrayList<>();
    BitSet reached = new BitSet();
    while (!left.isEmpty() && chosen.size() < MOST_PLAYERS) {
      Candidate next =
          left.stream()
              .min(
                  Comparator.comparingInt((Candidate one) -> -adds(what.apply(one), reached))
                      .thenComparing(one -> !one.isInScore())
                      .thenComparing(one -> -what.apply(one).cardinality())
                      .thenComparing(Candidate::strain))
              .orElseThrow();
      left.remove(next);
      chosen.add(next);
      reached.or(what.apply(next));
    }
    return chosen;
  }

  private static int adds(BitSet own, BitSet before) {
    BitSet more = (BitSet) own.clone();
    more.andNot(before);
    return more.cardinality();
  }

  /**
   * The plan for a crew.
   *
   * @param nearest whether one for a lower share will do
   */
  private Optional<SolvedCrew> solved(PossibleCrew possible, boolean nearest) throws Refusal {
    Briefing briefing = asking(possible.wishes);
    SplitRequest asked = briefing.request();
    int[] looks = {LOOKS};
    BooleanSupplier stop = () -> --looks[0] < 0;
    NearestPlan plan =
        nearest
            ? NearestPlan.of(briefing.brief(), workbench, stop, progress -> {})
            : NearestPlan.ofShareAsked(briefing.brief(), workbench, stop, progress -> {});
    Optional<Plan> best = plan.result().found();
    if (best.isEmpty()) {
      return Optional.empty();
    }
    JudgedPlan judged = JudgedPlan.of(best.get(), Judge.judge(best.get()));
    List<String> playing = best.get().playing();
    List<PlayerWish> players =
        briefing.wishes().stream().filter(wish -> playing.contains(wish.name())).toList();
    if (players.size() < briefing.wishes().size()) {
      return solved(new PossibleCrew(members(possible, playing), players), nearest);
    }
    boolean keeps = plan.brief().rules().margin().equals(asked.margin());
    return Optional.of(
        new SolvedCrew(
            members(possible, playing),
            asked.with(players, asked.allowances()),
            judged,
            !nearest,
            keeps));
  }

  /** Of a divided section its halves play. */
  private static List<Candidate> members(PossibleCrew possible, List<String> playing) {
    return possible.members.size() == 1
        ? possible.members
        : possible.members.stream()
            .filter(member -> playing.contains(member.player().name()))
            .toList();
  }

  /** With those allowances alone that are meant for some of the players. */
  private Briefing asking(List<PlayerWish> wishes) throws Refusal {
    Briefing bare = Briefing.of(request.with(wishes, List.of()), limits, found, measured, chairs);
    List<Player> players = bare.brief().players();
    List<Allowance> meant =
        request.allowances().stream().filter(one -> one.coversAnyOf(players)).toList();
    return meant.isEmpty() ? bare : bare.with(request.with(wishes, meant));
  }
}

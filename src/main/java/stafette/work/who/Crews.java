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
import java.util.stream.Collectors;
import java.util.stream.Stream;
import stafette.ask.Allowance;
import stafette.ask.Briefing;
import stafette.ask.LineRequest;
import stafette.ask.PlayerWish;
import stafette.ask.SplitRequest;
import stafette.chairs.Chair;
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
final class Crews {
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
  private final List<Candidate> everybody;
  private final List<Candidate> all;
  private final Workbench workbench = new Workbench();

  Crews(
      LineRequest.FoundLine found,
      SplitRequest request,
      LimitsInForce limits,
      List<Candidate> candidates) {
    this.found = found;
    this.request = request;
    this.limits = limits;
    this.everybody = candidates.stream().filter(this::givesAway).toList();
    this.all = everybody.stream().filter(Candidate::isAble).toList();
  }

  /** A keyboard gives its line away. */
  private boolean givesAway(Candidate one) {
    boolean own = one.chair().map(Chair::part).equals(Optional.of(found.line().source().part()));
    boolean keys =
        one.player().instrument().techniques().stream().anyMatch(each -> each.act() == Act.KEY);
    return !(own && keys);
  }

  /** At most six, the best first; none where nobody's plan holds even for a few. */
  List<Crew> best() throws Refusal {
    List<Crew> solved = new ArrayList<>();
    for (Proposal proposal : proposals()) {
      solved(proposal, false).ifPresent(solved::add);
    }
    if (solved.isEmpty()) {
      for (Proposal proposal : proposals()) {
        solved(proposal, true).ifPresent(solved::add);
      }
    }
    solved.sort(
        Comparator.comparing((Crew crew) -> !crew.holds())
            .thenComparing(crew -> crew.holds() ? 0 : -crew.share())
            .thenComparing(crew -> !crew.keepsMargin())
            .thenComparing(crew -> crew.judged().plan().playing().size() == 1)
            .thenComparing(Crew::newcomers)
            .thenComparing(crew -> !isOwnSection(crew))
            .thenComparing(Crews::callsStrings)
            .thenComparing(crew -> Ease.of(crew.share()))
            .thenComparing(this::price));
    return unlike(solved);
  }

  /** Those who together reach most of the line, whatever its speed. */
  List<PlayerWish> likeliest() {
    return together(everybody).stream().map(Candidate::wish).toList();
  }

  private int price(Crew crew) {
    int players = crew.judged().plan().playing().size();
    return crew.judged().verdict().cost().total() + players * limits.weights().player();
  }

  /** Strings that can play a line seldom need a relay for it. */
  private static boolean callsStrings(Crew crew) {
    return crew.members().stream()
        .anyMatch(member -> !member.isInScore() && Sections.isBowed(member.player().instrument()));
  }

  /** A section divides before it calls somebody else. */
  private boolean isOwnSection(Crew crew) {
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
  private static List<Crew> unlike(List<Crew> sorted) {
    Set<Object> kinds = new HashSet<>();
    Set<Object> players = new HashSet<>();
    List<Crew> unlike = new ArrayList<>();
    for (Crew crew : sorted) {
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
  private record Proposal(List<Candidate> members, List<PlayerWish> wishes) {

    int newcomers() {
      return (int) members.stream().filter(member -> !member.isInScore()).count();
    }

    int missing(int strokes) {
      BitSet free = new BitSet();
      members.forEach(member -> free.or(member.free()));
      return strokes - free.cardinality();
    }

    double strain() {
      return members.stream().mapToDouble(Candidate::strain).max().orElse(0);
    }
  }

  private List<Proposal> proposals() {
    Map<String, List<Candidate>> kinds = new LinkedHashMap<>();
    all.stream()
        .sorted(
            Comparator.comparing((Candidate one) -> !one.isInScore())
                .thenComparing(one -> -one.free().cardinality())
                .thenComparing(Candidate::strain))
        .forEach(one -> kinds.computeIfAbsent(one.kind(), k -> new ArrayList<>()).add(one));
    Set<Proposal> proposals = new LinkedHashSet<>();
    for (List<Candidate> kind : kinds.values()) {
      proposals.addAll(ofOneKind(kind));
    }
    List<List<Candidate>> first = kinds.values().stream().limit(KINDS_IN_PAIRS).toList();
    for (int i = 0; i < first.size(); i++) {
      for (int j = i + 1; j < first.size(); j++) {
        proposals.add(
            proposal(
                Stream.concat(first.get(i).stream().limit(2), first.get(j).stream().limit(2))
                    .toList()));
      }
    }
    proposals.add(proposal(together(all.stream().filter(Candidate::isInScore).toList())));
    proposals.add(proposal(together(all)));
    int strokes = found.line().count();
    List<Proposal> complete =
        proposals.stream().filter(proposal -> proposal.missing(strokes) == 0).toList();
    return complete.stream()
        .filter(proposal -> proposal.wishes.size() > 1)
        .sorted(Comparator.comparingInt(Proposal::newcomers).thenComparingDouble(Proposal::strain))
        .limit(MOST_SOLVED)
        .toList();
  }

  /** In the order of the score, so that the principal starts. */
  private Proposal proposal(List<Candidate> some) {
    List<Candidate> members =
        some.stream().sorted(Comparator.comparingInt(everybody::indexOf)).toList();
    return new Proposal(members, members.stream().map(Candidate::wish).toList());
  }

  /** Each section divided, or all of the winds that are there, two at least. */
  private List<Proposal> ofOneKind(List<Candidate> kind) {
    List<Proposal> found = new ArrayList<>();
    for (Candidate one : kind) {
      if (one.chair().filter(Chair::isSection).isPresent()) {
        found.add(
            new Proposal(
                List.of(one),
                List.of(new PlayerWish(one.wish().name() + DIVIDED, one.wish().instrument()))));
      }
    }
    List<Candidate> there = kind.stream().filter(Candidate::isInScore).toList();
    int enough = Math.max(2, Math.min(MOST_PLAYERS, there.size()));
    found.add(proposal(kind.stream().limit(enough).toList()));
    return found;
  }

  /** One after the other who adds most to what the others reach; of equals, the least strained. */
  private static List<Candidate> together(List<Candidate> some) {
    List<Candidate> left = new ArrayList<>(some);
    List<Candidate> chosen = new ArrayList<>();
    BitSet reached = new BitSet();
    while (!left.isEmpty() && chosen.size() < MOST_PLAYERS) {
      Candidate next =
          left.stream()
              .min(
                  Comparator.comparingInt((Candidate one) -> -adds(one, reached))
                      .thenComparing(one -> !one.isInScore())
                      .thenComparing(one -> -one.free().cardinality())
                      .thenComparing(Candidate::strain))
              .orElseThrow();
      left.remove(next);
      chosen.add(next);
      reached.or(next.free());
    }
    return chosen;
  }

  private static int adds(Candidate one, BitSet before) {
    BitSet more = (BitSet) one.free().clone();
    more.andNot(before);
    return more.cardinality();
  }

  /**
   * The plan for a crew.
   *
   * @param nearest whether one for a lower share will do
   */
  private Optional<Crew> solved(Proposal proposal, boolean nearest) throws Refusal {
    SplitRequest asked = asking(proposal.wishes);
    Briefing briefing = Briefing.of(asked, limits, found);
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
    boolean keeps = plan.brief().rules().margin().equals(asked.margin());
    return Optional.of(
        new Crew(members(proposal, playing), asking(players), judged, !nearest, keeps));
  }

  /** Of a divided section its halves play. */
  private static List<Candidate> members(Proposal proposal, List<String> playing) {
    return proposal.members.size() == 1
        ? proposal.members
        : proposal.members.stream()
            .filter(member -> playing.contains(member.player().name()))
            .toList();
  }

  private SplitRequest asking(List<PlayerWish> wishes) throws Refusal {
    List<Allowance> meant = new ArrayList<>();
    List<Player> players =
        Briefing.of(request.with(wishes, List.of()), limits, found).brief().players();
    for (Allowance allowance : request.allowances()) {
      boolean covers =
          players.stream()
              .anyMatch(
                  player ->
                      player.instrument().techniques().stream()
                          .anyMatch(
                              technique ->
                                  allowance.covers(player.name(), player.instrument(), technique)));
      if (covers) {
        meant.add(allowance);
      }
    }
    return request.with(wishes, meant);
  }
}

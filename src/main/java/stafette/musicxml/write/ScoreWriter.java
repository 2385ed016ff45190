package stafette.musicxml.write;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableSet;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import stafette.musicxml.make.Fragments;
import stafette.musicxml.make.UnwritablePlan;
import stafette.musicxml.newparts.NewParts;
import stafette.musicxml.newparts.PartPlace;
import stafette.musicxml.newparts.PlayerNames;
import stafette.musicxml.newparts.Seating;
import stafette.musicxml.read.Document;
import stafette.musicxml.share.Assigned;
import stafette.musicxml.share.Background;
import stafette.musicxml.share.ChairLabels;
import stafette.musicxml.share.EntryCue;
import stafette.musicxml.share.SharedStaff;
import stafette.musicxml.share.WritingStyle;
import stafette.musicxml.text.Origin;
import stafette.musicxml.text.Origin.PartText;
import stafette.musicxml.text.Replacement;
import stafette.musicxml.text.Splice;
import stafette.plan.Plan;
import stafette.plan.Player;
import stafette.plan.Segment;
import stafette.plan.SourceTreatment;
import stafette.plan.WrittenAs;
import stafette.plan.written.Landings;
import stafette.score.Line;
import stafette.score.Part;
import stafette.time.Position;
import stafette.words.Sentence;
import stafette.words.XmlText;

/**
 * Writes a plan into the text of its score: into the parts of players whom the score knows, in
 * place of rests, and into new parts for all others. Everything else stays byte for byte; writing
 * the same plan twice changes nothing more.
 */
public final class ScoreWriter {
  private final Document document;
  private final Origin origin;
  private final Fragments fragments = new Fragments();
  private final WritingStyle style;
  private final NewParts newParts;
  private final List<Replacement> replacements = new ArrayList<>();
  private final List<Sentence> changes = new ArrayList<>();
  private final Map<String, Integer> streams = new HashMap<>();
  private final Map<String, Integer> begun = new HashMap<>();

  private ScoreWriter(Document document, PlayerNames names, WrittenAs how) {
    this.document = document;
    this.origin = document.origin();
    this.style = new WritingStyle(names::of, names::of, how);
    this.newParts = new NewParts(origin, fragments, names);
  }

  /**
   * Writes a plan.
   *
   * @param treatment what becomes of the line in the part that it was taken from
   * @param seating where players sit in the score
   * @throws UnwritablePlan if a player's part has no rest where nothing sounds, or a name can't be
   *     written
   */
  public static WrittenScore write(
      Document document, Plan plan, SourceTreatment treatment, Seating seating)
      throws UnwritablePlan {
    return write(document, Optional.of(plan), List.of(), WrittenAs.plain(treatment), seating);
  }

  /**
   * Writes a plan and background parts, or background parts alone.
   *
   * @param plan the relay, if there is one
   * @param backgrounds for players who are not in the relay; one whose part the line was taken from
   *     has it thinned there
   * @param how how it is marked, and what becomes of the line in the part that it was taken from
   * @param seating where players sit in the score
   * @throws UnwritablePlan if a player's part has no rest where nothing sounds, or a name can't be
   *     written
   */
  public static WrittenScore write(
      Document document,
      Optional<Plan> plan,
      List<Background> backgrounds,
      WrittenAs how,
      Seating seating)
      throws UnwritablePlan {
    ScoreWriter writer =
        new ScoreWriter(document, new PlayerNames(document.origin(), seating), how);
    for (Plan each :
        Stream.concat(plan.stream(), backgrounds.stream().map(Background::plan)).toList()) {
      writer.expect(each);
    }
    writer.count(plan, backgrounds, seating);
    if (plan.isPresent()) {
      writer.players(plan.get(), seating);
      writer.source(plan.get(), how.source(), seating);
    }
    for (Background background : backgrounds) {
      writer.background(background, seating);
    }
    return writer.written();
  }

  /** How many streams of notes go into each staff that players share. */
  private void count(Optional<Plan> plan, List<Background> backgrounds, Seating seating) {
    Set<String> parts = new HashSet<>();
    for (Player player : plan.map(all -> all.brief().players()).orElse(List.of())) {
      Optional<String> part = player.part().filter(id -> player.chair().isPresent());
      if (part.isPresent() && parts.add(part.get())) {
        plan.flatMap(all -> shared(all, player, part.get(), seating))
            .filter(staff -> !staff.players().isEmpty())
            .ifPresent(staff -> streams.merge(part.get(), streamsOf(staff), Integer::sum));
      }
    }
    for (Background background : backgrounds) {
      Player player = background.plan().brief().players().get(0);
      player
          .part()
          .filter(id -> player.chair().isPresent())
          .ifPresent(id -> streams.merge(id, 1, Integer::sum));
    }
  }

  private static int streamsOf(SharedStaff staff) {
    return staff.isOneStream() ? 1 : staff.players().size();
  }

  /** The next stream of those that go into a staff. */
  private PartWriter.Sharing next(String part, String all) {
    int stream = begun.merge(part, 1, Integer::sum) - 1;
    return new PartWriter.Sharing(all, stream, streams.getOrDefault(part, 1));
  }

  /** Sees to it that a plan's names can be written, and that no new part's id is one of them. */
  private void expect(Plan plan) throws UnwritablePlan {
    for (Player player : plan.brief().players()) {
      for (String text : List.of(player.name(), player.instrument().name())) {
        Optional<String> character = XmlText.refused(text);
        if (character.isPresent()) {
          throw new UnwritablePlan(
              Sentence.of(
                  "\"{0}\" holds the character {1}, which no score can hold; give it another name",
                  text, character.get()));
        }
      }
      newParts.take(player.name());
    }
  }

  private WrittenScore written() {
    replacements.addAll(newParts.replacements());
    Splice splice = Splice.of(origin.text(), replacements);
    byte[] bytes =
        replacements.isEmpty()
            ? document.container().bytes()
            : Repack.bytes(document, splice.changed());
    return new WrittenScore(bytes, splice.replacements(), changes);
  }

  private void players(Plan plan, Seating seating) throws UnwritablePlan {
    Set<Integer> written = new HashSet<>();
    for (int player : playing(plan, seating)) {
      Player each = plan.brief().players().get(player);
      Optional<PartText> own = each.part().flatMap(origin::part);
      boolean source = each.part().equals(Optional.of(plan.line().source().part()));
      if (source || written.contains(player)) {
        continue;
      }
      Optional<SharedStaff> staff = own.flatMap(part -> shared(plan, each, part.id(), seating));
      if (staff.isPresent()) {
        written.addAll(staff.get().players());
        share(plan, staff.get(), own.orElseThrow(), seating);
      } else {
        write(
            plan.line(),
            new Assigned(plan, player, others(plan, own), style),
            EntryCue.of(plan, player, document.score(), own.flatMap(this::read), style),
            own,
            seating);
      }
    }
  }

  private NavigableSet<Position> others(Plan plan, Optional<PartText> own) {
    return own.flatMap(this::read).map(part -> Landings.others(part, plan)).orElseGet(TreeSet::new);
  }

  private Optional<Part> read(PartText part) {
    return document.score().part(part.id());
  }

  /** Those who play, in the order in which new parts stand. */
  private static List<Integer> playing(Plan plan, Seating seating) {
    Map<Integer, Integer> ranks = new LinkedHashMap<>();
    for (Segment segment : plan.segments()) {
      ranks.computeIfAbsent(
          segment.player(),
          player ->
              seating.place(plan.brief().players().get(player)).map(PartPlace::rank).orElse(0));
    }
    return ranks.keySet().stream()
        .sorted(Comparator.comparing((Integer player) -> ranks.get(player)).thenComparing(i -> i))
        .toList();
  }

  /** The staff that a player shares with others, if so. */
  private Optional<SharedStaff> shared(Plan plan, Player player, String part, Seating seating) {
    return player.chair().isPresent()
        ? Optional.of(
            new SharedStaff(
                plan,
                SharedStaff.in(plan, part),
                seating.chairs(part),
                document.score().part(part).orElseThrow()))
        : Optional.empty();
  }

  /** Writes all that players have in the staff that they share: one stream, or a voice for each. */
  private void share(Plan plan, SharedStaff staff, PartText part, Seating seating)
      throws UnwritablePlan {
    Part voices = document.score().part(part.id()).orElseThrow();
    List<Replacement> made = new ArrayList<>();
    List<SharedStaff> each =
        staff.isOneStream()
            ? List.of(staff)
            : staff.players().stream()
                .map(player -> staff.only(player, seating.chairs(part.id()), voices))
                .toList();
    List<EntryCue> cues =
        EntryCue.of(plan, staff.players(), document.score(), Optional.of(voices), style);
    for (SharedStaff stream : each) {
      Assigned assigned = new Assigned(plan, stream, style);
      assigned.read(cues);
      made.addAll(
          new PartWriter(
                  origin,
                  part,
                  voices,
                  plan.line(),
                  assigned,
                  fragments,
                  Optional.of(next(part.id(), stream.all())))
              .replacements());
    }
    made.addAll(cues(plan, staff, part, cues));
    replacements.addAll(made);
    for (int player : made.isEmpty() ? List.<Integer>of() : staff.players()) {
      Assigned own = new Assigned(plan, player);
      changes.add(
          Sentence.of(
              "{0}: plays in {1}, in {2}", own.player().name(), barsOf(own.bars()), voices.name()));
    }
  }

  /** In bars of an entry only where what is played there leaves room. */
  private List<Replacement> cues(Plan plan, SharedStaff staff, PartText part, List<EntryCue> cues)
      throws UnwritablePlan {
    Set<Integer> played = new HashSet<>();
    if (!staff.isOneStream()) {
      staff.players().forEach(player -> played.addAll(new Assigned(plan, player).bars()));
    }
    read(part).stream()
        .flatMap(voices -> voices.voices().stream())
        .flatMap(voice -> voice.strokes().stream())
        .forEach(stroke -> played.add(document.score().bars().at(stroke.onset()).index()));
    return new CueEdits(origin, part, plan.line(), fragments)
        .replacements(cues, bar -> !played.contains(bar));
  }

  private void background(Background background, Seating seating) throws UnwritablePlan {
    Assigned assigned = new Assigned(background, style);
    Optional<PartText> own = assigned.player().part().flatMap(origin::part);
    OptionalInt chair = assigned.player().chair();
    if (own.isPresent() && chair.isPresent()) {
      ChairLabels labels =
          ChairLabels.of(List.of(assigned.player()), seating.chairs(own.get().id()));
      assigned.label(labels.first(Set.of(chair.getAsInt())));
      note(
          assigned,
          new PartWriter(
                  origin,
                  own.get(),
                  document.score().part(own.get().id()).orElseThrow(),
                  background.plan().line(),
                  assigned,
                  fragments,
                  Optional.of(next(own.get().id(), labels.all())))
              .replacements());
    } else {
      write(background.plan().line(), assigned, List.of(), own, seating);
    }
  }

  private void write(
      Line line, Assigned assigned, List<EntryCue> cues, Optional<PartText> own, Seating seating)
      throws UnwritablePlan {
    assigned.read(cues);
    if (own.isPresent()) {
      Part voices = document.score().part(own.get().id()).orElseThrow();
      List<Replacement> made =
          new ArrayList<>(
              new PartWriter(origin, own.get(), voices, line, assigned, fragments, Optional.empty())
                  .replacements());
      made.addAll(new CueEdits(origin, own.get(), line, fragments).replacements(cues, any -> true));
      note(assigned, made);
    } else {
      add(line, assigned, cues, seating);
    }
  }

  private void note(Assigned assigned, List<Replacement> made) {
    replacements.addAll(made);
    if (!made.isEmpty()) {
      changes.add(
          Sentence.of("{0}: plays in {1}", assigned.player().name(), barsOf(assigned.bars())));
    }
  }

  private Sentence barsOf(List<Integer> bars) {
    List<String> stretches = new ArrayList<>();
    int from = 0;
    for (int i = 1; i <= bars.size(); i++) {
      if (i == bars.size() || bars.get(i) > bars.get(i - 1) + 1) {
        String first = document.score().bars().get(bars.get(from)).number();
        String last = document.score().bars().get(bars.get(i - 1)).number();
        stretches.add(first.equals(last) ? first : first + "-" + last);
        from = i;
      }
    }
    Sentence all = Sentence.list(stretches);
    return bars.size() == 1 ? Sentence.of("bar {0}", all) : Sentence.of("bars {0}", all);
  }

  private void add(Line line, Assigned assigned, List<EntryCue> cues, Seating seating)
      throws UnwritablePlan {
    Player player = assigned.player();
    Optional<PartPlace> place = seating.place(player);
    MannerSigns.addTo(assigned);
    newParts.add(line, assigned, cues, place);
    Sentence where =
        place
            .flatMap(wanted -> document.score().part(wanted.part()).map(wanted::inWords))
            .orElse(Sentence.of("new part at the end"));
    changes.add(
        Sentence.of("{0}: {1}, plays in {2}", player.name(), where, barsOf(assigned.bars())));
  }

  /**
   * Makes rests or cues of the line in its own part. If that part's player is asked to take part,
   * the part becomes its share, as everything would sound twice otherwise.
   */
  private void source(Plan plan, SourceTreatment treatment, Seating seating) throws UnwritablePlan {
    PartText part = origin.part(plan.line().source().part()).orElseThrow();
    Optional<SharedStaff> staff = sharedSource(plan, part, seating);
    Optional<Assigned> own =
        staff
            .map(all -> new Assigned(plan, all, style))
            .or(
                () ->
                    ownPlayer(plan, part).stream()
                        .mapToObj(i -> new Assigned(plan, i, new TreeSet<>(), style))
                        .findFirst());
    if (treatment == SourceTreatment.KEEP && own.isEmpty()) {
      return;
    }
    List<Line> lines = plan.brief().lines().stream().distinct().toList();
    Part voices = document.score().part(part.id()).orElseThrow();
    SourceEdits edits = new SourceEdits(origin, part, voices, lines, own, fragments);
    List<Replacement> made = new ArrayList<>(edits.replacements(treatment));
    if (staff.isPresent()) {
      made.addAll(
          FormerWords.labels(origin, part, voices, staff.get().all())
              .restored(own.orElseThrow().labels(), own.orElseThrow(), edits::isOfLine, fragments));
    }
    replacements.addAll(made);
    if (!made.isEmpty()) {
      changes.add(told(plan.line().source().partName(), treatment, own, edits));
    }
    for (int bar : made.isEmpty() ? List.<Integer>of() : edits.wholeTremolos()) {
      changes.add(
          Sentence.of(
              "{0}, bar {1}: the tremolo stays whole, though others play some of it; take it apart"
                  + " by hand",
              plan.line().source().partName(), document.score().bars().get(bar).number()));
    }
  }

  /** Those who share the part that the line was taken from, if some of them play. */
  private Optional<SharedStaff> sharedSource(Plan plan, PartText part, Seating seating) {
    return SharedStaff.in(plan, part.id()).stream()
        .findFirst()
        .flatMap(i -> shared(plan, plan.brief().players().get(i), part.id(), seating));
  }

  private Sentence told(
      String part, SourceTreatment treatment, Optional<Assigned> own, SourceEdits edits) {
    boolean cued = treatment == SourceTreatment.CUE;
    if (own.isEmpty()) {
      return cued
          ? Sentence.of("{0}: the line is cued", part)
          : Sentence.of("{0}: the line is taken out", part);
    }
    if (edits.othersBars().isEmpty()) {
      return Sentence.of("{0}: plays in {1}", part, barsOf(own.get().bars()));
    }
    Sentence others = barsOf(edits.othersBars());
    if (own.get().bars().isEmpty()) {
      return cued
          ? Sentence.of("{0}: plays nothing of the line, has cues in {1}", part, others)
          : Sentence.of("{0}: plays nothing of the line, rests in {1}", part, others);
    }
    Sentence bars = barsOf(own.get().bars());
    return cued
        ? Sentence.of(
            "{0}: plays in {1}, has cues for the others' notes in {2}", part, bars, others)
        : Sentence.of("{0}: plays in {1}, rests for the others' notes in {2}", part, bars, others);
  }

  private static OptionalInt ownPlayer(Plan plan, PartText part) {
    List<Player> players = plan.brief().players();
    return IntStream.range(0, players.size())
        .filter(i -> players.get(i).part().equals(Optional.of(part.id())))
        .findFirst();
  }
}

package stafette.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import stafette.limits.HarpPedals;
import stafette.limits.HarpPedals.Pedal;
import stafette.limits.HarpPedals.Setting;
import stafette.limits.PedalCourse;
import stafette.limits.PedalCourse.PedalSetup;
import stafette.score.Line;
import stafette.score.Pitch;
import stafette.score.Stroke;
import stafette.score.Tone;

/**
 * How a harp plays a turn: how its pedals stand, and which string sounds each note. Where several
 * settings serve, it is the one that has most notes as the line spells them, and of these the one
 * to which fewest pedals move; before the first turn they stand as the key signature has them.
 *
 * @param twinStrings whether repeated notes go to two strings in turn
 * @param before how the pedals stand when the turn comes
 * @param isFirst whether it is the harp's first turn, for which all pedals are set
 * @param setups the settings one after the other; none where no course of settings has all notes
 */
public record HarpTurn(
    Played played, boolean twinStrings, Setting before, boolean isFirst, List<PedalSetup> setups) {
  public HarpTurn {
    setups = List.copyOf(setups);
  }

  /**
   * Where pedals are set.
   *
   * @param stroke the first stroke that needs them so
   * @param setting how all stand from then on
   * @param moved those that are set, as the feet find them from left to right; at least one
   */
  public record PedalChange(int stroke, Setting setting, List<Pedal> moved) {
    /** So many can be told by name; of more the whole setting is plainer (our judgement). */
    private static final int MOST_NAMED = 2;

    public PedalChange {
      moved = List.copyOf(moved);
    }

    /** Whether the whole setting is to be told. */
    public boolean setsAll() {
      return moved.size() > MOST_NAMED;
    }
  }

  /** The turns of all harps of a plan. */
  public static Map<Segment, HarpTurn> of(Plan plan) {
    Map<Segment, HarpTurn> turns = new HashMap<>();
    for (int player = 0; player < plan.brief().players().size(); player++) {
      turns.putAll(of(plan, player));
    }
    return turns;
  }

  /** The turns of a player of a plan, in order; none of an instrument that is no harp. */
  public static Map<Segment, HarpTurn> of(Plan plan, int player) {
    Map<Segment, HarpTurn> turns = new LinkedHashMap<>();
    if (!plan.brief().players().get(player).instrument().isHarp()) {
      return turns;
    }
    Optional<Setting> inForce = Optional.empty();
    for (Segment segment : plan.segmentsOf(player)) {
      Played played = plan.played(segment);
      boolean twins = plan.way(segment).twinStrings();
      Setting before = inForce.orElseGet(() -> inKey(played));
      List<PedalSetup> setups = setups(played, twins, before);
      HarpTurn turn = new HarpTurn(played, twins, before, inForce.isEmpty(), setups);
      turns.put(segment, turn);
      inForce = setups.isEmpty() ? inForce : Optional.of(turn.after());
    }
    return turns;
  }

  private static Setting inKey(Played played) {
    Line line = played.line();
    return Setting.inKey(line.keys().at(line.stroke(played.first()).onset()));
  }

  private static List<PedalSetup> setups(Played played, boolean twins, Setting before) {
    Set<Integer> sounding = new HashSet<>();
    Set<Pitch> spelled = new HashSet<>();
    for (Stroke stroke : played.all()) {
      sounding.addAll(stroke.keys());
      stroke.tones().stream()
          .filter(Pitch.class::isInstance)
          .map(Pitch.class::cast)
          .forEach(spelled::add);
    }
    Set<Integer> twinned = twins ? repeated(played) : Set.of();
    Optional<Setting> one =
        HarpPedals.settingsFor(sounding, twinned).stream()
            .min(
                Comparator.comparing((Setting setting) -> respelled(spelled, setting))
                    .thenComparing(setting -> setting.movedSince(before).size()));
    return one.map(setting -> List.of(new PedalSetup(played.first(), setting)))
        .orElseGet(() -> twins ? List.of() : course(played));
  }

  private static long respelled(Set<Pitch> spelled, Setting setting) {
    return spelled.stream().filter(pitch -> !setting.has(pitch)).count();
  }

  /** As far as the turn goes; else as the judge does, with an eye on what comes after it. */
  private static List<PedalSetup> course(Played played) {
    PedalCourse alone = PedalCourse.of(played.line(), played.first(), played.last());
    PedalCourse course =
        alone.last() == played.last() ? alone : PedalCourse.from(played.line(), played.first(), 1);
    return course.last() >= played.last() ? course.upTo(played.last()) : List.of();
  }

  /** The notes that are struck twice in a row. */
  private static Set<Integer> repeated(Played played) {
    List<Stroke> strokes = played.all();
    Set<Integer> repeated = new HashSet<>();
    for (int i = 1; i < strokes.size(); i++) {
      if (strokes.get(i).isLike(strokes.get(i - 1))) {
        repeated.addAll(strokes.get(i).keys());
      }
    }
    return repeated;
  }

  private Setting after() {
    return setups.get(setups.size() - 1).setting();
  }

  /** Where pedals are set: all before the first turn, then those that move. */
  public List<PedalChange> changes() {
    List<PedalChange> changes = new ArrayList<>();
    Setting known = before;
    for (PedalSetup setup : setups) {
      boolean all = isFirst && changes.isEmpty();
      List<Pedal> moved = all ? setup.setting().pedals() : setup.setting().movedSince(known);
      if (!moved.isEmpty()) {
        changes.add(new PedalChange(setup.stroke(), setup.setting(), moved));
      }
      known = setup.setting();
    }
    return changes;
  }

  /**
   * What sounds at each stroke of the turn, each note by the string that sounds it: as the line
   * spells it, if there is one. Twins begin with the string whose pedal need not move. Notes for
   * which the pedals have no string are as the line has them.
   */
  public List<List<Tone>> tones() {
    Set<Integer> alternating = twinStrings ? repeated(played) : Set.of();
    Map<Integer, Pitch> struck = new HashMap<>();
    List<List<Tone>> tones = new ArrayList<>();
    for (int j = played.first(); j <= played.last(); j++) {
      Optional<Setting> setting = at(j);
      List<Tone> strings = new ArrayList<>();
      for (Tone tone : played.line().stroke(j).tones()) {
        if (tone instanceof Pitch pitch && setting.isPresent()) {
          List<Pitch> all = setting.get().strings(pitch.midi());
          Optional<Pitch> last = Optional.ofNullable(struck.get(pitch.midi()));
          Optional<Pitch> string =
              alternating.contains(pitch.midi()) ? next(all, last, pitch) : spelled(all, pitch);
          string.ifPresent(now -> struck.put(now.midi(), now));
          strings.add(string.orElse(pitch));
        } else {
          strings.add(tone);
        }
      }
      tones.add(strings);
    }
    return tones;
  }

  private Optional<Setting> at(int stroke) {
    return setups.stream()
        .filter(setup -> setup.stroke() <= stroke)
        .reduce((one, next) -> next)
        .map(PedalSetup::setting);
  }

  /** Of twins the one that was not struck last; the first time, that which needs no pedal. */
  private Optional<Pitch> next(List<Pitch> twins, Optional<Pitch> last, Pitch pitch) {
    List<Pitch> others = twins.stream().filter(twin -> !last.equals(Optional.of(twin))).toList();
    List<Pitch> ready = others.stream().filter(before::has).toList();
    return spelled(ready.isEmpty() ? others : ready, pitch);
  }

  private static Optional<Pitch> spelled(List<Pitch> strings, Pitch pitch) {
    return strings.stream().min(Comparator.comparing(string -> !string.equals(pitch)));
  }
}

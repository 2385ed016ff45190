package stafette.picture.notes;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Stream;
import stafette.notation.BarItem;
import stafette.notation.BarItem.SoundingItem;
import stafette.notation.VoiceLayout;
import stafette.plan.written.SlashedNote;
import stafette.plan.written.WrittenPassage;
import stafette.score.Stroke;
import stafette.score.Tuplet;
import stafette.time.Bar;
import stafette.time.Bars;
import stafette.time.Position;
import stafette.time.Span;

/**
 * What a player plays as it is written into files, bar by bar: its notes, and rests where it plays
 * nothing. Rests stay away from where it plays something else, but tuplets that reach there stay
 * whole.
 */
final class Notation {
  private final List<Stroke> strokes;
  private final Map<Integer, List<SoundingItem>> sounds = new HashMap<>();
  private final List<Span> given;
  private final List<Span> beams;

  private Notation(
      List<Stroke> strokes,
      Map<Position, SlashedNote> slashed,
      List<Span> given,
      List<Span> beams,
      Optional<Bars> bars) {
    this.strokes = strokes;
    this.given = given;
    this.beams = beams;
    int held = 0;
    for (int i = 0; i < strokes.size(); i++) {
      Stroke stroke = strokes.get(i);
      SlashedNote note = slashed.get(stroke.onset());
      if (note != null) {
        add(note.sounds(i), bars.orElseThrow());
        held = i + note.strokes();
      } else if (i >= held) {
        Position end = stroke.span().end();
        Position next = i + 1 < strokes.size() ? strokes.get(i + 1).onset() : end;
        Bars all = bars.orElseThrow();
        add(SoundingItem.of(i, stroke, next.isBefore(end) ? next : end, all), all);
      }
    }
  }

  private void add(List<SoundingItem> items, Bars bars) {
    for (SoundingItem sound : items) {
      sounds
          .computeIfAbsent(bars.at(sound.span().start()).index(), index -> new ArrayList<>())
          .add(sound);
    }
  }

  /**
   * What is written in some bars.
   *
   * @param plays all that the player plays
   * @param given where it plays something else, so that no rests are shown
   */
  static List<NotatedItem> of(List<WrittenPassage> plays, List<Span> given, List<Bar> bars) {
    Span all = new Span(bars.get(0).span().start(), bars.get(bars.size() - 1).span().end());
    List<Stroke> strokes =
        plays.stream()
            .flatMap(passage -> passage.strokes().stream())
            .filter(stroke -> stroke.span().overlaps(all))
            .sorted(Comparator.comparing(Stroke::onset))
            .toList();
    Optional<Bars> ofScore = plays.stream().findFirst().map(passage -> passage.line().bars());
    List<Span> beams =
        plays.stream()
            .flatMap(passage -> passage.line().expression().beams().stream())
            .distinct()
            .toList();
    Map<Position, SlashedNote> slashed = new HashMap<>();
    plays.stream()
        .flatMap(passage -> passage.slashed().stream())
        .filter(note -> holdsAlone(strokes, note))
        .forEach(note -> slashed.put(note.span().start(), note));
    Notation notation = new Notation(strokes, slashed, given, beams, ofScore);
    return bars.stream().flatMap(bar -> notation.bar(bar).stream()).toList();
  }

  /** Whether nothing else of the player's stands among its strokes. */
  private static boolean holdsAlone(List<Stroke> strokes, SlashedNote note) {
    return strokes.stream().filter(stroke -> note.span().contains(stroke.onset())).count()
        == note.strokes();
  }

  private List<NotatedItem> bar(Bar bar) {
    List<SoundingItem> here = sounds.getOrDefault(bar.index(), List.of());
    List<Span> silent = given.stream().filter(bar.span()::overlaps).toList();
    if (silent.isEmpty()) {
      return items(VoiceLayout.of(bar, bar.span(), here, new TreeSet<>(), beams));
    }
    TreeSet<Position> breaks = new TreeSet<>();
    silent.forEach(span -> breaks.addAll(List.of(span.start(), span.end())));
    return written(bar, here, silent, breaks).stream()
        .flatMap(
            region ->
                items(VoiceLayout.of(bar, region, within(region, here), breaks, beams)).stream())
        .toList();
  }

  private List<NotatedItem> items(List<BarItem> items) {
    return items.stream()
        .map(
            item ->
                new NotatedItem(
                    item,
                    item.sound().map(sound -> strokes.get(sound.stroke())),
                    !item.isRest() || given.stream().noneMatch(item.span()::overlaps)))
        .toList();
  }

  private static List<SoundingItem> within(Span region, List<SoundingItem> sounds) {
    return sounds.stream().filter(sound -> region.contains(sound.span().start())).toList();
  }

  /** Where something is written: where nothing else is, and in whole tuplets and notes. */
  private static List<Span> written(
      Bar bar, List<SoundingItem> sounds, List<Span> silent, Collection<Position> breaks) {
    List<Span> kept =
        sounds.stream()
            .map(
                sound ->
                    VoiceLayout.groupIn(bar.span(), sound).map(Tuplet::span).orElse(sound.span()))
            .toList();
    TreeSet<Position> edges = new TreeSet<>(List.of(bar.span().start(), bar.span().end()));
    Stream.concat(
            breaks.stream(), kept.stream().flatMap(span -> Stream.of(span.start(), span.end())))
        .filter(bar.span()::contains)
        .forEach(edges::add);
    List<Span> regions = new ArrayList<>();
    for (Position from : edges.headSet(bar.span().end())) {
      Span piece = new Span(from, Optional.ofNullable(edges.higher(from)).orElseThrow());
      boolean open =
          silent.stream().noneMatch(piece::overlaps) || kept.stream().anyMatch(piece::overlaps);
      if (open) {
        boolean goesOn = !regions.isEmpty() && regions.get(regions.size() - 1).end().equals(from);
        Position start = goesOn ? regions.remove(regions.size() - 1).start() : from;
        regions.add(new Span(start, piece.end()));
      }
    }
    return regions;
  }
}

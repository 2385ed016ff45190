package stafette.notation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.TreeSet;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import stafette.notation.BarItem.Edge;
import stafette.notation.BarItem.SoundingItem;
import stafette.score.Tuplet;
import stafette.time.Bar;
import stafette.time.BeatUnit;
import stafette.time.Length;
import stafette.time.Meter;
import stafette.time.Position;
import stafette.time.Rational;
import stafette.time.Span;

/** Whatever sounds in a bar, its items are what a bar of music must be. */
class VoiceLayoutTest {
  private static final List<Meter> METRES =
      List.of(
          Meter.COMMON,
          Meter.of(List.of(3), 4),
          Meter.of(List.of(6), 8),
          Meter.of(List.of(3, 2), 8),
          Meter.of(List.of(2), 2));

  /** A bar with sounds in some of the places into which its beats are divided. */
  private record Music(Bar bar, List<SoundingItem> sounds, TreeSet<Position> breaks) {
    static Music of(Random chance) {
      Meter meter = METRES.get(chance.nextInt(METRES.size()));
      Position start = Position.START.plus(Length.ofQuarters(chance.nextInt(40), 2));
      Bar bar = new Bar(0, "1", Span.of(start, meter.length()), meter, Length.ZERO);
      List<SoundingItem> sounds = new ArrayList<>();
      for (Span beat : bar.beats()) {
        divide(beat, chance, sounds);
      }
      if (sounds.isEmpty()) {
        sounds.add(new SoundingItem(0, bar.beats().get(0), Optional.empty(), true, true));
      }
      TreeSet<Position> breaks = new TreeSet<>();
      for (int i = chance.nextInt(3); i > 0; i--) {
        int eighths = meter.length().quarters().times(2).numerator().intValue();
        breaks.add(start.plus(Length.ofQuarters(chance.nextInt(eighths), 2)));
      }
      return new Music(bar, sounds, breaks);
    }

    private static void divide(Span beat, Random chance, List<SoundingItem> sounds) {
      boolean dotted = beat.length().quarters().numerator().intValue() % 3 == 0;
      int[][] plain =
          dotted ? new int[][] {{1, 1}, {3, 3}, {6, 6}} : new int[][] {{1, 1}, {2, 2}, {4, 4}};
      int[][] odd = dotted ? new int[][] {{2, 3}, {4, 3}} : new int[][] {{3, 2}, {6, 4}, {5, 4}};
      boolean tuplet = chance.nextBoolean();
      int[] figure = tuplet ? odd[chance.nextInt(odd.length)] : plain[chance.nextInt(plain.length)];
      Optional<Tuplet> group =
          tuplet ? Optional.of(new Tuplet(figure[0], figure[1], beat)) : Optional.empty();
      Length slot = new Length(beat.length().quarters().dividedBy(figure[0]));
      Position at = beat.start();
      while (at.isBefore(beat.end())) {
        Length length = chance.nextInt(4) == 0 ? slot.plus(slot) : slot;
        Position end = at.plus(length).isAfter(beat.end()) ? beat.end() : at.plus(length);
        if (chance.nextInt(3) > 0) {
          sounds.add(new SoundingItem(sounds.size(), new Span(at, end), group, true, true));
        }
        at = end;
      }
    }

    /** The bar, or what begins with its first sound and ends with its last. */
    Span region(Random chance) {
      return chance.nextBoolean()
          ? bar.span()
          : new Span(sounds.get(0).span().start(), sounds.get(sounds.size() - 1).span().end());
    }
  }

  @Property
  void items_follow_one_another_and_fill_the_region(@ForAll Random chance) {
    Music music = Music.of(chance);
    Span region = music.region(chance);
    Position at = region.start();
    for (BarItem item :
        VoiceLayout.of(music.bar(), region, music.sounds(), music.breaks(), List.of())) {
      assertEquals(at, item.span().start());
      assertTrue(item.span().start().isBefore(item.span().end()));
      at = item.span().end();
    }
    assertEquals(region.end(), at);
  }

  @Property
  void every_sound_stands_at_its_place_and_its_pieces_are_tied(@ForAll Random chance) {
    Music music = Music.of(chance);
    List<BarItem> items =
        VoiceLayout.of(
            music.bar(), music.region(chance), music.sounds(), music.breaks(), List.of());
    for (SoundingItem sound : music.sounds()) {
      List<BarItem> pieces =
          items.stream()
              .filter(item -> item.sound().filter(s -> s.stroke() == sound.stroke()).isPresent())
              .toList();
      int last = pieces.size() - 1;
      assertEquals(sound.span().start(), pieces.get(0).span().start());
      assertEquals(sound.span().end(), pieces.get(last).span().end());
      for (int i = 0; i <= last; i++) {
        assertEquals(i == 0, pieces.get(i).sound().orElseThrow().first());
        assertEquals(i == last, pieces.get(i).sound().orElseThrow().last());
      }
    }
  }

  @Property
  void what_an_item_looks_like_is_as_long_as_it_is(@ForAll Random chance) {
    Music music = Music.of(chance);
    for (BarItem item :
        VoiceLayout.of(
            music.bar(), music.region(chance), music.sounds(), music.breaks(), List.of())) {
      NoteShape shape = item.shape().orElseThrow(() -> new AssertionError(item));
      Rational looks =
          BeatUnit.of(shape.type(), shape.dots())
              .orElseThrow(() -> new AssertionError(item))
              .length()
              .quarters();
      Rational scaled =
          item.ratio().map(r -> looks.times(r.normal()).dividedBy(r.actual())).orElse(looks);
      assertEquals(item.span().length().quarters(), scaled, item.toString());
    }
  }

  @Property
  void a_bracket_spans_a_whole_tuplet_of_the_line(@ForAll Random chance) {
    Music music = Music.of(chance);
    Optional<Position> open = Optional.empty();
    for (BarItem item :
        VoiceLayout.of(
            music.bar(), music.region(chance), music.sounds(), music.breaks(), List.of())) {
      if (item.edge().starts()) {
        assertEquals(Optional.empty(), open);
        open = Optional.of(item.span().start());
      }
      assertTrue(open.isEmpty() || item.ratio().isPresent());
      if (item.edge().stops()) {
        Span bracket = new Span(open.orElseThrow(), item.span().end());
        assertTrue(
            music.sounds().stream()
                .anyMatch(s -> s.tuplet().filter(t -> t.span().equals(bracket)).isPresent()));
        open = Optional.empty();
      }
    }
    assertEquals(Optional.empty(), open);
  }

  @Property
  void in_a_whole_bar_every_tuplet_has_its_bracket(@ForAll Random chance) {
    Music music = Music.of(chance);
    long brackets =
        VoiceLayout.of(music.bar(), music.bar().span(), music.sounds(), music.breaks(), List.of())
            .stream()
            .filter(item -> item.edge() == Edge.STARTS || item.edge() == Edge.STARTS_AND_STOPS)
            .count();
    long tuplets =
        music.sounds().stream().flatMap(sound -> sound.tuplet().stream()).distinct().count();
    assertEquals(tuplets, brackets);
  }

  /**
   * Inside a tuplet a break may fall where none of the tuplet's own values ends; there the values
   * count.
   */
  @Property
  void no_rest_outside_a_tuplet_lasts_over_a_break(@ForAll Random chance) {
    Music music = Music.of(chance);
    for (BarItem item :
        VoiceLayout.of(
            music.bar(), music.region(chance), music.sounds(), music.breaks(), List.of())) {
      for (Position stop : music.breaks()) {
        assertFalse(
            item.isRest()
                && item.ratio().isEmpty()
                && item.span().start().isBefore(stop)
                && stop.isBefore(item.span().end()),
            item + " over " + stop);
      }
    }
  }
}

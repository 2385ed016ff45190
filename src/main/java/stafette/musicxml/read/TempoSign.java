package stafette.musicxml.read;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stafette.musicxml.text.DecimalText;
import stafette.musicxml.text.Element;
import stafette.time.BeatUnit;
import stafette.time.Rational;
import stafette.time.TempoMark;

/** Something that says how fast it goes. Nonsense (nothing, or faster than anyone) says nothing. */
sealed interface TempoSign {
  Rational SLOWEST_QUARTERS = Rational.ONE;
  Rational FASTEST_QUARTERS = Rational.of(5_000);

  /** Which of several signs at one place counts: that of the greatest weight. */
  int weight();

  /** The tempo that it sets, after the one before. */
  Optional<TempoMark> mark(Optional<TempoMark> before);

  /** A printed metronome mark. */
  record Metronome(TempoMark mark) implements TempoSign {
    @Override
    public int weight() {
      return 2;
    }

    @Override
    public Optional<TempoMark> mark(Optional<TempoMark> before) {
      return Optional.of(mark);
    }
  }

  /** A tempo for playback, in quarters a minute. */
  record PlaybackTempo(TempoMark mark) implements TempoSign {
    @Override
    public int weight() {
      return 1;
    }

    @Override
    public Optional<TempoMark> mark(Optional<TempoMark> before) {
      return Optional.of(mark);
    }
  }

  /** A printed relation of two note values: the new one goes as the old one went. */
  record Relation(BeatUnit before, BeatUnit after) implements TempoSign {
    @Override
    public int weight() {
      return 0;
    }

    @Override
    public Optional<TempoMark> mark(Optional<TempoMark> old) {
      return old.map(mark -> new TempoMark(after, mark.in(before).perMinute()))
          .filter(TempoSign::sensible);
    }
  }

  static Optional<TempoSign> ofMetronome(Element metronome) {
    List<BeatUnit> units = units(metronome);
    boolean tied = metronome.has("beat-unit-tied");
    Optional<Rational> perMinute = metronome.textOf("per-minute").flatMap(DecimalText::firstIn);
    if (units.size() == 1 && perMinute.isPresent() && !tied) {
      return mark(units.get(0), perMinute.get()).map(Metronome::new);
    }
    return units.size() == 2 && !tied
        ? Optional.of(new Relation(units.get(0), units.get(1)))
        : Optional.empty();
  }

  static Optional<TempoSign> ofSound(Element sound) {
    return sound
        .attribute("tempo")
        .flatMap(text -> DecimalText.parse(text.trim()))
        .flatMap(tempo -> mark(BeatUnit.QUARTER, tempo))
        .map(PlaybackTempo::new);
  }

  private static Optional<TempoMark> mark(BeatUnit unit, Rational perMinute) {
    if (perMinute.signum() <= 0) {
      return Optional.empty();
    }
    TempoMark mark = new TempoMark(unit, perMinute);
    return sensible(mark) ? Optional.of(mark) : Optional.empty();
  }

  /** Whether anybody could mean it. */
  static boolean sensible(TempoMark mark) {
    Rational quarters = mark.quartersPerMinute();
    return quarters.compareTo(SLOWEST_QUARTERS) >= 0 && quarters.compareTo(FASTEST_QUARTERS) <= 0;
  }

  private static List<BeatUnit> units(Element metronome) {
    List<BeatUnit> units = new ArrayList<>();
    List<Element> children = metronome.children();
    for (int i = 0; i < children.size(); i++) {
      if (children.get(i).name().equals("beat-unit")) {
        int dots = 0;
        while (i + dots + 1 < children.size()
            && children.get(i + dots + 1).name().equals("beat-unit-dot")) {
          dots++;
        }
        BeatUnit.of(children.get(i).text(), dots).ifPresent(units::add);
      }
    }
    return units;
  }
}

package stafette.tables;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.Tuple;
import net.jqwik.api.Tuple.Tuple2;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import stafette.Invented;
import stafette.check.alone.LineTrial;
import stafette.limits.Act;
import stafette.limits.Assurance;
import stafette.limits.Capability;
import stafette.limits.Catalogue;
import stafette.limits.Instrument;
import stafette.limits.Technique;
import stafette.score.Line;
import stafette.score.Pitch;
import stafette.score.Step;

/** What every handbook says of which is faster (common practice, no source), over all tables. */
class OrderingsTest {
  private static final Catalogue CATALOGUE = LimitTables.builtIn().catalogue();

  /** The larger instrument last; over every technique that both have. */
  private static final List<String> BY_SIZE =
      List.of(
          "flute, alto flute, bass flute",
          "oboe, oboe d'amore, cor anglais",
          "clarinet in B-flat, bass clarinet, contra-alto clarinet, contrabass clarinet",
          "bassoon, contrabassoon",
          "soprano saxophone, tenor saxophone, baritone saxophone, bass saxophone",
          "alto recorder, tenor recorder, bass recorder",
          "trumpet in B-flat, bass trumpet",
          "trombone, bass trombone, contrabass trombone",
          "cornet in B-flat, tenor horn",
          "euphonium, tuba",
          "Wagner tuba in B-flat, Wagner tuba in F",
          "violin, viola, cello, double bass",
          "snare drum, tenor drum, bass drum");

  /** All techniques of all instruments. */
  private static Stream<Technique> techniques(Instrument instrument) {
    return instrument.techniques().stream();
  }

  @Provide
  static Arbitrary<Tuple2<String, String>> sizes() {
    return Arbitraries.of(
        BY_SIZE.stream()
            .map(row -> Arrays.asList(row.split(", ", -1)))
            .flatMap(
                row ->
                    java.util.stream.IntStream.range(1, row.size())
                        .mapToObj(i -> Tuple.of(row.get(i - 1), row.get(i))))
            .toList());
  }

  @Property
  void a_larger_instrument_is_never_faster(
      @ForAll("sizes") Tuple2<String, String> pair,
      @ForAll @DoubleRange(min = 1, max = 99) double share) {
    Assurance assurance = new Assurance(share);
    Instrument large = CATALOGUE.find(pair.get2()).orElseThrow();
    for (Technique small : CATALOGUE.find(pair.get1()).orElseThrow().techniques()) {
      Catalogue.technique(large, small.name())
          .ifPresent(
              same ->
                  assertTrue(
                      same.limit().at(assurance).peakMilli()
                          <= small.limit().at(assurance).peakMilli(),
                      pair + ", " + small.name()));
    }
  }

  @Provide
  static Arbitrary<Instrument> instruments() {
    return Arbitraries.of(CATALOGUE.instruments());
  }

  private static void assertFaster(
      Instrument instrument, Predicate<Technique> slow, Predicate<Technique> fast) {
    techniques(instrument)
        .filter(slow)
        .forEach(
            slower ->
                techniques(instrument)
                    .filter(fast)
                    .forEach(
                        faster ->
                            assertTrue(
                                slower.limit().peakPerSecond() < faster.limit().peakPerSecond(),
                                instrument.name()
                                    + ": "
                                    + slower.name()
                                    + " below "
                                    + faster.name())));
  }

  private static Predicate<Technique> named(String... names) {
    return technique -> List.of(names).contains(technique.name());
  }

  @Property
  void pizzicato_is_slower_than_the_bow(@ForAll("instruments") Instrument instrument) {
    assertFaster(
        instrument,
        technique -> technique.act() == Act.PLUCK,
        technique ->
            technique.act() == Act.BOW
                && technique.pitches() != Technique.Pitches.ALTERNATING
                && !technique.name().equals("spiccato"));
  }

  @Property
  void one_string_is_slower_than_twins(@ForAll("instruments") Instrument instrument) {
    assertFaster(
        instrument,
        technique -> technique.act() == Act.STRING && !technique.twinStrings(),
        Technique::twinStrings);
  }

  @Property
  void one_hand_is_slower_than_two(@ForAll("instruments") Instrument instrument) {
    assertFaster(
        instrument,
        named("one hand", "one finger", "pizzicato one finger"),
        technique -> technique.takers() == 2);
  }

  @Property
  void single_tonguing_is_slower_than_double_and_triple(
      @ForAll("instruments") Instrument instrument) {
    assertFaster(instrument, named("single tonguing"), named("double tonguing", "triple tonguing"));
  }

  @Property
  void a_higher_share_never_allows_more(
      @ForAll("instruments") Instrument instrument,
      @ForAll @DoubleRange(min = 0.2, max = 99.8) double one,
      @ForAll @DoubleRange(min = 0.2, max = 99.8) double other) {
    for (Technique technique : instrument.techniques()) {
      Capability few = technique.limit().at(new Assurance(Math.min(one, other)));
      Capability many = technique.limit().at(new Assurance(Math.max(one, other)));
      assertTrue(many.peakMilli() <= few.peakMilli(), technique.name());
      assertTrue(many.sustainedMilli() <= few.sustainedMilli(), technique.name());
      assertTrue(many.movingMilli() <= few.movingMilli(), technique.name());
      assertTrue(many.staminaMilli() <= few.staminaMilli(), technique.name());
    }
  }

  @Property(tries = 200)
  void what_a_higher_share_manages_a_lower_one_does(
      @ForAll("instruments") Instrument instrument,
      @ForAll @IntRange(min = 60, max = 220) int tempo,
      @ForAll @IntRange(min = 8, max = 120) int strokes,
      @ForAll boolean repeated) {
    Line line =
        Invented.line(
            strokes,
            4,
            tempo,
            i -> new Pitch(Step.values()[repeated ? 0 : i % 7], 0, instrument.isHarp() ? 3 : 4));
    List<Technique> expected =
        instrument.techniques().stream().filter(Technique::expected).toList();
    boolean managed = false;
    for (int share : List.of(98, 84, 50, 16)) {
      Optional<Boolean> now = LineTrial.manages(line, instrument, new Assurance(share), expected);
      assertFalse(managed && !now.orElse(true), instrument.name() + " at " + share);
      managed = now.orElse(false);
    }
  }

  /** Rates as they must follow each other without a gap between the strokes off the string. */
  @Property
  void between_spiccato_and_sautille_no_rate_is_left_out(
      @ForAll("instruments") Instrument instrument) {
    Catalogue.technique(instrument, "spiccato")
        .ifPresent(
            spiccato ->
                assertTrue(
                    Catalogue.technique(instrument, "sautillé").orElseThrow().lowestPerSecond()
                        <= spiccato.limit().at(Assurance.DEFAULT).peakPerSecond(),
                    instrument.name()));
  }
}

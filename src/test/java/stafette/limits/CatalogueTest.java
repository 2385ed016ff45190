package stafette.limits;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import stafette.score.Part;
import stafette.tables.LimitTables;

/** Names as scores and people write them, looked up in the built-in tables. */
class CatalogueTest {
  private static final Catalogue CATALOGUE = LimitTables.builtIn().catalogue();

  @ParameterizedTest
  @CsvSource(
      delimiter = '=',
      value = {
        "flute = flute",
        "Flute 1 = flute",
        "FLUTES 1 & 2 = flute",
        "1st Flute = flute",
        "Flauto I = flute",
        "2 Flöten = flute",
        "1. Flöte = flute",
        "Flûtes = flute",
        "Fl. = flute",
        "Fl.1 = flute",
        "Fl. a 2 = flute",
        "Flauti a due = flute",
        "Flute 3/Piccolo = flute",
        "Flute 2 (doubling Piccolo) = flute",
        "Solo Flute = flute",
        "Flute, alto = alto flute",
        "Flöte in G = alto flute",
        "Picc. = piccolo",
        "Ottavino = piccolo",
        "Kleine Flöte = piccolo",
        "clarinet = clarinet in B-flat",
        "Clarinet in Bb = clarinet in B-flat",
        "Clarinet in B♭ 1 = clarinet in B-flat",
        "Clarinet (B♭) = clarinet in B-flat",
        "B♭ Clarinet 2 = clarinet in B-flat",
        "B-flat clarinet = clarinet in B-flat",
        "Klarinette in B = clarinet in B-flat",
        "Clarinetto II in Si♭ = clarinet in B-flat",
        "Clarinette en si bémol = clarinet in B-flat",
        "Clarinet in A = clarinet in A",
        "Clarinets (A) = clarinet in A",
        "Cl. in A 1 = clarinet in A",
        "A-Klarinette = clarinet in A",
        "Clarinetto in La = clarinet in A",
        "Klarinette in C = clarinet in B-flat",
        "Es-Klarinette = clarinet in E-flat",
        "E♭ Clarinet = clarinet in E-flat",
        "B. Cl. = bass clarinet",
        "Bass Clarinet in B♭ = bass clarinet",
        "Bassklarinette in B = bass clarinet",
        "Oboe d'amore = oboe d'amore",
        "Oboe 2 = oboe",
        "English Horn = cor anglais",
        "Corno inglese = cor anglais",
        "Englischhorn = cor anglais",
        "Bsn. 1 = bassoon",
        "Contrafagotto = contrabassoon",
        "Horn = horn in F",
        "Horns 1.3 in F = horn in F",
        "Corni I e II in Fa = horn in F",
        "Horn in Es = horn in F",
        "French Horn = horn in F",
        "Trumpet 1 = trumpet in B-flat",
        "Trompete in C = trumpet in C",
        "Tromba III in Si bemolle = trumpet in B-flat",
        "C Trumpet = trumpet in C",
        "Tbn. 2 = trombone",
        "Bass Trombone = bass trombone",
        "Tuba = tuba",
        "Timp. = timpani",
        "Pauken = timpani",
        "Tenor Sax 1 = tenor saxophone",
        "Violin = violin",
        "Violins II = violin",
        "Violini I = violin",
        "Vln. 1 = violin",
        "Violin I-A = violin",
        "Viole = viola",
        "Bratschen = viola",
        "Violoncello = cello",
        "Vc. = cello",
        "Contrabass = double bass",
        "Kontrabässe = double bass",
        "Cb. = double bass",
        "Harp 2 = harp",
        "Arpa = harp",
        "Harfe I = harp",
        "Klavier = piano",
        "Snare Drum = snare drum",
        "Toms = tom-toms",
        "wind.flutes.flute = flute",
        "wind.flutes.flute.piccolo = piccolo",
        "wind.reed.clarinet.a = clarinet in A",
        "strings.contrabass = double bass",
      })
  void a_name_is_known(String name, String instrument) {
    assertEquals(Optional.of(instrument), CATALOGUE.find(name).map(Instrument::name));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "  ",
        "1",
        "Soprano",
        "Alto",
        "Contrabass flute",
        "Slide trumpet",
        "kazoo",
        "in A",
        "()",
        "strings.group"
      })
  void a_name_of_something_else_is_not_guessed(String name) {
    assertEquals(Optional.empty(), CATALOGUE.find(name).map(Instrument::name));
  }

  @Test
  void every_name_and_alias_leads_to_its_own_instrument() {
    for (Instrument instrument : CATALOGUE.instruments()) {
      assertEquals(Optional.of(instrument), CATALOGUE.find(instrument.name()));
      for (String alias : instrument.aliases()) {
        assertEquals(
            Optional.of(instrument.name()), CATALOGUE.find(alias).map(Instrument::name), alias);
      }
    }
  }

  @ParameterizedTest
  @CsvSource({
    "Clarinet 1, wind.reed.clarinet.a, clarinet in A",
    "Clarinet in A, wind.reed.clarinet.bflat, clarinet in A",
    "Clarinet, wind.reed.clarinet, clarinet in B-flat",
    "Piccolo, wind.flutes.flute, piccolo",
    "Flute, wind.flutes.flute.piccolo, flute",
    "Flauto, wind.flutes.flute.alto, alto flute",
    "Saxophone, wind.reed.saxophone.tenor, tenor saxophone",
    "Trumpet, brass.trumpet.c, trumpet in C",
    "Trombone 3, brass.trombone.bass, bass trombone",
    "Bass Clarinet, wind.reed.clarinet, bass clarinet",
    "Lead, strings.violin, violin",
    "P1, wind.reed.clarinet|Clarinet in A, clarinet in A",
  })
  void a_parts_other_names_narrow_its_printed_one(String name, String hints, String instrument) {
    Part part = new Part("P1", name, Arrays.asList(hints.split("\\|")), List.of());
    assertEquals(Optional.of(instrument), CATALOGUE.of(part).map(Instrument::name));
  }

  @Test
  void a_part_of_unknown_name_is_no_instrument() {
    assertEquals(
        Optional.empty(), CATALOGUE.of(new Part("P1", "Choir", List.of("voice.alto"), List.of())));
  }

  @Test
  void a_slip_of_the_pen_gets_suggestions() {
    assertEquals(List.of("flute"), CATALOGUE.nearest("flutr"));
    assertEquals("bassoon", CATALOGUE.nearest("basoon").get(0));
    assertEquals(List.of(), CATALOGUE.nearest("hurdygurdyphone"));
  }

  @Test
  void techniques_are_found_without_accents() {
    Instrument violin = CATALOGUE.find("violin").orElseThrow();
    assertEquals(
        Optional.of("sautillé"), Catalogue.technique(violin, "Sautille").map(Technique::name));
    assertEquals(Optional.empty(), Catalogue.technique(violin, "double tonguing"));
  }
}

package stafette.limits;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import stafette.score.Part;
import stafette.tables.LimitTables;

/** Names of parts in four languages, as scores print them (common practice, no source). */
class PartNamesTest {
  private static final Catalogue CATALOGUE = LimitTables.builtIn().catalogue();

  @ParameterizedTest
  @CsvSource(
      delimiter = '=',
      value = {
        "bass flute = Bass Flute; B. Fl.; Flauto basso; Bassflöte; Flûte basse",
        "contra-alto clarinet = Contra-alto Clarinet in E♭; Contrabass Clarinet (Eb)",
        "contra-alto clarinet = Kontraaltklarinette; Clarinette contre-alto",
        "contrabass clarinet = Contrabass Clarinet in B♭; Cb. Cl.; Clarinetto contrabbasso",
        "contrabass clarinet = Kontrabassklarinette in B; Clarinette contrebasse",
        "bass saxophone = Bass Sax; Sassofono basso; Basssaxophon in B; Saxophone basse",
        "sopranino recorder = Sopranino Recorder; Flauto dolce sopranino; Sopraninoblockflöte",
        "sopranino recorder = Flûte à bec sopranino",
        "soprano recorder = Descant Recorder 2; Flauto dolce soprano; Sopranblockflöte I",
        "soprano recorder = Sopran-Blockflöte; Flûtes à bec soprano",
        "alto recorder = Treble Recorder; Alto Recorder 1; Recorder; Flauti dolci; Altblockflöte",
        "alto recorder = Blockflöten; Flûte à bec alto; Flûte à bec",
        "tenor recorder = Tenor Recorder; Flauto dolce tenore; Tenorblockflöte; Flûte à bec ténor",
        "bass recorder = Bass Recorder; Flauto dolce basso; Bassblockflöte; Flûte à bec basse",
        "flugelhorn = Flugelhorn in B♭; Flghn.; Flicorno soprano; Flügelhorn 1; Bugle à pistons",
        "piccolo trumpet = Piccolo Trumpet in A; Picc. Tpt.; Tromba piccola; Piccolotrompete",
        "piccolo trumpet = Trompette piccolo; Petite trompette en ré",
        "bass trumpet = Bass Trumpet in E♭; Tromba bassa; Basstrompete in C; Trompette basse",
        "alto trombone = Alto Trombone; A. Tbn.; Trombone contralto; Altposaune; Trombone alto",
        "contrabass trombone = Contrabass Trombone; Trombone contrabbasso; Kontrabassposaune",
        "contrabass trombone = Trombone contrebasse",
        "Wagner tuba in B-flat = Wagner Tuba; Wagner Tubas 1.2 in B♭; Tenor-Tuben in B",
        "Wagner tuba in B-flat = Tuba wagneriana; Wagnertuben in B; Tuba wagnérien",
        "Wagner tuba in F = Wagner Tuba in F; Bass-Tuben in F; Wagnertuba in F",
        "Wagner tuba in F = Tuba wagneriana in Fa; Tuba wagnérien en fa",
        "cimbasso = Cimbasso; Cimbassi",
        "tenor horn = Tenor Horn; Tenor Horn in E♭; Alto Horn; Flicorno contralto; Althorn in Es",
        "tenor horn = Saxhorn alto en mi♭",
        "baritone in B-flat = Baritone in B♭; Baritone (Bb); B♭ Baritone; Baritone Horn",
        "baritone in B-flat = Bariton (Bb); Bariton in B; Baritonhorn; Tenorhorn in B",
        "baritone in B-flat = Flicorno tenore; Baritono in Sib; Baryton en si♭; Saxhorn baryton",
        "tenor drum = Tenor Drum; Cassa rullante; Rührtrommel; Caisse roulante",
        "bass drum = Bass Drum; Bass Drum & Cymbals; B. D.; Gran Cassa; Gr. C.; Cassa",
        "bass drum = Große Trommel; Gr. Tr.; Grosse caisse; G. C.",
        "cymbals = Cymbals; Cym.; Crash Cymbals; Piatti; Becken; Cymbales; Piatti/Gran Cassa",
        "suspended cymbal = Suspended Cymbal; Susp. Cym.; Piatto sospeso; Hängendes Becken",
        "suspended cymbal = Becken hängend; Cymbale suspendue",
        "triangle = Triangle; Trgl.; Triangolo; Triangel",
        "tambourine = Tambourine; Tamb.; Tamburello; Tamburo basco; Schellentrommel; Tamburin",
        "tambourine = Tambour de basque",
        "castanets = Castanets; Nacchere; Castagnette; Kastagnetten; Castagnettes",
        "wood blocks = Wood Blocks; Woodblock; Blocco di legno; Holzblock; Bloc de bois",
        "temple blocks = Temple Blocks; Blocchi cinesi; Tempelblöcke; Blocs chinois",
        "tam-tam = Tam-tam; Tamtam; T.-t.",
        "crotales = Crotales; Antique Cymbals; Crotali; Zimbeln; Cymbales antiques",
        "organ = Organ; Pipe Organ; Org.; Organo; Orgel; Orgue",
        "harmonium = Harmonium; Harm.; Armonium; Physharmonika",
        "guitar = Guitar; Classical Guitar 2; Gtr.; Chitarra; Gitarre; Guitare",
        "mandolin = Mandolin 1; Mand.; Mandolino; Mandoline; Mandolines",
        "cimbalom = Cimbalom; Cimbalon; Zymbal; Cymbalum",
        "viola d'amore = Viola d'amore; Viole d’amore; Liebesgeige; Viole d'amour",
        "violone = Violone; Violoni",
      })
  void a_part_of_that_name_is_known(String instrument, String names) {
    for (String name : names.split("; ", -1)) {
      assertEquals(Optional.of(instrument), named(name), name);
    }
  }

  @ParameterizedTest
  @CsvSource({
    "wind.flutes.flute.bass, bass flute",
    "wind.reed.clarinet.contra-alto, contra-alto clarinet",
    "wind.reed.clarinet.contrabass, contrabass clarinet",
    "wind.reed.saxophone.bass, bass saxophone",
    "wind.flutes.recorder.sopranino, sopranino recorder",
    "wind.flutes.recorder.descant, soprano recorder",
    "wind.flutes.recorder, alto recorder",
    "wind.flutes.recorder.tenor, tenor recorder",
    "wind.flutes.recorder.bass, bass recorder",
    "brass.flugelhorn, flugelhorn",
    "brass.trumpet.piccolo, piccolo trumpet",
    "brass.trumpet.bass, bass trumpet",
    "brass.trumpet.d, trumpet in B-flat",
    "brass.trombone.alto, alto trombone",
    "brass.trombone.contrabass, contrabass trombone",
    "brass.wagner-tuba, Wagner tuba in B-flat",
    "brass.cimbasso, cimbasso",
    "brass.alto-horn, tenor horn",
    "brass.baritone-horn, baritone in B-flat",
    "drum.tenor-drum, tenor drum",
    "drum.bass-drum, bass drum",
    "metal.cymbal.clash, cymbals",
    "metal.cymbal.suspended, suspended cymbal",
    "metal.triangle, triangle",
    "drum.tambourine, tambourine",
    "wood.castanets, castanets",
    "wood.wood-block, wood blocks",
    "wood.temple-block, temple blocks",
    "metal.tamtam, tam-tam",
    "metal.crotales, crotales",
    "keyboard.organ.pipe, organ",
    "keyboard.harmonium, harmonium",
    "pluck.guitar.nylon-string, guitar",
    "pluck.mandolin, mandolin",
    "pitched-percussion.cimbalom, cimbalom",
    "strings.viola-damore, viola d'amore",
    "strings.viol.violone, violone",
  })
  void a_sound_of_musicxml_is_known(String sound, String instrument) {
    assertEquals(Optional.of(instrument), named("P1", sound));
  }

  @ParameterizedTest
  @CsvSource({
    "Tenor Tuba, euphonium",
    "Tenortuba, euphonium",
    "Flicorno baritono, euphonium",
    "Tuben, tuba",
    "Basstuba, tuba",
    "Corno inglese, cor anglais",
    "Kontrabass, double bass",
    "Tamburo, snare drum",
    "Kl. Tr., snare drum",
    "Trumpet in D, trumpet in B-flat",
    "Tromba in Fa, trumpet in B-flat",
    "Horn in E♭, horn in F",
    "Tuba, tuba",
    "Bass Clarinet, bass clarinet",
    "Flügel, piano",
    "Violon, violin",
    "Viole, viola",
  })
  void instruments_that_are_likest_keep_their_names(String name, String instrument) {
    assertEquals(Optional.of(instrument), named(name));
  }

  @ParameterizedTest
  @ValueSource(strings = {"Bassi", "Bass", "Alto", "Tenor", "Gong", "Bugle", "Tambourin", "Cimb."})
  void what_may_be_several_things_is_not_guessed(String name) {
    assertEquals(Optional.empty(), named(name));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"Tenor Horn", "Alto Horn 2", "Bariton (Bb)", "Baritone Horn", "Tenorhorn"})
  void a_horn_with_the_name_of_a_voice_does_not_sing(String name) {
    assertFalse(Singers.sing(part(name)));
  }

  @ParameterizedTest
  @ValueSource(strings = {"Baritone", "Bariton", "Baritono", "Baryton", "Baritone Solo"})
  void a_baritone_sings_unless_the_sound_is_of_brass(String name) {
    assertTrue(Singers.sing(part(name)));
    assertEquals(Optional.empty(), named(name));
    assertEquals(Optional.empty(), named(name, "voice.baritone"));
    assertFalse(Singers.sing(part(name, "brass.baritone-horn")));
    assertEquals(Optional.of("baritone in B-flat"), named(name, "brass.baritone-horn"));
  }

  @ParameterizedTest
  @CsvSource({
    "Recorder, wind.flutes.recorder.soprano, soprano recorder",
    "Tuba, brass.wagner-tuba, Wagner tuba in B-flat",
    "Trombone 3, brass.trombone.contrabass, contrabass trombone",
    "Horn, brass.alto-horn, tenor horn",
    "Trumpet 1, brass.trumpet.piccolo, piccolo trumpet",
    "Cymbals, metal.cymbal.suspended, suspended cymbal",
    "Baritone Sax, wind.reed.saxophone.baritone, baritone saxophone",
  })
  void a_sound_narrows_a_name(String name, String sound, String instrument) {
    assertEquals(Optional.of(instrument), named(name, sound));
  }

  private static Optional<String> named(String name, String... others) {
    return CATALOGUE.of(part(name, others)).map(Instrument::name);
  }

  private static Part part(String name, String... others) {
    return new Part("P1", name, Arrays.asList(others), List.of());
  }
}

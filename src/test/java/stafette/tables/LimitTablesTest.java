package stafette.tables;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import stafette.limits.Condition;
import stafette.limits.Grade;
import stafette.limits.Instrument;
import stafette.limits.Limit;
import stafette.limits.Technique;
import stafette.words.UnreadableFile;

/** Tables of one's own over the built-in ones, and what is said of mistakes in them. */
class LimitTablesTest {
  private static final String TECHNIQUES = "instrument,technique,act,peak,deviation,source,grade";
  private static final String INSTRUMENTS =
      "instrument,aliases,family,low,high,diatonic,chromatic,clef,level,program,source,grade";

  private final Path directory;

  LimitTablesTest(@TempDir Path directory) {
    this.directory = directory;
  }

  @Test
  void a_row_of_ones_own_replaces_the_built_in_one() throws Exception {
    write("techniques.csv", TECHNIQUES + "\nflute,single tonguing,tongue,9.1,0.5,my section,D\n");
    Technique single = technique(LimitTables.over(directory), "flute", "single tonguing");
    assertEquals(9.1, single.limit().peakPerSecond());
    assertEquals(Limit.DEFAULT_SUSTAINED_SHARE * 9.1, single.limit().sustainedPerSecond(), 1e-9);
    assertEquals("my section", single.source().text());
    assertEquals(
        names(LimitTables.builtIn(), "flute"),
        names(LimitTables.over(directory), "flute"),
        "order is kept");
  }

  @Test
  void what_is_not_replaced_stays() throws Exception {
    write("techniques.csv", TECHNIQUES + "\nflute,single tonguing,tongue,9.1,0.5,my section,D\n");
    assertEquals(
        LimitTables.builtIn().catalogue().find("oboe"),
        LimitTables.over(directory).catalogue().find("oboe"));
    assertEquals(LimitTables.builtIn().weights(), LimitTables.over(directory).weights());
  }

  @Test
  void an_instrument_can_be_added() throws Exception {
    write(
        "instruments.csv",
        INSTRUMENTS + "\nocarina,sopranino ocarina,woodwind,F5,108,7,12,G2,80,75,mine,D\n");
    write(
        "techniques.csv",
        TECHNIQUES + "\nSopranino ocarina,single tonguing,tongue,9,1,common practice,D\n");
    Instrument added =
        LimitTables.over(directory).catalogue().find("Sopranino ocarina 1").orElseThrow();
    assertEquals(77, added.range().orElseThrow().low());
    assertEquals(added.range(), added.comfortable());
    assertEquals(1, added.techniques().size());
    assertEquals(0.95, added.techniques().get(0).factors().get(Condition.SOFT), "by act");
  }

  @Test
  void a_spreadsheets_semicolons_and_decimal_commas_are_read() throws Exception {
    write(
        "techniques.csv",
        "\uFEFF"
            + (TECHNIQUES + "\nflute,single tonguing,tongue,9§1,0§5,mine,D\n,,,,,,\n")
                .replace(',', ';')
                .replace('§', ','));
    assertEquals(
        9.1,
        technique(LimitTables.over(directory), "flute", "single tonguing").limit().peakPerSecond());
  }

  @Test
  void the_most_particular_factor_wins() throws Exception {
    write(
        "factors.csv",
        """
        instrument,technique,condition,factor,source,grade
        *,tongue,soft,0.5,mine,D
        woodwind,tongue,soft,0.6,mine,D
        flute,tongue,soft,0.7,mine,D
        flute,double tonguing,soft,0.8,mine,D
        """);
    LimitTables tables = LimitTables.over(directory);
    assertEquals(0.8, soft(tables, "flute", "double tonguing"));
    assertEquals(0.7, soft(tables, "flute", "single tonguing"));
    assertEquals(0.6, soft(tables, "oboe", "single tonguing"));
    assertEquals(0.5, soft(tables, "tuba", "single tonguing"));
  }

  @Test
  void weights_and_blend_are_laid_over_too() throws Exception {
    write("weights.csv", "name,value\nhandoff,13\noverlap target: Tuba,4\n");
    write("blend.csv", "one,other,points\npiccolo,Flauto,1\nbrass,woodwind,2\n");
    LimitTables tables = LimitTables.over(directory);
    assertEquals(13, tables.weights().handoff());
    assertEquals(LimitTables.builtIn().weights().entry(), tables.weights().entry());
    assertEquals(4, tables.weights().overlapTarget(instrument(tables, "tuba")));
    assertEquals(
        1, tables.weights().blend(instrument(tables, "flute"), instrument(tables, "piccolo")));
    assertEquals(
        Map.of("flute|piccolo", 1, "brass|woodwind", 2).entrySet().stream()
            .filter(pair -> tables.weights().blend().entrySet().contains(pair))
            .count(),
        2);
  }

  static List<Mistake> mistakes() {
    return List.of(
        technique(
            "flute,single tonguing,tongue,fast,1,x,D",
            "techniques.csv, row 2: peak must be a number above 0, found 'fast'"),
        technique(
            "flute,single tonguing,tongue,0,1,x,D",
            "techniques.csv, row 2: peak must be a number above 0, found '0'"),
        technique(
            "flute,single tonguing,tongue,\"8,4\",1,x,D",
            "techniques.csv, row 2: peak must be a number above 0, found '8,4'"),
        technique(
            "flute,single tonguing,tongue,,1,x,D",
            "techniques.csv, row 2: peak is empty; fill it in"),
        technique(
            "flute,single tonguing,tongue,8,-1,x,D",
            "techniques.csv, row 2: deviation must be 0 or above, found '-1'"),
        technique(
            "flute,single tonguing,lips,8,1,x,D",
            "techniques.csv, row 2: act must be one of tongue, bow, wood, pluck, string, key, mallet, found 'lips'"),
        technique(
            "flute,single tonguing,tongue,8,1,,D",
            "techniques.csv, row 2: source is empty; fill it in"),
        technique(
            "flute,single tonguing,tongue,8,1,x,E",
            "techniques.csv, row 2: grade must be A, B, C or D, found 'E'"),
        technique(
            "fluet,single tonguing,tongue,8,1,x,D",
            "techniques.csv, row 2: no instrument is called 'fluet'; use flute"),
        technique(
            "flute,single tonguing,tongue,8,1,x,D\nFlauto,Single Tonguing,tongue,8,1,x,D",
            "techniques.csv, row 3: says again what techniques.csv, row 2 says; keep one of them"),
        technique(
            "flute,single tonguing,tongue,8,1,a,b,D",
            "techniques.csv, row 2: has 8 cells for 7 columns; put quotes round a cell that holds a comma"),
        new Mistake(
            "techniques.csv",
            TECHNIQUES + ",sustained\nflute,single tonguing,tongue,8,1,x,D,9",
            "techniques.csv, row 2: sustained (9) is above peak (8)"),
        new Mistake(
            "techniques.csv",
            TECHNIQUES.replace("peak", "peek"),
            "techniques.csv, row 1: unknown column 'peek'; is it 'peak'?"),
        new Mistake(
            "techniques.csv",
            TECHNIQUES.replace(",grade", ""),
            "techniques.csv, row 1: column 'grade' is missing; add it"),
        new Mistake(
            "techniques.csv",
            TECHNIQUES + ",peak",
            "techniques.csv, row 1: column 'peak' is there twice"),
        new Mistake("techniques.csv", "", "techniques.csv: is empty"),
        new Mistake(
            "techniques.csv",
            TECHNIQUES + "\nflute,\"single",
            "techniques.csv: is no table of comma-separated values; look at its quotes"),
        instrument(
            "flute,,woodwind,C7,C4,0,0,G2,91,74,x,C",
            "instruments.csv, row 2: low (C7) is above high (C4): swap them"),
        instrument(
            "flute,,woodwind,H4,C7,0,0,G2,91,74,x,C",
            "instruments.csv, row 2: low must be a note such as Bb3 or a MIDI number from 0 to 127, found 'H4'"),
        instrument(
            "flute,,wood,C4,C7,0,0,G2,91,74,x,C",
            "instruments.csv, row 2: family must be one of woodwind, brass, strings, harp, plucked, keyboard, percussion, found 'wood'"),
        instrument(
            "flute,,woodwind,C4,C7,0,0.5,G2,91,74,x,C",
            "instruments.csv, row 2: chromatic must be a whole number from -48 to 48, found '0.5'"),
        instrument(
            "flute,,woodwind,C4,C7,0,0,treble,91,74,x,C",
            "instruments.csv, row 2: clef must be a sign and a line such as G2, or percussion, found 'treble'"),
        instrument(
            "flute,,woodwind,C4,C7,0,0,G2,91,200,x,C",
            "instruments.csv, row 2: program must be a whole number from 1 to 128, found '200'"),
        instrument(
            "ocarina,,woodwind,C4,C7,0,0,G2,91,80,x,C",
            "instruments.csv, row 2: has no technique; add a row for it to techniques.csv"),
        instrument(
            "piccolo,Flauto,woodwind,C5,C8,7,12,G2,91,73,x,C",
            "instruments.csv, row 2: 'flauto' is already a name of flute"),
        new Mistake(
            "instruments.csv",
            INSTRUMENTS
                + ",comfortable low,comfortable high\nflute,,woodwind,C4,C7,0,0,G2,91,74,x,C,B3,C7",
            "instruments.csv, row 2: the comfortable range must lie within low and high"),
        new Mistake(
            "instruments.csv",
            INSTRUMENTS + ",breath,catch,full\nflute,,woodwind,C4,C7,0,0,G2,91,74,x,C,12,,1",
            "instruments.csv, row 2: catch is empty; fill it in"),
        new Mistake(
            "factors.csv",
            "instrument,technique,condition,factor,source,grade\nflute,breath,windy,2,x,D",
            "factors.csv, row 2: condition must be one of low register, high register, soft, loud, step, leap, found 'windy'"),
        new Mistake(
            "factors.csv",
            "instrument,technique,condition,factor,source,grade\nflute,whistling,soft,2,x,D",
            "factors.csv, row 2: no technique is called 'whistling'; name one of techniques.csv, an act (tongue, bow, wood, pluck, string, key, mallet), breath or *"),
        new Mistake(
            "weights.csv",
            "name,value\nhandof,3",
            "weights.csv, row 2: no weight is called 'handof'; use handoff"),
        new Mistake(
            "weights.csv",
            "name,value\nknee,1",
            "weights.csv, row 2: value must be 0 or above and below 1, found '1'"),
        new Mistake(
            "blend.csv",
            "one,other,points\nflute,obo,3",
            "blend.csv, row 2: no instrument is called 'obo'; use oboe"),
        new Mistake(
            "blend.csv",
            "one,other,points\nflute\u0007,oboe,3",
            "blend.csv, row 2: holds the character U+0007, which no score can hold; take it out"),
        new Mistake(
            "technique.csv",
            "x",
            "technique.csv: is none of the tables; rename it to techniques.csv"));
  }

  @ParameterizedTest
  @MethodSource("mistakes")
  void a_mistake_is_told_with_file_and_row(Mistake mistake) throws IOException {
    write(mistake.file, mistake.text);
    List<String> problems = LimitTables.problems(directory);
    assertTrue(
        problems.contains(mistake.message), () -> mistake.message + " is not in " + problems);
  }

  @Test
  void all_mistakes_are_told_at_once() throws Exception {
    write(
        "techniques.csv",
        TECHNIQUES
            + "\nflute,single tonguing,tongue,fast,1,x,D\noboe,single tonguing,lips,8,1,,D\n");
    write("weights.csv", "name,value\nplayer,many\n");
    assertEquals(
        List.of(
            "techniques.csv, row 2: peak must be a number above 0, found 'fast'",
            "techniques.csv, row 3: act must be one of tongue, bow, wood, pluck, string, key, mallet,"
                + " found 'lips'",
            "techniques.csv, row 3: source is empty; fill it in",
            "weights.csv, row 2: value must be a whole number from 0 to 1000000, found 'many'"),
        assertThrows(UnreadableFile.class, () -> LimitTables.over(directory)).problems());
  }

  @Test
  void text_that_is_not_in_utf_8_is_refused() throws Exception {
    Files.write(
        directory.resolve("blend.csv"),
        "one,other,points\nFlöte,oboe,1".getBytes(StandardCharsets.ISO_8859_1));
    assertEquals(
        List.of("blend.csv: is not in UTF-8; save it as UTF-8"),
        LimitTables.problems(directory).subList(0, 1));
  }

  @Test
  void a_directory_that_is_not_there_is_told() {
    Path nowhere = directory.resolve("nowhere");
    assertEquals(List.of(nowhere + ": there is no such directory"), LimitTables.problems(nowhere));
  }

  @Test
  void the_built_in_tables_are_sound_laid_over_themselves() {
    assertEquals(List.of(), LimitTables.problems(Path.of("limits")));
  }

  @Test
  void a_grade_is_kept() {
    assertEquals(
        Grade.C,
        technique(LimitTables.builtIn(), "upright piano", "alternate hands").source().grade());
  }

  private record Mistake(String file, String text, String message) {
    @Override
    public String toString() {
      return message;
    }
  }

  private static Mistake technique(String row, String message) {
    return new Mistake("techniques.csv", TECHNIQUES + "\n" + row, message);
  }

  private static Mistake instrument(String row, String message) {
    return new Mistake("instruments.csv", INSTRUMENTS + "\n" + row, message);
  }

  private void write(String file, String text) throws IOException {
    Files.writeString(directory.resolve(file), text);
  }

  private static Instrument instrument(LimitTables tables, String name) {
    return tables.catalogue().find(name).orElseThrow();
  }

  private static List<String> names(LimitTables tables, String instrument) {
    return instrument(tables, instrument).techniques().stream().map(Technique::name).toList();
  }

  private static Technique technique(LimitTables tables, String instrument, String name) {
    return instrument(tables, instrument).techniques().stream()
        .filter(technique -> technique.name().equals(name))
        .findFirst()
        .orElseThrow();
  }

  private static double soft(LimitTables tables, String instrument, String technique) {
    return technique(tables, instrument, technique).factors().getOrDefault(Condition.SOFT, 1.0);
  }
}

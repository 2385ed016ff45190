package stafette.musicxml.write;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static stafette.musicxml.read.Xml.ATTRIBUTES;
import static stafette.musicxml.read.Xml.note;
import static stafette.musicxml.read.Xml.rest;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import stafette.musicxml.read.Xml;

/** Each rule finds a bar that breaks it, and that alone, and passes one that doesn't. */
class WrittenRulesTest {
  private static final String WHOLE = note("C", 4, 48, "");
  private static final String QUARTER = note("C", 4, 12, "");
  private static final String EIGHTH = note("C", 4, 6, "");

  /** The rules that bars break in a score that was empty. */
  private static Set<String> broken(String... bars) {
    String[] empty =
        Stream.of(bars)
            .map(bar -> bar.contains("<attributes>") ? ATTRIBUTES + rest(48) : rest(48))
            .toArray(String[]::new);
    return brokenIn(Xml.score(empty), Xml.score(bars));
  }

  private static Set<String> brokenIn(String source, String written) {
    return WrittenRules.violations(source, written).stream()
        .map(WrittenRule.Violation::rule)
        .collect(Collectors.toCollection(TreeSet::new));
  }

  private static void breaks(String rule, String... bars) {
    assertEquals(Set.of(rule), broken(bars));
  }

  private static void passes(String... bars) {
    assertEquals(Set.of(), broken(bars));
  }

  private static String metre(String beats, int beatType) {
    return ATTRIBUTES
        .replace("<beats>4<", "<beats>" + beats + "<")
        .replace("<beat-type>4<", "<beat-type>" + beatType + "<");
  }

  private static String key(int fifths) {
    return ATTRIBUTES.replace("<time>", "<key><fifths>" + fifths + "</fifths></key><time>");
  }

  private static String direction(String type) {
    return "<direction><direction-type>" + type + "</direction-type></direction>";
  }

  private static String wedge(String type) {
    return direction("<wedge type=\"" + type + "\"/>");
  }

  private static String sign(String kind, String type) {
    return "<notations><" + kind + " type=\"" + type + "\"/></notations>";
  }

  private static String beam(String state) {
    return "<beam number=\"1\">" + state + "</beam>";
  }

  private static String altered(String step, int alter, int duration, String more) {
    return note(step, 4, duration, more).replace("</step>", "</step><alter>" + alter + "</alter>");
  }

  private static String accidental(String text) {
    return "<accidental>" + text + "</accidental>";
  }

  @Test
  void a_voice_that_ends_early_or_late_is_found() {
    String rule = "a voice fills its bar";
    breaks(rule, ATTRIBUTES + note("C", 4, 36, ""));
    breaks(rule, ATTRIBUTES + WHOLE + QUARTER);
    String second = note("C", 4, 24, "<voice>2</voice>");
    String back = "<backup><duration>48</duration></backup>";
    breaks(rule, ATTRIBUTES + WHOLE + back + second);
    passes(ATTRIBUTES + WHOLE + back + "<forward><duration>24</duration></forward>" + second);
  }

  @Test
  void a_voice_of_a_pickup_is_as_long_as_the_others() {
    String pickup = "<measure number=\"0\" implicit=\"yes\">" + ATTRIBUTES;
    String page = Xml.score(pickup + rest(12) + "</measure>", WHOLE);
    assertEquals(Set.of(), brokenIn(page, Xml.score(pickup + QUARTER + "</measure>", WHOLE)));
    assertEquals(
        Set.of("a voice fills its bar"),
        brokenIn(page, Xml.score(pickup + EIGHTH + "</measure>", WHOLE)));
  }

  @Test
  void a_note_that_looks_longer_than_it_lasts_is_found() {
    String third =
        "<time-modification><actual-notes>3</actual-notes><normal-notes>2</normal-notes>";
    String triplet = third + "</time-modification>";
    String rule = "a note lasts as long as it looks";
    breaks(rule, ATTRIBUTES + note("C", 4, 48, "<type>half</type>"));
    breaks(rule, ATTRIBUTES + note("C", 4, 36, "<type>half</type>") + QUARTER);
    breaks(rule, ATTRIBUTES + note("C", 4, 16, "<type>half</type>") + note("C", 4, 32, ""));
    passes(ATTRIBUTES + note("C", 4, 36, "<type>half</type><dot/>") + QUARTER);
    passes(ATTRIBUTES + note("C", 4, 16, "<type>half</type>" + triplet) + note("C", 4, 32, ""));
  }

  @Test
  void a_chord_with_a_shorter_note_is_found() {
    String lower = note("A", 3, 48, "").replace("<note>", "<note><chord/>");
    breaks(
        "the notes of a chord last equally long", ATTRIBUTES + WHOLE + lower.replace("48", "24"));
    passes(ATTRIBUTES + WHOLE + lower);
  }

  @Test
  void a_note_above_the_range_of_midi_is_found() {
    breaks("a note is within the range of MIDI", ATTRIBUTES + note("A", 9, 48, ""));
    passes(ATTRIBUTES + note("G", 9, 48, ""));
  }

  @Test
  void two_things_at_once_in_a_voice_are_found() {
    String half = note("C", 4, 24, "");
    String back = "<backup><duration>12</duration></backup>";
    breaks("a voice has one thing at a time", ATTRIBUTES + half + back + half);
    passes(ATTRIBUTES + half + half);
  }

  @Test
  void a_hairpin_without_its_other_end_is_found() {
    String rule = "a hairpin has its end";
    breaks(rule, ATTRIBUTES + wedge("crescendo") + WHOLE, WHOLE);
    breaks(rule, ATTRIBUTES + WHOLE + wedge("stop"));
    breaks(rule, ATTRIBUTES + wedge("crescendo") + wedge("stop") + WHOLE);
    String elsewhere = wedge("stop").replace("</direction>", "<staff>2</staff></direction>");
    breaks(rule, ATTRIBUTES + wedge("crescendo") + WHOLE + elsewhere);
    passes(ATTRIBUTES + wedge("crescendo") + WHOLE, WHOLE + wedge("stop"));
    passes(
        ATTRIBUTES + wedge("crescendo") + WHOLE + wedge("stop") + wedge("diminuendo"),
        WHOLE + wedge("stop"));
  }

  @Test
  void a_hairpin_that_was_on_the_page_and_is_nowhere_now_is_found() {
    String page = Xml.score(ATTRIBUTES + wedge("crescendo") + WHOLE + wedge("stop"));
    assertEquals(
        Set.of("no hairpin of the page is lost"), brokenIn(page, Xml.score(ATTRIBUTES + WHOLE)));
    assertEquals(Set.of(), brokenIn(page, page));
  }

  @Test
  void notes_that_are_taken_from_a_hairpin_without_it_are_found() {
    String line = ATTRIBUTES + wedge("crescendo") + QUARTER.repeat(4) + wedge("stop");
    String page = TwoParts.of(List.of(line), List.of(ATTRIBUTES + rest(48)));
    String bare = TwoParts.of(List.of(line), List.of(ATTRIBUTES + QUARTER.repeat(4)));
    assertEquals(Set.of(WrittenRules.HAIRPIN_GOES_ALONG), brokenIn(page, bare));
    assertEquals(Set.of(), brokenIn(page, TwoParts.of(List.of(line), List.of(line))));
    assertEquals(Set.of(), brokenIn(bare, bare));
  }

  @Test
  void a_slur_without_its_other_end_is_found() {
    String rule = "a slur has its end";
    String start = note("C", 4, 24, sign("slur", "start"));
    String stop = note("D", 4, 24, sign("slur", "stop"));
    breaks(rule, ATTRIBUTES + start + note("D", 4, 24, ""));
    breaks(rule, ATTRIBUTES + stop + start, stop + stop);
    passes(ATTRIBUTES + start + stop);
    passes(ATTRIBUTES + note("C", 4, 24, "") + start, stop + note("C", 4, 24, ""));
  }

  @Test
  void a_tuplet_without_its_other_end_is_found() {
    String start = note("C", 4, 24, sign("tuplet", "start"));
    String stop = note("D", 4, 24, sign("tuplet", "stop"));
    breaks("a tuplet has its end", ATTRIBUTES + start + note("D", 4, 24, ""));
    breaks("a tuplet has its end", ATTRIBUTES + note("D", 4, 24, "") + stop);
    passes(ATTRIBUTES + start + stop);
  }

  @Test
  void a_tie_to_another_pitch_or_over_a_rest_is_found() {
    String rule = "a tie leads to the same pitch";
    String start = "<tie type=\"start\"/>" + sign("tied", "start");
    String stop = "<tie type=\"stop\"/>" + sign("tied", "stop");
    breaks(rule, ATTRIBUTES + note("C", 4, 24, start) + note("D", 4, 24, stop));
    breaks(rule, ATTRIBUTES + note("C", 4, 12, start) + rest(12) + note("C", 4, 24, stop));
    breaks(rule, ATTRIBUTES + note("C", 4, 48, start), WHOLE);
    passes(ATTRIBUTES + note("C", 4, 24, start) + note("C", 4, 24, stop));
    passes(ATTRIBUTES + note("C", 4, 48, start), note("C", 4, 48, stop));
  }

  @Test
  void a_tie_that_is_heard_and_not_seen_is_found() {
    String start = "<tie type=\"start\"/>" + sign("tied", "start");
    breaks(
        "a tie is seen and heard",
        ATTRIBUTES + note("C", 4, 24, start) + note("C", 4, 24, "<tie type=\"stop\"/>"));
  }

  @Test
  void beams_without_beginning_or_end_are_found() {
    String rule = "beams begin, go on and end";
    String start = note("C", 4, 6, beam("begin"));
    String on = note("C", 4, 6, beam("continue"));
    String end = note("C", 4, 6, beam("end"));
    String more = note("C", 4, 36, "");
    breaks(rule, ATTRIBUTES + start + on + more);
    breaks(rule, ATTRIBUTES + EIGHTH + end + more);
    breaks(rule, ATTRIBUTES + start + start + on + end + note("C", 4, 24, ""));
    breaks(rule, ATTRIBUTES + start + EIGHTH + on + end + note("C", 4, 24, ""));
    passes(ATTRIBUTES + start + on + on + end + note("C", 4, 24, ""));
  }

  @Test
  void a_beam_over_a_long_rest_is_found() {
    String start = note("C", 4, 2, beam("begin"));
    String end = note("C", 4, 2, beam("end"));
    String more = note("C", 4, 36, "");
    breaks("a beam bears no rest longer than its notes", ATTRIBUTES + start + rest(8) + end + more);
    passes(ATTRIBUTES + start + rest(4) + end + rest(4) + more);
  }

  @Test
  void a_beam_over_the_border_of_a_beat_is_found() {
    String rule = WrittenRules.BEAM_KEEPS_TO_GROUP;
    String start = note("C", 4, 6, beam("begin"));
    String on = note("C", 4, 6, beam("continue"));
    String end = note("C", 4, 6, beam("end"));
    String sixteenths =
        note("C", 4, 3, beam("begin"))
            + note("C", 4, 3, beam("continue")).repeat(6)
            + note("C", 4, 3, beam("end"));
    breaks(rule, ATTRIBUTES + QUARTER + start + on + on + end + QUARTER);
    breaks(rule, ATTRIBUTES + sixteenths + note("C", 4, 24, ""));
    passes(ATTRIBUTES + start + on + on + end + note("C", 4, 24, ""));
    breaks(rule, metre("6", 8) + start + on + on + end + EIGHTH + EIGHTH);
    passes(metre("6", 8) + start + on + end + start + on + end);
    passes(metre("3", 4) + start + on.repeat(4) + end);
    breaks(rule, metre("3+2", 8) + start + on + on + end + EIGHTH);
    passes(metre("3+2", 8) + start + on + end + start + end);
  }

  @Test
  void a_tuplet_over_the_border_of_a_beat_keeps_its_beam() {
    String start = note("C", 4, 4, beam("begin") + sign("tuplet", "start"));
    String on = note("C", 4, 4, beam("continue"));
    String end = note("C", 4, 4, beam("end") + sign("tuplet", "stop"));
    passes(metre("6", 8) + QUARTER + start + on + end + QUARTER);
    breaks(
        WrittenRules.BEAM_KEEPS_TO_GROUP,
        metre("6", 8)
            + EIGHTH
            + note("C", 4, 6, beam("begin"))
            + start.replace("begin", "continue")
            + on
            + end
            + QUARTER);
  }

  @Test
  void where_a_metre_leaves_its_groups_open_the_page_tells() {
    String start = note("C", 4, 6, beam("begin"));
    String on = note("C", 4, 6, beam("continue"));
    String end = note("C", 4, 6, beam("end"));
    String threeAndFour = metre("7", 8) + start + on + end + start + on + on + end;
    String fourAndThree = metre("7", 8) + start + on + on + end + start + on + end;
    String page = TwoParts.of(List.of(threeAndFour), List.of(metre("7", 8) + rest(42)));
    assertEquals(
        Set.of(WrittenRules.BEAM_KEEPS_TO_GROUP),
        brokenIn(page, TwoParts.of(List.of(threeAndFour), List.of(fourAndThree))));
    assertEquals(
        Set.of(), brokenIn(page, TwoParts.of(List.of(threeAndFour), List.of(threeAndFour))));
    passes(fourAndThree);
  }

  @Test
  void an_accidental_that_is_missing_is_found() {
    String rule = "no accidental is missing or wrong";
    String sharp = altered("F", 1, 24, accidental("sharp"));
    String bare = altered("F", 1, 24, "");
    String plain = note("F", 4, 24, "");
    breaks(rule, ATTRIBUTES + bare + plain.replace("<step>F", "<step>G"));
    breaks(rule, ATTRIBUTES + sharp + plain);
    breaks(rule, ATTRIBUTES + sharp + bare, bare + bare);
    breaks(rule, key(1) + bare + plain);
    breaks(rule, key(-1) + note("B", 4, 48, ""));
    breaks(rule, ATTRIBUTES + sharp + bare.replace("<octave>4", "<octave>5"));
    breaks(rule, ATTRIBUTES + altered("F", 1, 48, accidental("flat")));
    passes(ATTRIBUTES + sharp + bare, plain + plain);
    passes(key(1) + bare + bare);
    passes(key(-3) + altered("A", -1, 24, "") + note("A", 4, 24, accidental("natural")));
  }

  @Test
  void an_accidental_that_says_what_is_in_force_needs_a_reason() {
    String rule = WrittenRules.NO_IDLE_ACCIDENTAL;
    String sharp = altered("F", 1, 24, accidental("sharp"));
    String natural = note("F", 4, 24, accidental("natural"));
    breaks(rule, ATTRIBUTES + sharp + sharp);
    breaks(rule, ATTRIBUTES + natural + natural);
    passes(ATTRIBUTES + sharp + natural, natural + note("F", 4, 24, ""));
    passes(ATTRIBUTES + sharp + natural.replace("<octave>4", "<octave>5"));
    passes(
        ATTRIBUTES
            + natural.replace("<accidental>", "<accidental cautionary=\"yes\">")
            + note("F", 4, 24, ""));
  }

  @Test
  void a_note_tied_over_the_bar_line_needs_no_accidental_and_the_next_one_does() {
    String start = "<tie type=\"start\"/>" + sign("tied", "start");
    String stop = "<tie type=\"stop\"/>" + sign("tied", "stop");
    String sharp = altered("F", 1, 48, start + accidental("sharp"));
    passes(ATTRIBUTES + sharp, altered("F", 1, 48, stop));
    passes(
        ATTRIBUTES + sharp, altered("F", 1, 24, stop) + altered("F", 1, 24, accidental("sharp")));
    breaks(
        "no accidental is missing or wrong",
        ATTRIBUTES + sharp,
        altered("F", 1, 24, stop) + altered("F", 1, 24, ""));
  }

  @Test
  void an_empty_bar_of_several_rests_is_found() {
    breaks(WrittenRules.EMPTY_BAR_IS_ONE_REST, ATTRIBUTES + rest(36) + rest(12));
    passes(ATTRIBUTES + rest(48));
    passes(metre("6", 8) + rest(36));
    passes(metre("3", 4) + rest(36).replace("<rest/>", "<rest measure=\"yes\"/>"));
  }

  @Test
  void a_half_rest_in_the_middle_is_found() {
    String rule = "a half rest stands where a half of the bar begins";
    breaks(rule, ATTRIBUTES + QUARTER + rest(24) + QUARTER);
    breaks(rule, metre("3", 4) + rest(24) + QUARTER);
    passes(ATTRIBUTES + rest(24) + QUARTER + QUARTER);
    passes(ATTRIBUTES + QUARTER + QUARTER + rest(24));
  }

  @Test
  void rests_where_one_would_do_are_found() {
    String rule = "a silent beat is one rest";
    breaks(rule, ATTRIBUTES + rest(6) + rest(6) + note("C", 4, 36, ""));
    breaks(rule, ATTRIBUTES + note("C", 4, 24, "") + rest(12) + rest(12));
    breaks(rule, metre("6", 8) + rest(9) + rest(9) + note("C", 4, 18, ""));
    breaks(rule, ATTRIBUTES + rest(3).repeat(4) + note("C", 4, 36, ""));
    breaks(rule, ATTRIBUTES + rest(4).repeat(3) + note("C", 4, 36, ""));
    passes(ATTRIBUTES + QUARTER + rest(12) + rest(12) + QUARTER);
    passes(metre("6", 8) + rest(12) + rest(6) + note("C", 4, 18, ""));
    passes(metre("3", 4) + rest(12) + rest(12) + QUARTER);
    passes(ATTRIBUTES + EIGHTH + rest(6) + rest(6) + note("C", 4, 30, ""));
  }

  @Test
  void a_text_that_stands_twice_is_found() {
    String solo = direction("<words>solo</words>");
    breaks("no text stands twice at a place", ATTRIBUTES + solo + solo + WHOLE);
    passes(ATTRIBUTES + solo + WHOLE, solo + WHOLE);
    passes(ATTRIBUTES + solo + direction("<words>tutti</words>") + WHOLE);
  }

  @Test
  void two_dynamics_at_one_place_are_found() {
    String loud = direction("<dynamics><f/></dynamics>");
    String soft = direction("<dynamics><p/></dynamics>");
    breaks("no two dynamics stand at a place of a staff", ATTRIBUTES + loud + soft + WHOLE);
    passes(ATTRIBUTES + loud + note("C", 4, 24, "") + soft + note("C", 4, 24, ""));
  }

  @Test
  void what_was_wrong_in_the_same_bar_before_is_no_news() {
    String before = ATTRIBUTES + note("C", 4, 60, "");
    assertEquals(Set.of(), brokenIn(Xml.score(before), Xml.score(before)));
    assertEquals(
        Set.of("a voice fills its bar"),
        brokenIn(Xml.score(before), Xml.score(ATTRIBUTES + note("C", 4, 24, ""))));
  }

  @Test
  void a_sentence_says_part_bar_and_what_is_wrong() {
    assertEquals(
        List.of("P1, bar #2: voice 1 lasts 3 quarters instead of 4 (a voice fills its bar)"),
        WrittenRules.broken(
            Xml.score(ATTRIBUTES + WHOLE, WHOLE),
            Xml.score(ATTRIBUTES + WHOLE, note("C", 4, 36, ""))));
  }
}

package stafette.picture.sheet;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import stafette.Harps;
import stafette.Invented;
import stafette.check.Judge;
import stafette.check.TempoWindow;
import stafette.limits.Instrument;
import stafette.picture.ink.Box;
import stafette.picture.ink.Drawing;
import stafette.picture.ink.Face;
import stafette.picture.ink.Mark;
import stafette.picture.ink.Paper;
import stafette.picture.ink.PdfInk;
import stafette.picture.ribbon.InventedRelays;
import stafette.picture.ribbon.MixedRelays;
import stafette.picture.ribbon.TimelineTest;
import stafette.plan.Brief;
import stafette.plan.Handoff;
import stafette.plan.Hocket;
import stafette.plan.Plan;
import stafette.plan.Player;
import stafette.plan.Segment;
import stafette.plan.SourceTreatment;
import stafette.plan.WrittenAs;
import stafette.score.Line;
import stafette.score.Pitch;
import stafette.score.Step;

/** The sheet for the rehearsal. */
class SheetTest {
  private static final Plan PLAN = InventedRelays.rotation(12, 3, 2);

  @Test
  void the_page_of_each_player_names_its_handoffs_with_bar_and_beat() throws IOException {
    for (Plan plan : List.of(PLAN, InventedRelays.hocket(Hocket.GROUP), InventedRelays.doubled())) {
      List<String> pages = text(sheet(plan, Paper.A4));
      for (Handoff handoff : plan.handoffs()) {
        for (Segment enters : handoff.enters().segments()) {
          assertHas(of(plan, enters, pages), "from " + plan.names(handoff.leaves()));
          assertHas(of(plan, enters, pages), place(plan, enters, true));
        }
        for (Segment leaves : handoff.leaves().segments()) {
          assertHas(of(plan, leaves, pages), "to " + plan.names(handoff.enters()));
          assertHas(of(plan, leaves, pages), place(plan, leaves, false));
        }
      }
    }
  }

  @Test
  void the_first_page_has_all_handoffs_tempi_odds_tightest_spots_and_the_caution()
      throws IOException {
    String first = text(sheet(PLAN, Paper.LETTER)).get(0);
    for (String words :
        List.of(
            "Conductor",
            "Piano, staff 1",
            "The plan holds",
            "Tightest spots",
            "the hardest part")) {
      assertHas(first, words);
    }
    assertHas(first, "can injure");
    assertHas(first, "Ask the players");
    assertHas(first, "medical advice");
    for (int i = 0; i < PLAN.handoffs().size(); i++) {
      Handoff handoff = PLAN.handoffs().get(i);
      assertHas(
          first,
          (i + 1)
              + " "
              + PLAN.names(handoff.enters())
              + " "
              + PLAN.line().placeOf(handoff.enters().first()).at()
              + " "
              + PLAN.names(handoff.leaves()));
    }
  }

  @Test
  void the_strip_tells_technique_rate_share_and_pitch() throws IOException {
    String page = of(PLAN, PLAN.segments().get(0), text(sheet(PLAN, Paper.A4)));
    for (String words :
        List.of("tonguing", "16ths at quarter = 138", "rate 97 %", "as they sound")) {
      assertHas(page, words);
    }
  }

  @Test
  void a_hocket_says_with_whom_in_which_units_and_who_begins() throws IOException {
    Plan plan = InventedRelays.hocket(Hocket.GROUP);
    List<String> pages = text(sheet(plan, Paper.A4));
    assertHas(of(plan, plan.segments().get(1), pages), "group by group in turn");
    assertHas(of(plan, plan.segments().get(1), pages), "you begin");
    assertHas(of(plan, plan.segments().get(2), pages), "you follow");
  }

  @Test
  void a_harp_is_told_how_to_set_its_pedals_and_later_what_moves() throws IOException {
    Line line = Invented.line(48, 3, 92, i -> new Pitch(Step.C, 0, 5));
    List<Player> harps =
        List.of(Harps.player("Harp 1", Optional.empty()), Harps.player("Harp 2", Optional.empty()));
    Plan plan =
        new Plan(
            new Brief(line, harps, Invented.rules()),
            List.of(
                new Segment(0, Harps.SINGLE, 0, 2),
                new Segment(1, Harps.SINGLE, 2, 8),
                new Segment(0, Harps.TWINS, 8, 16),
                new Segment(1, Harps.SINGLE, 16, 47)));
    List<String> pages = text(sheet(plan, Paper.A4));
    String first = of(plan, plan.segments().get(0), pages);
    assertHas(first, "pedals D C B | E F G A");
    assertHas(first, "pedals B#");
    String second = of(plan, plan.segments().get(1), pages);
    assertEquals(2, second.split("pedals", -1).length, second);
  }

  @Test
  void the_repeated_notes_of_a_harp_stand_on_both_strings_in_turn() {
    Line line = Invented.line(16, 4, 60, i -> new Pitch(Step.C, 0, 5));
    Plan plan =
        new Plan(
            new Brief(line, List.of(Harps.player("Harp", Optional.empty())), Invented.rules()),
            List.of(new Segment(0, Harps.TWINS, 0, 15)));
    List<Double> heights =
        TimelineTest.leaves(sheet(plan, Paper.A4).get(1).marks()).stream()
            .filter(Mark.Lettering.class::isInstance)
            .map(Mark.Lettering.class::cast)
            .filter(sign -> sign.text().equals(Character.toString(0x1D158)))
            .map(Mark.Lettering::y)
            .toList();
    assertEquals(16, heights.size());
    for (int i = 1; i < heights.size(); i++) {
      assertNotEquals(heights.get(i - 1), heights.get(i), 0.5);
    }
  }

  @Test
  void a_plan_that_does_not_hold_says_so_on_the_first_page() throws IOException {
    Plan plan = InventedRelays.rotation(24, 2, 12);
    assertFalse(Judge.judge(plan).holds());
    assertHas(text(sheet(plan, Paper.A4)).get(0), "This plan does not hold");
  }

  /** A relay whose second player is 10 decibels louder than the others, notes shared. */
  private static Plan toMend() {
    Plan even = InventedRelays.rotation(12, 3, 2);
    Instrument pipe = Invented.instrument("trumpet in B-flat");
    Instrument loud = pipe.with(100, Optional.empty(), pipe.techniques());
    List<Player> players = new ArrayList<>(even.brief().players());
    players.set(1, Invented.player("Trumpet 1", loud, 12, 9, 40, 8));
    List<Segment> wide =
        even.segments().stream()
            .map(s -> new Segment(s.player(), 0, Math.max(0, s.first() - 3), s.last()))
            .toList();
    return new Plan(even.brief().with(players), wide);
  }

  @Test
  void what_there_is_to_see_to_at_a_join_stands_beside_it() throws IOException {
    String first = text(sheet(toMend(), Paper.A4)).get(0).replaceAll("\\s+", " ");
    assertHas(first, "trumpet in B-flat p against");
    assertHas(first, "pipe mf");
    assertHas(first, "may flam (2 notes of one pitch)");
    assertFalse(text(sheet(PLAN, Paper.A4)).get(0).contains("against"));
  }

  @Test
  void nothing_reaches_beyond_the_margins_and_no_words_touch_on_either_paper() {
    for (Paper paper : List.of(Paper.A4, Paper.LETTER)) {
      for (Plan plan : plans()) {
        for (Drawing page : sheet(plan, paper)) {
          double edge = Paper.MARGIN - 3;
          Box room = new Box(edge, edge, page.width() - edge, page.height() - edge);
          page.marks().forEach(mark -> assertTrue(room.holds(mark.bounds()), () -> mark + ""));
          assertApart(words(page.marks()));
        }
      }
    }
  }

  @Test
  void pages_are_upright_numbered_titled_and_dated() throws IOException {
    List<Drawing> letter = sheet(PLAN, Paper.LETTER);
    assertEquals(612, letter.get(0).width());
    assertEquals(792, letter.get(0).height());
    List<String> pages = text(letter);
    for (int i = 0; i < pages.size(); i++) {
      assertHas(pages.get(i), "page " + (i + 1) + " of " + pages.size());
      assertHas(pages.get(i), "A Title");
      assertHas(pages.get(i), "25 November 2026");
    }
    assertThrows(IllegalArgumentException.class, () -> sheet(PLAN, Paper.WIDE));
  }

  @Test
  void a_long_plan_for_eight_takes_pages_for_everybody() throws IOException {
    Plan plan = InventedRelays.rotation(64, 8, 2);
    List<String> pages = text(sheet(plan, Paper.A4));
    for (int player = 0; player < 8; player++) {
      String name = "Player " + (player + 1);
      assertTrue(pages.stream().anyMatch(page -> page.startsWith(name + " ")), name);
    }
    assertHas(String.join("\n", pages), "Conductor, continued");
  }

  @Test
  void fonts_are_embedded_and_nothing_is_a_bitmap() throws IOException {
    try (PDDocument pdf =
        Loader.loadPDF(PdfInk.pdf(sheet(PLAN, Paper.A4), "title", "Stafette 1"))) {
      for (PDPage page : pdf.getPages()) {
        assertFalse(page.getResources().getXObjectNames().iterator().hasNext());
        for (COSName name : page.getResources().getFontNames()) {
          assertTrue(page.getResources().getFont(name).isEmbedded(), name.getName());
        }
      }
    }
  }

  @Test
  void the_same_plan_and_date_give_the_same_bytes() {
    assertArrayEquals(
        PdfInk.pdf(sheet(PLAN, Paper.A4), "t", "Stafette 1"),
        PdfInk.pdf(sheet(PLAN, Paper.A4), "t", "Stafette 1"));
  }

  private static List<Plan> plans() {
    return List.of(
        PLAN,
        InventedRelays.rotation(2, 1, 2),
        InventedRelays.hocket(Hocket.STROKE),
        InventedRelays.doubled(),
        toMend(),
        InventedRelays.rotation(40, 8, 1),
        MixedRelays.any(1),
        MixedRelays.any(4));
  }

  private static List<Drawing> sheet(Plan plan, Paper paper) {
    return Sheet.of(
        new SheetContent(
            plan,
            WrittenAs.plain(SourceTreatment.KEEP),
            Judge.judge(plan),
            TempoWindow.of(plan),
            Optional.of("A Title"),
            LocalDate.of(2026, 11, 25),
            SheetLanguage.ENGLISH),
        paper);
  }

  private static List<String> text(List<Drawing> pages) throws IOException {
    List<String> texts = new ArrayList<>();
    try (PDDocument pdf = Loader.loadPDF(PdfInk.pdf(pages, "title", "Stafette 1"))) {
      for (int i = 1; i <= pdf.getNumberOfPages(); i++) {
        PDFTextStripper stripper = new PDFTextStripper();
        stripper.setSortByPosition(true);
        stripper.setStartPage(i);
        stripper.setEndPage(i);
        texts.add(stripper.getText(pdf).replaceAll("\\s+", " ").strip());
      }
    }
    return texts;
  }

  /** All pages of one player. */
  private static String of(Plan plan, Segment segment, List<String> pages) {
    String name = plan.player(segment).name();
    return pages.stream()
        .filter(page -> page.startsWith(name + " ") || page.startsWith(name + ","))
        .collect(Collectors.joining("\n"));
  }

  private static String place(Plan plan, Segment segment, boolean entry) {
    var played = plan.played(segment);
    String at = played.line().placeOf(entry ? played.first() : played.last()).at().toString();
    return at.replaceFirst(" of beat .*", " of");
  }

  private static void assertHas(String text, String words) {
    assertTrue(text.contains(words), words + " in " + text);
  }

  private static List<Mark.Lettering> words(List<Mark> marks) {
    List<Mark.Lettering> words = new ArrayList<>();
    for (Mark mark : marks) {
      if (mark instanceof Mark.MarkGroup group) {
        words.addAll(words(group.marks()));
      } else if (mark instanceof Mark.Lettering word && word.face() != Face.MUSIC) {
        words.add(word);
      }
    }
    return words;
  }

  private static void assertApart(List<Mark.Lettering> words) {
    for (int i = 0; i < words.size(); i++) {
      for (int j = i + 1; j < words.size(); j++) {
        Mark.Lettering one = words.get(i);
        Mark.Lettering other = words.get(j);
        assertFalse(one.bounds().overlaps(other.bounds()), () -> one + " and " + other);
      }
    }
  }
}

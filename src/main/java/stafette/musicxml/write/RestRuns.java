package stafette.musicxml.write;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.audiveris.proxymusic.Note;
import stafette.musicxml.make.Fragments;
import stafette.musicxml.make.NoteMaker;
import stafette.musicxml.text.Origin;
import stafette.musicxml.text.Origin.ElementText;
import stafette.musicxml.text.Origin.MeasureText;
import stafette.musicxml.text.Origin.NoteText;
import stafette.musicxml.text.TextStyle;
import stafette.notation.BarItem;
import stafette.notation.VoiceLayout;
import stafette.time.Bar;
import stafette.time.Position;
import stafette.time.Rational;
import stafette.time.Span;

/**
 * Draws together the rests of a voice that stand side by side where notes sounded before: a bar of
 * sixteenth rests becomes one rest. Tuplets of which a note stays keep their rests.
 */
final class RestRuns {
  private static final Pattern TUPLET_START =
      Pattern.compile("<tuplet\\s[^>]*type\\s*=\\s*[\"']start");
  private static final Pattern TUPLET_STOP =
      Pattern.compile("<tuplet\\s[^>]*type\\s*=\\s*[\"']stop");

  private final Origin origin;
  private final EditedPart part;
  private final Predicate<NoteText> inVoice;
  private final Fragments fragments;
  private final TextStyle style;

  /**
   * A rest of a run.
   *
   * @param open how many tuplet brackets are open before it
   */
  private record RestMember(ElementText element, int open) {
    Position onset() {
      return element.onset();
    }

    Position end() {
      return element.onset().plus(element.note().orElseThrow().length());
    }
  }

  RestRuns(Origin origin, EditedPart part, Predicate<NoteText> inVoice, Fragments fragments) {
    this.origin = origin;
    this.part = part;
    this.inVoice = inVoice;
    this.fragments = fragments;
    this.style = TextStyle.of(origin);
  }

  /** Draws them together in one bar. */
  void draw(MeasureText measure, Bar bar) {
    List<ElementText> voice = new ArrayList<>();
    for (ElementText element : measure.elements()) {
      if (element.name().equals("backup")) {
        drawWhole(measure, bar, voice);
        voice.clear();
      } else if (!part.isGone(element.span())) {
        voice.add(element);
      }
    }
    drawWhole(measure, bar, voice);
    drawRuns(measure, bar);
  }

  /**
   * Makes one rest of a voice that is silent all through a bar; directions within it stand after it
   * then, and say how far before that they are meant.
   */
  private void drawWhole(MeasureText measure, Bar bar, List<ElementText> voice) {
    List<ElementText> rests = voice.stream().filter(this::isRest).toList();
    if (rests.size() < 2 || rests.stream().noneMatch(rest -> part.isSilenced(rest.span()))) {
      return;
    }
    ElementText first = rests.get(0);
    ElementText last = rests.get(rests.size() - 1);
    Span span = new Span(first.onset(), last.onset().plus(last.note().orElseThrow().length()));
    List<ElementText> within =
        voice.subList(voice.indexOf(first), voice.indexOf(last)).stream()
            .filter(each -> each.note().isEmpty())
            .toList();
    boolean silent = voice.stream().filter(each -> each.note().isPresent()).allMatch(this::isRest);
    boolean movable = within.stream().allMatch(each -> LateSign.canBe(text(each)));
    List<BarItem> items = VoiceLayout.of(bar, span, List.of(), new TreeSet<>(), List.of());
    boolean whole = span.equals(bar.span()) && items.size() == 1 && fits(items.get(0), first);
    if (!silent || !movable || !whole) {
      return;
    }
    String lineBreak = style.breakWithin(origin.text(), measure);
    List<String> texts = new ArrayList<>();
    texts.add(text(items.get(0), bar, first, lineBreak));
    for (ElementText sign : within) {
      Rational back =
          span.end().since(sign.onset()).quarters().times(first.attributes().divisions());
      texts.add(LateSign.of(text(sign), back));
      part.delete(sign.span());
    }
    rests.forEach(rest -> part.delete(rest.span()));
    part.edit(first.span(), gone -> String.join(lineBreak, texts));
  }

  private String text(ElementText element) {
    return part.textOf(element.span());
  }

  private void drawRuns(MeasureText measure, Bar bar) {
    List<RestMember> run = new ArrayList<>();
    int open = 0;
    for (ElementText element : measure.elements()) {
      if (!part.isGone(element.span())) {
        if (isRest(element)) {
          run.add(new RestMember(element, open));
        } else {
          draw(measure, bar, run);
          run.clear();
        }
      }
      open += element.note().filter(inVoice).isPresent() ? brackets(element) : 0;
    }
    draw(measure, bar, run);
  }

  private boolean isRest(ElementText element) {
    return element
        .note()
        .filter(inVoice)
        .filter(note -> note.rest() || part.isSilenced(element.span()))
        .isPresent();
  }

  private void draw(MeasureText measure, Bar bar, List<RestMember> all) {
    List<RestMember> run = betweenTuplets(bar, all);
    if (run.stream().noneMatch(rest -> part.isSilenced(rest.element().span()))) {
      return;
    }
    ElementText first = run.get(0).element();
    Span span = new Span(first.onset(), run.get(run.size() - 1).end());
    List<BarItem> items = VoiceLayout.of(bar, span, List.of(), new TreeSet<>(), List.of());
    if (items.size() < run.size() && items.stream().allMatch(item -> fits(item, first))) {
      String lineBreak = style.breakWithin(origin.text(), measure);
      List<String> texts = items.stream().map(item -> text(item, bar, first, lineBreak)).toList();
      run.forEach(rest -> part.delete(rest.element().span()));
      part.edit(first.span(), gone -> String.join(lineBreak, texts));
    }
  }

  /** The run without those rests at its ends that share a tuplet with what stands beside it. */
  private List<RestMember> betweenTuplets(Bar bar, List<RestMember> run) {
    List<Integer> cuts =
        IntStream.rangeClosed(0, run.size()).filter(at -> isCut(bar, run, at)).boxed().toList();
    return cuts.isEmpty() ? List.of() : run.subList(cuts.get(0), cuts.get(cuts.size() - 1));
  }

  private boolean isCut(Bar bar, List<RestMember> run, int index) {
    if (run.isEmpty()) {
      return true;
    }
    Optional<RestMember> before = index > 0 ? Optional.of(run.get(index - 1)) : Optional.empty();
    Optional<RestMember> after =
        index < run.size() ? Optional.of(run.get(index)) : Optional.empty();
    int open = after.map(RestMember::open).orElseGet(() -> before.map(this::openAfter).orElse(0));
    boolean inTuplet =
        Stream.of(before, after).flatMap(Optional::stream).anyMatch(this::isInTuplet);
    Position at = after.map(RestMember::onset).or(() -> before.map(RestMember::end)).orElseThrow();
    boolean onBeat = at.equals(bar.span().end()) || bar.beatStart(at).equals(at);
    return open == 0 && (!inTuplet || onBeat);
  }

  private int openAfter(RestMember member) {
    return member.open() + brackets(member.element());
  }

  private boolean isInTuplet(RestMember member) {
    return member.element().span().in(origin.text()).contains("<time-modification");
  }

  private int brackets(ElementText element) {
    String text = element.span().in(origin.text());
    return (int)
        (TUPLET_START.matcher(text).results().count()
            - TUPLET_STOP.matcher(text).results().count());
  }

  private static boolean fits(BarItem item, ElementText like) {
    Rational divisions = like.attributes().divisions();
    return divisions.isWhole() && item.span().length().quarters().times(divisions).isWhole();
  }

  private String text(BarItem item, Bar bar, ElementText like, String lineBreak) {
    NoteText note = like.note().orElseThrow();
    Optional<Integer> staff =
        like.attributes().staves() > 1 ? Optional.of(note.staff()) : Optional.empty();
    int divisions = like.attributes().divisions().numerator().intValueExact();
    Note rest =
        NoteMaker.resting(note.voice(), staff)
            .rest(item, item.span().equals(bar.span()), divisions);
    return style.set(fragments.text("note", Note.class, rest), lineBreak);
  }
}

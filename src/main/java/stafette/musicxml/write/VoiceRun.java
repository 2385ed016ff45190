package stafette.musicxml.write;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import stafette.musicxml.text.Origin.ElementText;
import stafette.musicxml.text.Origin.MeasureText;
import stafette.musicxml.text.Origin.NoteText;
import stafette.time.Bar;
import stafette.time.Length;
import stafette.time.Position;
import stafette.time.Span;

/**
 * A stretch of one voice in one measure that can be written anew: rests, gaps, and notes that may
 * go.
 *
 * @param voice its name
 * @param staff its staff
 * @param from index of its first element; that of the element before which to write, if it has none
 * @param to index after its last element
 * @param span where it stands
 * @param overhang how far it goes beyond what is written of its voice where other voices follow,
 *     which count back from there
 * @param lead how far back it begins from where the measure ends; zero but for a voice that is new
 */
record VoiceRun(
    String voice, int staff, int from, int to, Span span, Length overhang, Length lead) {
  VoiceRun(String voice, int staff, int from, int to, Span span, Length overhang) {
    this(voice, staff, from, to, span, overhang, Length.ZERO);
  }

  /** The same run with elements around it. */
  VoiceRun within(int first, int end) {
    return new VoiceRun(voice, staff, first, end, span, overhang, lead);
  }

  /** Says whether a note is one that may be written anew. */
  interface Own {
    boolean test(ElementText element, NoteText note);
  }

  /**
   * The longest run that covers the first of some stretches, if some voice has one; in one key
   * unless one of them goes on where the key changes.
   */
  static Optional<VoiceRun> covering(
      MeasureText measure, Bar bar, Collection<Span> needed, Own own) {
    Span first = needed.iterator().next();
    Optional<VoiceRun> inOneKey =
        covering(new Finder(measure, bar, own, true), first)
            .filter(run -> needed.stream().allMatch(run::holdsAllOrNothing));
    return inOneKey.or(() -> covering(new Finder(measure, bar, own, false), first));
  }

  /** A run that covers all of some stretches, if some voice has one. */
  static Optional<VoiceRun> coveringAll(
      MeasureText measure, Bar bar, Collection<Span> needed, Own own) {
    return new Finder(measure, bar, own, false)
        .find().stream().filter(run -> needed.stream().allMatch(run::covers)).findFirst();
  }

  private boolean holdsAllOrNothing(Span stretch) {
    return !span.overlaps(stretch) || covers(stretch);
  }

  private boolean covers(Span stretch) {
    return !span.start().isAfter(stretch.start()) && !span.end().isBefore(stretch.end());
  }

  private static Optional<VoiceRun> covering(Finder finder, Span needed) {
    return finder.find().stream().filter(run -> run.covers(needed)).findFirst();
  }

  /** Walks through a measure and collects the free runs of each voice. */
  private static final class Finder {
    private final MeasureText measure;
    private final Bar bar;
    private final Own own;
    private final boolean inOneKey;
    private final List<VoiceRun> runs = new ArrayList<>();
    private String voice = "1";
    private int staff = 1;
    private int from = -1;
    private int to;
    private Position start = Position.START;
    private Position end;

    Finder(MeasureText measure, Bar bar, Own own, boolean inOneKey) {
      this.measure = measure;
      this.bar = bar;
      this.own = own;
      this.inOneKey = inOneKey;
      this.end = bar.span().start();
    }

    List<VoiceRun> find() {
      List<ElementText> elements = measure.elements();
      int afterLast = 0;
      for (int i = 0; i < elements.size(); i++) {
        ElementText element = elements.get(i);
        if (element.name().equals("backup")) {
          close(true, afterLast, true);
          end = bar.span().start();
        } else if (element.name().equals("forward")) {
          end = after(elements, i);
          open(i, element.onset());
          to = i + 1;
          afterLast = i + 1;
        } else if (element.note().isPresent()) {
          take(i, element, element.note().get());
          afterLast = i + 1;
        } else if (inOneKey && changesKey(i)) {
          close(i + 1);
        }
      }
      close(true, afterLast == 0 ? beforeBarline(elements) : afterLast, false);
      return runs;
    }

    private boolean changesKey(int index) {
      int before =
          (index == 0 ? measure.attributes() : measure.elements().get(index - 1).attributes())
              .fifths();
      return measure.elements().get(index).attributes().fifths() != before;
    }

    private void take(int index, ElementText element, NoteText note) {
      if (!note.voice().equals(voice) || note.staff() != staff) {
        if (from >= 0 && !start.isBefore(element.onset())) {
          from = -1;
        }
        close(index);
        voice = note.voice();
        staff = note.staff();
      }
      boolean free = note.rest() || own.test(element, note);
      if (!free) {
        close(index);
      } else {
        open(index, element.onset());
        to = index + 1;
      }
      Position stop = element.onset().plus(note.length());
      end = note.chord() || note.grace() ? end : stop;
    }

    private void open(int index, Position onset) {
      if (from < 0) {
        from = index;
        start = onset;
      }
    }

    private void close(int next) {
      close(false, next, false);
    }

    /**
     * Ends the run; one that reaches the end of what is written goes on to the end of the bar, and
     * none goes beyond it, though rests of a whole bar are sometimes given the length of a note.
     */
    private void close(boolean atEnd, int next, boolean followed) {
      Length overhang = Length.ZERO;
      Position stop = end.isAfter(bar.span().end()) ? bar.span().end() : end;
      if (atEnd && end.isBefore(bar.span().end())) {
        open(next, end);
        to = Math.max(to, from);
        stop = bar.span().end();
        overhang = followed ? stop.since(end) : overhang;
      }
      if (from >= 0 && start.isBefore(stop)) {
        runs.add(
            new VoiceRun(voice, staff, from, Math.max(from, to), new Span(start, stop), overhang));
      }
      from = -1;
      to = next;
    }

    private Position after(List<ElementText> elements, int index) {
      return index + 1 < elements.size() ? elements.get(index + 1).onset() : bar.span().end();
    }

    private static int beforeBarline(List<ElementText> elements) {
      int index = elements.size();
      while (index > 0 && elements.get(index - 1).name().equals("barline")) {
        index--;
      }
      return index;
    }
  }
}

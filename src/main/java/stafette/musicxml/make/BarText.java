package stafette.musicxml.make;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import org.audiveris.proxymusic.Attributes;
import org.audiveris.proxymusic.Backup;
import org.audiveris.proxymusic.Direction;
import org.audiveris.proxymusic.Note;
import stafette.musicxml.read.TimeGrid;
import stafette.musicxml.share.Assigned;
import stafette.musicxml.share.Sign;
import stafette.notation.BarItem;
import stafette.notation.NoteSpans;
import stafette.notation.TremoloSign;
import stafette.notation.VoiceLayout;
import stafette.score.Stroke;
import stafette.time.Bar;
import stafette.time.Length;
import stafette.time.Position;
import stafette.time.Rational;
import stafette.time.Span;
import stafette.words.Sentence;

/**
 * The text of a stretch of one voice in one bar: what a player has of the line there, its signs,
 * and rests for the rest.
 */
public final class BarText {
  private final Fragments fragments;
  private final Assigned assigned;
  private final Bar bar;
  private final Span region;
  private final NoteMaker maker;
  private final Optional<Integer> staff;
  private final List<BarItem> items;

  /**
   * A stretch to be written.
   *
   * @param region within the bar; what the player has outside it is written elsewhere
   * @param keptAt places at which something else stands in the stretch
   */
  public BarText(
      Fragments fragments,
      Assigned assigned,
      Bar bar,
      Span region,
      NoteMaker maker,
      Optional<Integer> staff,
      List<Position> keptAt) {
    this.fragments = fragments;
    this.assigned = assigned;
    this.bar = bar;
    this.region = region;
    this.maker = maker;
    this.staff = staff;
    List<BarItem.SoundingItem> sounds =
        assigned.sounds(bar.index()).stream()
            .filter(sound -> region.contains(sound.span().start()))
            .toList();
    this.items = VoiceLayout.of(bar, region, sounds, new TreeSet<>(keptAt), assigned.beams());
  }

  /**
   * The least whole divisions of a quarter, and multiple of {@code now}, in which every length here
   * is whole.
   *
   * @throws UnwritablePlan if they are more than can be read again
   */
  public int divisions(Rational now) throws UnwritablePlan {
    BigInteger least = now.numerator();
    for (BarItem item : items) {
      least = TimeGrid.common(least, item.span().length().quarters().denominator());
    }
    if (least.compareTo(TimeGrid.MOST_PARTS) > 0) {
      throw new UnwritablePlan(
          Sentence.of(
              "bar {0}: the lengths of these notes have no common part that can be written; quantize"
                  + " the line, and the part that it goes into, to plain values and tuplets",
              bar.number()));
    }
    return least.intValueExact();
  }

  /** One element, and where the cursor stands when it begins. */
  public record BarPiece(Position at, String text) {}

  /** All elements in order, with all signs. */
  public List<BarPiece> pieces(int divisions) {
    return pieces(
        divisions,
        assigned.signs(bar.index()).stream().filter(sign -> region.contains(sign.note())).toList());
  }

  /** All elements in order, with these signs. */
  public List<BarPiece> pieces(int divisions, List<Sign> written) {
    List<BarPiece> pieces = new ArrayList<>();
    List<Sign> signs = new ArrayList<>(written);
    for (BarItem item : items) {
      while (!signs.isEmpty() && !signs.get(0).at().isAfter(item.span().start())) {
        pieces.add(new BarPiece(item.span().start(), sign(signs.remove(0), staff)));
      }
      for (Note note : notes(item, divisions)) {
        pieces.add(new BarPiece(item.span().start(), fragments.text("note", Note.class, note)));
      }
    }
    signs.forEach(sign -> pieces.add(new BarPiece(sign.at(), sign(sign, staff))));
    return pieces;
  }

  public String sign(Sign sign, Optional<Integer> onStaff) {
    return fragments.text("direction", Direction.class, SignMaker.direction(sign, onStaff));
  }

  public String divisionsElement(Rational divisions) {
    Attributes attributes = new Attributes();
    attributes.setDivisions(
        new BigDecimal(divisions.numerator()).divide(new BigDecimal(divisions.denominator())));
    return fragments.text("attributes", Attributes.class, attributes);
  }

  /** Goes back by a length, for what follows in another voice. */
  public String back(Length length, int divisions) {
    Backup backup = new Backup();
    backup.setDuration(NoteMaker.duration(length, divisions));
    return fragments.text("backup", Backup.class, backup);
  }

  private List<Note> notes(BarItem item, int divisions) {
    if (item.sound().isEmpty()) {
      boolean whole = item.span().equals(bar.span()) && region.equals(bar.span());
      return List.of(maker.rest(item, whole, divisions));
    }
    BarItem.SoundingItem sound = item.sound().get();
    Stroke stroke = assigned.stroke(sound.stroke());
    boolean ofTwo = sound.tremolo().filter(TremoloSign::isOfTwo).isPresent();
    NoteSpans spans = sound.first() && !ofTwo ? assigned.spans(sound.stroke()) : NoteSpans.NONE;
    return maker.notes(
        item, sound, stroke, spans, tone -> assigned.reminds(sound.stroke(), tone), divisions);
  }
}

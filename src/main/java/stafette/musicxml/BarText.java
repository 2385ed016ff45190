package stafette.musicxml;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import org.audiveris.proxymusic.Attributes;
import org.audiveris.proxymusic.Direction;
import org.audiveris.proxymusic.Note;
import stafette.musicxml.Assigned.Sign;
import stafette.score.Stroke;
import stafette.time.Bar;
import stafette.time.Position;
import stafette.time.Span;

/**
 * The text of a stretch of one voice in one bar: what a player has of the line there, its signs,
 * and rests for the rest.
 */
final class BarText {
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
  BarText(
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
    List<BarItem.Sound> sounds =
        assigned.sounds(bar.index()).stream()
            .filter(sound -> region.contains(sound.span().start()))
            .toList();
    this.items = Layout.of(bar, region, sounds, new TreeSet<>(keptAt));
  }

  /**
   * The least divisions of a quarter, and multiple of {@code now}, in which every length here is
   * whole.
   */
  int divisions(int now) {
    BigInteger least = BigInteger.valueOf(now);
    for (BarItem item : items) {
      BigInteger needed = item.span().length().quarters().denominator();
      least = least.multiply(needed).divide(least.gcd(needed));
    }
    return least.intValueExact();
  }

  /** One element, and where the cursor stands when it begins. */
  record Piece(Position at, String text) {}

  /** All elements in order, with all signs. */
  List<Piece> pieces(int divisions) {
    return pieces(
        divisions,
        assigned.signs(bar.index()).stream().filter(sign -> region.contains(sign.at())).toList());
  }

  /** All elements in order, with these signs. */
  List<Piece> pieces(int divisions, List<Sign> written) {
    List<Piece> pieces = new ArrayList<>();
    List<Sign> signs = new ArrayList<>(written);
    for (BarItem item : items) {
      while (!signs.isEmpty() && !signs.get(0).at().isAfter(item.span().start())) {
        pieces.add(new Piece(item.span().start(), sign(signs.remove(0), staff)));
      }
      for (Note note : notes(item, divisions)) {
        pieces.add(new Piece(item.span().start(), fragments.text("note", Note.class, note)));
      }
    }
    return pieces;
  }

  String sign(Sign sign, Optional<Integer> onStaff) {
    return fragments.text("direction", Direction.class, SignMaker.direction(sign, onStaff));
  }

  String divisionsElement(int divisions) {
    Attributes attributes = new Attributes();
    attributes.setDivisions(java.math.BigDecimal.valueOf(divisions));
    return fragments.text("attributes", Attributes.class, attributes);
  }

  private List<Note> notes(BarItem item, int divisions) {
    if (item.sound().isEmpty()) {
      boolean whole = item.span().equals(bar.span()) && region.equals(bar.span());
      return List.of(maker.rest(item, whole, divisions));
    }
    BarItem.Sound sound = item.sound().get();
    Stroke stroke = assigned.stroke(sound.stroke());
    NotationsMaker.Slurs slurs =
        sound.first() ? assigned.slurs(sound.stroke()) : NotationsMaker.Slurs.NONE;
    return maker.notes(item, sound, stroke, slurs, divisions);
  }
}
